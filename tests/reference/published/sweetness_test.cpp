// Sweetness by mass, sucrose 1: a technical memorandum on the texture of sorbets (TM 2042), table on page 1, 1 decimal. Maltose, trehalose, xylitol
// and erythritol from memory. What is not sweet stands here, too.

#include "analysis/sweetness.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

TEST(Sweetness, OfEachConstituent)
{
    using enum Constituent;
    struct Row {
        Constituent constituent;
        double relative;
    };
    for (const auto& [constituent, relative] :
        {Row{Sucrose, 1.0}, {Glucose, 0.8}, {Fructose, 1.7}, {Galactose, 0.3}, {Lactose, 0.2}, {Sorbitol, 0.5}, {Maltitol, 0.9},
            {Glycerol, 0.8}, {Ethanol, 0.0}, {Maltose, 0.4}, {Trehalose, 0.45}, {Xylitol, 1.0}, {Erythritol, 0.65}, {Dextrins, 0.0},
            {Acid, 0.0}, {Salt, 0.0}, {Fat, 0.0}, {Protein, 0.0}, {Starch, 0.0}}) {
        Mix mix;
        mix.amounts[constituent] = {20.0};
        mix.amounts[Water] = {80.0};
        EXPECT_NEAR(sweetnessAsSucrose_percent(mix), 20.0 * relative, 1e-9) << static_cast<int>(constituent);
    }
}

// The memorandum has 0.3 for the solids of a glucose syrup of 42 DE and 1.3 for invert sugar; as their parts (see the catalogue) 0.30 and 1.25.
TEST(Sweetness, OfMixedSugars)
{
    using enum Constituent;
    Mix syrup;
    for (const auto& [constituent, grams] : {std::pair{Glucose, 18.5}, {Maltose, 13.9}, {Oligosaccharides, 42.2}, {Dextrins, 25.4}})
        syrup.amounts[constituent] = {grams};
    EXPECT_NEAR(sweetnessAsSucrose_percent(syrup), 30.0, 2.0);
    Mix invert;
    invert.amounts[Glucose] = {50.0};
    invert.amounts[Fructose] = {50.0};
    EXPECT_NEAR(sweetnessAsSucrose_percent(invert), 130.0, 5.0 + 1e-9);
}

}  // namespace
}  // namespace firn
