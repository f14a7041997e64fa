// Plain sentences under each other, each with a mark in front that says by its shape how serious it is. Wraps, and scrolls by wheel,
// finger or arrow keys; a thin bar says that there is more, and hovering tells all of it.
#pragma once

#include <QAbstractScrollArea>
#include <QString>
#include <vector>

namespace firn::app {

enum class Mark { None, Note, Warning, Danger };

struct MarkedLine {
    Mark mark = Mark::None;
    QString text;  // never rendered as markup
    bool isQuiet = false;
    QString figure = {};  // key of the one that it is about: the line opens it
    friend bool operator==(const MarkedLine&, const MarkedLine&) = default;
};

class FigureButton;

class MarkedLines : public QAbstractScrollArea {
    Q_OBJECT

public:
    explicit MarkedLines(QWidget* parent = nullptr);

    void setLines(std::vector<MarkedLine> lines);

    /// All of it, as a screen reader says it: the seriousness in words.
    QString spokenText() const;

    /// Where each line begins, and where the last one ends, when it is this wide.
    std::vector<int> topsFor(int width) const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

signals:
    void figureChosen(const QString& figure);

protected:
    void scrollContentsBy(int dx, int dy) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool viewportEvent(QEvent* event) override;

private:
    QRect textPlace(const MarkedLine& line, int width, int top, int height) const;
    void layOut();
    void placeButtons();
    void paintScrollPosition(QPainter& painter, const QColor& colour) const;

    std::vector<MarkedLine> m_lines;
    std::vector<FigureButton*> m_buttons;  // of each line, or none
    std::vector<int> m_tops;               // of each line, and below the last one
};

}  // namespace firn::app
