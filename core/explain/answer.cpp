#include "explain/answer.h"

#include "units/number.h"
#include "units/text.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace firn {

namespace {

struct Spelling {
    std::string_view typed;  // in lower case
    std::string_view unit;
    double factor;  // of that unit
};

constexpr std::array spellings{
    Spelling{"%", "%", 1.0},
    Spelling{"percent", "%", 1.0},
    Spelling{"per cent", "%", 1.0},
    Spelling{"°c", "°C", 1.0},
    Spelling{"° c", "°C", 1.0},
    Spelling{"c", "°C", 1.0},
    Spelling{"°", "°C", 1.0},
    Spelling{"degrees", "°C", 1.0},
    Spelling{"g", "g", 1.0},
    Spelling{"gram", "g", 1.0},
    Spelling{"grams", "g", 1.0},
    Spelling{"kg", "g", 1000.0},
    Spelling{"ml", "mL", 1.0},
    Spelling{"l", "mL", 1000.0},
    Spelling{"°bx", "°Bx", 1.0},
    Spelling{"bx", "°Bx", 1.0},
    Spelling{"brix", "°Bx", 1.0},
    Spelling{"° brix", "°Bx", 1.0},
    Spelling{"°brix", "°Bx", 1.0},
    Spelling{"°bé", "°Bé", 1.0},
    Spelling{"°be", "°Bé", 1.0},
    Spelling{"bé", "°Bé", 1.0},
    Spelling{"be", "°Bé", 1.0},
    Spelling{"baumé", "°Bé", 1.0},
    Spelling{"baume", "°Bé", 1.0},
    Spelling{"% vol", "% vol", 1.0},
    Spelling{"%vol", "% vol", 1.0},
    Spelling{"vol %", "% vol", 1.0},
    Spelling{"% by volume", "% vol", 1.0},
};

struct TypedAnswer {
    double value;
    std::string unit;  // as typed, in lower case
};

Result<TypedAnswer> typedAnswer(std::string_view typed)
{
    std::string_view text = trimmed(typed);
    if (text.empty())
        return failure(phrase("Type an answer first."));
    double sign = 1.0;
    for (const std::string_view mark : {std::string_view("-"), std::string_view("−"), std::string_view("+")}) {
        if (text.starts_with(mark)) {
            sign = mark == "+" ? 1.0 : -1.0;
            text.remove_prefix(mark.size());
            break;
        }
    }
    const auto number = leadingNumber(text);
    if (!number)
        return failure(phrase("“{0}” is no answer: type a number and its unit, such as 26 % or -2.7 °C.", shortened(typed)));
    return TypedAnswer{sign * number->value, lowered(trimmed(text.substr(number->length)))};
}

constexpr double slipOfTheLastBit = 1e-9;  // as near as the tolerance is near enough, whatever the last bit says

Judgement right(const ExpectedAnswer& expected, bool hasUnit)
{
    const Figure exact{expected.value, std::max(expected.decimals, 1)};
    const Figure tolerance{expected.tolerance, expected.tolerance == std::floor(expected.tolerance) ? 0 : 1};
    if (hasUnit)
        return {Verdict::Right, phrase("Right. It is {0} {1}, and ± {2} {1} counts as right.", exact, expected.unit, tolerance)};
    return {Verdict::RightButNoUnit,
        phrase("Right, in {1}. It is {0} {1}, and ± {2} {1} counts as right.", exact, expected.unit, tolerance)};
}

Judgement beside(bool isLess, bool isTemperature)
{
    if (isTemperature)
        return isLess ? Judgement{Verdict::TooLow, phrase("Colder than it is.")}
                      : Judgement{Verdict::TooHigh, phrase("Warmer than it is.")};
    return isLess ? Judgement{Verdict::TooLow, phrase("Too low.")} : Judgement{Verdict::TooHigh, phrase("Too high.")};
}

}  // namespace

Result<Judgement> judge(std::string_view typed, const ExpectedAnswer& expected)
{
    const auto answer = typedAnswer(typed);
    if (!answer)
        return failure(answer.error());
    double value = answer->value;
    if (!answer->unit.empty()) {
        // A mass share is often called °Bx and a share by volume just %: neither is what was asked for.
        const auto spelling = std::ranges::find_if(
            spellings, [&](const Spelling& each) { return each.typed == answer->unit && each.unit == expected.unit; });
        if (spelling == spellings.end())
            return Judgement{Verdict::WrongUnit, phrase("The answer is wanted in {0}.", expected.unit)};
        value *= spelling->factor;
    }
    const auto isNear = [&](double candidate, double sought) {
        return std::abs(candidate - sought) <= expected.tolerance * (1.0 + slipOfTheLastBit);
    };
    if (isNear(value, expected.value))
        return right(expected, !answer->unit.empty());
    if (expected.byOtherMethod && isNear(value, *expected.byOtherMethod))
        return Judgement{Verdict::OtherMethod, phrase("That is the other method.")};
    if (isNear(-value, expected.value))
        return Judgement{Verdict::SignLost, phrase("Mind the sign.")};
    if (expected.unit.starts_with('%') && isNear(100.0 * value, expected.value))
        return Judgement{Verdict::Fraction, phrase("In percent, please: that is a fraction.")};
    return beside(value < expected.value, expected.unit == "°C");
}

}  // namespace firn
