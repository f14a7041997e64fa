#include "freezing/glass.h"

#include "mix/symbols.h"

#include <array>

namespace firn {

namespace {

struct Limit {
    Constituent solute;
    double limit_c;
};

constexpr std::array limits{
    Limit{Constituent::Sucrose, -34.0},
    Limit{Constituent::Glucose, -46.0},
    Limit{Constituent::Galactose, -46.0},
    Limit{Constituent::Fructose, -46.0},
    Limit{Constituent::Lactose, -30.0},
    Limit{Constituent::Maltose, -32.0},
    Limit{Constituent::Trehalose, -30.0},
    Limit{Constituent::Oligosaccharides, -23.0},
    Limit{Constituent::Dextrins, -11.0},
    Limit{Constituent::Sorbitol, -49.0},
    Limit{Constituent::Xylitol, -57.0},
    Limit{Constituent::Erythritol, -54.0},
    Limit{Constituent::Maltitol, -37.0},
    // Liquids that never turn to glass in a freezer pull the mean far down.
    Limit{Constituent::Glycerol, -65.0},
    Limit{Constituent::Ethanol, -100.0},
};

constexpr double pureWater_c = -40.0;

void record(Working& working, const Mix& mix, Celsius limit)
{
    std::vector<SeriesTerm> products;
    std::vector<SeriesTerm> masses;
    for (const Limit& each : limits) {
        const Symbol mass = massOf(each.solute, mix, working);
        if (mass.value <= 0.0)
            continue;
        const MixPart& part = partOf(each.solute);
        products.push_back(
            {part.label, mass * Symbol{"T", part.subscript, each.limit_c, "°C", phrase("limit of {0}", part.label)}});
        masses.push_back({part.label, mass});
    }
    const Symbol result{"T", "glass", limit.value, "°C", phrase("below it the liquid is a glass and no more ice forms"),
        working.keyOf("glass_limit_c")};
    const Formula mean = masses.empty() ? Formula(Number{pureWater_c, "°C"})
                                        : series("i", generalMass() * Symbol{"T", "i", 0.0, "°C", phrase("glass limit of each")},
                                              std::move(products))
                                              / series("i", generalMass(), std::move(masses));
    working.found(result, mean, Source::GlassLimit).uncertainty = phrase("Schools differ by up to 10 K.");
}

}  // namespace

Celsius glassLimit(const Mix& mix, Working* working)
{
    double sum_gC = 0.0;
    double mass_g = 0.0;
    for (const Limit& limit : limits) {
        sum_gC += mix[limit.solute].value * limit.limit_c;
        mass_g += mix[limit.solute].value;
    }
    const Celsius limit{mass_g > 0.0 ? sum_gC / mass_g : pureWater_c};
    if (working)
        record(*working, mix, limit);
    return limit;
}

}  // namespace firn
