#include "derivation/sum_digits.h"

#include "derivation/formula_text.h"
#include "units/number.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

/// A number of a sum, and whether it is added or taken away.
struct Part {
    Number* number;
    double sign;
    bool isAligned;  // its digits follow those of its neighbours
};

struct Parts {
    std::vector<Part> numbers;
    bool isComplete = true;  // the sum has nothing but numbers
};

template <class Node>
const Node* nodeIn(const Formula& formula)
{
    return std::get_if<Node>(&formula.node);
}

/// A value keeps its own digits where its symbol says how many, and where it is written with a power of ten.
bool isAligned(const Number& number, const Formula& inSymbols)
{
    const auto* symbol = nodeIn<Symbol>(inSymbols);
    return number.isValue && !(symbol && symbol->decimals) && decimalsShown(number);
}

void addPart(Parts& parts, Formula& formula, const Formula& inSymbols)
{
    auto* negative = std::get_if<Operation>(&formula.node);
    const bool isNegative = negative && negative->op == Operator::Negative;
    Number* number = std::get_if<Number>(isNegative ? &negative->parts.front().node : &formula.node);
    const Formula& symbol = isNegative ? nodeIn<Operation>(inSymbols)->parts.front() : inSymbols;
    if (number && std::isfinite(number->value))
        parts.numbers.push_back({number, isNegative ? -1.0 : 1.0, isAligned(*number, symbol)});
    else
        parts.isComplete = false;
}

Parts partsOf(Formula& formula, const Formula& inSymbols)
{
    Parts parts;
    if (auto* operation = std::get_if<Operation>(&formula.node); operation && operation->op == Operator::Sum) {
        for (std::size_t i = 0; i < operation->parts.size(); ++i)
            addPart(parts, operation->parts[i], nodeIn<Operation>(inSymbols)->parts[i]);
    } else if (auto* series = std::get_if<Series>(&formula.node)) {
        for (std::size_t i = 0; i < series->terms.size(); ++i)
            addPart(parts, series->terms[i].formula, nodeIn<Series>(inSymbols)->terms[i].formula);
    }
    return parts;
}

void give(const Parts& parts, int decimals)
{
    for (const Part& part : parts.numbers) {
        if (part.isAligned)
            part.number->decimals = decimals;
    }
}

bool addsUp(const Parts& parts, int decimals, double result, int decimalsOfResult)
{
    double sum = 0.0;
    for (const Part& part : parts.numbers) {
        const double shown = part.isAligned ? roundedTo(decimals, part.number->value) : valueShown(*part.number);
        if (part.isAligned && shown == 0.0 && part.number->value != 0.0)
            return false;
        sum += part.sign * shown;
    }
    const double halfOfLastDigit = 0.5 * std::pow(10.0, -decimalsOfResult);
    return std::abs(roundedTo(decimalsOfResult, sum) - roundedTo(decimalsOfResult, result)) < halfOfLastDigit;
}

}  // namespace

void alignDecimals(Formula& sum, const Formula& inSymbols)
{
    const Parts parts = partsOf(sum, inSymbols);
    constexpr int mostDigits = 7;  // more than any of the figures is worth
    int most = 0, before = 1, values = 0;
    for (const Part& part : parts.numbers) {
        const auto shown = decimalsShown(*part.number);
        if (!part.number->isValue || !shown)
            continue;
        ++values;
        most = std::max(most, *shown);
        if (part.number->value != 0.0)
            before = std::max(before, static_cast<int>(std::floor(std::log10(std::abs(part.number->value)))) + 1);
    }
    if (values > 1)
        give(parts, std::min(most, std::max(0, mostDigits - before)));
}

void alignDecimals(Formula& sum, const Formula& inSymbols, const Number& result)
{
    const Parts parts = partsOf(sum, inSymbols);
    const auto shown = decimalsShown(result);
    if (!parts.isComplete || parts.numbers.size() < 2 || !shown)
        return;
    constexpr int mostMore = 4;
    for (int decimals = *shown; decimals <= *shown + mostMore; ++decimals) {
        if (addsUp(parts, decimals, result.value, *shown)) {
            give(parts, decimals);
            return;
        }
    }
}

}  // namespace firn
