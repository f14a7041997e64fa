#include "syrup/pearson.h"
#include "syrup/scales.h"
#include "syrup/solubility.h"
#include "syrup/syrup.h"

#include "solution/sucrose.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

MassFraction anyShare(int low_permille, int high_permille) { return {*rc::gen::inRange(low_permille, high_permille + 1) / 1000.0}; }

RC_GTEST_PROP(PearsonSquare, ClosesItsMassBalance, ())
{
    const MassFraction first = anyShare(0, 1000);
    const MassFraction second = anyShare(0, 1000);
    RC_PRE(first != second);
    const double place = *rc::gen::inRange(0, 1001) / 1000.0;
    const MassFraction wanted = first < second ? first + (second - first) * place : second + (first - second) * place;
    const Grams total{*rc::gen::inRange(1, 1000000) / 7.0};
    const auto blend = pearsonSquare(first, second, wanted, total);
    RC_ASSERT(blend.has_value());
    RC_ASSERT(blend->first.value >= -1e-9 && blend->second.value >= -1e-9);
    RC_ASSERT(std::abs((blend->first + blend->second - total).value) <= 1e-9 * total.value);
    const double inBoth_g = blend->first.value * first.value + blend->second.value * second.value;
    RC_ASSERT(std::abs(inBoth_g - total.value * wanted.value) <= 1e-9 * total.value);
    RC_ASSERT(std::abs(blend->partsOfFirst * blend->second.value - blend->partsOfSecond * blend->first.value)
              <= 1e-9 * total.value * 100.0);
}

RC_GTEST_PROP(PearsonSquare, RefusesWhatLiesOutside, ())
{
    const MassFraction first = anyShare(100, 900);
    const MassFraction second = anyShare(100, 900);
    RC_ASSERT(!pearsonSquare(first, second, std::max(first, second) + MassFraction{0.001}, {100.0}).has_value());
    RC_ASSERT(!pearsonSquare(first, second, std::min(first, second) - MassFraction{0.001}, {100.0}).has_value());
}

TEST(PearsonSquare, SaysWhatIsWrong)
{
    EXPECT_EQ(english(pearsonSquare({0.5}, {0.65}, {0.7}, {100.0}).error()),
        "70.0 % cannot be mixed from 50.0 % and 65.0 %. Ask for a strength between them, or take a weaker or stronger one.");
    EXPECT_EQ(english(pearsonSquare({0.5}, {0.5}, {0.5}, {100.0}).error()), "Both have 50.0 %: mixed in any way they stay so.");
    EXPECT_FALSE(pearsonSquare({0.5}, {0.65}, {0.6}, {0.0}).has_value());
    EXPECT_FALSE(pearsonSquare({-0.1}, {0.65}, {0.6}, {1.0}).has_value());
    EXPECT_FALSE(pearsonSquare({0.1}, {0.65}, {std::nan("")}, {1.0}).has_value());
    EXPECT_FALSE(pearsonSquare({0.1}, {0.65}, {0.6}, {std::numeric_limits<double>::infinity()}).has_value());
}

RC_GTEST_PROP(AmountToReach, ReachesIt, ())
{
    const MassFraction now = anyShare(0, 1000);
    const MassFraction added = anyShare(0, 1000);
    const MassFraction wanted = anyShare(0, 1000);
    const Grams mass{*rc::gen::inRange(1, 1000000) / 7.0};
    const auto amount = amountToReach(wanted, mass, now, added);
    const bool isBetween = (wanted.value - now.value) * (added.value - wanted.value) > 0.0;
    RC_ASSERT(amount.has_value() == (isBetween || wanted == now));
    if (amount) {
        const double sugar_g = mass.value * now.value + amount->value * added.value;
        RC_ASSERT(std::abs(sugar_g / (mass + *amount).value - wanted.value) <= 1e-12);
    }
}

