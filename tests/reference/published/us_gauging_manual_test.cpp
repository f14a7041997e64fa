// 27 CFR 30.32(b), US gauging manual: solids hide alcohol from a hydrometer, 0.4 degree of proof (0.2 % vol) for every 0.1 g in 100 mL of spirit of 80
// to 100 proof (40 to 50 % vol), to a tenth of a per cent by volume. The rule was made for caramel and the extract of oak.

#include "solution/ethanol.h"
#include "solution/volume.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

/// 100 mL of spirit at 20 °C with so much sucrose stirred in.
Mix spirit(double alcohol_percentByVolume, double sugar_g)
{
    Mix mix;
    mix.amounts[Constituent::Ethanol] = {alcohol_percentByVolume * ethanolDensity_20c.value};
    mix.amounts[Constituent::Sucrose] = {sugar_g};
    mix.amounts[Constituent::Water] = {100.0};
    for (int i = 0; i < 60; ++i)
        mix.amounts[Constituent::Water] += Grams{100.0 - volumeOf(mix, {20.0}).value};
    return mix;
}

/// The strength of the pure spirit that is as dense.
double shown_percentByVolume(const Mix& mix)
{
    const double density = densityOf(mix, {20.0})->value;
    double low = 0.0, high = 100.0;
    for (int i = 0; i < 60; ++i) {
        const double middle = (low + high) / 2.0;
        (densityOf(spirit(middle, 0.0), {20.0})->value > density ? low : high) = middle;
    }
    return low;
}

// Sugar, taken at its volume in water, hides a quarter more at 40 % vol than the rule says, and 0.05 % vol more at 50.
TEST(UsGaugingManual, HalfAGramOfSolidsHidesOnePercentByVolume)
{
    EXPECT_NEAR(50.0 - shown_percentByVolume(spirit(50.0, 0.5)), 1.0, 0.1);
    EXPECT_NEAR(40.0 - shown_percentByVolume(spirit(40.0, 0.5)), 1.0, 0.3);
}

}  // namespace
}  // namespace firn
