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

/// Whose thousands are as usual as its decimals; see the header.
bool isFine(Unit unit) { return unit == Unit::Gram || unit == Unit::Milligram || unit == Unit::Millilitre || unit == Unit::Piece; }

/// The number with a further zero where Firn would ask what it means.
std::string unmistakable(std::string number, Unit unit) { return isFine(unit) && mayPartThousands(number) ? number + "0" : number; }

AmountFault ambiguous(std::string_view number, double value, Unit unit)
{
    constexpr double thousand = 1000.0;
    const AmountReadings readings{{roundedTo(0, value * thousand), unit}, {value, unit}};
    // With a mark and three digits it would be asked about again.
    const Figure thousands{readings.thousands.value, 0}, decimals{value, roundedTo(2, value) == value ? 2 : 4};
    return {phrase("“{0}” can mean {1} {2} or {3} {4}. Write it in one of these two ways.", std::string(number), thousands,
                std::string(unitWord(readings.thousands)), decimals, std::string(unitWord(readings.decimals))),
        readings, std::string(number)};
}

/// The amount at the start of a text, whose number is of `ifNone` when no unit follows it.
tl::expected<LeadingAmount, AmountFault> amountAt(std::string_view text, Unit ifNone)
{
    const auto number = leadingNumber(text);
    if (!number)
        return tl::unexpected(AmountFault{number.error()});
    const std::size_t gap = blanksAt(text.substr(number->length));
    const auto measure = measureAt(text.substr(number->length + gap));
    const std::string_view written = trimmed(text.substr(0, number->length));
    const Unit unit = measure ? measure->unit : ifNone;
    const bool isPlainUnit = !measure || measure->factor == 1.0;
    if (isPlainUnit && isFine(unit) && mayPartThousands(written))
        return tl::unexpected(ambiguous(written, number->value, unit));
    if (!measure)
        return LeadingAmount{number->value, std::nullopt, number->length};
    const double value = number->value * measure->factor;
    if (auto fault = faultOfAmount(value))
        return tl::unexpected(AmountFault{*fault});
    return LeadingAmount{value, measure->unit, number->length + gap + measure->length};
}

}  // namespace

tl::expected<LeadingAmount, AmountFault> leadingAmount(std::string_view text) { return amountAt(text, Unit::Piece); }

tl::expected<Amount, AmountFault> parseAmount(std::string_view text, Unit fallback)
{
    const auto amount = amountAt(text, fallback);
    if (!amount)
        return tl::unexpected(amount.error());
    const std::string_view rest = trimmed(text.substr(amount->length));
    if (rest.empty())
        return Amount{amount->value, amount->unit.value_or(fallback)};
    if (!amount->unit)
        return tl::unexpected(AmountFault{unknownUnit(rest)});
    return tl::unexpected(
        AmountFault{phrase("“{0}” cannot stand after an amount. Write only a number and a unit.", shortened(rest))});
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
    return unmistakable(std::move(text), amount.unit);
}

std::string exactAmountNumber(const Amount& amount) { return unmistakable(exactNumber(amount.value), amount.unit); }

std::string_view unitWord(const Amount& amount)
{
    const UnitFacts& unit = factsOf(amount.unit);
    return amount.value > 0.0 && amount.value <= 1.0 ? unit.symbol : unit.plural;
}

std::string amountText(const Amount& amount) { return fmt::format("{} {}", amountNumber(amount), unitWord(amount)); }

}  // namespace firn
