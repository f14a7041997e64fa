// °Bx, specific gravity and °Bé. SG 20/20: USDA Agricultural Marketing Service, Sucrose Conversion Table, file code 135-A-50 (after NBS Circular
// 440), 5 decimals. °Bé, modulus 145: F. A. Mohos, Confectionery and Chocolate Engineering (Wiley 2010), Table A2.1, 1 decimal; its rows at 50,
// 55 and 75 °Bx stray by 0.2 from the definition and are left out; worked examples there have 2 decimals. °Bx from SG 20/20, 0 to 40 °Bx: the
// cubic equation fitted to NBS Circular 440 that encyclopaedias print.

#include "../solutions.h"
#include "readings/hydrometer.h"
#include "readings/readings.h"

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

constexpr Row baumeRows[] = {{10, 5.57}, {12.5, 6.96}, {15, 8.34}, {60, 32.49}, {62.5, 33.77}, {65, 35.04}};

TEST(BrixScales, BaumeToTwoDecimals)
{
    for (const Row& row : baumeRows)
        EXPECT_NEAR(readings(solutionOf(Constituent::Sucrose, row.brix), {20.0})->baume, row.value, 0.05) << row.brix;
}

// °Bé goes by the ratio of true densities; weighed in air both lose 0.0012 g/mL.
TEST(BrixScales, SpecificGravityBehindBaume)
{
    constexpr double bound = 0.0003;
    constexpr double printed = 0.00006;  // half of 0.01 °Bé
    for (const Row& row : baumeRows) {
        const double gravity = 145.0 / (145.0 - row.value);
        const double inAir = (gravity * 0.9982 - 0.0012) / (0.9982 - 0.0012);
        EXPECT_NEAR(readings(solutionOf(Constituent::Sucrose, row.brix), {20.0})->specificGravity_20_20, inAir, bound + printed)
            << row.brix;
    }
}

// Its densities are F. Plato's of 1900, to which ICUMSA adds 0.0001 at 40 °Bx.
TEST(BrixScales, SpecificGravityOfTheEquationForNbsCircular440)
{
    const auto brixBy = [](double s) { return ((182.46007 * s - 775.68212) * s + 1262.7794) * s - 669.56218; };
    for (double brix = 0.0; brix <= 40.0; brix += 2.0) {
        const double gravity = readings(solutionOf(Constituent::Sucrose, brix), {20.0})->specificGravity_20_20;
        const double perBrix = (brixBy(gravity + 1e-4) - brixBy(gravity)) / 1e-4;
        EXPECT_NEAR((brixBy(gravity) - brix) / perBrix, 0.0, 0.0002) << brix;
    }
}

TEST(BrixScales, HydrometersReadSucroseAsItIs)
{
    for (double brix = 0.0; brix <= 70.0; brix += 2.5) {
        const Mix mix = solutionOf(Constituent::Sucrose, brix);
        EXPECT_NEAR(*read(wholeScale(HydrometerScale::Brix), mix, {20.0})->value, brix, 1e-6);
        EXPECT_NEAR(*read(wholeScale(HydrometerScale::Brix, Calibration::At60F), mix, {(60.0 - 32.0) / 1.8})->value, brix, 1e-6);
    }
}

TEST(BrixScales, RefractometerReadsSucroseAsItIs)
{
    for (double brix = 0.0; brix <= 84.0; brix += 1.5)
        EXPECT_NEAR(*readings(solutionOf(Constituent::Sucrose, brix), {20.0})->refractometer_brix, brix, 1e-6);
}

}  // namespace
}  // namespace firn
