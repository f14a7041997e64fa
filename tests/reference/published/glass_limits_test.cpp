// Tm' of single solutes, °C: the temperature below which their freeze-concentrated solution is a glass and no more ice forms. After Y. H. Roos, Carbohydr.
// Res. 238 (1993) 39, from memory; other schools differ by up to 10 K. Typed a second time. Several solutes: their mean by mass.

#include "../solutions.h"
#include "freezing/glass.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

TEST(GlassLimits, OfEachSolute)
{
    using enum Constituent;
    struct Row {
        Constituent solute;
        double limit_c;
    };
    for (const auto& [solute, limit_c] : {Row{Sucrose, -34}, {Glucose, -46}, {Galactose, -46}, {Fructose, -46}, {Lactose, -30},
             {Maltose, -32}, {Trehalose, -30}, {Oligosaccharides, -23}, {Dextrins, -11}, {Sorbitol, -49}, {Xylitol, -57},
             {Erythritol, -54}, {Maltitol, -37}, {Glycerol, -65}, {Ethanol, -100}})
        EXPECT_NEAR(glassLimit(solutionOf(solute, 20.0)).value, limit_c, 1e-9) << static_cast<int>(solute);
    EXPECT_NEAR(glassLimit(solutionOf(Sucrose, 0.0)).value, -40.0, 1e-9);
}

TEST(GlassLimits, MeanByMass)
{
    Mix mix = solutionOf(Constituent::Sucrose, 30.0);
    mix.amounts[Constituent::Glucose] = {10.0};
    EXPECT_NEAR(glassLimit(mix).value, (30.0 * -34.0 + 10.0 * -46.0) / 40.0, 1e-9);
}

}  // namespace
}  // namespace firn
