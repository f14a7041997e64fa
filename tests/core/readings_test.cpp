#include "readings/readings.h"

#include "solution/refraction.h"

#include "syrup_mix.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

std::string allText(const Readings& readings)
{
    std::string text;
    for (const Sentence& sentence : readings.disturbances)
        text += english(sentence) + "\n";
    return text;
}

TEST(Readings, PureSyrupIsUndisturbed)
{
    const auto found = readings(syrup(25, 75), {20.0});
    EXPECT_NEAR(*found->refractometer_brix, 25.0, 1e-6);
    EXPECT_TRUE(found->disturbances.empty());
}

TEST(Readings, AlcoholLiftsTheRefractometerAndLowersTheHydrometer)
{
    const auto without = readings(syrup(25, 75), {20.0});
    const auto with = readings(syrup(25, 75, 10), {20.0});
    EXPECT_GT(*with->refractometer_brix, *without->refractometer_brix);
    EXPECT_LT(with->specificGravity_20_20, without->specificGravity_20_20);
    EXPECT_NE(allText(*with).find("Alcohol"), std::string::npos);
}

TEST(Readings, WarmReadsLessWithoutCompensation)
{
    const auto warm = readings(syrup(20, 80), {30.0});
    EXPECT_NEAR(*warm->refractometer_brix, 19.2, 0.15);  // about -0.8 °Bx at 30 °C, from memory of the common correction tables
    EXPECT_LT(warm->density, readings(syrup(20, 80), {20.0})->density);
}

TEST(Readings, MilkFibreAndStabiliserAreSaidToDisturb)
{
    Mix mix = syrup(20, 70);
    mix.milkSolidsNotFat = {8.0};
    mix.amounts[Constituent::Protein] = {3.0};
    mix.amounts[Constituent::Fibre] = {2.0};
    mix.amounts[Constituent::Hydrocolloid] = {0.4};
    const std::string text = allText(*readings(mix, {20.0}));
    for (const char* word : {"Milk", "Fibre", "Stabiliser"})
        EXPECT_NE(text.find(word), std::string::npos) << word;
}

TEST(Readings, NothingToReadInAnEmptyOrDryMix)
{
    EXPECT_FALSE(readings(Mix{}, {20.0}).has_value());
    EXPECT_FALSE(readings(syrup(100, 0), {20.0}).has_value());
}

TEST(Readings, AnIndexBeyondTheScaleHasNoReading)
{
    EXPECT_FALSE(brixOfRefractiveIndex(1.60).has_value());
    EXPECT_EQ(brixOfRefractiveIndex(1.30), 0.0);
}

TEST(Egg, SinksInWaterAndFloatsInStrongSyrup)
{
    EXPECT_FALSE(floatEgg({}, {1.0}).floats);
    EXPECT_EQ(floatEgg({}, {1.0}).exposedWidth.value, 0.0);
    EXPECT_TRUE(floatEgg({}, {1.2}).floats);
    EXPECT_NEAR(floatEgg({}, {1.2}).exposedVolumeShare, 0.1, 1e-12);
    // Half of it shows in a liquid of twice its density; no patch is wider.
    const Millimetres breadth = floatEgg({}, {1.0}).breadth;
    ASSERT_TRUE(liquidFloating({}, breadth).has_value());
    EXPECT_NEAR(liquidFloating({}, breadth)->value, 2.0 * 1.08, 1e-9);
    EXPECT_FALSE(liquidFloating({}, {breadth.value + 0.001}).has_value());
    // 57 g at 1.08 g/mL are 52.778 mL = pi / 6 x 1.3 x breadth^3.
    EXPECT_NEAR(floatEgg({}, {1.0}).length.value, 55.435, 0.001);
    EXPECT_NEAR(floatEgg({}, {1.0}).breadth.value, 42.642, 0.001);
    // A real egg of 57 x 44 mm has 58.1 cm3 (V. G. Narushin, 2005): a spheroid of the same volume and shape is 0.2 % larger.
    const EggFloat real = floatEgg({{58.1 * 1.08}, {1.08}, 57.0 / 44.0}, {1.0});
    EXPECT_NEAR(real.length.value, 57.0, 0.15);
    EXPECT_NEAR(real.breadth.value, 44.0, 0.12);
}

}  // namespace
}  // namespace firn
