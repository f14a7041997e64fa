#include "teach/derivation_handout.h"

#include "teach/step_content.h"

#include <QCoreApplication>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::DerivationHandout)
};

constexpr double indent_em = 1.8;
constexpr double betweenSteps_em = 1.2;
constexpr double betweenParts_em = 0.6;
constexpr double betweenLines_em = 0.25;
constexpr double betweenTerms_em = 0.45;  // fractions stand among them

void addSymbols(std::vector<Block>& blocks, const StepContent& step)
{
    for (const SymbolLine& line : step.symbols)
        blocks.push_back(
            {RowBlock{{{line.symbol, 2.0}, {line.value, 2.0, true}, {line.meaning, 7.0}}, indent_em}, betweenLines_em, true});
}

void addTerms(std::vector<Block>& blocks, const StepContent& step)
{
    for (const TermLine& line : step.terms) {
        RowBlock row{{{line.label, 3.0}, {line.withValues, 4.0}}, indent_em};
        if (!line.source.isEmpty())
            row.cells.push_back({line.source, 4.0, false, TextStyle::Quiet});
        blocks.push_back({std::move(row), betweenTerms_em});
    }
}

}  // namespace

std::vector<Block> blocksOf(const std::vector<WorkingStep>& steps)
{
    std::vector<Block> blocks;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const StepContent step = contentOf(steps[i]);
        blocks.push_back({FormulaBlock{step.formula, indent_em, QStringLiteral("%1.").arg(i + 1)}, betweenSteps_em, true});
        addSymbols(blocks, step);
        for (const Formula& values : step.values)
            blocks.push_back({FormulaBlock{values, indent_em}, betweenParts_em});
        addTerms(blocks, step);
        for (const QString& note : step.notes)
            blocks.push_back({TextBlock{note, TextStyle::Quiet, indent_em}, betweenLines_em});
        if (!isSourceRepeated(steps, i))
            blocks.push_back({TextBlock{step.source, TextStyle::Quiet, indent_em}, betweenLines_em});
    }
    return blocks;
}

Handout handoutOf(const Derivation& derivation, const FigureHead& head, const QString& recipe)
{
    const QString figure = QString::fromStdString(derivation.figure);
    const QString title =
        Words::tr("%1: %2", "a figure and its value").arg(head.title, shownText(head, figure, derivation.result()));
    const QString whose =
        head.whose.isEmpty() ? recipe : Words::tr("%1: %2", "a recipe, and whose figures of it").arg(recipe, head.whose);
    std::vector<Block> blocks{{TextBlock{title, TextStyle::Title}},
        {TextBlock{Words::tr("%1, step by step", "a recipe").arg(whose), TextStyle::Quiet}}, {RuleBlock{}, betweenParts_em}};
    std::ranges::move(blocksOf(derivation.steps), std::back_inserter(blocks));
    blocks.push_back({RuleBlock{}, betweenSteps_em, true});
    blocks.push_back({TextBlock{lastLine(head, figure, derivation.result()), TextStyle::Heading}, betweenParts_em});
    return {head.title, {{head.title, {}, std::move(blocks)}}};
}

}  // namespace firn::app
