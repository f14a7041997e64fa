#include "teach/projected_blocks.h"

#include "derivation/formula_text.h"
#include "formulas/formula_layout.h"
#include "gauges/wording.h"
#include "teach/figure_wording.h"
#include "teach/step_content.h"

#include <QCoreApplication>
#include <QFontInfo>
#include <algorithm>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::Projector)
};

int smallestType(const FormulaBox& box)
{
    int smallest = 1000;
    for (const FormulaMark& mark : box.marks) {
        if (!mark.text.isEmpty())
            smallest = std::min(smallest, QFontInfo(mark.font).pixelSize());
    }
    return smallest;
}

/// In smaller type where even one part is wider than the room, and larger where its smallest script could not be read.
FormulaBox legible(const Formula& formula, QFont font, double room, int least_px)
{
    FormulaBox box = fitted(formula, font, room, true);
    while (smallestType(box) < least_px) {
        font.setPixelSize(std::max(font.pixelSize() + 1, font.pixelSize() * least_px / smallestType(box)));
        box = laidOut(formula, font, room, true);
    }
    return box;
}

/// The labels of the terms that a folded sum shows, in their order.
QString labelsOf(const std::vector<TermLine>& terms)
{
    const std::size_t shown = terms.size() > mostTermsFolded ? mostTermsFolded - 1 : terms.size();
    QStringList labels;
    for (std::size_t i = 0; i < shown; ++i)
        labels << terms[i].label;
    const QString all = labels.join(QStringLiteral("; "));
    if (terms.size() == 1)
        return all;
    return terms.size() == shown
               ? Words::tr("In this order: %1", "labels of terms").arg(all)
               : Words::tr("In this order: %1; and %n more", "labels of terms", int(terms.size() - shown)).arg(all);
}

/// What earlier steps of the page have said already.
class Said {
public:
    std::vector<SymbolLine> newOf(const std::vector<SymbolLine>& symbols, const Symbol& result)
    {
        m_symbols.push_back(result);
        std::vector<SymbolLine> fresh;
        for (const SymbolLine& line : symbols) {
            if (std::ranges::any_of(m_symbols, [&](const Symbol& each) { return isSame(each, line.symbol); }))
                continue;
            m_symbols.push_back(line.symbol);
            fresh.push_back(line);
        }
        return fresh;
    }

    /// That something is by definition, or in the recipe, needs no source before a class.
    bool isNew(Source source)
    {
        if (source == Source::Definition || source == Source::Recipe || std::ranges::find(m_sources, source) != m_sources.end())
            return false;
        m_sources.push_back(source);
        return true;
    }

private:
    std::vector<Symbol> m_symbols;
    std::vector<Source> m_sources;
};

}  // namespace

std::vector<ProjectedBlock> BlockSetter::inBlocks(std::vector<FormulaBox> lines, const QString& spoken, ProjectedKind kind) const
{
    std::vector<ProjectedBlock> blocks;
    std::vector<FormulaBox> together;
    double height = 0.0;
    for (FormulaBox& line : lines) {
        if (!together.empty() && height + line.height() > m_tallest) {
            blocks.push_back({kind, stacked(std::exchange(together, {})), spoken});
            height = 0.0;
        }
        height += line.height();
        together.push_back(std::move(line));
    }
    blocks.push_back({kind, stacked(std::move(together)), spoken});
    return blocks;
}

std::vector<ProjectedBlock> BlockSetter::text(
    const QString& text, const QFont& font, double room, Lettering lettering, ProjectedKind kind) const
{
    return inBlocks(textLines(text, font, room, lettering, m_hidden), m_hidden.without(text), kind);
}

ProjectedBlock BlockSetter::formula(const Formula& formula, double room) const
{
    const QString spoken = m_hidden.without(plain(textOf(formula, mostTermsFolded)));
    return {ProjectedKind::Formula, withoutAnswers(legible(formula, m_type.formula, room, m_type.least_px), m_hidden), spoken};
}

std::vector<BlockGroup> BlockSetter::steps(const std::vector<WorkingStep>& steps, double room) const
{
    std::vector<BlockGroup> groups;
    Said said;
    for (const WorkingStep& each : steps) {
        const StepContent content = contentOf(each);
        groups.push_back(step(content, said.newOf(content.symbols, each.result), said.isNew(each.source), room));
    }
    return groups;
}

BlockGroup BlockSetter::step(
    const StepContent& content, const std::vector<SymbolLine>& symbols, bool isSourceNew, double room) const
{
    BlockGroup group;
    const auto add = [&](std::vector<ProjectedBlock> blocks) { std::ranges::move(blocks, std::back_inserter(group)); };
    add(text(capitalised(content.symbols.front().meaning), m_type.text, room, Lettering::Upright));
    group.push_back(formula(content.formula, room));
    for (const Formula& values : content.values)
        group.push_back(formula(values, room));
    if (!content.terms.empty())
        add(text(labelsOf(content.terms), m_type.quiet, room, Lettering::Quiet));
    std::vector<SymbolMeaning> meanings;
    QString spoken;
    for (const SymbolLine& line : symbols) {
        meanings.push_back({legible(line.symbol, m_type.quiet, room, m_type.least_px), line.meaning});
        spoken += line.meaning + QStringLiteral("; ");
    }
    if (!meanings.empty())
        add(inBlocks(meaningLines(meanings, m_type.quiet, room, m_hidden), m_hidden.without(spoken), ProjectedKind::Text));
    if (isSourceNew)
        add(text(content.source, m_type.quiet, room, Lettering::Quiet));
    return group;
}

std::vector<BlockGroup> BlockSetter::conclusions(const std::vector<Conclusion>& conclusions, double room) const
{
    std::vector<BlockGroup> groups;
    for (const Conclusion& each : conclusions) {
        const QString said = each.isVerdict ? projectedVerdict(each.sentence) : projectedText(each.sentence, true);
        groups.push_back(text(said, m_type.idea, room, Lettering::Upright));
    }
    return groups;
}

}  // namespace firn::app
