// Weight classes of eggs. Commission Regulation (EC) No 589/2008, article 4: S below 53 g, M from 53, L from 63, XL from 73. USDA AMS 56: least mass of a
// dozen, oz: Jumbo 30, Extra large 27, Large 24, Medium 21, Small 18, Peewee 15. Densities by age, g/mL: A. L. and A. J. Romanoff, The Avian Egg
// (1949), from memory: 1.085 to 1.09 when laid, lighter by 0.0017 a day, 1.03 at the least.

#include "readings/egg_kinds.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

TEST(EggClasses, BeginWhereTheRegulationSays)
{
    struct Edge {
        double from_g;
        const char* below;
        const char* above;
    };
    for (const Edge& edge : {Edge{53.0, "S", "M"}, {63.0, "M", "L"}, {73.0, "L", "XL"}}) {
        EXPECT_EQ(sizeOf({edge.from_g - 0.01}, euEggSizes()).label, edge.below);
        EXPECT_EQ(sizeOf({edge.from_g}, euEggSizes()).label, edge.above);
    }
    constexpr double ounce_g = 453.59237 / 16.0;
    for (const Edge& edge : {Edge{18.0, "Peewee", "Small"}, {21.0, "Small", "Medium"}, {24.0, "Medium", "Large"},
             {27.0, "Large", "Extra large"}, {30.0, "Extra large", "Jumbo"}}) {
        const double each_g = edge.from_g * ounce_g / 12.0;
        EXPECT_EQ(sizeOf({each_g - 0.01}, usEggSizes()).label, edge.below);
        EXPECT_EQ(sizeOf({each_g + 0.0001}, usEggSizes()).label, edge.above);
    }
}

// The middle of each class; half a class beyond its bound for those open at one end.
TEST(EggClasses, UsualMass)
{
    const double eu_g[] = {48.0, 58.0, 68.0, 78.0};
    for (std::size_t i = 0; i < std::size(eu_g); ++i)
        EXPECT_EQ(usualMass(i, euEggSizes()).value, eu_g[i]);
    const double us_g[] = {39.0, 46.0, 53.0, 60.0, 67.0, 74.0};
    for (std::size_t i = 0; i < std::size(us_g); ++i)
        EXPECT_EQ(usualMass(i, usEggSizes()).value, us_g[i]);
}

TEST(EggClasses, DensityByAge)
{
    struct Age {
        double likely, least, most;
    };
    constexpr Age ages[] = {
        {1.087, 1.083, 1.090}, {1.080, 1.070, 1.086}, {1.065, 1.050, 1.080}, {1.045, 1.030, 1.060}, {1.070, 1.030, 1.090}};
    ASSERT_EQ(eggAges().size(), std::size(ages));
    for (std::size_t i = 0; i < std::size(ages); ++i) {
        EXPECT_EQ(eggAges()[i].density.value, ages[i].likely) << eggAges()[i].label;
        EXPECT_EQ(eggAges()[i].least.value, ages[i].least) << eggAges()[i].label;
        EXPECT_EQ(eggAges()[i].most.value, ages[i].most) << eggAges()[i].label;
    }
}

}  // namespace
}  // namespace firn
