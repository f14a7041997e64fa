#include "gauges/gauge.h"

#include "gauges/figure_button.h"

#include <QAccessibleWidget>
#include <QPainter>
#include <algorithm>

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

FigureButton* Gauge::buttonOf(const QString& figure) const
{
    const auto found = std::ranges::find(m_figures, figure, &FigureButton::figure);
    return found == m_figures.end() ? nullptr : *found;
}

void Gauge::setFigures(const std::vector<FigurePlace>& figures)
{
    std::vector<FigureButton*> buttons;
    for (const FigurePlace& each : figures) {
        FigureButton* button = buttonOf(each.figure);
        if (!button) {
            button = new FigureButton(each.name, each.figure, this);
            connect(button, &FigureButton::chosen, this, &Gauge::figureChosen);
            connect(button, &FigureButton::left, this, [this, button](int step) {
                goToFigure(std::size_t(std::ranges::find(m_figures, button) - m_figures.begin()), step);
            });
            button->show();
        }
        // A click leaves the focus where somebody types.
        button->setFocusPolicy(buttons.empty() || button->hasFocus() ? Qt::TabFocus : Qt::NoFocus);
        button->setAccessibleName(each.name);
        QRect place(QPoint(), each.place.size().expandedTo({FigureButton::leastSize_px, FigureButton::leastSize_px}));
        place.moveCenter(each.place.center());
        place.moveTop(std::max(0, place.top()));
        button->setGeometry(place);
        buttons.push_back(button);
    }
    for (FigureButton* before : m_figures) {
        if (std::ranges::find(buttons, before) != buttons.end())
            continue;
        before->hide();
        before->deleteLater();
    }
    m_figures = std::move(buttons);
}

void Gauge::goToFigure(std::size_t from, int step)
{
    const auto to = std::clamp<std::ptrdiff_t>(std::ptrdiff_t(from) + step, 0, std::ptrdiff_t(m_figures.size()) - 1);
    for (FigureButton* button : m_figures)
        button->setFocusPolicy(Qt::NoFocus);
    m_figures[std::size_t(to)]->setFocusPolicy(Qt::TabFocus);
    m_figures[std::size_t(to)]->setFocus(Qt::TabFocusReason);
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
