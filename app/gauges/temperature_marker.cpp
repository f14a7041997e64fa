#include "gauges/temperature_marker.h"

#include "gauges/figure_button.h"
#include "gauges/temperature_unit.h"
#include "gauges/wording.h"

#include <QAccessibleWidget>
#include <QApplication>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QToolTip>
#include <algorithm>
#include <cmath>

namespace firn::app {

namespace {

constexpr double warmest_c = 0.0;

/// In degrees of the shown unit.
double stepWith(Qt::KeyboardModifiers modifiers)
{
    constexpr double fine = 0.1, celsius = 0.5, fahrenheit = 1.0;
    if (modifiers.testFlag(Qt::ShiftModifier))
        return fine;
    return shownTemperatureUnit() == TemperatureUnit::Celsius ? celsius : fahrenheit;
}

/// A step up or down, from the number that is shown.
double afterStep(double temperature_c, double step)
{
    const TemperatureUnit unit = shownTemperatureUnit();
    return temperatureFrom(unit, numberIn(unit, Celsius{temperature_c}) + step).value;
}

/// A slider, to a screen reader.
class AccessibleMarker : public QAccessibleWidget, public QAccessibleValueInterface {
public:
    explicit AccessibleMarker(TemperatureMarker* marker)
        : QAccessibleWidget(marker, QAccessible::Slider)
        , m_marker(marker)
    {
    }

    void* interface_cast(QAccessible::InterfaceType type) override
    {
        return type == QAccessible::ValueInterface ? static_cast<QAccessibleValueInterface*>(this)
                                                   : QAccessibleWidget::interface_cast(type);
    }
    QString text(QAccessible::Text kind) const override
    {
        return kind == QAccessible::Value ? m_marker->valueText() : QAccessibleWidget::text(kind);
    }
    QVariant currentValue() const override { return m_marker->temperature_c(); }
    void setCurrentValue(const QVariant& value) override
    {
        m_marker->choose(value.toDouble(), Qt::ShiftModifier);
        emit m_marker->released();
    }
    QVariant maximumValue() const override { return warmest_c; }
    QVariant minimumValue() const override { return coldestOfCurve.value; }
    QVariant minimumStepSize() const override { return afterStep(0.0, stepWith(Qt::ShiftModifier)); }

private:
    TemperatureMarker* m_marker;
};

QAccessibleInterface* accessibleMarker(const QString&, QObject* object)
{
    auto* marker = qobject_cast<TemperatureMarker*>(object);
    return marker ? new AccessibleMarker(marker) : nullptr;
}

}  // namespace

TemperatureMarker::TemperatureMarker(const QString& name, QWidget* parent)
    : QWidget(parent)
{
    [[maybe_unused]] static const bool isInstalled = (QAccessible::installFactory(accessibleMarker), true);
    setAccessibleName(name);
    setAccessibleDescription(tr("Drag it, or press the arrow keys; with Shift in tenths of a degree. Enter explains its ice"));
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::SizeHorCursor);
    setMouseTracking(true);
}

QString TemperatureMarker::valueText() const { return chosenDegrees({m_temperature_c}); }

void TemperatureMarker::setTemperature(double temperature_c)
{
    if (isDragged() || temperature_c == m_temperature_c)
        return;
    m_temperature_c = temperature_c;
    announce();
}

void TemperatureMarker::setHandle(const QRegion& handle, const QRegion& labels)
{
    m_labels = labels.translated(-handle.boundingRect().topLeft());
    setGeometry(handle.boundingRect());
    setMask(handle.translated(-handle.boundingRect().topLeft()));
}

void TemperatureMarker::choose(double temperature_c, Qt::KeyboardModifiers modifiers)
{
    const TemperatureUnit unit = shownTemperatureUnit();
    const double step = stepWith(modifiers);
    const double rounded_c = temperatureFrom(unit, std::round(numberIn(unit, Celsius{temperature_c}) / step) * step).value;
    const double within_c = std::clamp(rounded_c, coldestOfCurve.value, warmest_c);
    if (within_c == m_temperature_c)
        return;
    m_temperature_c = within_c;
    announce();
    emit chosen(m_temperature_c);
}

void TemperatureMarker::announce()
{
    QAccessibleValueChangeEvent change(this, m_temperature_c);
    QAccessible::updateAccessibility(&change);
    emit looksChanged();
}

void TemperatureMarker::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton)
        return;
    m_dragStart = Drag{mapToParent(event->position()).x(), m_temperature_c, m_labels.contains(event->pos())};
    raise();
}

void TemperatureMarker::mouseMoveEvent(QMouseEvent* event)
{
    if (!m_dragStart) {
        setCursor(m_labels.contains(event->pos()) ? Qt::PointingHandCursor : Qt::SizeHorCursor);
        return;
    }
    const double moved_px = mapToParent(event->position()).x() - m_dragStart->x;
    if (m_dragStart->isOnLabel && std::abs(moved_px) < QApplication::startDragDistance())
        return;
    m_dragStart->isOnLabel = false;
    const double moved_c = moved_px / m_pixelsPerDegree;
    choose(m_dragStart->temperature_c + moved_c, event->modifiers());
}

void TemperatureMarker::mouseReleaseEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton || !m_dragStart)
        return;
    const bool isClick = m_dragStart->isOnLabel;
    m_dragStart.reset();
    emit released();
    if (isClick)
        emit figureChosen(m_figure);
}

bool TemperatureMarker::event(QEvent* event)
{
    if (event->type() != QEvent::ToolTip)
        return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    QToolTip::showText(help->globalPos(), m_labels.contains(help->pos()) ? invitation() : QString(), this);
    return true;
}

void TemperatureMarker::keyPressEvent(QKeyEvent* event)
{
    const double step = stepWith(event->modifiers());
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Down:
        choose(afterStep(m_temperature_c, -step), event->modifiers());
        break;
    case Qt::Key_Right:
    case Qt::Key_Up:
        choose(afterStep(m_temperature_c, step), event->modifiers());
        break;
    case Qt::Key_Space:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        emit figureChosen(m_figure);
        break;
    case Qt::Key_Escape:
        if (m_dragStart) {
            choose(m_dragStart->temperature_c, Qt::ShiftModifier);
            m_dragStart.reset();
            emit released();
            break;
        }
        [[fallthrough]];
    default:
        QWidget::keyPressEvent(event);
    }
}

void TemperatureMarker::keyReleaseEvent(QKeyEvent* event)
{
    const bool isArrow = event->key() >= Qt::Key_Left && event->key() <= Qt::Key_Down;
    if (isArrow && !event->isAutoRepeat())
        emit released();
    else
        QWidget::keyReleaseEvent(event);
}

void TemperatureMarker::focusInEvent(QFocusEvent* event)
{
    raise();
    QWidget::focusInEvent(event);
    emit looksChanged();
}

void TemperatureMarker::focusOutEvent(QFocusEvent* event)
{
    QWidget::focusOutEvent(event);
    emit looksChanged();
}

}  // namespace firn::app
