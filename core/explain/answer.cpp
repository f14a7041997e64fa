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
    // As near as the tolerance, whatever the last bit says.
    if (std::abs(value - expected.value) <= expected.tolerance * (1.0 + 1e-9)) {
        if (answer->unit.empty())
            return Judgement{Verdict::RightButNoUnit, phrase("Right, in {0}.", expected.unit)};
        return Judgement{Verdict::Right, phrase("Right.")};
    }
    return value < expected.value ? Judgement{Verdict::TooLow, phrase("Too low.")}
                                  : Judgement{Verdict::TooHigh, phrase("Too high.")};
}

}  // namespace firn
