// The place where a figure stands, as a button: by mouse, Space or Enter it shows how the figure comes about.
#pragma once

#include <QAbstractButton>

namespace firn::app {

/// Draws nothing but its focus and, under the mouse, a line: a gauge draws the figure itself.
class FigureButton : public QAbstractButton {
    Q_OBJECT
    /// What Ctrl+E opens while the button has the focus.
    Q_PROPERTY(QString figure READ figure)

public:
    FigureButton(const QString& name, QString figure, QWidget* parent = nullptr);

    /// Its key in the report.
    QString figure() const { return m_figure; }
    /// Another figure stands there now.
    void setFigure(const QString& figure) { m_figure = figure; }

    QSize sizeHint() const override { return {leastSize_px, leastSize_px}; }

    /// Of a target for a wet finger.
    static constexpr int leastSize_px = 24;

signals:
    void chosen(const QString& figure);
    /// An arrow key was pressed: to the next figure, or to the one before it.
    void left(int step);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintFocus(QPainter& painter);

private:
    QString m_figure;
};

/// "Show how this comes about"
QString invitation();

}  // namespace firn::app
