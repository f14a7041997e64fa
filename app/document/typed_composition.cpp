#include "document/typed_composition.h"

#include "solution/alcohol_by_volume.h"
#include "units/number.h"
#include "units/text.h"

#include <algorithm>
#include <array>

namespace firn::app {

namespace {

constexpr double mostPercent = 100.0;

}  // namespace

Result<TypedAlcohol> alcoholFromText(std::string_view text, bool isByVolume)
{
    const auto number = leadingNumber(text);
    if (!number)
        return failure(number.error());
    const std::string_view unit = trimmed(text.substr(number->length));
    if (unit == "%")
        return failure(phrase("“{0}” could be % of the weight or of the volume. Write g or % vol.", shortened(trimmed(text))));
    const bool isStrength = isAlcoholByVolume(unit);
    if ((!unit.empty() && unit != "g" && !isStrength) || number->value > mostPercent)
        return failure(
            phrase("“{0}” is not an amount of alcohol. Enter grams per 100 g, or % vol, from 0 to 100.", shortened(trimmed(text))));
    return TypedAlcohol{number->value, unit.empty() ? isByVolume : isStrength};
}

Result<double> syrupStrengthFromText(std::string_view text)
{
    const auto number = leadingNumber(text);
    if (!number)
        return failure(number.error());
    constexpr std::array<std::string_view, 5> units{"", "°Bx", "Bx", "brix", "°"};
    const std::string_view unit = trimmed(text.substr(number->length));
    if (std::ranges::find(units, unit) == units.end() || number->value > mostPercent)
        return failure(phrase("“{0}” is not a strength of syrup. Enter °Bx from 0 to 100, such as 60.", shortened(trimmed(text))));
    return number->value;
}

}  // namespace firn::app
