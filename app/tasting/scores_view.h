// Scores across versions, on the scale that is chosen.
#pragma once

#include "document/document.h"

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

private:
    void fillScales();

    const Document& m_document;
    QComboBox* m_scale;
    ScoreChart* m_chart;
    InkLabel* m_waiting;
    InkLabel* m_unfair;
};

}  // namespace firn::app
