// Solubility of sucrose in % by mass: the classical table of handbooks (CRC Handbook, after Herzfeld), 2 decimals. Its rows at 15 and 65 °C are misprints
// (66.53 and 75.88 for about 66.33 and 75.18) and are left out. It disagrees with the formula of Bubnik and Kadlec 1995 by 0.51 at 30 °C, where
// the table steps unevenly, and by 0.45 elsewhere.

#include "syrup/solubility.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

struct Row {
    double temperature_c, percent;
};

TEST(SucroseSolubility, AgainstTheHandbooksTable)
{
    for (const Row& row : {Row{0, 64.18}, Row{5, 64.87}, Row{10, 65.58}, Row{20, 67.09}, Row{25, 67.89}, Row{30, 68.80},
             Row{35, 69.55}, Row{40, 70.42}, Row{45, 71.32}, Row{50, 72.25}, Row{55, 73.20}, Row{60, 74.18}, Row{70, 76.22},
             Row{75, 77.27}, Row{80, 78.36}, Row{85, 79.46}, Row{90, 80.61}, Row{95, 81.77}, Row{100, 82.97}}) {
        const auto found = solubilityOf(Constituent::Sucrose, {row.temperature_c});
        EXPECT_NEAR(percent(found->share), row.percent, row.temperature_c == 30 ? 0.52 : 0.45) << row.temperature_c;
    }
}

}  // namespace
}  // namespace firn
