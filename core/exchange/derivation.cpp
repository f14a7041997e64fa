#include "exchange/derivation.h"

#include "derivation/formula_text.h"
#include "exchange/derivation_json.h"
#include "exchange/plain_text.h"
#include "explain/figures.h"
#include "explain/sources.h"

#include <algorithm>
#include <fmt/format.h>
#include <iterator>

namespace firn {

namespace {

constexpr std::size_t mostTermsOfALine = 4;
const std::string indent = "     ";

Number numberOf(const Symbol& symbol) { return {symbol.value, symbol.unit, true, symbol.decimals}; }

std::string sourceOf(const WorkingStep& step)
{
    const std::string publication(factsOf(step.source).publication);
    return step.origin ? publication + "; " + english(*step.origin) : publication;
}

Json symbolsIn(const WorkingStep& step)
{
    Json symbols = Json::array();
    for (const Symbol& symbol : symbolsOf(step.formula)) {
        symbols.push_back({{"symbol", textOf(symbol)}, {"meaning", english(symbol.meaning)}, {"value", symbol.value},
            {"unit", symbol.unit}, {"figure", symbol.figure.empty() ? Json() : Json(symbol.figure)}});
    }
    return symbols;
}

Json termsIn(const WorkingStep& step)
{
    Json terms = Json::array();
    const Formula values = withValues(step);
    if (const auto* all = termsOf(step.formula)) {
        const auto& written = *termsOf(values);
        for (std::size_t i = 0; i < all->size(); ++i)
            terms.push_back({{"label", (*all)[i].label}, {"formula", textOf((*all)[i].formula)},
                {"with_values", textOf(written[i].formula)}, {"source", (*all)[i].source}});
    }
    return terms;
}

Json functionsIn(const WorkingStep& step)
{
    Json functions = Json::array();
    for (const Symbol& symbol : functionsOf(step.formula))
        functions.push_back({{"symbol", textOf(symbol)}, {"meaning", english(symbol.meaning)}});
    return functions;
}

Json optional(const std::optional<Sentence>& sentence) { return sentence ? Json(english(*sentence)) : Json(); }

Json stepJson(const WorkingStep& step)
{
    return {{"formula", textOf(step.formula)}, {"with_values", textOf(withValues(step))}, {"result", step.result.value},
        {"unit", step.result.unit}, {"source", sourceOf(step)}, {"symbol", textOf(step.result)},
        {"meaning", english(step.result.meaning)}, {"symbols", symbolsIn(step)}, {"functions", functionsIn(step)},
        {"terms", termsIn(step)}, {"method", optional(step.method)}, {"range", optional(step.range)},
        {"uncertainty", optional(step.uncertainty)}};
}

void write(std::string& page, std::string_view mark, const std::string& text)
{
    fmt::format_to(std::back_inserter(page), "{}{}\n", mark, printable(text));
}

/// "m_water: Water in the mix  [water_g]"
std::string lineOf(const Symbol& symbol)
{
    const std::string line = textOf(symbol) + ": " + english(symbol.meaning);
    return symbol.figure.empty() ? line : fmt::format("{}  [{}]", line, symbol.figure);
}

void writeFormula(std::string& page, const WorkingStep& step)
{
    const std::string result = valueText(numberOf(step.result));
    const std::string withNumbers = textOf(withValues(step), mostTermsOfALine);
    // "m = 5 g" needs no "= 5 g" after it, and nothing at all where the formula says so already.
    const bool isSaid = withNumbers.ends_with(" = " + result);
    if (!isSaid || withNumbers != textOf(step.formula))
        write(page, indent, step.method || isSaid ? withNumbers : withNumbers + " = " + result);
    if (step.method)
        write(page, indent, textOf(step.result) + " = " + result);
}

/// The terms of a sum say what stands in them; elsewhere each symbol does.
void writeSymbols(std::string& page, const WorkingStep& step)
{
    static const std::vector<SeriesTerm> none;
    const auto* found = termsOf(step.formula);
    const std::vector<SeriesTerm>& terms = found ? *found : none;
    const auto isInTerms = [&](const Symbol& symbol) {
        return std::ranges::any_of(terms, [&](const SeriesTerm& term) {
            return std::ranges::any_of(symbolsOf(term.formula), [&](const Symbol& each) { return isSame(each, symbol); });
        });
    };
    write(page, indent, textOf(step.result) + ": " + english(step.result.meaning));
    for (const Symbol& symbol : symbolsOf(step.formula)) {
        if (!isSame(symbol, step.result) && !isInTerms(symbol))
            write(page, indent, lineOf(symbol));
    }
    for (const Symbol& symbol : generalSymbolsOf(step.formula))
        write(page, indent, lineOf(symbol));
    for (const Symbol& symbol : functionsOf(step.formula))
        write(page, indent, lineOf(symbol));
    const Formula values = withValues(step);
    const auto* written = termsOf(values);
    for (std::size_t i = 0; i < terms.size(); ++i) {
        const std::string source = terms[i].source.empty() ? "" : "  (" + terms[i].source + ")";
        write(page, indent + "- ", terms[i].label + ": " + textOf((*written)[i].formula) + source);
    }
}

void writeStep(std::string& page, const std::vector<WorkingStep>& steps, std::size_t index)
{
    const WorkingStep& step = steps[index];
    write(page, fmt::format("{:2}.  ", index + 1), textOf(step.formula));
    writeFormula(page, step);
    writeSymbols(page, step);
    if (step.isInNumbers)
        write(page, indent, english(noteOnNumbers()));
    using Note = std::pair<const char*, const std::optional<Sentence>*>;
    for (const auto& [name, sentence] :
        {Note{"How: ", &step.method}, {"Valid for: ", &step.range}, {"Uncertain: ", &step.uncertainty}}) {
        if (*sentence)
            write(page, indent + name, english(**sentence));
    }
    const bool isSaid = index > 0 && sourceOf(steps[index - 1]) == sourceOf(step);
    write(page, indent + "Source: ", isSaid ? "as before" : sourceOf(step));
}

}  // namespace

Json stepsJson(const std::vector<WorkingStep>& steps)
{
    Json json = Json::array();
    for (const WorkingStep& step : steps)
        json.push_back(stepJson(step));
    return json;
}

std::string stepsText(const std::vector<WorkingStep>& steps)
{
    std::string page;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        page += i > 0 ? "\n" : "";
        writeStep(page, steps, i);
    }
    return page;
}

std::string derivationJson(const Derivation& derivation)
{
    Json json;
    json["format"] = "firn-derivation";
    json["version"] = 1;
    json["figure"] = derivation.figure;
    json["meaning"] = english(titleOf(derivation.figure, derivation.result()));
    json["value"] = derivation.result().value;
    json["unit"] = derivation.result().unit;
    json["steps"] = stepsJson(derivation.steps);
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::string derivationText(const Derivation& derivation, const std::string& whose)
{
    const Symbol& result = derivation.result();
    std::string page;
    write(page, "", fmt::format("{} = {}", derivation.figure, valueText(numberOf(result))));
    write(page, "", english(titleOf(derivation.figure, result)));
    if (!whose.empty())
        write(page, "", whose);
    return page + "\n" + stepsText(derivation.steps);
}

}  // namespace firn
