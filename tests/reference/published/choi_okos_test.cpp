// Y. Choi and M. R. Okos, Effects of temperature and composition on the thermal properties of foods, in Food Engineering and Process Applications 1
// (Elsevier 1986) 93-101: density in kg/m3, t in °C: fat 925.59 - 0.41757 t, carbohydrate 1599.1 - 0.31046 t, fibre 1311.5 - 0.36589 t.

#include "solution/volume.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

/// Of 100 g alone.
double density_kg_m3(Constituent constituent, double temperature_c)
{
    Mix mix;
    mix.amounts[constituent] = {100.0};
    return 1000.0 * 100.0 / volumeOf(mix, {temperature_c}).value;
}

TEST(ChoiOkos, DensitiesOfWhatDoesNotDissolve)
{
    for (const double t : {-10.0, 0.0, 4.0, 20.0, 40.0}) {
        EXPECT_NEAR(density_kg_m3(Constituent::Fat, t), 925.59 - 0.41757 * t, 1e-6) << t;
        EXPECT_NEAR(density_kg_m3(Constituent::Starch, t), 1599.1 - 0.31046 * t, 1e-6) << t;
        EXPECT_NEAR(density_kg_m3(Constituent::Fibre, t), 1311.5 - 0.36589 * t, 1e-6) << t;
    }
}

}  // namespace
}  // namespace firn