RC_GTEST_PROP(Syrup, MadeToAVolumeHasThatVolumeAndStrength, ())
{
    const MassFraction strength = anyShare(0, 750);
    const Millilitres volume{*rc::gen::inRange(1, 100000) / 3.0};
    const Celsius at{static_cast<double>(*rc::gen::inRange(0, 101))};
    const auto made = syrupOf(strength, volume, at);
    RC_ASSERT(made.has_value());
    const Grams mass = made->sugar + made->water;
    RC_ASSERT(std::abs(made->sugar / mass - strength.value) <= 1e-12);
    RC_ASSERT(std::abs(mass.value / sucroseSolutionDensity(strength, at).value - volume.value) <= 1e-9 * volume.value);
}

TEST(Syrup, ContentsAddUpToIt)
{
    const auto [sugar, water] = contentsOf({400.0}, {0.65});
    EXPECT_DOUBLE_EQ(sugar.value, 260.0);
    EXPECT_DOUBLE_EQ(water.value, 140.0);
}

TEST(Syrup, BeyondSaturationWarns)
{
    EXPECT_FALSE(syrupOf({0.60}, {1000.0}, {20.0})->warning.has_value());
    EXPECT_TRUE(syrupOf({0.66}, {1000.0}, {20.0})->warning.has_value());
    EXPECT_TRUE(syrupOf({0.70}, {1000.0}, {20.0})->warning.has_value());
    EXPECT_FALSE(syrupOf({0.70}, {1000.0}, {60.0})->warning.has_value());
    EXPECT_FALSE(syrupOf({0.76}, {1000.0}, {20.0}).has_value());
    EXPECT_FALSE(syrupOf({0.5}, {1000.0}, {101.0}).has_value());
    EXPECT_FALSE(syrupOf({0.5}, {0.0}, {20.0}).has_value());
}

RC_GTEST_PROP(Syrup, BoilingKeepsTheSugarAndBothWaysAgree, ())
{
    const MassFraction now = anyShare(1, 940);
    const MassFraction wanted = std::min(now + (strongestSyrup - now) * (*rc::gen::inRange(0, 1001) / 1000.0), strongestSyrup);
    const Grams mass{*rc::gen::inRange(1, 1000000) / 7.0};
    const auto toStrength = boiledTo(wanted, mass, now);
    RC_ASSERT(toStrength.has_value());
    RC_ASSERT(std::abs(toStrength->mass.value * wanted.value - mass.value * now.value) <= 1e-9 * mass.value);
    RC_ASSERT(std::abs((toStrength->mass + toStrength->waterDrivenOff - mass).value) <= 1e-9 * mass.value);
    const Grams left = mass * (*rc::gen::inRange(1, 1001) / 1000.0);
    if (const auto toMass = boiledTo(left, mass, now)) {
        const auto back = boiledTo(std::min(toMass->strength, strongestSyrup), mass, now);
        RC_ASSERT(std::abs((back->mass - left).value) <= 1e-9 * mass.value);
    } else {
        RC_ASSERT(now.value * mass.value / left.value > 0.95 - 1e-9);
    }
    const auto diluted = dilutedTo(now, toStrength->mass, wanted);
    RC_ASSERT(diluted.has_value());
    RC_ASSERT(std::abs((diluted->water - toStrength->waterDrivenOff).value) <= 1e-9 * mass.value);
}

TEST(Syrup, RefusalsNameTheWayOut)
{
    // Browne's table of 1912 prints an elevation of 1.8 K at 50 %, the activity model of Starzak and Peacock a little more.
    const auto boiled = boiledTo(MassFraction{0.5}, {1000.0}, {0.2});
    ASSERT_TRUE(boiled && boiled->boilsAt);
    EXPECT_NEAR(boiled->boilsAt->elevation.value, 1.8, 0.4);
    EXPECT_FALSE(boiledTo(MassFraction{0.9}, {1000.0}, {0.2})->boilsAt);
    EXPECT_EQ(english(boiledTo(MassFraction{0.4}, {1000.0}, {0.5}).error()),
        "Boiling makes 50.0 % stronger, never 40.0 %. Add water instead.");
    EXPECT_EQ(english(boiledTo(Grams{1100.0}, {1000.0}, {0.5}).error()), "Boiling cannot leave 1100 g of 1000 g. Weigh again.");
    EXPECT_EQ(english(boiledTo(Grams{400.0}, {1000.0}, {0.5}).error()),
        "400 g of it would be candy. Stop at 527 g or more, which is 95.0 %.");
    EXPECT_EQ(english(dilutedTo({0.6}, {1000.0}, {0.5}).error()),
        "Water never brings 50.0 % to 60.0 %. Ask for something weaker, or boil it down.");
    EXPECT_FALSE(boiledTo(MassFraction{0.97}, {1000.0}, {0.5}).has_value());
    EXPECT_FALSE(boiledTo(MassFraction{0.6}, {0.0}, {0.5}).has_value());
    EXPECT_FALSE(boiledTo(MassFraction{0.6}, {1.0}, {0.0}).has_value());
}

