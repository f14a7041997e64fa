// The handle of a temperature on the freezing chart: dragged sideways, or moved with the arrow keys.
#pragma once

#include <QWidget>
#include <optional>

namespace firn::app {

/// An invisible shape that takes mouse and keys; the chart draws the marker itself. Temperatures are halves of a degree, tenths with
/// Shift, from the coldest of the chart to 0 °C.
class TemperatureMarker : public QWidget {
    Q_OBJECT

public:
    TemperatureMarker(const QString& name, QWidget* parent);

    double temperature_c() const { return m_temperature_c; }
    QString valueText() const;
    bool isDragged() const { return m_dragStart.has_value(); }

    /// Sets the temperature from outside; emits nothing, and waits while the marker is being dragged.
    void setTemperature(double temperature_c);

    void setPixelsPerDegree(double pixels) { m_pixelsPerDegree = pixels; }
    /// Where a press takes hold of it, pixels of its parent.
    void setHandle(const QRegion& handle);

    /// Moves it as a person would: rounded, within the chart, and told to everybody.
    void choose(double temperature_c, double step_c);

signals:
    void chosen(double temperature_c);
    void released();
    void looksChanged();

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    struct Drag {
        double x = 0.0;  // of the mouse, in the chart's pixels
        double temperature_c = 0.0;
    };

    void announce();

    double m_temperature_c = 0.0;
    double m_pixelsPerDegree = 1.0;
    std::optional<Drag> m_dragStart;
};

}  // namespace firn::app
