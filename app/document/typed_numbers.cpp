#include "document/typed_numbers.h"

#include "document/typed_sizes.h"
#include "units/amount.h"

#include <algorithm>
#include <initializer_list>
#include <optional>
#include <string>

namespace firn::app {

namespace {

/// Takes a prefix off the text, if it is there.
bool takeOff(std::string_view& text, std::string_view prefix)
{
    if (!text.starts_with(prefix))
        return false;
    text.remove_prefix(prefix.size());
    return true;
}

std::string_view withoutBlanks(std::string_view text)
{
    const auto first = text.find_first_not_of(" \t");
    return first == std::string_view::npos ? std::string_view{} : text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

/// The number that the whole text is, but for one of these units behind it.
std::optional<double> numberBefore(std::initializer_list<std::string_view> units, std::string_view text)
{
    const auto number = leadingNumber(text);
    if (!number)
        return std::nullopt;
    const std::string_view unit = withoutBlanks(text.substr(number->length));
    return unit.empty() || std::ranges::find(units, unit) != units.end() ? std::optional(number->value) : std::nullopt;
}

/// The same with a sign before it, if need be.
std::optional<double> signedNumberBefore(std::initializer_list<std::string_view> units, std::string_view text)
{
    std::string_view rest = withoutBlanks(text);
    const bool isNegative = takeOff(rest, "-") || takeOff(rest, "−");
    if (!isNegative)
        takeOff(rest, "+");
    const auto number = numberBefore(units, rest);
    return number && isNegative ? std::optional(-*number) : number;
}

}  // namespace

Result<double> numberFromText(std::string_view text)
{
    if (const auto number = signedNumberBefore({}, text))
        return *number;
    return failure(phrase("“{0}” is not a number. Enter for example 19 or 19.4.", std::string(text)));
}

Result<Celsius> temperatureFromText(std::string_view text, TemperatureUnit fallback, Celsius warmest)
{
    const auto temperature = temperatureFrom(text, fallback);
    if (temperature && (*temperature < coldestTemperature || *temperature > warmest))
        return failure(phrase("{0} is outside {1} to {2}. Enter a temperature in between.", temperatureFigure(*temperature, 1),
            temperatureFigure(coldestTemperature, 0), temperatureFigure(warmest, 0)));
    return temperature;
}

Result<Celsius> servedAtFromText(std::string_view text, TemperatureUnit fallback)
{
    const auto temperature = temperatureFromText(text, fallback);
    const bool hasSign = !withoutBlanks(text).empty() && withoutBlanks(text).front() == '+';
    if (temperature && temperature->value > 0.0 && !hasSign)
        return failure(phrase("{0} is above freezing. Enter it with a minus sign, or with a plus sign if it was served that warm.",
            chosenTemperatureFigure(*temperature)));
    return temperature;
}

Result<double> overrunFromText(std::string_view text)
{
    const auto number = numberBefore({"%"}, withoutBlanks(text));
    if (number && *number <= largestOverrun_percent)
        return *number;
    return failure(phrase(
        "“{0}” is not a valid overrun. Enter a percentage from 0 to {1}.", std::string(text), Figure{largestOverrun_percent, 0}));
}

Result<double> partOf100gFromText(std::string_view text)
{
    const auto number = numberBefore({"g"}, withoutBlanks(text));
    if (number && *number <= 100.0)
        return *number;
    return failure(phrase("“{0}” is not a valid part of 100 g. Enter grams from 0 to 100, such as 12.5.", std::string(text)));
}

Result<double> densityFromText(std::string_view text)
{
    const auto number = numberBefore({"g/mL", "g/ml"}, withoutBlanks(text));
    if (number && *number >= lightestFood_gPerMl && *number <= heaviestFood_gPerMl)
        return *number;
    return failure(phrase("“{0}” is not a valid density. Enter g/mL from {1} to {2}, such as 1.03.", std::string(text),
        Figure{lightestFood_gPerMl, 1}, Figure{heaviestFood_gPerMl, 1}));
}

Result<double> measureFromText(std::string_view text)
{
    const auto mass = massFromText(text);
    if (!mass)
        return failure(mass.error());
    if (mass->value > 0.0)
        return mass->value;
    return failure(phrase("A measure weighs more than nothing. Enter how many grams it holds, such as 166."));
}

Result<double> energyFromText(std::string_view text)
{
    const auto number = numberBefore({"kcal"}, withoutBlanks(text));
    if (number && *number <= largestEnergy_kcalPer100g)
        return *number;
    return failure(phrase("“{0}” is not a valid energy. Enter kcal per 100 g, from 0 to {1}.", std::string(text),
        Figure{largestEnergy_kcalPer100g, 0}));
}

}  // namespace firn::app
