#include "compare/shown_figures.h"

#include <charconv>
#include <cmath>
#include <fmt/format.h>

namespace firn {

namespace {

/// In units of the last digit. Through the text, since a number times a power of ten may round to the other side.
double shownUnits(double value, int decimals)
{
    const std::string text = fmt::format("{:.{}f}", value, decimals);
    double shown = 0.0;
    std::from_chars(text.data(), text.data() + text.size(), shown);
    return std::round(shown * std::pow(10.0, decimals));
}

}  // namespace

bool isShownAsZero(double value, int decimals) { return shownUnits(value, decimals) == 0.0; }

double shownChange(double from, double to, int decimals)
{
    return (shownUnits(to, decimals) - shownUnits(from, decimals)) / std::pow(10.0, decimals);
}

}  // namespace firn
