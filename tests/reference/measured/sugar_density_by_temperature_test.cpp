// Densities of single sugars in water, kg/m3, 3 decimals, of the NIST TRC ThermoML archive. A. Pal, N. Chauhan and S. Kumar, Thermochim. Acta 509
// (2010) 24-32: glucose, 15 to 35 °C; the same laboratory's sucrose agrees with ICUMSA to 0.04. Riyazuddeen and M. A. Usmani, Thermochim. Acta 527
// (2012) 112-117: glucose 1.13 mol/kg and sucrose 1.274 mol/kg of water, 25 to 50 °C; their sucrose strays from ICUMSA by up to 0.5.
// The model takes glucose to expand as sucrose does.

#include "../solutions.h"
#include "solution/volume.h"

#include <gtest/gtest.h>
#include <span>

namespace firn {
namespace {

struct Row {
    double mass_percent, temperature_c, density_kg_m3;
};

constexpr Row palGlucose[] = {{2.060, 15, 1007.045}, {2.060, 20, 1006.081}, {2.060, 25, 1004.858}, {2.060, 30, 1003.409},
    {2.060, 35, 1001.751}, {3.960, 15, 1014.534}, {3.960, 20, 1013.517}, {3.960, 25, 1012.251}, {3.960, 30, 1010.764},
    {3.960, 35, 1009.084}, {5.910, 15, 1022.208}, {5.910, 20, 1021.131}, {5.910, 25, 1019.812}, {5.910, 30, 1018.273},
    {5.910, 35, 1016.540}};
constexpr Row riyazuddeenGlucose[] = {{16.916, 25, 1065.068}, {16.916, 30, 1063.297}, {16.916, 35, 1061.359},
    {16.916, 40, 1059.245}, {16.916, 45, 1056.983}, {16.916, 50, 1054.253}};
constexpr Row riyazuddeenSucrose[] = {{30.363, 25, 1127.374}, {30.363, 30, 1125.373}, {30.363, 35, 1123.197},
    {30.363, 40, 1120.735}, {30.363, 45, 1118.184}, {30.363, 50, 1115.445}};

constexpr double ofPal_kg_m3 = 0.05, ofRiyazuddeen_kg_m3 = 0.5;
constexpr double ofModel_kg_m3 = 0.5;  // glucose: docs/models.md

void expectDensities(Constituent solute, std::span<const Row> rows, double bound_kg_m3)
{
    for (const Row& row : rows)
        EXPECT_NEAR(
            1000.0 * densityOf(solutionOf(solute, row.mass_percent), {row.temperature_c})->value, row.density_kg_m3, bound_kg_m3)
            << row.mass_percent << " % at " << row.temperature_c << " °C";
}

TEST(SugarDensityByTemperature, GlucoseAfterPal) { expectDensities(Constituent::Glucose, palGlucose, ofPal_kg_m3 + ofModel_kg_m3); }
TEST(SugarDensityByTemperature, GlucoseAfterRiyazuddeen)
{
    expectDensities(Constituent::Glucose, riyazuddeenGlucose, ofRiyazuddeen_kg_m3 + ofModel_kg_m3);
}
TEST(SugarDensityByTemperature, SucroseAfterRiyazuddeen)
{
    expectDensities(Constituent::Sucrose, riyazuddeenSucrose, ofRiyazuddeen_kg_m3);
}

// What the model leaves out is how much faster glucose expands than sucrose: between 15 and 35 °C less than 0.2 kg/m3.
TEST(SugarDensityByTemperature, GlucoseExpandsAsSucroseDoes)
{
    const auto found = [](double t_c) { return 1000.0 * densityOf(solutionOf(Constituent::Glucose, 5.910), {t_c})->value; };
    EXPECT_NEAR(found(15.0) - found(35.0), 1022.208 - 1016.540, 0.2);
}

}  // namespace
}  // namespace firn
