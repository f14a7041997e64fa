// The handle of a temperature on the freezing chart: dragged sideways, or moved with the arrow keys.
#pragma once

#include <QWidget>
#include <optional>

namespace firn::app {

/// An invisible shape that takes mouse and keys; the chart draws the marker itself. Temperatures are halves of a degree Celsius, or whole
/// degrees Fahrenheit where those are shown; tenths with Shift; from the coldest of the chart to 0 °C.
class TemperatureMarker : public QWidget {
    Q_OBJECT
    /// What Ctrl+E opens while the marker has the focus.
    Q_PROPERTY(QString figure READ figure)

public:
    TemperatureMarker(const QString& name, QWidget* parent);

    double temperature_c() const { return m_temperature_c; }
    QString valueText() const;
    bool isDragged() const { return m_dragStart.has_value(); }

    /// Sets the temperature from outside; emits nothing, and waits while the marker is being dragged.
    void setTemperature(double temperature_c);

    void setPixelsPerDegree(double pixels) { m_pixelsPerDegree = pixels; }
    /// Where a press takes hold of it, and where its labels are, which a press without a move opens; pixels of its parent.
    void setHandle(const QRegion& handle, const QRegion& labels);

    /// Key of the figure that its labels say.
    QString figure() const { return m_figure; }
    void setFigure(const QString& figure) { m_figure = figure; }

    /// Moves it as a person would: rounded, within the chart, and told to everybody.
    void choose(double temperature_c, Qt::KeyboardModifiers modifiers);

signals:
    void chosen(double temperature_c);
    void released();
    /// A label was clicked, or Space or Enter pressed.
    void figureChosen(const QString& figure);
    void looksChanged();

protected:
    bool event(QEvent* event) override;
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
        bool isOnLabel = false;  // and has not moved
    };

    void announce();

    double m_temperature_c = 0.0;
    double m_pixelsPerDegree = 1.0;
    std::optional<Drag> m_dragStart;
    QRegion m_labels;  // in its own pixels
    QString m_figure;
};

}  // namespace firn::app
