#include "explain/answer.h"

#include "units/number.h"
#include "units/text.h"
#include "units/unit.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace firn {

namespace {

/// A unit as it is typed, in lower case, and how its number becomes one of the answer's unit: factor * number + offset.
struct Spelling {
    std::string_view typed;
    std::string_view unit;
    double factor = 1.0;
    double offset = 0.0;
    bool isOther = false;  // another unit than the one asked for
};

constexpr Spelling converted(std::string_view typed, std::string_view unit, double factor, double offset = 0.0)
{
    return {typed, unit, factor, offset, true};
}

constexpr double fahrenheitStep_k = 5.0 / 9.0, fahrenheitZero_c = -160.0 / 9.0;

constexpr std::array spellings{
    Spelling{"%", "%"},
    Spelling{"percent", "%"},
    Spelling{"per cent", "%"},
    Spelling{"°c", "°C"},
    Spelling{"° c", "°C"},
    Spelling{"c", "°C"},
    Spelling{"°", "°C"},
    Spelling{"degrees", "°C"},
    converted("k", "°C", 1.0, -273.15),
    converted("kelvin", "°C", 1.0, -273.15),
    converted("°f", "°C", fahrenheitStep_k, fahrenheitZero_c),
    converted("° f", "°C", fahrenheitStep_k, fahrenheitZero_c),
    converted("f", "°C", fahrenheitStep_k, fahrenheitZero_c),
    converted("fahrenheit", "°C", fahrenheitStep_k, fahrenheitZero_c),
    Spelling{"°bx", "°Bx"},
    Spelling{"bx", "°Bx"},
    Spelling{"brix", "°Bx"},
    Spelling{"° brix", "°Bx"},
    Spelling{"°brix", "°Bx"},
    Spelling{"°bé", "°Bé"},
    Spelling{"°be", "°Bé"},
    Spelling{"bé", "°Bé"},
    Spelling{"be", "°Bé"},
    Spelling{"baumé", "°Bé"},
    Spelling{"baume", "°Bé"},
    Spelling{"% vol", "% vol"},
    Spelling{"%vol", "% vol"},
    Spelling{"vol %", "% vol"},
    Spelling{"% by volume", "% vol"},
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
        return failure(phrase("“{0}” is not an answer. Type a number and its unit, such as 26 % or -2.7 °C.", shortened(typed)));
    return TypedAnswer{sign * number->value, lowered(trimmed(text.substr(number->length)))};
}

/// The typed number in the unit that is asked for; none where its unit is of another kind.
struct Converted {
    double value;
    bool isFromOther;
};

std::optional<Converted> inUnitOf(const ExpectedAnswer& expected, const TypedAnswer& typed)
{
    // A mass share is often called °Bx and a share by volume just %: neither is what was asked for.
    const auto spelling = std::ranges::find_if(
        spellings, [&](const Spelling& each) { return each.typed == typed.unit && each.unit == expected.unit; });
    if (spelling != spellings.end())
        return Converted{spelling->factor * typed.value + spelling->offset, spelling->isOther};
    const auto asked = unitNamed(expected.unit), given = unitNamed(typed.unit);
    if (!asked || !given || factsOf(*asked).dimension != factsOf(*given).dimension)
        return std::nullopt;
    return Converted{typed.value * factsOf(*given).size / factsOf(*asked).size, *asked != *given};
}

/// How far below the freezing point of water a number lies if it is meant as a difference, in kelvins.
std::optional<double> asDepression_k(const ExpectedAnswer& expected, const TypedAnswer& typed)
{
    const auto spelling = std::ranges::find(spellings, typed.unit, &Spelling::typed);
    if (expected.unit != "°C" || spelling == spellings.end() || spelling->unit != "°C" || !spelling->isOther)
        return std::nullopt;
    return std::abs(spelling->factor * typed.value);
}

/// Kelvins from absolute zero are hundreds in a kitchen: fewer are a difference.
bool isDifference(const TypedAnswer& typed)
{
    constexpr double colderThanAnyKitchen_k = 100.0;
    return (typed.unit == "k" || typed.unit == "kelvin") && std::abs(typed.value) < colderThanAnyKitchen_k;
}

constexpr double slipOfTheLastBit = 1e-9;  // as near as the tolerance is near enough, whatever the last bit says

bool isInPercent(const ExpectedAnswer& answer) { return answer.unit.starts_with('%'); }

Figure toleranceFigure(const ExpectedAnswer& answer)
{
    return {answer.tolerance, answer.tolerance == std::floor(answer.tolerance) ? 0 : 1};
}

Judgement right(const ExpectedAnswer& expected)
{
    const Figure exact{expected.value, std::max(expected.decimals, 1)}, tolerance = toleranceFigure(expected);
    return {Verdict::Right,
        isInPercent(expected)
            ? phrase("Right. It is {0} {1}, and ± {2} percentage points count as right.", exact, expected.unit, tolerance)
            : phrase("Right. It is {0} {1}, and ± {2} {1} counts as right.", exact, expected.unit, tolerance)};
}

Judgement rightWithoutUnit(const ExpectedAnswer& expected)
{
    const Figure exact{expected.value, std::max(expected.decimals, 1)}, tolerance = toleranceFigure(expected);
    return {Verdict::RightButNoUnit,
        isInPercent(expected)
            ? phrase("Right, in {1}. It is {0} {1}, and ± {2} percentage points count as right.", exact, expected.unit, tolerance)
            : phrase("Right, in {1}. It is {0} {1}, and ± {2} {1} counts as right.", exact, expected.unit, tolerance)};
}

Judgement rightInAnotherUnit(const ExpectedAnswer& expected, double asked)
{
    const int decimals = std::max(expected.decimals, 1);
    return {Verdict::RightInAnotherUnit,
        phrase("Right: that is {3} {1}. It is {0} {1}, and ± {2} {1} counts as right.", Figure{expected.value, decimals},
            expected.unit, toleranceFigure(expected), Figure{asked, decimals})};
}

Judgement beside(bool isLess, bool isTemperature)
{
    if (isTemperature)
        return isLess ? Judgement{Verdict::TooLow, phrase("Colder than it is.")}
                      : Judgement{Verdict::TooHigh, phrase("Warmer than it is.")};
    return isLess ? Judgement{Verdict::TooLow, phrase("Too low.")} : Judgement{Verdict::TooHigh, phrase("Too high.")};
}

/// The slip that the value comes nearest to, within the tolerance.
const Slip* slipAt(double value, const ExpectedAnswer& expected)
{
    const auto distance = [value](const Slip& slip) { return std::abs(slip.value - value); };
    const auto nearest = std::ranges::min_element(expected.slips, {}, distance);
    return nearest != expected.slips.end() && distance(*nearest) <= expected.tolerance ? &*nearest : nullptr;
}

}  // namespace

