// Regulation (EU) No 1169/2011, annex XIV: kcal per gram. Carbohydrate except polyols 4, polyols 2.4, protein 4, fat 9, alcohol 7, organic acid 3,
// fibre 2, erythritol 0.

#include "ingredients/energy.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

double factor_kcal_g(Constituent constituent)
{
    using enum Constituent;
    switch (constituent) {
    case Fat:
        return 9.0;
    case Ethanol:
        return 7.0;
    case Acid:
        return 3.0;
    case Fibre:
    case Hydrocolloid:
        return 2.0;
    case Sorbitol:
    case Xylitol:
    case Maltitol:
    case Glycerol:
        return 2.4;
    case Water:
    case Minerals:
    case Salt:
    case Erythritol:
        return 0.0;
    default:
        return 4.0;  // protein and carbohydrate
    }
}

TEST(EuEnergyFactors, OfEveryConstituent)
{
    for (const ConstituentFacts& facts : allConstituents()) {
        Amounts amounts;
        amounts[facts.constituent] = {10.0};
        EXPECT_NEAR(energy_kcal(amounts), 10.0 * factor_kcal_g(facts.constituent), 1e-9) << facts.key;
    }
}

}  // namespace
}  // namespace firn
