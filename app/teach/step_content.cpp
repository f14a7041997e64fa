#include "teach/step_content.h"

#include "derivation/formula_text.h"
#include "explain/sources.h"
#include "gauges/wording.h"
#include "teach/figure_wording.h"

#include <QCoreApplication>
#include <algorithm>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::StepContent)
};

bool isIn(const std::vector<SeriesTerm>& terms, const Symbol& symbol)
{
    return std::ranges::any_of(terms, [&](const SeriesTerm& term) {
        const std::vector<Symbol> symbols = symbolsOf(term.formula);
        return std::ranges::any_of(symbols, [&](const Symbol& each) { return isSame(each, symbol); });
    });
}

std::string figureIn(const SeriesTerm& term)
{
    const std::vector<Symbol> symbols = symbolsOf(term.formula);
    const auto found = std::ranges::find_if(symbols, [](const Symbol& symbol) { return !symbol.figure.empty(); });
    return found == symbols.end() ? std::string() : found->figure;
}

std::vector<Formula> valuesOf(const WorkingStep& step, Formula values)
{
    const Formula result = Number{step.result.value, step.result.unit, true, step.result.decimals};
    auto* sides = std::get_if<Operation>(&values.node);
    const bool isEquation = sides && sides->op == Operator::Equals;
    const bool isSolved = step.method.has_value() || !isEquation;
    if (isSolved)
        return {values, equation(step.result, result)};
    // "m = 5 g" needs no "= 5 g" after it, and a number as it is written has no values to put in.
    if (textOf(sides->parts.back()) != textOf(result))
        sides->parts.push_back(result);
    else if (textOf(values) == textOf(step.formula))
        return {};
    return {values};
}

QStringList notesOf(const WorkingStep& step)
{
    QStringList notes;
    const auto add = [&](const QString& pattern, const std::optional<Sentence>& sentence) {
        if (sentence)
            notes << pattern.arg(plainInCelsius(*sentence));
    };
    if (step.isInNumbers)
        notes << plain(noteOnNumbers());
    add(Words::tr("How: %1"), step.method);
    add(Words::tr("Valid for: %1"), step.range);
    add(Words::tr("Uncertain: %1"), step.uncertainty);
    return notes;
}

QString sourceOf(const WorkingStep& step)
{
    const QString publication = translatedName(factsOf(step.source).publication);
    const QString source = step.origin
                               ? Words::tr("%1; %2", "a source, and more about it").arg(publication, plainInCelsius(*step.origin))
                               : publication;
    return Words::tr("Source: %1").arg(source);
}

}  // namespace

StepContent contentOf(const WorkingStep& step)
{
    const Formula values = withValues(step);
    StepContent content{step.formula, valuesOf(step, values), {}, {}, notesOf(step), sourceOf(step)};
    const auto termsIn = [](const Formula& formula) {
        const auto* found = termsOf(formula);
        return found ? *found : std::vector<SeriesTerm>();
    };
    const std::vector<SeriesTerm> terms = termsIn(step.formula), termsWithValues = termsIn(values);
    const auto add = [&](const Symbol& symbol, const std::string& figure) {
        content.symbols.push_back({symbol, valueInLocale(symbol), plainInCelsius(symbol.meaning), figure});
    };
    add(step.result, {});
    for (const Symbol& symbol : symbolsAsShown(step.formula, values)) {
        if (!isSame(symbol, step.result) && !isIn(terms, symbol))
            add(symbol, symbol.figure);
    }
    for (const Symbol& general : generalSymbolsOf(step.formula))
        content.symbols.push_back({general, {}, plainInCelsius(general.meaning), {}});
    for (const Symbol& function : functionsOf(step.formula))
        content.symbols.push_back({function, {}, plainInCelsius(function.meaning), {}});
    for (std::size_t i = 0; i < terms.size(); ++i)
        content.terms.push_back({plain(terms[i].label), termsWithValues[i].formula, plain(terms[i].source), figureIn(terms[i])});
    return content;
}

bool isSourceRepeated(const std::vector<WorkingStep>& steps, std::size_t index)
{
    return index > 0 && steps[index - 1].source == steps[index].source && steps[index - 1].origin == steps[index].origin;
}

}  // namespace firn::app
