#include "formulas/formula_box.h"

#include <QFontInfo>
#include <QFontMetricsF>
#include <algorithm>

namespace firn::app {

namespace {

// Proportions in ems, by eye after printed textbooks.
constexpr double stroke_em = 0.055;
constexpr double fractionGap_em = 0.22;
constexpr double barOverhang_em = 0.12;
constexpr double scriptGap_em = 0.06;
constexpr double scriptDrop_em = 0.18;
constexpr double lineGap_em = 0.45;
constexpr double bracketGap_em = 0.08;
constexpr double tallestTextInBrackets_em = 1.15;  // what is taller gets brackets that grow
constexpr double sumSignSize = 1.5;
constexpr int smallestType_px = 8;

FormulaMark shapeMark(const QPainterPath& shape)
{
    FormulaMark mark;
    mark.shape = shape;
    mark.bounds = shape.boundingRect();
    return mark;
}

FormulaMark bar(const QRectF& place)
{
    QPainterPath path;
    path.addRect(place);
    return shapeMark(path);
}

/// A stroke that is thickest in the middle, bulging to the left.
QPainterPath openingBracket(double width, double top, double bottom, double stroke)
{
    const double middle = 0.5 * (top + bottom);
    QPainterPath path(QPointF(width, top));
    path.quadTo({-width, middle}, {width, bottom});
    path.quadTo({-width + 2.2 * stroke, middle}, {width, top});
    return path;
}

}  // namespace

void FormulaBox::add(FormulaBox other, QPointF at)
{
    for (FormulaMark& mark : other.marks) {
        mark.bounds.translate(at);
        mark.baseline += at;
        mark.shape.translate(at);
        marks.push_back(std::move(mark));
    }
    width = std::max(width, at.x() + other.width);
    ascent = std::max(ascent, other.ascent - at.y());
    descent = std::max(descent, other.descent + at.y());
    hasLines = hasLines || other.hasLines;
}

void FormulaBox::append(FormulaBox other) { add(std::move(other), {width, 0.0}); }

FormulaType::FormulaType(const QFont& font)
    : m_font(font)
    , m_em(QFontInfo(font).pixelSize())
    , m_stroke(std::max(1.0, stroke_em * m_em))
{
    const QFontMetricsF metrics(m_font);
    m_axis = -metrics.tightBoundingRect(QString(QChar(0x2212))).center().y();
    m_xHeight = metrics.xHeight();
}

FormulaType FormulaType::smaller(double factor) const
{
    QFont font = m_font;
    font.setPixelSize(std::max(smallestType_px, qRound(factor * m_em)));
    return FormulaType(font);
}

FormulaBox FormulaType::text(const QString& text, Lettering lettering) const
{
    FormulaMark mark;
    mark.text = text;
    mark.font = m_font;
    mark.font.setItalic(lettering == Lettering::Italic);
    mark.isQuiet = lettering == Lettering::Quiet;
    const QFontMetricsF metrics(mark.font);
    const QRectF ink = metrics.tightBoundingRect(text);
    // Slanted letters lean out of their advance at either side.
    mark.baseline.setX(std::max(0.0, -ink.left()));
    mark.bounds = ink.translated(mark.baseline);
    FormulaBox box;
    box.width = std::max(mark.baseline.x() + metrics.horizontalAdvance(text), mark.bounds.right());
    box.ascent = std::max(0.0, -ink.top());
    box.descent = std::max(0.0, ink.bottom());
    box.marks.push_back(std::move(mark));
    return box;
}

FormulaBox FormulaType::space(double ems) const
{
    FormulaBox box;
    box.width = ems * m_em;
    return box;
}

FormulaBox FormulaType::inBrackets(FormulaBox inside) const
{
    inside.hasLines = false;  // the brackets hold them together
    FormulaBox box;
    const double gap = bracketGap_em * m_em;
    if (inside.height() <= tallestTextInBrackets_em * m_em) {
        box = text(QStringLiteral("("));
        box.append(std::move(inside));
        box.append(text(QStringLiteral(")")));
        return box;
    }
    const double top = -inside.ascent - gap, bottom = inside.descent + gap;
    const double width = std::min(0.2 * m_em + 0.03 * inside.height(), 0.5 * m_em);
    const QPainterPath opening = openingBracket(width, top, bottom, m_stroke);
    box.ascent = -top;
    box.descent = bottom;
    box.marks.push_back(shapeMark(opening));
    box.width = width + gap;
    box.append(std::move(inside));
    const QTransform mirrored = QTransform::fromTranslate(box.width + gap + width, 0.0).scale(-1.0, 1.0);
    box.marks.push_back(shapeMark(mirrored.map(opening)));
    box.width += gap + width + gap;
    return box;
}

FormulaBox FormulaType::fraction(FormulaBox above, FormulaBox below) const
{
    const double gap = fractionGap_em * m_em, overhang = barOverhang_em * m_em;
    const double barWidth = std::max(above.width, below.width) + 2.0 * overhang;
    FormulaBox box;
    box.marks.push_back(bar({overhang, -m_axis - 0.5 * m_stroke, barWidth, m_stroke}));
    box.width = barWidth + 2.0 * overhang;
    const double left = 0.5 * (box.width - above.width), leftBelow = 0.5 * (box.width - below.width);
    const double rise = m_axis + 0.5 * m_stroke + gap + above.descent;
    const double drop = -m_axis + 0.5 * m_stroke + gap + below.ascent;
    box.add(std::move(above), {left, -rise});
    box.add(std::move(below), {leftBelow, drop});
    box.hasLines = false;
    return box;
}

FormulaBox FormulaType::root(FormulaBox radicand) const
{
    const double gap = fractionGap_em * m_em, hook = 0.6 * m_em;
    const double top = -radicand.ascent - gap - m_stroke, bottom = radicand.descent;
    const double half = 0.5 * (top + bottom);
    QPainterPath line(QPointF(0.0, half + 0.1 * m_em));
    line.lineTo(0.15 * m_em, half);
    line.lineTo(0.35 * m_em, bottom - m_stroke);
    line.lineTo(hook - 0.5 * m_stroke, top + 0.5 * m_stroke);
    QPainterPathStroker stroker;
    stroker.setWidth(m_stroke);
    stroker.setJoinStyle(Qt::MiterJoin);
    QPainterPath stroked = stroker.createStroke(line).simplified();
    stroked.translate(std::max(0.0, -stroked.boundingRect().left()), 0.0);
    FormulaBox box;
    box.marks.push_back(shapeMark(stroked));
    const QRectF sign = stroked.boundingRect();
    box.ascent = std::max(-top, -sign.top());
    box.descent = std::max(bottom, sign.bottom());
    box.marks.push_back(bar({sign.right(), top, radicand.width + gap + hook - sign.right() + gap, m_stroke}));
    box.add(std::move(radicand), {std::max(hook, sign.right()) + 0.5 * gap, 0.0});
    box.hasLines = false;
    box.width = std::max(box.width, box.marks[1].bounds.right()) + 0.5 * gap;
    return box;
}

FormulaBox FormulaType::withScripts(FormulaBox base, FormulaBox subscript, FormulaBox superscript) const
{
    const double x = base.width + scriptGap_em * m_em, gap = scriptGap_em * m_em;
    const double drop = std::max(scriptDrop_em * m_em, subscript.ascent - 0.7 * m_xHeight);
    // As high as its foot stays above the half of the base, and above the subscript.
    double rise = std::max(m_xHeight * 0.75, base.ascent - 0.35 * m_em) + superscript.descent;
    if (!subscript.marks.empty())
        rise = std::max(rise, subscript.ascent - drop + gap + superscript.descent);
    if (!subscript.marks.empty())
        base.add(std::move(subscript), {x, drop});
    if (!superscript.marks.empty())
        base.add(std::move(superscript), {x, -rise});
    return base;
}

FormulaBox FormulaType::sumSign(FormulaBox index) const
{
    FormulaBox sign = smaller(sumSignSize).text(QString(QChar(0x03A3)));
    const double drop = 0.5 * (sign.ascent - sign.descent) - m_axis;
    FormulaBox box;
    box.width = std::max(sign.width, index.width);
    const double left = 0.5 * (box.width - sign.width), leftBelow = 0.5 * (box.width - index.width);
    const double below = drop + sign.descent + scriptGap_em * 2.0 * m_em + index.ascent;
    box.add(std::move(sign), {left, drop});
    box.add(std::move(index), {leftBelow, below});
    return box;
}

FormulaBox FormulaType::flow(std::vector<FormulaBox> pieces, double room, double indent) const
{
    std::vector<FormulaBox> lines(1);
    for (FormulaBox& piece : pieces) {
        const bool isBegun = lines.back().width > (lines.size() > 1 ? indent : 0.0);
        const bool isFull = isBegun && (lines.back().hasLines || lines.back().width + piece.width > room);
        if (isFull) {
            lines.emplace_back();
            lines.back().width = indent;
        }
        lines.back().append(std::move(piece));
    }
    FormulaBox box = std::move(lines.front());
    for (std::size_t i = 1; i < lines.size(); ++i) {
        const double drop = box.descent + lineGap_em * m_em + lines[i].ascent;
        box.add(std::move(lines[i]), {0.0, drop});
        box.hasLines = true;
    }
    return box;
}

}  // namespace firn::app
