#include "freezing/glass.h"

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

}  // namespace

Celsius glassLimit(const Mix& mix)
{
    double sum_gC = 0.0;
    double mass_g = 0.0;
    for (const Limit& limit : limits) {
        sum_gC += mix[limit.solute].value * limit.limit_c;
        mass_g += mix[limit.solute].value;
    }
    return {mass_g > 0.0 ? sum_gC / mass_g : pureWater_c};
}

}  // namespace firn
