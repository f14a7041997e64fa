#include "derivation/one_form.h"

#include "derivation/formula_text.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

using Decimals = std::map<std::string, int>;

Number numberOf(const Symbol& symbol) { return {symbol.value, symbol.unit, true, symbol.decimals}; }

void raise(Decimals& decimals, const std::string& name, int least)
{
    int& known = decimals.try_emplace(name, least).first->second;
    known = std::max(known, least);
}

bool isRounded(const Symbol& symbol)
{
    constexpr double exact = 1e-12;
    return std::abs(valueShown(numberOf(symbol)) - symbol.value) > exact * std::abs(symbol.value);
}

/// What the symbols ask for, and what is written of the others.
struct Seen {
    Decimals asked, written;

    void add(const Symbol& symbol, const Symbol& asShown)
    {
        const std::string name = textOf(symbol);
        // A value that is exact as it is needs no zeros after it.
        if (symbol.decimals)
            raise(asked, name, *symbol.decimals);
        else if (const auto shown = decimalsShown(numberOf(isRounded(symbol) ? asShown : symbol)))
            raise(written, name, *shown);
    }
    void add(const WorkingStep& step)
    {
        const std::vector<Symbol> symbols = symbolsOf(step.formula), shown = symbolsAsShown(step.formula, withValues(step));
        for (std::size_t i = 0; i < symbols.size(); ++i)
            add(symbols[i], shown[i]);
        add(step.result, step.result);
    }
};

void giveDecimals(const Decimals& decimals, std::vector<WorkingStep>& steps)
{
    for (WorkingStep& step : steps)
        step = withSymbols(std::move(step), [&](Symbol& symbol) {
            if (const auto found = decimals.find(textOf(symbol)); found != decimals.end())
                symbol.decimals = found->second;
        });
}

Formula asWritten(Formula formula)
{
    if (auto* number = std::get_if<Number>(&formula.node)) {
        number->value = valueShown(*number);
    } else if (auto* operation = std::get_if<Operation>(&formula.node)) {
        for (Formula& part : operation->parts)
            part = asWritten(std::move(part));
    } else if (auto* sum = std::get_if<Series>(&formula.node)) {
        for (SeriesTerm& term : sum->terms)
            term.formula = asWritten(std::move(term.formula));
    }
    return formula;
}

/// The right side of "result = …"; none of an equation that had to be solved.
const Formula* rightSideOf(const WorkingStep& step, const Formula& formula)
{
    const auto* sides = std::get_if<Operation>(&formula.node);
    const auto* left = sides && sides->op == Operator::Equals ? std::get_if<Symbol>(&sides->parts.front().node) : nullptr;
    return left && isSame(*left, step.result) ? &sides->parts.back() : nullptr;
}

bool computes(const WorkingStep& step)
{
    const auto found = resultAsWritten(step);
    const auto decimals = decimalsShown(numberOf(step.result));
    if (!found || !decimals || !std::isfinite(*found))
        return true;
    constexpr double lastBit = 1e-9;
    const double half = 0.5 * std::pow(10.0, -*decimals);
    return std::abs(*found - valueShown(numberOf(step.result))) <= half + lastBit * std::abs(*found);
}

/// How far the result moves when a symbol is written with more decimals.
double effectOf(const Symbol& symbol, const WorkingStep& step, double found)
{
    constexpr int nearlyExact = 4;
    const int finer = *decimalsShown(numberOf(symbol)) + nearlyExact;
    const auto moved = resultAsWritten(withSymbols(step, [&](Symbol& each) {
        if (isSame(each, symbol))
            each.decimals = finer;
    }));
    return std::abs(moved.value_or(found) - found);
}

/// One more decimal for the values that keep the step from computing: those that matter, or all of them where none alone does.
Decimals moreDigitsFor(const WorkingStep& step)
{
    constexpr double matters = 0.2;  // of half of the result's last digit
    const double found = *resultAsWritten(step);
    const double half = 0.5 * std::pow(10.0, -*decimalsShown(numberOf(step.result)));
    Decimals all, those;
    for (const Symbol& symbol : symbolsOf(step.formula)) {
        const auto shown = decimalsShown(numberOf(symbol));
        if (!shown || !isRounded(symbol) || isSame(symbol, step.result))
            continue;
        raise(all, textOf(symbol), *shown + 1);
        if (effectOf(symbol, step, found) > matters * half)
            raise(those, textOf(symbol), *shown + 1);
    }
    return those.empty() ? all : those;
}

}  // namespace

std::optional<double> resultAsWritten(const WorkingStep& step)
{
    const Formula values = withValues(step);
    const Formula* right = rightSideOf(step, values);
    return right ? valueOf(asWritten(*right)) : std::nullopt;
}

std::vector<WorkingStep> inOneForm(std::vector<WorkingStep> steps)
{
    Seen seen;
    for (const WorkingStep& step : steps)
        seen.add(step);
    seen.asked.merge(seen.written);
    giveDecimals(seen.asked, steps);
    return steps;
}

std::vector<WorkingStep> inDigitsThatCompute(std::vector<WorkingStep> steps)
{
    steps = inOneForm(std::move(steps));
    constexpr int mostMore = 4, mostPasses = 3;
    // From the last step on: more digits for what it starts from are more digits for the results of those before it.
    for (int pass = 0; pass < mostPasses && !std::ranges::all_of(steps, computes); ++pass) {
        for (std::size_t i = steps.size(); i-- > 0;) {
            for (int more = 0; more < mostMore && !computes(steps[i]); ++more)
                giveDecimals(moreDigitsFor(steps[i]), steps);
        }
    }
    return steps;
}

std::vector<WorkingStep> fromNumbersAsWritten(std::vector<WorkingStep> steps)
{
    std::map<std::string, double> found;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        WorkingStep& step = steps[i];
        step = withSymbols(std::move(step), [&](Symbol& symbol) {
            const auto known = found.find(textOf(symbol));
            symbol.value = known != found.end() ? known->second : valueShown(numberOf(symbol));
        });
        const Formula* right = rightSideOf(step, step.formula);
        const auto value = right ? valueOf(*right) : std::nullopt;
        if (!value)
            continue;
        const bool isLast = i + 1 == steps.size();
        Symbol result = step.result;
        result.value = *value;
        if (!isLast)
            result.value = valueShown(numberOf(result));
        step = withSymbols(std::move(step), [&](Symbol& symbol) {
            if (isSame(symbol, result))
                symbol.value = result.value;
        });
        found[textOf(result)] = result.value;
    }
    return steps;
}

}  // namespace firn
