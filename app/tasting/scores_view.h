// Scores across versions, on the scale that is chosen.
#pragma once

#include "document/document.h"
#include "teach/figure_set.h"

#include <QWidget>

class QComboBox;

namespace firn::app {

class InkLabel;
class ScoreChart;

class ScoresView : public QWidget {
    Q_OBJECT

public:
    explicit ScoresView(const Document& document, QWidget* parent = nullptr);

    void show();

signals:
    /// Somebody wants to know how a mean comes about: its key, and the set that has it.
    void figureWanted(const QString& figure, const firn::app::SharedFigures& set);

private:
    void explain(const QString& figure);
    void fillScales();

    const Document& m_document;
    QComboBox* m_scale;
    ScoreChart* m_chart;
    InkLabel* m_waiting;
    InkLabel* m_unfair;
};

}  // namespace firn::app
