#include "gauges/gauge.h"

#include <QAccessibleWidget>
#include <QPainter>

namespace firn::app {

namespace {

class AccessibleGauge : public QAccessibleWidget {
public:
    explicit AccessibleGauge(Gauge* gauge)
        : QAccessibleWidget(gauge, QAccessible::Indicator)
        , m_gauge(gauge)
    {
    }

    QString text(QAccessible::Text kind) const override
    {
        return kind == QAccessible::Value ? m_gauge->valueText() : QAccessibleWidget::text(kind);
    }

private:
    Gauge* m_gauge;
};

QAccessibleInterface* accessibleGauge(const QString&, QObject* object)
{
    auto* gauge = qobject_cast<Gauge*>(object);
    return gauge ? new AccessibleGauge(gauge) : nullptr;
}

}  // namespace

Gauge::Gauge(const QString& name, QWidget* parent)
    : QWidget(parent)
{
    [[maybe_unused]] static const bool isInstalled = (QAccessible::installFactory(accessibleGauge), true);
    setAccessibleName(name);
    setAttribute(Qt::WA_OpaquePaintEvent);
}

void Gauge::setValueText(const QString& sentence)
{
    if (sentence == m_valueText)
        return;
    m_valueText = sentence;
    QAccessibleValueChangeEvent change(this, m_valueText);
    QAccessible::updateAccessibility(&change);
}

void Gauge::paintEvent(QPaintEvent* /*event*/)
{
    const GaugeColours colours = coloursInWindow(palette());
    QPainter painter(this);
    painter.fillRect(rect(), colours.ground);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(colours.ink);
    paintGauge(painter, colours);
}

void paintHint(QPainter& painter, const QRect& place, const QString& hint, const GaugeColours& colours)
{
    painter.setPen(colours.quietInk);
    painter.drawText(place, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, hint);
}

}  // namespace firn::app
