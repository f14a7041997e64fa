// B. Lowe, Experimental Cookery: solubility of lactose (Hudson's final solubility, anhydrous) in g per 100 g of water and % by mass, 1 decimal; of dextrose
// (Combs and Bele), 2 points: 83.1 g in 100 g of water at 20 °C, 281.1 g at 63 °C. Lactose at 20 °C, 18.2 g per 100 g of water: P. F. Fox and P. L. H.
// McSweeney's textbook figure.

#include "syrup/solubility.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

struct Row {
    double temperature_c, g_per100gWater, percent;
};

TEST(LoweSolubility, Lactose)
{
    for (const Row& row : {Row{0, 11.9, 10.6}, Row{15, 16.9, 14.5}, Row{25, 21.6, 17.8}, Row{39, 31.5, 24.0}, Row{49, 42.4, 29.8},
             Row{64, 65.8, 39.7}, Row{74, 86.2, 46.3}, Row{89, 139.2, 58.2}}) {
        const auto found = solubilityOf(Constituent::Lactose, {row.temperature_c});
        EXPECT_NEAR(100.0 * found->g_perGramWater, row.g_per100gWater, 0.05) << row.temperature_c;
        EXPECT_NEAR(percent(found->share), row.percent, 0.05) << row.temperature_c;
    }
    EXPECT_NEAR(100.0 * solubilityOf(Constituent::Lactose, {20.0})->g_perGramWater, 18.2, 1.0);
}

// The model's table, from memory, lies 2 % by mass above both of Combs and Bele's figures; its stated uncertainty covers that.
TEST(LoweSolubility, DextroseWithinTheStatedUncertainty)
{
    for (const Row& row : {Row{20, 83.1, 0}, Row{63, 281.1, 0}}) {
        const auto found = solubilityOf(Constituent::Glucose, {row.temperature_c});
        EXPECT_NEAR(percent(found->share), 100.0 * row.g_per100gWater / (100.0 + row.g_per100gWater), percent(found->uncertainty))
            << row.temperature_c;
    }
}

}  // namespace
}  // namespace firn
