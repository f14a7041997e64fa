#include "formulas/formula_picture.h"

#include "derivation/formula_text.h"
#include "teach/figure_wording.h"

#include <QEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace firn::app {

namespace {

constexpr double unlimited = 1e6;
constexpr double margin = 1.0;
constexpr int smallestWidth_px = 40;

/// At least that of a line of text, so that it shares its baseline with a label beside it.
int heightOf(const FormulaBox& box, const QFontMetrics& metrics)
{
    return int(std::ceil(
        std::max(box.ascent, double(metrics.ascent())) + std::max(box.descent, double(metrics.descent())) + 2.0 * margin));
}

}  // namespace

FormulaPicture::FormulaPicture(Formula formula, bool isFolded, QWidget* parent)
    : Gauge(tr("Formula"), parent)
    , m_formula(std::move(formula))
    , m_isFolded(isFolded)
{
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setValueText(plain(textOf(m_formula, m_isFolded ? mostTermsFolded : 0)));
}

const FormulaBox& FormulaPicture::inOneLine() const
{
    if (!m_inOneLine)
        m_inOneLine = laidOut(m_formula, font(), unlimited, m_isFolded);
    return *m_inOneLine;
}

const FormulaBox& FormulaPicture::boxFor(int width) const
{
    const double room = std::max(width - 2.0 * margin, 1.0);
    if (inOneLine().width <= room)
        return inOneLine();
    if (!m_fitted || m_fittedWidth != width) {
        m_fitted = fitted(m_formula, font(), room, m_isFolded);
        m_fittedWidth = width;
    }
    return *m_fitted;
}

void FormulaPicture::changeEvent(QEvent* event)
{
    Gauge::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::LocaleChange) {
        m_inOneLine.reset();
        m_fitted.reset();
        updateGeometry();
    }
}

QSize FormulaPicture::sizeHint() const
{
    return {int(std::ceil(inOneLine().width + 2.0 * margin)), heightOf(inOneLine(), fontMetrics())};
}

QSize FormulaPicture::minimumSizeHint() const { return {std::min(sizeHint().width(), smallestWidth_px), fontMetrics().height()}; }

int FormulaPicture::heightForWidth(int width) const { return heightOf(boxFor(width), fontMetrics()); }

void FormulaPicture::paintGauge(QPainter& painter, const GaugeColours& colours)
{
    const FormulaBox& box = boxFor(width());
    paint(painter, box, {margin, margin + std::max(0.0, fontMetrics().ascent() - box.ascent)}, colours);
}

void paint(QPainter& painter, const FormulaBox& box, QPointF topLeft, const GaugeColours& colours)
{
    painter.save();
    painter.translate(topLeft.x(), topLeft.y() + box.ascent);
    for (const FormulaMark& mark : box.marks) {
        const QColor& ink = mark.isQuiet ? colours.quietInk : colours.ink;
        if (mark.text.isEmpty()) {
            painter.fillPath(mark.shape, ink);
        } else {
            painter.setFont(mark.font);
            painter.setPen(ink);
            painter.drawText(mark.baseline, mark.text);
        }
    }
    painter.restore();
}

}  // namespace firn::app
