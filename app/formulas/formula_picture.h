// A formula in mathematical type; a screen reader says it as core writes it in one line.
#pragma once

#include "formulas/formula_layout.h"
#include "gauges/gauge.h"

#include <optional>

namespace firn::app {

class FormulaPicture : public Gauge {
    Q_OBJECT

public:
    explicit FormulaPicture(Formula formula, bool isFolded = true, QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    int heightForWidth(int width) const override;

protected:
    void paintGauge(QPainter& painter, const GaugeColours& colours) override;
    void changeEvent(QEvent* event) override;

private:
    const FormulaBox& inOneLine() const;
    /// In lines that fit the width, in smaller type where even one part is too wide.
    const FormulaBox& boxFor(int width) const;

    Formula m_formula;
    bool m_isFolded;
    // Setting type is slow, and layouts ask for the same widths again and again.
    mutable std::optional<FormulaBox> m_inOneLine;
    mutable std::optional<FormulaBox> m_fitted;
    mutable int m_fittedWidth = 0;
};

/// Draws the box with its top left corner here.
void paint(QPainter& painter, const FormulaBox& box, QPointF topLeft, const GaugeColours& colours);

}  // namespace firn::app
