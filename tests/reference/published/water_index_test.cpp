// Refractive index of water for the sodium D line against air, 5 decimals: standard values, from memory; at 20 °C also OIV-MA-AS2-02 (1.33299).

#include "solution/refraction.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

TEST(WaterIndex, From0To60Degrees)
{
    struct Row {
        double temperature_c, index;
    };
    for (const Row& row : {Row{0, 1.33395}, Row{5, 1.33388}, Row{10, 1.33369}, Row{15, 1.33339}, Row{20, 1.33299}, Row{25, 1.33250},
             Row{30, 1.33194}, Row{40, 1.33061}, Row{50, 1.32904}, Row{60, 1.32725}})
        EXPECT_NEAR(refractiveIndexOfWater({row.temperature_c}), row.index, 0.00001 + 0.000005) << row.temperature_c;
}

}  // namespace
}  // namespace firn
