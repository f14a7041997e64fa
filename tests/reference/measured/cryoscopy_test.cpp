// Freezing points by cryoscope. Cow's milk: R. W. Henningson, North American average -540.4 m°H, that is -0.5218 °C (divide by 1.0356); England and
// Wales -543 m°H, -0.524 °C. The minerals of milk are fitted to the first, with the composition of USDA whole milk. Sodium chloride: GB
// 5413.38-2016, calibration of milk cryoscopes, 6.731 g in 1000 g of water, -0.400 °C; D. Lozano Tarancon and D. W. Lachenmeier, Beverages 1 (2015)
// 45-54, standards B and C, 0.8654 and 0.9473 g in 100 mL, -0.514 and -0.557 °C, ± 0.002; here by the density of 1.0042 and 1.0048 g/mL (CRC
// Handbook, 0.86 and 0.94 %).

#include "../../shipped_catalogue.h"
#include "freezing/freezing_curve.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

double freezingPoint_c(const Mix& mix) { return freezingCurve(mix).freezingPoint->temperature.value; }

double freezingPointOfSalt_c(double salt_g, double water_g)
{
    Mix mix;
    mix.amounts[Constituent::Salt] = {salt_g};
    mix.amounts[Constituent::Water] = {water_g};
    return freezingPoint_c(mix);
}

TEST(Cryoscopy, WholeMilk)
{
    const Ingredient* milk = shippedCatalogue().find("whole milk");
    ASSERT_NE(milk, nullptr);
    Mix mix;
    mix.add(milk->composition, {100.0});
    EXPECT_NEAR(freezingPoint_c(mix), -0.5218, 0.003);
}

TEST(Cryoscopy, CalibrationSolutionsOfSalt)
{
    constexpr double model_k = 0.007;  // docs/models.md
    EXPECT_NEAR(freezingPointOfSalt_c(6.731, 1000.0), -0.400, 0.0005 + model_k);
    EXPECT_NEAR(freezingPointOfSalt_c(0.8654, 100.42 - 0.8654), -0.514, 0.002 + model_k);
    EXPECT_NEAR(freezingPointOfSalt_c(0.9473, 100.48 - 0.9473), -0.557, 0.002 + model_k);
}

}  // namespace
}  // namespace firn
