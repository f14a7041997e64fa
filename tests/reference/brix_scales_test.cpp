// °Bx, specific gravity and °Bé. SG 20/20: USDA Agricultural Marketing Service, Sucrose Conversion Table, file code 135-A-50 (after NBS Circular
// 440), 5 decimals. °Bé, modulus 145: F. A. Mohos, Confectionery and Chocolate Engineering (Wiley 2010), Table A2.1, 1 decimal; its rows at 50,
// 55 and 75 °Bx stray by 0.2 from the definition and are left out.

#include "readings/readings.h"
#include "solutions.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

struct Row {
    double brix, value;
};

TEST(BrixScales, SpecificGravity)
{
    for (const Row& row : {Row{0.0, 1.00000}, Row{0.3, 1.00117}, Row{3.8, 1.01490}, Row{3.9, 1.01529}, Row{4.0, 1.01569},
             Row{4.1, 1.01609}, Row{7.6, 1.03017}, Row{7.7, 1.03058}, Row{7.8, 1.03098}, Row{7.9, 1.03139}})
        EXPECT_NEAR(readings(solutionOf(Constituent::Sucrose, row.brix), {20.0})->specificGravity_20_20, row.value, 0.00003)
            << row.brix;
}

TEST(BrixScales, Baume)
{
    for (const Row& row : {Row{5, 2.8}, Row{10, 5.6}, Row{15, 8.3}, Row{20, 11.1}, Row{25, 13.8}, Row{30, 16.6}, Row{35, 19.3},
             Row{40, 22.0}, Row{45, 24.6}, Row{60, 32.5}, Row{65, 35.0}, Row{70, 37.6}})
        EXPECT_NEAR(readings(solutionOf(Constituent::Sucrose, row.brix), {20.0})->baume, row.value, 0.1) << row.brix;
}

TEST(BrixScales, RefractometerReadsSucroseAsItIs)
{
    for (double brix = 0.0; brix <= 84.0; brix += 1.5)
        EXPECT_NEAR(*readings(solutionOf(Constituent::Sucrose, brix), {20.0})->refractometer_brix, brix, 1e-6);
}

}  // namespace
}  // namespace firn
