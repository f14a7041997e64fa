// Scales of sugar syrups from 0 to 70 °Bx. SG 20/20: CRC Handbook of Chemistry and Physics, 102nd ed. (2021), densities of sucrose solutions at 20 °C, 4
// decimals, weighed in air of 1.2 mg/mL; and from 0 to 40 °Bx the cubic that the encyclopaedia article “Brix” gives as fitted to NBS Circular 440
// (1942), which prints 5 decimals; 0.025 °Bx is 0.0001 in SG. °Bé, modulus 145: F. A. Mohos, Confectionery and Chocolate Engineering (Wiley 2010), worked examples of 2 decimals.

#include "syrup/scales.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

struct Row {
    double brix, value;
};

constexpr Row crcDensity_g_mL[] = {{0, 0.9982}, {5, 1.0178}, {10, 1.0381}, {15, 1.0592}, {20, 1.0810}, {26, 1.1082}, {30, 1.1270},
    {36, 1.1562}, {40, 1.1765}, {46, 1.2079}, {50, 1.2295}, {60, 1.2864}, {70, 1.3472}};

double specificGravityOf(double density_g_mL) { return (density_g_mL - 0.0012) / (0.9982 - 0.0012); }

TEST(SyrupScales, SpecificGravityAgainstCrcDensities)
{
    for (const Row& row : crcDensity_g_mL)
        EXPECT_NEAR(*valueOn(SyrupScale::SpecificGravity, fromPercent(row.brix)), specificGravityOf(row.value), 0.0003) << row.brix;
}

TEST(SyrupScales, BaumeAgainstCrcDensities)
{
    for (const Row& row : crcDensity_g_mL)
        EXPECT_NEAR(*valueOn(SyrupScale::Baume, fromPercent(row.brix)), 145.0 * (1.0 - 1.0 / specificGravityOf(row.value)), 0.05)
            << row.brix;
}

TEST(SyrupScales, BaumeAgainstMohos)
{
    for (const Row& row : {Row{10, 5.57}, Row{12.5, 6.96}, Row{15, 8.34}, Row{60, 32.49}, Row{62.5, 33.77}, Row{65, 35.04}})
        EXPECT_NEAR(*valueOn(SyrupScale::Baume, fromPercent(row.brix)), row.value, 0.05) << row.brix;
}

TEST(SyrupScales, BrixOfSpecificGravityAgainstTheFitToCircular440)
{
    for (double sg = 1.0; sg <= 1.178; sg += 0.005) {
        const double fit_brix = 182.46007 * sg * sg * sg - 775.68212 * sg * sg + 1262.7794 * sg - 669.56218;
        EXPECT_NEAR(percent(*strengthFrom(SyrupScale::SpecificGravity, sg)), fit_brix, 0.025) << sg;
    }
}

TEST(SyrupScales, GramsPerLitreAgainstCrcDensities)
{
    for (const Row& row : crcDensity_g_mL)
        EXPECT_NEAR(*valueOn(SyrupScale::GramsPerLitre, fromPercent(row.brix)), 10.0 * row.brix * row.value, 0.3) << row.brix;
}

// By definition: 1000 mL of water at 20 °C weigh 998.2 g; a cup of sugar 200 g (USDA SR28, NDB 19335), a cup of water 236.2 g.
TEST(SyrupScales, ByDefinition)
{
    for (const double brix : {0.0, 10.0, 33.3, 50.0, 66.7, 90.0}) {
        const double ratio = brix / (100.0 - brix);
        EXPECT_NEAR(*valueOn(SyrupScale::Brix, fromPercent(brix)), brix, 1e-9);
        EXPECT_NEAR(*valueOn(SyrupScale::PartsByMass, fromPercent(brix)), ratio, 1e-9 * (1.0 + ratio));
        EXPECT_NEAR(*valueOn(SyrupScale::GramsPerLitreOfWater, fromPercent(brix)), 998.203 * ratio, 0.001 * (1.0 + ratio));
        EXPECT_NEAR(*valueOn(SyrupScale::PartsByVolume, fromPercent(brix)), 236.163 / 200.0 * ratio, 1e-5 * (1.0 + ratio));
    }
}

TEST(SyrupScales, EachEndsWhereItsSourceDoes)
{
    for (const SyrupScaleFacts& facts : allSyrupScales()) {
        const bool isOfDensity = facts.scale == SyrupScale::SpecificGravity || facts.scale == SyrupScale::Baume
                                 || facts.scale == SyrupScale::GramsPerLitre;
        const double end_percent = isOfDensity ? 75.0 : 95.0;
        EXPECT_TRUE(valueOn(facts.scale, fromPercent(end_percent - 0.01)).has_value()) << facts.name;
        EXPECT_FALSE(valueOn(facts.scale, fromPercent(end_percent + 0.01)).has_value()) << facts.name;
    }
}

}  // namespace
}  // namespace firn
