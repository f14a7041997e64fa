#include "compare/attribution_wording.h"

#include "compare/shown_figures.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace firn {

const std::array<AttributedKind, 3>& attributedKinds()
{
    static const std::array<AttributedKind, 3> kinds{
        AttributedKind{"freezing_point_k", "Freezing point", "K", "freezing_point_c", 2, &Attribution::freezingPoint_c,
            phrase("From “{0}” to “{1}” the freezing point rises by {2}; “{3}” accounts for {4}.").pattern,
            phrase("From “{0}” to “{1}” the freezing point falls by {2}; “{3}” accounts for {4}.").pattern,
            phrase("“{0}” and “{1}” begin to freeze at the same temperature.").pattern},
        AttributedKind{"sweetness_percent_sucrose", "Sweetness", "points", "sweetness_percent_sucrose", 1,
            &Attribution::sweetness_percentSucrose,
            phrase(
                "“{1}” is sweeter than “{0}” by {2} sweetness points (1 point is as sweet as 1 % sugar); “{3}” accounts for {4}.")
                .pattern,
            phrase("“{1}” is less sweet than “{0}” by {2} sweetness points (1 point is as sweet as 1 % sugar); “{3}” accounts for "
                   "{4}.")
                .pattern,
            phrase("“{0}” and “{1}” are equally sweet.").pattern},
        AttributedKind{"ice_percent_at_serving", "Ice when served", "points", "texture.ice_percent_at_serving", 1,
            &Attribution::iceAtServing_percent,
            phrase("Served, “{1}” has {2} points more ice than “{0}”; “{3}” accounts for {4} points.").pattern,
            phrase("Served, “{1}” has {2} points less ice than “{0}”; “{3}” accounts for {4} points.").pattern,
            phrase("Served, “{0}” and “{1}” have the same ice.").pattern},
    };
    return kinds;
}

double shownWhole(const AttributedFigure& figure, int decimals) { return shownChange(*figure.from, *figure.to, decimals); }

std::vector<double> roundedParts(const AttributedFigure& figure, int decimals)
{
    if (figure.whyNone)
        return {};
    const double perUnit = std::pow(10.0, decimals);
    std::vector<double> units;
    std::vector<double> lost;  // what rounding down took from each
    for (const double part : figure.parts) {
        units.push_back(std::floor(part * perUnit));
        lost.push_back(part * perUnit - units.back());
    }
    // The units that are missing go to those that lost most (the method of the largest remainder).
    double missing = std::round(shownWhole(figure, decimals) * perUnit) - std::accumulate(units.begin(), units.end(), 0.0);
    const auto give = [&](auto part, double unit) {
        units[std::size_t(part - lost.begin())] += unit;
        *part -= unit;
        missing -= unit;
    };
    while (missing > 0.5 && !units.empty())
        give(std::ranges::max_element(lost), 1.0);
    while (missing < -0.5 && !units.empty())  // both ends were rounded towards each other
        give(std::ranges::min_element(lost), -1.0);
    for (double& unit : units)
        unit /= perUnit;
    return units;
}

Sentence inASentence(const Attribution& attribution, const AttributedKind& kind, const std::string& from, const std::string& to)
{
    const AttributedFigure& figure = attribution.*kind.figure;
    if (figure.whyNone)
        return *figure.whyNone;
    const double change = shownWhole(figure, kind.decimals);
    if (figure.parts.empty() || change == 0.0)
        return phrase(kind.stays, from, to);
    const double direction = change > 0.0 ? 1.0 : -1.0;
    const auto most = std::ranges::max_element(figure.parts, {}, [direction](double part) { return direction * part; });
    const Change& cause = attribution.changes[std::size_t(most - figure.parts.begin())];
    const double part = roundedParts(figure, kind.decimals)[std::size_t(most - figure.parts.begin())];
    const FigureKind ofFigure =
        kind.figure == &Attribution::freezingPoint_c ? FigureKind::TemperatureDifference : FigureKind::Number;
    return phrase(change > 0.0 ? kind.rises : kind.falls, from, to, Figure{std::abs(change), kind.decimals, ofFigure},
        english(cause.what), Figure{direction * part, kind.decimals, ofFigure});
}

}  // namespace firn
