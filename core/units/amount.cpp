#include "units/amount.h"

#include "units/text.h"

#include <cmath>
#include <fmt/format.h>

namespace firn {

namespace {

/// Measures that are no unit of their own but a known number of millilitres.
struct ReadAsMillilitres {
    std::string_view word;
    double millilitres;
};
constexpr ReadAsMillilitres readAsMillilitres[] = {
    {"cl", 10.0},
    {"centilitre", 10.0},
    {"centilitres", 10.0},
    {"centiliter", 10.0},
    {"centiliters", 10.0},
    {"dl", 100.0},
    {"decilitre", 100.0},
    {"decilitres", 100.0},
    {"deciliter", 100.0},
    {"deciliters", 100.0},
};

struct MeasureAt {
    Unit unit;
    double factor;
    std::size_t length;
};

std::optional<MeasureAt> measureAt(std::string_view text)
{
    if (const auto unit = leadingUnit(text))
        return MeasureAt{unit->unit, 1.0, unit->length};
    const std::string word = lowered(text.substr(0, lengthOf(isAsciiLetter, text)));
    const auto found = std::ranges::find(readAsMillilitres, word, &ReadAsMillilitres::word);
    if (found == std::end(readAsMillilitres))
        return std::nullopt;
    const bool hasDot = text.substr(word.size()).starts_with('.');
    return MeasureAt{Unit::Millilitre, found->millilitres, word.size() + (hasDot ? 1 : 0)};
}

bool isKitchenMeasure(Unit unit)
{
    const UnitFacts& facts = factsOf(unit);
    const bool isMetric = unit == Unit::Millilitre || unit == Unit::Litre;
    return facts.dimension == Dimension::Count || (facts.dimension == Dimension::Volume && !isMetric) || unit == Unit::Ounce
           || unit == Unit::Pound;
}

/// "1 1/2" if a fraction of halves, thirds, quarters or eighths says the value exactly.
std::optional<std::string> simpleFraction(double value)
{
    const double whole = std::floor(value);
    for (const int below : {2, 3, 4, 8}) {
        const int above = static_cast<int>(std::lround((value - whole) * below));
        if (above == 0 || above == below || whole + static_cast<double>(above) / below != value)
            continue;
        return whole > 0.0 ? fmt::format("{:.0f} {}/{}", whole, above, below) : fmt::format("{}/{}", above, below);
    }
    return std::nullopt;
}

/// "1,500 g" is a thousand and a half to some and one and a half to others, and nobody weighs milligrams of sugar. In kilograms, litres and
/// cups three decimals are plain.
bool couldBeThousands(std::string_view number, Unit unit)
{
    const bool isFine = unit == Unit::Gram || unit == Unit::Milligram || unit == Unit::Millilitre || unit == Unit::Piece;
    const std::size_t whole = lengthOf(isDigit, number);
    return isFine && whole >= 1 && whole <= 3 && number[0] != '0' && number.size() == whole + 4 && number[whole] == ','
           && lengthOf(isDigit, number.substr(whole + 1)) == 3;
}

/// The amount at the start of a text, whose number is of `ifNone` when no unit follows it.
Result<LeadingAmount> amountAt(std::string_view text, Unit ifNone)
{
    const auto number = leadingNumber(text);
    if (!number)
        return failure(number.error());
    const std::size_t gap = blanksAt(text.substr(number->length));
    const auto measure = measureAt(text.substr(number->length + gap));
    const std::string_view written = trimmed(text.substr(0, number->length));
    if (couldBeThousands(written, measure ? measure->unit : ifNone))
        return failure(
            phrase("“{0}” could mean ones or thousands: write it without the comma, or with a point.", std::string(written)));
    if (!measure)
        return LeadingAmount{number->value, std::nullopt, number->length};
    const double value = number->value * measure->factor;
    if (auto fault = faultOfAmount(value))
        return failure(*fault);
    return LeadingAmount{value, measure->unit, number->length + gap + measure->length};
}

}  // namespace

Result<LeadingAmount> leadingAmount(std::string_view text) { return amountAt(text, Unit::Piece); }

Result<Amount> parseAmount(std::string_view text, Unit fallback)
{
    const auto amount = amountAt(text, fallback);
    if (!amount)
        return failure(amount.error());
    const std::string_view rest = trimmed(text.substr(amount->length));
    if (rest.empty())
        return Amount{amount->value, amount->unit.value_or(fallback)};
    if (!amount->unit)
        return failure(unknownUnit(rest));
    return failure(phrase("“{0}” cannot stand after an amount: write only a number and a unit.", shortened(rest)));
}

Sentence unknownUnit(std::string_view word)
{
    std::string symbols;
    for (const UnitFacts& unit : allUnits()) {
        symbols += symbols.empty() ? "" : ", ";
        symbols += unit.symbol;
    }
    return phrase("“{0}” is not a unit that Firn knows; the units are {1}.", shortened(word), symbols);
}

std::string amountNumber(const Amount& amount)
{
    if (isKitchenMeasure(amount.unit)) {
        if (auto fraction = simpleFraction(amount.value))
            return *fraction;
    }
    std::string text = fmt::format("{:.6f}", amount.value);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.'))
        text.pop_back();
    return text;
}

std::string_view unitWord(const Amount& amount)
{
    const UnitFacts& unit = factsOf(amount.unit);
    return amount.value > 0.0 && amount.value <= 1.0 ? unit.symbol : unit.plural;
}

std::string amountText(const Amount& amount) { return fmt::format("{} {}", amountNumber(amount), unitWord(amount)); }

}  // namespace firn