bool isRight(Verdict verdict)
{
    return verdict == Verdict::Right || verdict == Verdict::RightButNoUnit || verdict == Verdict::RightInAnotherUnit;
}

Sentence toleranceOf(const ExpectedAnswer& answer)
{
    return isInPercent(answer) ? phrase("± {0} percentage points", toleranceFigure(answer))
                               : phrase("± {0} {1}", toleranceFigure(answer), answer.unit);
}

Result<Judgement> judge(std::string_view typed, const ExpectedAnswer& expected)
{
    const auto answer = typedAnswer(typed);
    if (!answer)
        return failure(answer.error());
    const bool hasUnit = !answer->unit.empty();
    const auto inUnit = hasUnit ? inUnitOf(expected, *answer) : Converted{answer->value, false};
    if (!inUnit)
        return Judgement{Verdict::WrongUnit, phrase("The answer should be in {0}.", expected.unit)};
    const double value = inUnit->value;
    const auto isNear = [&](double candidate, double sought) {
        return std::abs(candidate - sought) <= expected.tolerance * (1.0 + slipOfTheLastBit);
    };
    if (isNear(value, expected.value))
        return inUnit->isFromOther ? rightInAnotherUnit(expected, value) : hasUnit ? right(expected) : rightWithoutUnit(expected);
    if (const auto depression_k = asDepression_k(expected, *answer); depression_k && isNear(-*depression_k, expected.value))
        return Judgement{Verdict::Slip,
            phrase("That is how far it lies below the freezing point of water, a difference. Give the temperature itself, in °C.")};
    if (expected.unit == "°C" && isDifference(*answer))
        return Judgement{
            Verdict::WrongUnit, phrase("So few kelvins are a difference of temperatures. Give the temperature itself, in °C.")};
    if (expected.byOtherMethod && isNear(value, *expected.byOtherMethod))
        return Judgement{Verdict::OtherMethod, phrase("That is the other method.")};
    if (isNear(-value, expected.value))
        return Judgement{Verdict::SignLost, phrase("Check the sign.")};
    if (isInPercent(expected) && isNear(100.0 * value, expected.value))
        return Judgement{Verdict::Fraction, phrase("In percent, please: that is a fraction.")};
    if (const Slip* slip = slipAt(value, expected))
        return Judgement{Verdict::Slip, slip->said};
    return beside(value < expected.value, expected.unit == "°C");
}

}  // namespace firn
