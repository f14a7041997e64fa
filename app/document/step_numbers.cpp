#include "document/step_numbers.h"

#include "document/typed_numbers.h"
#include "document/typed_sizes.h"
#include "gauges/temperature_unit.h"
#include "units/number.h"

#include <algorithm>
#include <initializer_list>
#include <string>

namespace firn::app {

namespace {

struct Bounds {
    double most;
    std::initializer_list<std::string_view> units;
};

Result<double> numberWithin(const Bounds& bounds, std::string_view text, Sentence otherwise)
{
    const auto number = leadingNumber(text);
    if (!number)
        return failure(startsWithNumber(text) ? number.error() : std::move(otherwise));
    std::string_view unit = text.substr(number->length);
    unit.remove_prefix(std::min(unit.find_first_not_of(' '), unit.size()));
    const bool isUnit = unit.empty() || std::ranges::find(bounds.units, unit) != bounds.units.end();
    if (!isUnit || number->value > bounds.most)
        return failure(std::move(otherwise));
    return number->value;
}

}  // namespace

Result<double> stepTemperatureFromText(std::string_view text)
{
    return temperatureFromText(text, shownTemperatureUnit(), {hottestStep_c}).map([](Celsius temperature) {
        return temperature.value;
    });
}

Result<double> minutesFromText(std::string_view text)
{
    return numberWithin({longestStep_min, {"min"}}, text,
        phrase("“{0}” is not a valid time. Enter minutes, such as 5 or 2.5, up to a year.", std::string(text)));
}

Result<double> gramsFromText(std::string_view text)
{
    return massFromText(text).map([](Grams mass) { return mass.value; });
}

Result<double> soakingFromText(std::string_view text)
{
    return numberWithin({largestSoaking_gPerG, {"g per g", "g/g", "g"}}, text,
        phrase("“{0}” is not a valid amount of liquid. Enter the grams that each gram keeps, from 0 to {1}.", std::string(text),
            Figure{largestSoaking_gPerG, 0}));
}

Result<double> extractedFromText(std::string_view text)
{
    return numberWithin({100.0, {"%"}}, text,
        phrase("“{0}” is not a valid share. Enter the percentage of the soluble matter that stays in the mix, from 0 to 100.",
            std::string(text)));
}

Result<double> brixFromText(std::string_view text)
{
    return numberWithin({100.0, {"°Bx", "Bx", "°"}}, text,
        phrase("“{0}” is not a valid reading. Enter degrees Brix, from 0 to 100.", std::string(text)));
}

}  // namespace firn::app