TEST(Syrup, EachLimitOnBothSides)
{
    EXPECT_TRUE(syrupOf({0.0}, {1000.0}, {20.0}).has_value());
    EXPECT_FALSE(syrupOf({-0.001}, {1000.0}, {20.0}).has_value());
    EXPECT_TRUE(syrupOf({0.75}, {1000.0}, {20.0}).has_value());
    EXPECT_FALSE(syrupOf({0.751}, {1000.0}, {20.0}).has_value());
    EXPECT_TRUE(syrupOf({0.5}, {1000.0}, {0.0}).has_value());
    EXPECT_FALSE(syrupOf({0.5}, {1000.0}, {-0.1}).has_value());
    EXPECT_TRUE(syrupOf({0.5}, {1000.0}, {100.0}).has_value());
    EXPECT_FALSE(syrupOf({0.5}, {1000.0}, {100.1}).has_value());
    EXPECT_FALSE(syrupOf({0.5}, {0.0}, {20.0}).has_value());
    EXPECT_TRUE(boiledTo(MassFraction{0.95}, {1000.0}, {0.5}).has_value());
    EXPECT_FALSE(boiledTo(MassFraction{0.951}, {1000.0}, {0.5}).has_value());
    EXPECT_TRUE(boiledTo(MassFraction{0.5}, {1000.0}, {0.5}).has_value()) << "nothing to drive off";
    EXPECT_TRUE(boiledTo(Grams{1000.0}, {1000.0}, {0.5}).has_value());
    EXPECT_FALSE(boiledTo(MassFraction{0.9}, {1000.0}, {1.0}).has_value()) << "dry sugar is no syrup";
    EXPECT_TRUE(dilutedTo({0.5}, {1000.0}, {0.5}).has_value());
    EXPECT_FALSE(dilutedTo({0.0}, {1000.0}, {0.5}).has_value());
}

// Which decimals a scale is read to, as instruments and cooks do.
TEST(SyrupScales, EachHasItsDecimals)
{
    EXPECT_EQ(factsOf(SyrupScale::Brix).decimals, 1);
    EXPECT_EQ(factsOf(SyrupScale::SpecificGravity).decimals, 4);
    EXPECT_EQ(factsOf(SyrupScale::Baume).decimals, 1);
    EXPECT_EQ(factsOf(SyrupScale::GramsPerLitre).decimals, 0);
    EXPECT_EQ(factsOf(SyrupScale::GramsPerLitreOfWater).decimals, 0);
    EXPECT_EQ(factsOf(SyrupScale::PartsByMass).decimals, 3);
    EXPECT_EQ(factsOf(SyrupScale::PartsByVolume).decimals, 2);
}

TEST(SyrupScales, ThereAndBackOnEveryScale)
{
    for (const SyrupScaleFacts& facts : allSyrupScales()) {
        EXPECT_EQ(&factsOf(facts.scale), &facts);
        double last = -1.0;
        for (double share = 0.0; share < facts.strongest.value; share += 0.0125) {
            const auto value = valueOn(facts.scale, {share});
            ASSERT_TRUE(value.has_value()) << facts.name << share;
            EXPECT_GT(*value, last) << facts.name << share;
            last = *value;
            EXPECT_NEAR(strengthFrom(facts.scale, *value)->value, share, 1e-12) << facts.name;
        }
        EXPECT_NEAR(strengthFrom(facts.scale, *valueOn(facts.scale, facts.strongest))->value, facts.strongest.value, 1e-12);
    }
}

