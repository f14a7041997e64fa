#include "readings/egg_kinds.h"
#include "readings/sugar_by_boiling.h"
#include "readings/sugar_by_egg.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

Mix syrup(double sugar_percent)
{
    Mix mix;
    mix.amounts[Constituent::Sucrose] = {sugar_percent};
    mix.amounts[Constituent::Water] = {100.0 - sugar_percent};
    return mix;
}

bool contains(const Sentence& sentence, std::string_view part) { return english(sentence).find(part) != std::string::npos; }

TEST(EggKinds, ClassesByMass)
{
    const auto eu = [](double grams) { return sizeOf({grams}, euEggSizes()).label; };
    EXPECT_EQ(eu(52.9), "S");
    EXPECT_EQ(eu(53.0), "M");
    EXPECT_EQ(eu(63.0), "L");
    EXPECT_EQ(eu(73.0), "XL");
    const auto us = [](double grams) { return sizeOf({grams}, usEggSizes()).label; };
    EXPECT_EQ(us(57.0), "Large");
    EXPECT_EQ(us(56.6), "Medium");  // 24 oz a dozen are 56.7 g each
    EXPECT_EQ(us(71.0), "Jumbo");
    EXPECT_EQ(us(20.0), "Peewee");
}

TEST(EggKinds, OlderIsLighter)
{
    const auto ages = eggAges();
    for (const EggAge& age : ages) {
        EXPECT_LT(age.least, age.density);
        EXPECT_GT(age.most, age.density);
        EXPECT_GE(age.least.value, 1.03);
        EXPECT_LE(age.most.value, 1.09);
    }
    EXPECT_GT(ages[0].density, ages[1].density);
    EXPECT_GT(ages[1].density, ages[2].density);
    EXPECT_GT(ages[2].density, ages[3].density);
}

TEST(SugarByEgg, RangeOfAnUnknownEggIsWide)
{
    const auto range = sugarByEgg({.patchWidth = {25.0}});
    ASSERT_TRUE(range.has_value());
    EXPECT_LT(range->least, range->likely);
    EXPECT_LT(range->likely, range->most);
    EXPECT_GT(percent(range->most) - percent(range->least), 10.0);  // 0.06 g/mL of egg are worth some 13 °Bx
    const auto fresh = sugarByEgg({.patchWidth = {25.0}, .age = eggAges().front()});
    EXPECT_LT((fresh->most - fresh->least).value, 0.5 * (range->most - range->least).value);
    // The freshest egg would need more sugar than there can be to show so much.
    const auto widest = sugarByEgg({.patchWidth = {40.0}});
    ASSERT_TRUE(widest.has_value());
    EXPECT_NEAR(percent(widest->most), 84.0, 1e-6);
    EXPECT_LT(percent(widest->likely), 84.0);
    EXPECT_NEAR(asEstimate(*range).sugar_sd.value, (range->most - range->least).value / 2.0, 1e-12);
}

TEST(SugarByEgg, WhatCannotBeIsSaid)
{
    EXPECT_TRUE(contains(sugarByEgg({.patchWidth = {0.0}}).error(), "sunk"));
    EXPECT_TRUE(contains(sugarByEgg({.patchWidth = {42.5}}).error(), "No syrup is so dense"));
    EXPECT_TRUE(contains(sugarByEgg({.patchWidth = {60.0}}).error(), "wider than an egg of 57 g"));
    EXPECT_TRUE(contains(sugarByEgg({.patchWidth = {20.0}, .mass = {0.0}}).error(), "mass"));
}

RC_GTEST_PROP(SugarByBoiling, LeadsBackToTheSugar, ())
{
    const double sugar = *rc::gen::inRange(10, 800) / 10.0;
    const Hectopascals pressure{double(*rc::gen::inRange(700, 1050))};
    const auto found = sugarByBoiling({boilingPointOf(syrup(sugar), pressure)->temperature, pressure});
    RC_ASSERT(found.has_value());
    RC_ASSERT(std::abs(percent(found->sugar) - sugar) < 1e-4);
    RC_ASSERT(found->sugar_sd.value > 0.0);
}

TEST(SugarByBoiling, SaysLittleOfWeakSyrupsAndMoreOfStrongOnes)
{
    const auto sd_percent = [](double sugar) {
        return percent(sugarByBoiling({boilingPointOf(syrup(sugar))->temperature})->sugar_sd);
    };
    EXPECT_GT(sd_percent(20.0), 10.0);
    EXPECT_LT(sd_percent(65.0), 3.0);
}

TEST(SugarByBoiling, WhatCannotBeIsSaid)
{
    EXPECT_TRUE(contains(sugarByBoiling({{95.0}}).error(), "even without sugar"));
    EXPECT_TRUE(contains(sugarByBoiling({{125.0}}).error(), "where the tables end with 80 % sugar"));
    EXPECT_TRUE(contains(sugarByBoiling({{95.0}, {30.0}}).error(), "pressure"));
    EXPECT_TRUE(sugarByBoiling({{95.0}, pressureAtAltitude(1500.0)}).has_value());  // where water boils at 95.0 °C
    Mix spirit = syrup(20.0);
    spirit.amounts[Constituent::Ethanol] = {5.0};
    EXPECT_TRUE(contains(sugarByBoiling({{101.0}}, spirit).error(), "alcohol"));
    EXPECT_TRUE(contains(boilingPointOf(syrup(90.0)).error(), "beyond the tables"));
    EXPECT_TRUE(contains(boilingPointOf(Mix{}).error(), "no water"));
}

TEST(SugarByBoiling, OtherThingsOfARecipeRaiseTheBoilingPointToo)
{
    Mix base = syrup(60.0);
    base.amounts[Constituent::Salt] = {2.0};
    const Celsius boils = boilingPointOf(base)->temperature;
    EXPECT_NEAR(sugarByBoiling({boils}, base)->sugar.value, 60.0 / 102.0, 1e-6);
    EXPECT_GT(percent(sugarByBoiling({boils})->sugar), 61.0);
}

}  // namespace
}  // namespace firn
