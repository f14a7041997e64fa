// H. D. Goff and R. W. Hartel, Ice Cream, 7th ed. (Springer 2013), Table 6.1, after M. Leighton, J. Dairy Sci. 10 (1927) 300-308, and Pickering 1891:
// freezing-point depression in K, 2 decimals, of sucrose in g per 100 g of water, all 60 rows. And the book's factors to sucrose by mass: 1 for
// disaccharides, 1.9 for monosaccharides, 342.3 over the molar mass for what is smaller or longer, each ion of salt counted.

#include "freezing/textbook.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

struct Row {
    double sucrose_per100gWater, depression_k;
};

constexpr Row rows[] = {{3, 0.18}, {6, 0.35}, {9, 0.53}, {12, 0.72}, {15, 0.90}, {18, 1.10}, {21, 1.29}, {24, 1.47}, {27, 1.67},
    {30, 1.86}, {33, 2.03}, {36, 2.21}, {39, 2.40}, {42, 2.60}, {45, 2.78}, {48, 2.99}, {51, 3.20}, {54, 3.42}, {57, 3.63},
    {60, 3.85}, {63, 4.10}, {66, 4.33}, {69, 4.54}, {72, 4.77}, {75, 5.00}, {78, 5.26}, {81, 5.53}, {84, 5.77}, {87, 5.99},
    {90, 6.23}, {93, 6.50}, {96, 6.80}, {99, 7.04}, {102, 7.32}, {105, 7.56}, {108, 7.80}, {111, 8.04}, {114, 8.33}, {117, 8.62},
    {120, 8.92}, {123, 9.19}, {126, 9.45}, {129, 9.71}, {132, 9.96}, {135, 10.22}, {138, 10.47}, {141, 10.72}, {144, 10.97},
    {147, 11.19}, {150, 11.41}, {153, 11.63}, {156, 11.88}, {159, 12.14}, {162, 12.40}, {165, 12.67}, {168, 12.88}, {171, 13.08},
    {174, 13.28}, {177, 13.48}, {180, 13.68}};

TEST(LeightonTable, EveryRow)
{
    for (const Row& row : rows)
        EXPECT_NEAR(
            textbookFreezing({{row.sucrose_per100gWater}, {0.0}, {100.0}})->depressionOfSugars.value, row.depression_k, 1e-9)
            << row.sucrose_per100gWater;
}

TEST(LeightonTable, HalfwayBetweenTwoRowsIsTheirMean)
{
    for (std::size_t i = 1; i < std::size(rows); ++i) {
        const double between = (rows[i - 1].sucrose_per100gWater + rows[i].sucrose_per100gWater) / 2.0;
        EXPECT_NEAR(textbookFreezing({{between}, {0.0}, {100.0}})->depressionOfSugars.value,
            (rows[i - 1].depression_k + rows[i].depression_k) / 2.0, 1e-9)
            << between;
    }
}

TEST(LeightonTable, WaterFreezesAtZero) { EXPECT_EQ(textbookFreezing({{0.0}, {0.0}, {100.0}})->freezingPoint.value, 0.0); }

TEST(LeightonTable, FactorsToSucrose)
{
    using enum Constituent;
    struct Factor {
        Constituent constituent;
        double sucrosePerGram;
    };
    for (const auto& [constituent, sucrosePerGram] : {Factor{Sucrose, 1.0}, {Lactose, 1.0}, {Maltose, 1.0}, {Trehalose, 1.0},
             {Maltitol, 1.0}, {Glucose, 1.9}, {Fructose, 1.9}, {Galactose, 1.9}, {Sorbitol, 1.9}, {Oligosaccharides, 0.679},
             {Dextrins, 0.0856}, {Xylitol, 2.250}, {Erythritol, 2.803}, {Glycerol, 3.717}, {Acid, 1.782}, {Ethanol, 7.430},
             {Salt, 11.715}, {Water, 0.0}, {Fat, 0.0}, {Protein, 0.0}, {Starch, 0.0}, {Fibre, 0.0}, {Hydrocolloid, 0.0}}) {
        Mix mix;
        mix.amounts[constituent] = {10.0};
        EXPECT_NEAR(textbookMix(mix).sucroseEquivalents.value, 10.0 * sucrosePerGram, 0.006) << static_cast<int>(constituent);
    }
}

// 2.37 K where the solids-not-fat of milk and whey weigh as much as the water.
TEST(LeightonTable, SaltsOfMilk)
{
    EXPECT_NEAR(textbookFreezing({{0.0}, {60.0}, {60.0}})->depressionOfSalts.value, 2.37, 1e-9);
    EXPECT_NEAR(textbookFreezing({{0.0}, {12.0}, {60.0}})->depressionOfSalts.value, 0.474, 1e-9);
}

}  // namespace
}  // namespace firn