TEST(SyrupScales, OneToOne)
{
    EXPECT_DOUBLE_EQ(strengthFrom(SyrupScale::PartsByMass, 1.0)->value, 0.5);
    // A cup of sugar, 200 g, and a cup of water, 236.6 mL of 0.9982 g/mL.
    EXPECT_NEAR(strengthFrom(SyrupScale::PartsByVolume, 1.0)->value, 200.0 / (200.0 + 236.16), 1e-4);
    EXPECT_NEAR(*valueOn(SyrupScale::GramsPerLitreOfWater, {0.5}), 998.2, 0.05);
}

TEST(SyrupScales, OutOfRangeIsASentence)
{
    EXPECT_EQ(english(strengthFrom(SyrupScale::SpecificGravity, 0.98).error()),
        "No syrup has 0.9800 on the scale “Specific gravity 20/20 °C”: it goes from 1.0000, which is water, to 1.3823.");
    EXPECT_EQ(english(valueOn(SyrupScale::Baume, {0.8}).error()),
        "“°Bé (modulus 145)” is known from 0 to 75 % sugar by mass, not at 80.0 %.");
    EXPECT_FALSE(strengthFrom(SyrupScale::Brix, std::nan("")).has_value());
    EXPECT_FALSE(strengthFrom(SyrupScale::Brix, -1.0).has_value());
    EXPECT_FALSE(valueOn(SyrupScale::Brix, {1.0}).has_value());
}

RC_GTEST_PROP(Dissolving, IsInEquilibriumAndKeepsTheMass, ())
{
    const Constituent solute = *rc::gen::element(
        Constituent::Sucrose, Constituent::Glucose, Constituent::Fructose, Constituent::Lactose, Constituent::Salt);
    const Celsius warm{static_cast<double>(*rc::gen::inRange(20, 51))};
    const Celsius cold{static_cast<double>(*rc::gen::inRange(20, 51))};
    const Grams amount{*rc::gen::inRange(0, 100000) / 10.0};
    const Grams water{*rc::gen::inRange(1, 10000) / 10.0};
    const auto found = dissolve(solute, amount, water, warm, cold);
    RC_ASSERT(found.has_value());
    const auto solubility = solubilityOf(solute, cold);
    const Saturation& state = found->cooled;
    RC_ASSERT(state.dissolved.value >= -1e-9 && state.solid.value >= 0.0);
    if (state.ratio <= 1.0) {
        RC_ASSERT(state.solid.value == 0.0);
        RC_ASSERT(found->waterForCooled.value == 0.0);
    } else {
        const double crystalWater_g = state.solid.value - (amount - state.dissolved).value;
        const double freeWater_g = water.value - crystalWater_g;
        RC_ASSERT(freeWater_g >= -1e-9);
        RC_ASSERT(std::abs(state.dissolved.value - freeWater_g * solubility->g_perGramWater) <= 1e-6 * (amount + water).value);
        RC_ASSERT(found->warning.has_value());
        const auto cleared = dissolve(solute, amount, water + found->waterForCooled * 1.000001, warm, cold);
        RC_ASSERT(cleared->cooled.solid.value == 0.0);
    }
}

TEST(Dissolving, WarnsNearSaturationOnCooling)
{
    const auto clear = dissolve(Constituent::Sucrose, {600.0}, {400.0}, {80.0}, {5.0});
    EXPECT_FALSE(clear->warning.has_value());
    const auto near = dissolve(Constituent::Sucrose, {645.0}, {355.0}, {80.0}, {5.0});
    EXPECT_LT(near->cooled.ratio, 1.0);
    EXPECT_TRUE(near->warning.has_value());
    const auto beyond = dissolve(Constituent::Sucrose, {700.0}, {300.0}, {80.0}, {5.0});
    EXPECT_EQ(beyond->warm.solid.value, 0.0);
    EXPECT_GT(beyond->cooled.solid.value, 100.0);
}

