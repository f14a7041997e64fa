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
};

struct Parts {
    std::vector<Part> numbers;
    bool isComplete = true;  // the sum has nothing but numbers
};

Number* numberIn(Formula& formula) { return std::get_if<Number>(&formula.node); }

void addPart(Parts& parts, Formula& formula)
{
    auto* negative = std::get_if<Operation>(&formula.node);
    const bool isNegative = negative && negative->op == Operator::Negative;
    if (Number* number = numberIn(isNegative ? negative->parts.front() : formula); number && std::isfinite(number->value))
        parts.numbers.push_back({number, isNegative ? -1.0 : 1.0});
    else
        parts.isComplete = false;
}

Parts partsOf(Formula& formula)
{
    Parts parts;
    if (auto* operation = std::get_if<Operation>(&formula.node); operation && operation->op == Operator::Sum) {
        for (Formula& part : operation->parts)
            addPart(parts, part);
    } else if (auto* series = std::get_if<Series>(&formula.node)) {
        for (SeriesTerm& term : series->terms)
            addPart(parts, term.formula);
    }
    return parts;
}

/// None where the number is written with a power of ten.
std::optional<int> decimalsShown(const Number& number)
{
    const std::string text = valueText({number.value, {}, number.isValue, number.decimals});
    if (!std::isfinite(number.value) || text.find("·10") != std::string::npos)
        return std::nullopt;
    const std::size_t mark = text.find('.');
    return mark == std::string::npos ? 0 : static_cast<int>(text.size() - mark) - 1;
}

/// A value that is written with a power of ten keeps its own digits, and its neighbours theirs.
bool isAligned(const Number& number) { return number.isValue && decimalsShown(number); }

void give(const Parts& parts, int decimals)
{
    for (const Part& part : parts.numbers) {
        if (isAligned(*part.number))
            part.number->decimals = decimals;
    }
}

bool addsUp(const Parts& parts, int decimals, double result, int decimalsOfResult)
{
    double sum = 0.0;
    for (const Part& part : parts.numbers) {
        const double shown = isAligned(*part.number) ? roundedTo(decimals, part.number->value) : part.number->value;
        if (shown == 0.0 && part.number->value != 0.0)
            return false;
        sum += part.sign * shown;
    }
    const double halfOfLastDigit = 0.5 * std::pow(10.0, -decimalsOfResult);
    return std::abs(roundedTo(decimalsOfResult, sum) - roundedTo(decimalsOfResult, result)) < halfOfLastDigit;
}

}  // namespace

void alignDecimals(Formula& sum)
{
    const Parts parts = partsOf(sum);
    constexpr int mostDigits = 7;  // more than any of the figures is worth
    int most = 0, before = 1, values = 0;
    for (const Part& part : parts.numbers) {
        if (!isAligned(*part.number))
            continue;
        ++values;
        most = std::max(most, *decimalsShown(*part.number));
        if (part.number->value != 0.0)
            before = std::max(before, static_cast<int>(std::floor(std::log10(std::abs(part.number->value)))) + 1);
    }
    if (values > 1)
        give(parts, std::min(most, std::max(0, mostDigits - before)));
}

void alignDecimals(Formula& sum, const Number& result)
{
    const Parts parts = partsOf(sum);
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
