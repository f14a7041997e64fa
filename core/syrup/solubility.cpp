#include "syrup/solubility.h"

#include "units/temperature.h"
#include "units/text.h"

#include <algorithm>
#include <array>
#include <math.h>  // pchip.hpp of Boost 1.74 takes isnan from the global namespace and does not include it

#include <boost/math/interpolators/pchip.hpp>
#include <cmath>
#include <span>
#include <string>
#include <vector>

namespace firn {

namespace {

struct Point {
    double temperature_c;
    double percent;  // by mass, of the anhydrous solute
};

// C. S. Hudson, J. Am. Chem. Soc. 30 (1908) 1767, final solubility, as B. Lowe, Experimental Cookery, prints it per 100 g of water: 11.9, 16.9,
// 21.6, 31.5, 42.4, 65.8, 86.2, 139.2 g.
constexpr std::array lactose{Point{0, 10.634}, Point{15, 14.457}, Point{25, 17.763}, Point{39, 23.954}, Point{49, 29.775},
    Point{64, 39.686}, Point{74, 46.294}, Point{89, 58.194}};

// R. F. Jackson and C. G. Silsbee, Bureau of Standards Scientific Paper 437 (1922), from memory; two figures of Combs and Bele are 2 lower.
constexpr std::array glucose{Point{20, 47.7}, Point{30, 54.6}, Point{40, 61.8}, Point{50, 70.9}, Point{55, 73.1}, Point{70, 78.2},
    Point{80, 81.5}, Point{90, 84.9}};

// R. F. Jackson, C. G. Silsbee and M. J. Proffitt, Bureau of Standards Scientific Paper 519 (1926), from memory.
constexpr std::array fructose{Point{20, 78.9}, Point{30, 81.5}, Point{40, 84.3}, Point{50, 86.9}};

// CRC Handbook of Chemistry and Physics, aqueous solubility of inorganic compounds, from memory.
constexpr std::array salt{Point{0, 26.3}, Point{20, 26.4}, Point{40, 26.7}, Point{60, 27.0}, Point{80, 27.5}, Point{100, 28.1}};

/// Monotone cubic between the points, as their sources print no formula.
double between(std::span<const Point> points, double temperature_c)
{
    std::vector<double> temperatures;
    std::vector<double> percents;
    for (const Point& point : points) {
        temperatures.push_back(point.temperature_c);
        percents.push_back(point.percent);
    }
    return boost::math::interpolators::pchip<std::vector<double>>(std::move(temperatures), std::move(percents))(temperature_c);
}

// Z. Bubnik and P. Kadlec, in M. Mathlouthi and P. Reiser, Sucrose (1995), 0 to 100 °C: of 1, t, t^2, …
constexpr std::array sucrose{64.447, 0.08222, 1.6169e-3, -1.558e-6, -4.63e-8};

/// The points of a table, or, where there are none, the polynomial of sucrose.
struct SoluteFacts {
    Constituent constituent;
    std::span<const Point> points;
    double coldest_c, warmest_c;
    double uncertainty_percent;
    double crystalWater_gPerGram;  // water bound over anhydrous, by molar masses
    double warmestHydrate_c;       // below which crystals bind that water
    std::string_view name;
    std::string_view source;
};

constexpr double never_c = -300.0;

constexpr std::array solutes{
    // The handbook's table, after Herzfeld, is up to 0.5 higher from 20 to 35 °C.
    SoluteFacts{Constituent::Sucrose, {}, 0.0, 100.0, 0.5, 0.0, never_c, "sucrose", "Bubnik and Kadlec 1995"},
    SoluteFacts{
        Constituent::Glucose, glucose, 20.0, 90.0, 2.5, 18.015 / 180.156, 50.0, "glucose", "Jackson and Silsbee 1922, from memory"},
    SoluteFacts{Constituent::Fructose, fructose, 20.0, 50.0, 1.0, 0.0, never_c, "fructose",
        "Jackson, Silsbee and Proffitt 1926, from memory"},
    // Hydrate below 93.5 °C: from memory.
    SoluteFacts{Constituent::Lactose, lactose, 0.0, 89.0, 0.5, 18.015 / 342.297, 93.5, "lactose",
        "Hudson, in B. Lowe, Experimental Cookery"},
    SoluteFacts{Constituent::Salt, salt, 0.0, 100.0, 0.2, 0.0, never_c, "salt", "CRC Handbook, from memory"},
};

double percentAt(const SoluteFacts& facts, double temperature_c)
{
    if (!facts.points.empty())
        return between(facts.points, temperature_c);
    double sum = 0.0;
    for (std::size_t i = sucrose.size(); i-- > 0;)
        sum = sum * temperature_c + sucrose[i];
    return sum;
}

Figure degrees(Celsius t) { return {t.value, t.value == std::round(t.value) ? 0 : 1}; }
Figure grams(Grams mass) { return {mass.value, mass.value < 10.0 ? 1 : 0}; }

const SoluteFacts* factsOf(Constituent solute)
{
    const auto found = std::ranges::find(solutes, solute, &SoluteFacts::constituent);
    return found == solutes.end() ? nullptr : &*found;
}

Saturation saturationOf(const Solubility& solubility, Grams amount, Grams water)
{
    const double held_g = solubility.g_perGramWater * water.value;
    Saturation result;
    result.ratio = amount.value / held_g;
    if (result.ratio <= 1.0) {
        result.dissolved = amount;
        return result;
    }
    // Crystals that bind water leave less of it to dissolve the rest: (amount - c)/(water - h c) is the solubility.
    const double bound = solubility.crystalWater_gPerGram;
    const double crystals_g = std::min(amount.value, (amount.value - held_g) / (1.0 - solubility.g_perGramWater * bound));
    result.dissolved = amount - Grams{crystals_g};
    result.solid = {crystals_g + std::min(water.value, crystals_g * bound)};
    return result;
}

constexpr double nearlySaturated = 0.95;  // judgement

std::optional<Sentence> warningOf(const Dissolving& result, std::string_view name, Celsius cooledTo)
{
    if (result.cooled.ratio > 1.0)
        return phrase("Too much {0} for {1}: up to {2} g crystallise there. {3} g more water keep it clear.", std::string(name),
            chosenTemperatureFigure(cooledTo), grams(result.cooled.solid), grams(result.waterForCooled));
    if (result.cooled.ratio >= nearlySaturated)
        return phrase(
            "{0} % of the {1} that this water holds at {2}: crystals grow where some water dries off or a grain falls in.",
            Figure{100.0 * result.cooled.ratio, 0}, std::string(name), chosenTemperatureFigure(cooledTo));
    return std::nullopt;
}

Symbol shareSymbol(const Solubility& solubility, Celsius temperature)
{
    return {"w", "sat", percent(solubility.share), "%", phrase("the saturated solution at {0} °C, by mass", degrees(temperature))};
}

void recordShare(Working& working, const SoluteFacts& facts, const Solubility& solubility, Celsius temperature)
{
    const Symbol t{"t", "", temperature.value, "°C", phrase("temperature")}, share = shareSymbol(solubility, temperature);
    const bool isTable = !facts.points.empty();
    WorkingStep& step = working.found(share,
        isTable ? function("table", {t}, phrase("the saturated solution in the source's table, in percent by mass"))
                : polynomial({sucrose.begin(), sucrose.end()}, t),
        Source::Solubility);
    step.isInNumbers = !isTable;
    if (isTable) {
        const auto after = std::ranges::upper_bound(
            facts.points.begin() + 1, facts.points.end() - 1, temperature.value, {}, &Point::temperature_c);
        const Point before = *(after - 1);
        step.method = phrase("Interpolated by a monotone cubic between {0} % at {1} °C and {2} % at {3} °C.",
            Figure{before.percent, 1}, Figure{before.temperature_c, 0}, Figure{after->percent, 1}, Figure{after->temperature_c, 0});
    }
    step.origin = phrase("{0}, alone in its water: {1}", std::string(facts.name), std::string(facts.source));
    step.range = phrase("From {0} to {1} °C.", Figure{facts.coldest_c, 0}, Figure{facts.warmest_c, 0});
    step.uncertainty = phrase("{0} % either way.", Figure{facts.uncertainty_percent, 1});
}

/// How much the water holds, how far that is used up, and what is solid.
void recordSaturation(
    Working& working, const Solubility& solubility, Celsius temperature, Grams amount, Grams water, const Saturation& found)
{
    const Symbol share = shareSymbol(solubility, temperature);
    const Symbol there{"m", "", amount.value, "g", phrase("what is stirred in")},
        inWater{"m", "w", water.value, "g", phrase("water")};
    const Symbol held{
        "m", "held", solubility.g_perGramWater * water.value, "g", phrase("what the water holds at {0} °C", degrees(temperature))};
    const Symbol ratio{
        "r", "", 100.0 * found.ratio, "%", phrase("what there is against what the water holds: above 100 % some of it is solid")};
    working.found(held, inWater * (share / (oneHundredPercent() - Formula(share))), Source::Definition);
    working.found(ratio, oneHundredPercent() * (there / held), Source::Definition);
    if (found.solid.value <= 0.0)
        return;
    const double h = solubility.crystalWater_gPerGram;
    const Symbol dry{"m", "crystals", amount.value - found.dissolved.value, "g", phrase("what crystallises, without its water")};
    const Symbol solid{
        "m", "solid", found.solid.value, "g", phrase("crystals at {0} °C, with the water that they bind", degrees(temperature))};
    const Formula bound = Symbol{"h", "", h, "", phrase("water that a gram of crystals binds")};
    Formula excess = there - Formula(held);
    if (h > 0.0)
        excess = std::move(excess) / (1.0 - held / inWater * bound);
    working.found(dry, function("min", {there, std::move(excess)}), Source::Definition);
    working.found(solid, h > 0.0 ? dry + function("min", {inWater, dry * bound}) : Formula(dry), Source::Definition);
}

void recordWater(Working& working, const Solubility& solubility, Celsius temperature, Grams amount, Grams water, Grams toAdd)
{
    const Symbol share = shareSymbol(solubility, temperature);
    const Symbol there{"m", "", amount.value, "g", phrase("what is stirred in")},
        inWater{"m", "w", water.value, "g", phrase("water")};
    working.found({"m", "add", toAdd.value, "g", phrase("water to add so that all of it stays dissolved")},
        there * ((oneHundredPercent() - Formula(share)) / share) - inWater, Source::Definition);
}

Sentence limitOf(const SoluteFacts& facts)
{
    if (facts.constituent == Constituent::Lactose)
        return phrase("Lactose counted without its crystal water and alone in its water; it dissolves and crystallises over hours, "
                      "and is felt as sand.");
    return phrase("Counted alone in its water: beside other sugars each dissolves less, all together more. A clean syrup may stay "
                  "clear beyond saturation "
                  "for days.");
}

}  // namespace

Result<Solubility> solubilityOf(Constituent solute, Celsius temperature, Working* working)
{
    const SoluteFacts* facts = factsOf(solute);
    if (!facts)
        return failure(phrase("How well {0} dissolves is not known here. Ask for sucrose, glucose, fructose, lactose or salt.",
            lowered(allConstituents()[static_cast<std::size_t>(solute)].label)));
    if (!(temperature.value >= facts->coldest_c && temperature.value <= facts->warmest_c))
        return failure(phrase("How well {0} dissolves is known from {1} to {2}, not at {3}.", std::string(facts->name),
            temperatureFigure({facts->coldest_c}, 0), temperatureFigure({facts->warmest_c}, 0),
            chosenTemperatureFigure(temperature)));
    Solubility result;
    result.share = fromPercent(percentAt(*facts, temperature.value));
    result.uncertainty = fromPercent(facts->uncertainty_percent);
    result.g_perGramWater = result.share.value / (1.0 - result.share.value);
    result.crystalWater_gPerGram = temperature.value < facts->warmestHydrate_c ? facts->crystalWater_gPerGram : 0.0;
    result.source = facts->source;
    if (working)
        recordShare(*working, *facts, result, temperature);
    return result;
}

Result<Dissolving> dissolve(Constituent solute, Grams amount, Grams water, Celsius warm, Celsius cooledTo, Working* working)
{
    const auto hot = solubilityOf(solute, warm);
    if (!hot)
        return failure(hot.error());
    const auto cold = solubilityOf(solute, cooledTo);
    if (!cold)
        return failure(cold.error());
    if (!(amount.value >= 0.0 && water.value > 0.0 && std::isfinite(amount.value) && std::isfinite(water.value)))
        return failure(phrase("There is no water to dissolve it in. Give both their weight."));
    Dissolving result;
    result.warm = saturationOf(*hot, amount, water);
    result.cooled = saturationOf(*cold, amount, water);
    result.waterForCooled = {std::max(0.0, amount.value / cold->g_perGramWater - water.value)};
    const SoluteFacts& facts = *factsOf(solute);
    result.warning = warningOf(result, facts.name, cooledTo);
    result.limit = limitOf(facts);
    if (working) {
        const bool isSolidWhenWarm = result.warm.solid.value > 0.0;
        const Solubility& decisive = isSolidWhenWarm ? *hot : *cold;
        const Celsius temperature = isSolidWhenWarm ? warm : cooledTo;
        recordShare(*working, facts, decisive, temperature);
        recordSaturation(*working, decisive, temperature, amount, water, isSolidWhenWarm ? result.warm : result.cooled);
        if (!isSolidWhenWarm && result.waterForCooled.value > 0.0)
            recordWater(*working, decisive, temperature, amount, water, result.waterForCooled);
    }
    return result;
}

}  // namespace firn