// A warning comes from 95 % of saturation on, and names the share or what crystallises, below 10 g with a decimal.
TEST(Dissolving, WarnsFromNinetyFivePerCentOfSaturation)
{
    const double held_g = 1000.0 * solubilityOf(Constituent::Sucrose, {5.0})->g_perGramWater;
    const auto warning = [&](double ratio) {
        const auto found = dissolve(Constituent::Sucrose, {ratio * held_g}, {1000.0}, {80.0}, {5.0});
        return found->warning ? english(*found->warning) : std::string();
    };
    EXPECT_EQ(warning(0.949), "");
    EXPECT_TRUE(warning(0.951).starts_with("95 % of the sucrose that this water holds at 5 °C:")) << warning(0.951);
    EXPECT_TRUE(warning(0.9999).starts_with("100 % of the sucrose")) << warning(0.9999);
    EXPECT_TRUE(warning(1.001).starts_with("Too much sucrose for 5 °C: up to 1.8 g crystallise there. 1.0 g more water"))
        << warning(1.001);
    EXPECT_TRUE(warning(1.1).starts_with("Too much sucrose for 5 °C: up to 185 g crystallise there. 100 g more water"))
        << warning(1.1);
}

// Hydrates: what crystallises binds 18.015 g of water to 342.297 g of lactose, and to 180.156 g of glucose below 50 °C.
TEST(Dissolving, CrystalsBindTheirWater)
{
    const auto bound_gPerGram = [](Constituent solute, double amount_g, Celsius at) {
        const Saturation found = dissolve(solute, {amount_g}, {1000.0}, at, at)->cooled;
        const Grams crystals = Grams{amount_g} - found.dissolved;
        return (found.solid - crystals) / crystals;
    };
    EXPECT_NEAR(bound_gPerGram(Constituent::Lactose, 400.0, {20.0}), 18.015 / 342.297, 1e-9);
    EXPECT_NEAR(bound_gPerGram(Constituent::Glucose, 1500.0, {49.9 - 25.0}), 18.015 / 180.156, 1e-9);
    EXPECT_EQ(solubilityOf(Constituent::Glucose, {49.9})->crystalWater_gPerGram, 18.015 / 180.156);
    EXPECT_EQ(solubilityOf(Constituent::Glucose, {50.0})->crystalWater_gPerGram, 0.0);
    EXPECT_EQ(bound_gPerGram(Constituent::Sucrose, 2500.0, {20.0}), 0.0);
}

TEST(Dissolving, EachTableEndsWhereItsSourceDoes)
{
    const auto expectRange = [](Constituent solute, double coldest_c, double warmest_c) {
        EXPECT_TRUE(solubilityOf(solute, {coldest_c}).has_value()) << coldest_c;
        EXPECT_FALSE(solubilityOf(solute, {coldest_c - 0.01}).has_value()) << coldest_c;
        EXPECT_TRUE(solubilityOf(solute, {warmest_c}).has_value()) << warmest_c;
        EXPECT_FALSE(solubilityOf(solute, {warmest_c + 0.01}).has_value()) << warmest_c;
    };
    expectRange(Constituent::Sucrose, 0.0, 100.0);
    expectRange(Constituent::Glucose, 20.0, 90.0);
    expectRange(Constituent::Fructose, 20.0, 50.0);
    expectRange(Constituent::Lactose, 0.0, 89.0);
    expectRange(Constituent::Salt, 0.0, 100.0);
}

TEST(Dissolving, OutOfRangeIsASentence)
{
    EXPECT_EQ(english(solubilityOf(Constituent::Fructose, {5.0}).error()),
        "How well fructose dissolves is known from 20 °C to 50 °C, not at 5 °C.");
    EXPECT_EQ(english(solubilityOf(Constituent::Sorbitol, {20.0}).error()),
        "How well sorbitol dissolves is not known here. Ask for sucrose, glucose, fructose, lactose or salt.");
    EXPECT_FALSE(dissolve(Constituent::Sucrose, {1.0}, {0.0}, {20.0}, {20.0}).has_value());
    EXPECT_FALSE(dissolve(Constituent::Sucrose, {-1.0}, {1.0}, {20.0}, {20.0}).has_value());
}

}  // namespace
}  // namespace firn
