#include "units/temperature.h"

#include "units/number.h"
#include "units/text.h"

namespace firn {

namespace {

struct UnitName {
    std::string_view name;  // in lower case
    TemperatureUnit unit;
};
constexpr std::array unitNames{
    UnitName{"celsius", TemperatureUnit::Celsius},
    UnitName{"fahrenheit", TemperatureUnit::Fahrenheit},
    UnitName{"c", TemperatureUnit::Celsius},
    UnitName{"f", TemperatureUnit::Fahrenheit},
};

/// The degree sign, and the ordinal sign that some keyboards have in its place.
constexpr std::array<std::string_view, 2> degreeSigns = {"°", "º"};
/// Hyphen, minus U+2212 and en dash U+2013.
constexpr std::array<std::string_view, 3> minusSigns = {"-", "\u2212", "\u2013"};

/// Takes the first of these signs that the text starts with off it.
template <std::size_t n>
bool takeOneOf(const std::array<std::string_view, n>& signs, std::string_view& text)
{
    const auto found = std::ranges::find_if(signs, [&](std::string_view sign) { return text.starts_with(sign); });
    if (found == signs.end())
        return false;
    text.remove_prefix(found->size());
    return true;
}

}  // namespace

std::string_view symbolOf(TemperatureUnit unit) { return unit == TemperatureUnit::Celsius ? "°C" : "°F"; }

Figure chosenTemperatureFigure(Celsius temperature)
{
    const double tenths = roundedTo(1, temperature.value);
    return temperatureFigure(temperature, tenths == roundedTo(0, tenths) ? 0 : 1);
}

std::optional<LeadingTemperatureUnit> leadingTemperatureUnit(std::string_view text)
{
    std::string_view rest = text.substr(blanksAt(text));
    const bool hasSign = takeOneOf(degreeSigns, rest);
    const std::string_view behindSign = rest;
    rest.remove_prefix(blanksAt(rest));
    const std::size_t letters = lengthOf(isAsciiLetter, rest);
    const auto* const named = std::ranges::find(unitNames, lowered(rest.substr(0, letters)), &UnitName::name);
    if (named != unitNames.end())
        return LeadingTemperatureUnit{named->unit, text.size() - rest.size() + letters};
    return hasSign ? std::optional(LeadingTemperatureUnit{std::nullopt, text.size() - behindSign.size()}) : std::nullopt;
}

Result<Celsius> temperatureFrom(std::string_view text, TemperatureUnit fallback)
{
    std::string_view rest = trimmed(text);
    const bool isNegative = takeOneOf(minusSigns, rest);
    if (!isNegative && rest.starts_with('+'))
        rest.remove_prefix(1);
    const auto number = leadingNumber(rest);
    const std::string_view behind = number ? trimmed(rest.substr(number->length)) : rest;
    const auto unit = leadingTemperatureUnit(behind);
    if (!number || (!behind.empty() && (!unit || unit->length != behind.size())))
        return failure(phrase("“{0}” is not a temperature. Enter for example {1}.", shortened(text),
            std::string(fallback == TemperatureUnit::Celsius ? "-12, -12 °C or 10 °F" : "10, 10 °F or -12 °C")));
    const TemperatureUnit meant = unit ? unit->unit.value_or(fallback) : fallback;
    return temperatureFrom(meant, isNegative ? -number->value : number->value);
}

}  // namespace firn
