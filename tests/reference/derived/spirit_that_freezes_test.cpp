// Ethanol that leaves 40 % of ice at -18 °C in a mix of sucrose, ethanol and water: worked out outside this project from the product of sucrose's
// and ethanol's water activities (Starzak and Peacock; CRC Handbook), % by mass, 1 decimal. A tenth of a per cent of ethanol is worth some 0.3
// points of ice, and the mixing rule as much again.

#include "../solutions.h"
#include "freezing/freezing_curve.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

struct Row {
    double sugar_percent, ethanol_percent;
};

constexpr Row rows[] = {{10, 13.0}, {20, 9.3}, {25.5, 7.1}, {30, 5.2}, {35.5, 2.6}};

TEST(SpiritThatFreezes, LeavesTwoFifthsOfIce)
{
    for (const Row& row : rows) {
        Mix mix;
        mix.amounts[Constituent::Sucrose] = {row.sugar_percent};
        mix.amounts[Constituent::Ethanol] = {row.ethanol_percent};
        mix.amounts[Constituent::Water] = {100.0 - row.sugar_percent - row.ethanol_percent};
        EXPECT_NEAR(freezingCurve(mix).iceAt({-18.0}).value, 0.40, 0.02) << row.sugar_percent;
    }
}

}  // namespace
}  // namespace firn
