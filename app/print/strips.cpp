#include "print/strips.h"

#include "formulas/formula_layout.h"

#include <QFontMetricsF>
#include <QTextLayout>
#include <algorithm>
#include <cmath>

namespace firn::app {

namespace {

// By eye, on paper.
constexpr double titleSize = 1.6;
constexpr double headingSize = 1.15;
constexpr double quietSize = 0.85;
constexpr double formulaSize = 1.1;
constexpr double cellGap_em = 1.0;
constexpr double betweenRows_em = 0.3;
constexpr double tick_em = 0.45;  // those at the ends are twice as tall
constexpr double hairline_em = 0.05;
constexpr double writingHeight_em = 2.2;
constexpr int mostLinesOfACell = 12;  // a name that fills pages is nobody's ingredient
constexpr int smallestType_dots = 30;

double emOf(const QFont& font) { return font.pixelSize(); }

void moveBy(PrintMark& mark, QPointF by)
{
    mark.place.translate(by);
    if (auto* text = std::get_if<PrintText>(&mark.ink))
        text->baseline += by;
}

void put(Strip& strip, std::vector<PrintMark> marks, QPointF at)
{
    for (PrintMark& mark : marks) {
        if (mark.place.isEmpty())
            continue;
        moveBy(mark, at);
        strip.height = std::max(strip.height, mark.place.bottom());
        strip.marks.push_back(std::move(mark));
    }
}

/// Lines that fit the width, broken at words, and within those that are too long.
QStringList linesOf(const QString& text, const QFont& font, double width)
{
    QStringList lines;
    for (const QString& paragraph : text.split(u'\n')) {
        QTextLayout layout(paragraph, font);
        QTextOption option;
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        option.setUseDesignMetrics(true);
        layout.setTextOption(option);
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(width);
            lines << paragraph.mid(line.textStart(), line.textLength()).trimmed();
        }
        layout.endLayout();
    }
    return lines;
}

std::vector<Strip> textStrips(const TextBlock& block, const QFont& font, QSizeF room)
{
    const QFont styled = fontOf(block.style, font);
    const double indent = block.indent_em * emOf(font);
    std::vector<Strip> strips;
    for (const QString& line : linesOf(block.text, styled, room.width() - indent)) {
        Strip& strip = strips.emplace_back();
        put(strip, {markOf(line, styled, block.style == TextStyle::Quiet)}, {indent, 0.0});
    }
    constexpr std::size_t shortParagraph = 5;
    for (std::size_t i = 0; i + 1 < strips.size() && strips.size() <= shortParagraph; ++i)
        strips[i].keepsWithNext = true;
    return strips;
}

/// In smaller type where it is wider or taller than the room, and folded where that is not enough.
FormulaBox formulaBox(const Formula& formula, const QFont& font, QSizeF room)
{
    const auto isTooLarge = [&](const FormulaBox& box) { return box.height() > room.height() || box.width > room.width(); };
    for (const bool isFolded : {false, true}) {
        for (QFont smaller = font;; smaller.setPixelSize(int(0.85 * smaller.pixelSize()))) {
            FormulaBox box = fitted(formula, smaller, room.width(), isFolded);
            if (!isTooLarge(box) || (isFolded && smaller.pixelSize() < smallestType_dots))
                return box;
            if (smaller.pixelSize() < smallestType_dots)
                break;
        }
    }
    return {};
}

PrintMark formulaMark(FormulaBox box)
{
    const QRectF place(0.0, 0.0, box.width, box.height());
    return {place, std::move(box)};
}

QFont larger(QFont font)
{
    font.setPixelSize(qRound(formulaSize * font.pixelSize()));
    return font;
}

Strip formulaStrip(const FormulaBlock& block, const QFont& font, QSizeF room)
{
    const double indent = block.indent_em * emOf(font);
    FormulaBox box = formulaBox(block.formula, larger(font), {room.width() - indent, room.height()});
    const double number = QFontMetricsF(font).ascent();
    const double baseline = block.number.isEmpty() ? box.ascent : std::max(box.ascent, number);
    Strip strip;
    if (!block.number.isEmpty())
        put(strip, {markOf(block.number, font, true)}, {0.0, baseline - number});
    const double rise = baseline - box.ascent;
    put(strip, {formulaMark(std::move(box))}, {indent, rise});
    return strip;
}

/// One under the other, the first line's top at 0; and how far below the top the first baseline lies.
struct CellInk {
    std::vector<PrintMark> marks;
    double baseline = 0.0;
};

/// With its marks standing on it.
CellInk inkOf(const ScaleLine& scale, double em, double width)
{
    CellInk ink{{}, 2.0 * tick_em * em};
    const PrintMark line = ruleMark(0.0, width, ink.baseline);
    const double thickness = line.place.height();
    for (int i = 0; i <= scale.steps; ++i) {
        const double height = (i == 0 || i == scale.steps ? 2.0 : 1.0) * tick_em * em;
        const double x = (width - thickness) * i / scale.steps;
        ink.marks.push_back({QRectF(x, ink.baseline - height, thickness, height), std::monostate{}});
    }
    ink.marks.push_back(line);
    return ink;
}

CellInk inkOf(const Cell& cell, const QFont& font, QSizeF room)
{
    if (const auto* scale = std::get_if<ScaleLine>(&cell.content))
        return inkOf(*scale, emOf(font), room.width());
    if (const auto* formula = std::get_if<Formula>(&cell.content)) {
        FormulaBox box = formulaBox(*formula, font, room);
        const double ascent = box.ascent;
        return {{formulaMark(std::move(box))}, ascent};
    }
    const QFont styled = fontOf(cell.style, font);
    QStringList lines = linesOf(std::get<QString>(cell.content), styled, room.width());
    if (lines.size() > mostLinesOfACell) {
        lines = lines.first(mostLinesOfACell);
        lines.last() = QFontMetricsF(styled).elidedText(lines.last() + QStringLiteral("…"), Qt::ElideRight, room.width());
    }
    CellInk ink;
    double y = 0.0;
    for (const QString& line : std::as_const(lines)) {
        PrintMark mark = markOf(line, styled, cell.style == TextStyle::Quiet);
        moveBy(mark, {cell.isRight ? room.width() - mark.place.width() : 0.0, y});
        y = mark.place.bottom();
        ink.marks.push_back(std::move(mark));
    }
    ink.baseline = QFontMetricsF(styled).ascent();
    return ink;
}

/// All cells on one baseline.
Strip rowStrip(const RowBlock& block, const QFont& font, QSizeF room)
{
    const double indent = block.indent_em * emOf(font), gap = cellGap_em * emOf(font);
    double shares = 0.0;
    for (const Cell& cell : block.cells)
        shares += cell.share;
    const double width = room.width() - indent - gap * (double(block.cells.size()) - 1.0);
    std::vector<CellInk> inks;
    double baseline = 0.0;
    for (const Cell& cell : block.cells) {
        inks.push_back(inkOf(cell, font, {width * cell.share / shares, room.height()}));
        baseline = std::max(baseline, inks.back().baseline);
    }
    Strip strip;
    double x = indent;
    for (std::size_t i = 0; i < inks.size(); ++i) {
        const double cellWidth = width * block.cells[i].share / shares;
        double inkWidth = 0.0;
        for (const PrintMark& mark : inks[i].marks)
            inkWidth = std::max(inkWidth, mark.place.right());
        const double left = block.cells[i].isRight ? x + cellWidth - inkWidth : x;
        put(strip, std::move(inks[i].marks), {left, baseline - inks[i].baseline});
        x += cellWidth + gap;
    }
    return strip;
}

Strip ruleStrip(double width)
{
    Strip strip;
    put(strip, {ruleMark(0.0, width, 0.0)}, {});
    return strip;
}

std::vector<Strip> tableStrips(const TableBlock& table, const QFont& font, QSizeF room)
{
    std::vector<Strip> strips;
    if (!table.heading.isEmpty())
        strips = textStrips({table.heading, TextStyle::Heading}, font, room);
    strips.push_back(rowStrip({table.names}, font, room));
    strips.push_back(ruleStrip(room.width()));
    for (Strip& strip : strips) {
        strip.spaceBefore = betweenRows_em * emOf(font);
        strip.keepsWithNext = true;
    }
    const std::vector<Strip> head = strips;
    for (const std::vector<Cell>& row : table.rows) {
        Strip& strip = strips.emplace_back(rowStrip({row}, font, room));
        strip.spaceBefore = betweenRows_em * emOf(font);
        strip.headOverleaf = head;
    }
    return strips;
}

Strip writingStrip(const WritingBlock& block, const QFont& font, QSizeF room)
{
    const double gap = cellGap_em * emOf(font), height = writingHeight_em * emOf(font);
    const double part = (room.width() - gap * (double(block.labels.size()) - 1.0)) / double(block.labels.size());
    const QFontMetricsF metrics(font);
    const double foot = height - metrics.descent();
    Strip strip;
    double x = 0.0;
    for (const QString& label : block.labels) {
        PrintMark text = markOf(metrics.elidedText(label, Qt::ElideRight, part), font, false);
        const double labelWidth = text.place.width();
        put(strip, {std::move(text)}, {x, foot - metrics.ascent()});
        if (labelWidth + gap < part)
            put(strip, {ruleMark(x + labelWidth + 0.5 * gap, x + part, foot)}, {});
        x += part + gap;
    }
    strip.height = height;
    return strip;
}

}  // namespace

