// The triangle test: how many tasters found the odd cup, and what that says.
#pragma once

#include "teach/figure_set.h"

#include <QWidget>

namespace firn::app {

class FigureLink;
class InkLabel;
class NumberField;

class TriangleView : public QWidget {
    Q_OBJECT

public:
    explicit TriangleView(QWidget* parent = nullptr);

signals:
    /// Somebody wants to know how a number of the verdict comes about: its key, and the set that has it.
    void figureWanted(const QString& figure, const firn::app::SharedFigures& set);

private:
    void judge();
    void explain(const QString& key);
    Result<Sentence> verdict(Workings* workings = nullptr) const;

    NumberField* m_tasters;
    NumberField* m_right;
    InkLabel* m_verdict;
    FigureLink* m_chance;
    FigureLink* m_needed;
};

}  // namespace firn::app
