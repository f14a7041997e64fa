// The table of a comparison: rows, figures and readings side by side. What differs has a mark, a word and heavier letters.
#pragma once

#include "compare/comparison_lines.h"

#include <QTableWidget>

namespace firn::app {

class ComparisonTable : public QTableWidget {
    Q_OBJECT

public:
    explicit ComparisonTable(QWidget* parent = nullptr);

    void show(const Comparison& comparison);

    /// Opens the figure in the current cell, if it has one.
    void openCurrent();

signals:
    /// Somebody wants to know how a figure comes about: its key, its side, and whether it is a difference from the first side.
    void figureChosen(const QString& figure, std::size_t side, bool isDifference);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

private:
    void open(const QModelIndex& cell);
    QString figureAt(const QModelIndex& cell) const;
    void fill();
    void fillLine(int row, const ComparisonLine& line);
    void fitWidths();
    void fitHeights();
    void fit();

    QStringList m_columns;
    std::vector<ComparisonLine> m_lines;
    bool m_isFitting = false;
};

}  // namespace firn::app