QFont fontOf(TextStyle style, const QFont& text)
{
    QFont font = text;
    const double size = style == TextStyle::Title     ? titleSize
                        : style == TextStyle::Heading ? headingSize
                        : style == TextStyle::Quiet   ? quietSize
                                                      : 1.0;
    font.setPixelSize(qRound(size * text.pixelSize()));
    font.setBold(style == TextStyle::Title || style == TextStyle::Heading || style == TextStyle::Strong);
    return font;
}

PrintMark markOf(const QString& text, const QFont& font, bool isQuiet)
{
    const QFontMetricsF metrics(font);
    return {QRectF(0.0, 0.0, metrics.horizontalAdvance(text), metrics.height()),
        PrintText{text, font, {0.0, metrics.ascent()}, isQuiet}};
}

PrintMark ruleMark(double from, double to, double y)
{
    constexpr double thickness = hairline_em * dotsPerInch / 7.0;  // of type of a seventh of an inch
    return {QRectF(from, y, to - from, thickness), std::monostate{}};
}

std::vector<Strip> stripsOf(const Block& block, const QFont& font, QSizeF room)
{
    struct Layer {
        const QFont& font;
        QSizeF room;
        std::vector<Strip> operator()(const TextBlock& text) const { return textStrips(text, font, room); }
        std::vector<Strip> operator()(const FormulaBlock& formula) const { return {formulaStrip(formula, font, room)}; }
        std::vector<Strip> operator()(const RowBlock& row) const { return {rowStrip(row, font, room)}; }
        std::vector<Strip> operator()(const WritingBlock& writing) const { return {writingStrip(writing, font, room)}; }
        std::vector<Strip> operator()(const TableBlock& table) const { return tableStrips(table, font, room); }
        std::vector<Strip> operator()(const RuleBlock&) const { return {ruleStrip(room.width())}; }
    };
    std::vector<Strip> strips = std::visit(Layer{font, room}, block.content);
    if (!strips.empty()) {
        strips.front().spaceBefore = block.spaceBefore_em * emOf(font);
        strips.back().keepsWithNext = block.keepsWithNext;
    }
    return strips;
}

}  // namespace firn::app
