// What did it, of the figure and the recipe that a person chooses: a sentence, and bars that add up.
#pragma once

#include "compare/comparison.h"

#include <QWidget>

class QComboBox;

namespace firn::app {

class AttributionBars;
class InkLabel;

class AttributionView : public QWidget {
    Q_OBJECT

public:
    explicit AttributionView(QWidget* parent = nullptr);

    /// The comparison must stay until the next one is shown.
    void show(const Comparison& comparison);

private:
    void showChosen();

    const Comparison* m_comparison = nullptr;
    QComboBox* m_figure;
    QComboBox* m_other;
    InkLabel* m_sentence;
    AttributionBars* m_bars;
};

}  // namespace firn::app
