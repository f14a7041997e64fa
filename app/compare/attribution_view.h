// What did it, of the figure and the recipe that a person chooses: a sentence, and bars that add up.
#pragma once

#include "compare/comparison.h"

#include <QWidget>

class QComboBox;

namespace firn::app {

class AttributionBars;
class FigureLink;
class InkLabel;

class AttributionView : public QWidget {
    Q_OBJECT

public:
    explicit AttributionView(QWidget* parent = nullptr);

    /// The comparison must stay until the next one is shown.
    void show(const Comparison& comparison);

    /// Opens the figure that is shown, if it has parts.
    void openFigure();

signals:
    /// Somebody wants to know how the whole comes about; its key, and the side that it is about.
    void figureChosen(const QString& figure, std::size_t side);

private:
    void showChosen();

    const Comparison* m_comparison = nullptr;
    QComboBox* m_figure;
    QComboBox* m_other;
    InkLabel* m_sentence;
    FigureLink* m_why;
    AttributionBars* m_bars;
};

}  // namespace firn::app
