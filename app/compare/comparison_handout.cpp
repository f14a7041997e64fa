#include "compare/comparison_handout.h"

#include "compare/attribution_wording.h"
#include "compare/comparison_lines.h"
#include "gauges/wording.h"

#include <QCoreApplication>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::ComparisonHandout)
};

constexpr double betweenSections_em = 1.4;
constexpr double betweenSentences_em = 0.4;
constexpr double beforeParts_em = 1.0;
constexpr double labelShare = 3.0;
constexpr double valueShare = 2.0;
constexpr double changeShare = 1.3;
constexpr double figureShare = 1.2;

/// A cell of the table: a value at its right edge, and to the right of it how it differs.
Cell cellOf(const QString& text, qsizetype column, TextStyle style)
{
    const bool isChange = column > 2 && column % 2 == 1;
    return {text, column == 0 ? labelShare : isChange ? changeShare : valueShare, column > 0 && !isChange, style};
}

std::vector<Cell> cellsOf(const ComparisonLine& line)
{
    std::vector<Cell> cells{cellOf(line.label, 0, TextStyle::Body)};
    for (qsizetype i = 0; i < line.cells.size(); ++i)
        cells.push_back(cellOf(line.cells.at(i), i + 1, line.isOther[std::size_t(i)] ? TextStyle::Strong : TextStyle::Body));
    return cells;
}

/// Tables of cells and paragraphs of sentences, as the lines come.
void addLines(std::vector<Block>& blocks, const Comparison& comparison)
{
    const QStringList columns = columnNames(comparison);
    std::vector<Cell> names;
    for (qsizetype i = 0; i < columns.size(); ++i)
        names.push_back(cellOf(columns.at(i), i, TextStyle::Strong));
    QString heading;
    for (const ComparisonLine& line : linesOf(comparison)) {
        const bool isFirst = !heading.isEmpty();
        if (line.kind == ComparisonLine::Section) {
            heading = line.label;
            continue;
        }
        if (line.kind == ComparisonLine::Cells) {
            if (isFirst)
                blocks.push_back({TableBlock{heading, names, {}}, betweenSections_em});
            std::get<TableBlock>(blocks.back().content).rows.push_back(cellsOf(line));
        } else {
            if (isFirst)
                blocks.push_back({TextBlock{heading, TextStyle::Heading}, betweenSections_em, true});
            blocks.push_back({TextBlock{line.label}, betweenSentences_em});
        }
        heading.clear();
    }
}

/// What each change did to each figure, and all of them together.
TableBlock partsOf(const Attribution& attribution)
{
    const auto cell = [](const QString& text, TextStyle style) { return Cell{text, figureShare, true, style}; };
    const auto label = [](const QString& text, TextStyle style) { return Cell{text, labelShare, false, style}; };
    TableBlock table{{}, {label(Words::tr("Change"), TextStyle::Strong)}, {}};
    for (const auto& change : attribution.changes)
        table.rows.push_back({label(translated(change.what), TextStyle::Body)});
    table.rows.push_back({label(Words::tr("together"), TextStyle::Strong)});
    for (const AttributedKind& kind : attributedKinds()) {
        const AttributedFigure& figure = attribution.*kind.figure;
        const auto number = [&](double part) {
            return figure.whyNone ? Words::tr("none") : withUnit(changeText(part, kind.decimals, kind.unit), shownUnit(kind.unit));
        };
        const std::vector<double> parts = roundedParts(figure, kind.decimals);
        table.names.push_back(cell(translatedName(kind.label), TextStyle::Strong));
        for (std::size_t i = 0; i < attribution.changes.size(); ++i)
            table.rows[i].push_back(cell(number(figure.whyNone ? 0.0 : parts[i]), TextStyle::Body));
        table.rows.back().push_back(cell(number(figure.whyNone ? 0.0 : shownWhole(figure, kind.decimals)), TextStyle::Strong));
    }
    return table;
}

void addAttribution(std::vector<Block>& blocks, const Comparison& comparison, std::size_t index)
{
    const Attribution& attribution = comparison.attributions[index];
    const std::string &from = comparison.sides.front().name, &to = comparison.sides[index + 1].name;
    blocks.push_back({TextBlock{Words::tr("What did it: %1 → %2").arg(QString::fromStdString(from), QString::fromStdString(to)),
                          TextStyle::Heading},
        betweenSections_em, true});
    for (const AttributedKind& kind : attributedKinds())
        blocks.push_back({TextBlock{translated(inASentence(attribution, kind, from, to))}, betweenSentences_em});
    if (!attribution.changes.empty())
        blocks.push_back({partsOf(attribution), beforeParts_em});
}

}  // namespace

Handout handoutOf(const Comparison& comparison, const QString& title)
{
    std::vector<Block> blocks{{TextBlock{title, TextStyle::Title}}};
    for (const firn::Sentence& sentence : comparison.fairness)
        blocks.push_back({TextBlock{translated(sentence)}, betweenSentences_em});
    addLines(blocks, comparison);
    for (std::size_t i = 0; i < comparison.attributions.size(); ++i)
        addAttribution(blocks, comparison, i);
    return {title, {{title, {}, std::move(blocks)}}, comparison.sides.size() > fewestCompared};
}

}  // namespace firn::app
