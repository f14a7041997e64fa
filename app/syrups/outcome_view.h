// What follows from a form: what to do in large letters, the figures, and why.
#pragma once

#include "syrups/syrup_job.h"

#include <QWidget>

class QGridLayout;
class QLabel;
class QPushButton;

namespace firn::app {

class FigureButton;
class FigureLink;
class InkLabel;
class MarkedLines;
class PearsonPicture;

class OutcomeView : public QWidget {
    Q_OBJECT

public:
    explicit OutcomeView(bool hasSquare, QWidget* parent = nullptr);

    /// Nothing where the form has none.
    void show(const Outcome& outcome);

    void fitToFont(int height);

signals:
    /// The person wants these in the recipe.
    void rowsWanted(const std::vector<firn::Row>& rows);
    /// The person wants to know how the answer comes about.
    void derivationWanted(const QString& figure, const firn::Workings& workings);

private:
    void showFigures(const std::vector<WorkedFigure>& figures);
    void addFigureLine();
    void putInRecipe();
    void explain(const QString& figure, const Working& working);

    struct FigureLine {
        QLabel* label;
        QLabel* value;
        FigureButton* why;  // over the value
        InkLabel* note;
        Working working;
    };

    PearsonPicture* m_square = nullptr;
    QLabel* m_answer;
    FigureLink* m_why;
    Working m_working;
    QGridLayout* m_grid;
    std::vector<FigureLine> m_figures;
    MarkedLines* m_lines;
    QPushButton* m_put;
    InkLabel* m_toPut;
    std::vector<Row> m_rows;
};

}  // namespace firn::app
