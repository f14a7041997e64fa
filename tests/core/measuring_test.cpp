#include "correction/measuring.h"

#include "analysis/analysis.h"

#include "exchange/catalogue_json.h"
#include "exchange/files.h"
#include "exchange/recipe_text.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

const Catalogue& catalogue()
{
    static const Catalogue all = *catalogueFromJson(*contentsOf(FIRN_SOURCE_DIR "/resources/catalogue.json"));
    return all;
}

Recipe granita() { return *recipeFromText("520 g water\n250 g orange juice\n170 g sugar\n120 g sweet vermouth"); }

Mix mixOf(const Recipe& recipe) { return analyse(recipe, catalogue(), {}, 0).mix; }

ReadingRecord readAs(Instrument instrument, double value, std::string date = {})
{
    ReadingRecord record;
    record.instrument = instrument;
    record.value = value;
    record.date = std::move(date);
    return record;
}

/// What this instrument shows in the recipe's own mix.
double shownIn(const Recipe& recipe, Instrument instrument) { return *computedFor(readAs(instrument, 0.0), mixOf(recipe))->value; }

TEST(Measuring, WhatTheRecipeShowsFindsTheRecipe)
{
    const Recipe recipe = granita();
    const std::vector readings{readAs(Instrument::Refractometer, shownIn(recipe, Instrument::Refractometer)),
        readAs(Instrument::HydrometerGravity, shownIn(recipe, Instrument::HydrometerGravity))};
    const Measuring both = measuring(recipe, catalogue(), 0, readings, true, {});
    ASSERT_EQ(both.mixes.size(), 1U);
    EXPECT_TRUE(both.mixes.front().isAlcoholFound);
    EXPECT_NEAR(both.mixes.front().sugarDifference.value, 0.0, 1e-6);
    EXPECT_NEAR(both.mixes.front().alcoholDifference.value, 0.0, 1e-6);
    ASSERT_TRUE(both.mixes.front().state.alcohol);
    EXPECT_NEAR(*both.beside.front().difference, 0.0, 1e-9);

    const Measuring one = measuring(recipe, catalogue(), 0, {readings.front()}, true, {});
    EXPECT_FALSE(one.mixes.front().isAlcoholFound);
    EXPECT_FALSE(one.mixes.front().state.alcohol) << "the recipe's alcohol stays";
}

TEST(Measuring, WithoutAReadingTheInstrumentIsStillRead)
{
    const Measuring unread = measuring(granita(), catalogue(), 0, {readAs(Instrument::Refractometer, 0.0)}, false, {});
    EXPECT_TRUE(unread.mixes.empty());
    EXPECT_FALSE(unread.problem);
    EXPECT_NEAR(*unread.beside.front().computed->value, *unread.refractometer_brix, 1e-9);
}

TEST(Measuring, AnImpossibleReadingIsAProblem)
{
    const Measuring impossible = measuring(granita(), catalogue(), 0, {readAs(Instrument::HydrometerGravity, 0.5)}, true, {});
    EXPECT_TRUE(impossible.mixes.empty());
    EXPECT_TRUE(impossible.problem);
}

TEST(Measuring, AnEggGoesWithNothingElse)
{
    const std::vector pair{readAs(Instrument::Egg, 20.0), readAs(Instrument::Refractometer, 19.0)};
    EXPECT_FALSE(foundBy(pair, {}, mixOf(granita())));
}

TEST(Measuring, AnEggOfAnAgeKeepsItsSpread)
{
    ReadingRecord aged = readAs(Instrument::Egg, 20.0);
    aged.eggDensity = eggAges()[1].density;
    ReadingRecord weighed = aged;
    weighed.eggDensity->value += 1e-4;
    const auto range = [](const ReadingRecord& record) { return *foundBy({&record, 1}, {}, {})->range; };
    EXPECT_GT((range(aged).most - range(aged).least).value, (range(weighed).most - range(weighed).least).value + 0.01);
}

TEST(Measuring, AJarTakesSomeOfTheMix)
{
    const auto filling = fillingFor(Jar{}, mixOf(granita()), {20.0});
    ASSERT_TRUE(filling && *filling);
    EXPECT_GT((*filling)->liquid.value, 0.0);
    EXPECT_FALSE(*fillingFor(Jar{{20.0}, {280.0}}, mixOf(granita()), {20.0})) << "narrower than the hydrometer";
    EXPECT_FALSE(fillingFor(Jar{}, Mix{}, {20.0}));
}

TEST(EggSizes, UsualMassIsTheMiddleOfTheClass)
{
    const auto eu = euEggSizes();
    EXPECT_EQ(usualMass(0, eu).value, 48.0);  // as wide as M
    EXPECT_EQ(usualMass(1, eu).value, 58.0);
    EXPECT_EQ(usualMass(3, eu).value, 78.0);
    for (const auto& sizes : {eu, usEggSizes()}) {
        for (std::size_t i = 0; i < sizes.size(); ++i)
            EXPECT_EQ(sizeOf(usualMass(i, sizes), sizes).label, sizes[i].label);
    }
}

TEST(MeasuredBeside, IsTheLatestOfEachInstrumentOfTheComponent)
{
    Recipe recipe = granita();
    recipe.components.front().name = "granita";
    recipe.components.push_back({"cream", {{"heavy cream", {100.0, Unit::Gram}, {}, {}}}, {}});
    recipe.readings = {readAs(Instrument::Refractometer, 18.0), readAs(Instrument::HydrometerBrix, 19.0),
        readAs(Instrument::Refractometer, 19.0), readAs(Instrument::Refractometer, 30.0)};
    for (int i = 0; i < 3; ++i)
        recipe.readings[std::size_t(i)].component = "granita";
    recipe.readings[3].component = "cream";
    const Analysis analysis = analyse(recipe, catalogue(), {}, 0);
    ASSERT_EQ(analysis.measured.readings.size(), 2U);
    EXPECT_EQ(analysis.measured.readings.back().record.value, 19.0);
    ASSERT_TRUE(analysis.measured.mix);
    EXPECT_NEAR(analysis.measured.sugarDifference.value, (analysis.measured.mix->sugar - analysis.shares.sugars).value, 1e-12);
    EXPECT_EQ(analyse(recipe, catalogue(), {}, 1).measured.readings.size(), 1U);
    EXPECT_TRUE(analyse(recipe, catalogue(), {}).measured.readings.empty());
}

TEST(MeasuredBeside, TwoOfOneTimeAreSolvedTogether)
{
    Recipe recipe = granita();
    recipe.readings = {readAs(Instrument::Refractometer, shownIn(recipe, Instrument::Refractometer), "2026-04-03T15:20"),
        readAs(Instrument::HydrometerBrix, shownIn(recipe, Instrument::HydrometerBrix), "2026-04-03T15:20")};
    EXPECT_GT(analyse(recipe, catalogue(), {}, 0).measured.mix->alcohol_sd.value, 0.0);
    recipe.readings.front().date = "2026-04-02";
    EXPECT_EQ(analyse(recipe, catalogue(), {}, 0).measured.mix->alcohol_sd.value, 0.0);
}

TEST(InstrumentReadings, EndWhereTheScaleEnds)
{
    Conditions conditions;
    conditions.instruments.refractometer.to_brix = 15.0;
    const Analysis analysis = analyse(granita(), catalogue(), conditions, 0);
    ASSERT_TRUE(analysis.instruments);
    EXPECT_EQ(analysis.instruments->brix.onScale, OnScale::Above);
    EXPECT_NEAR(*analysis.instruments->hydrometerGravity.value, analysis.readings->specificGravity_20_20, 1e-9);
    EXPECT_GT(combined(analysis.instruments->hydrometerBaume.errors), 0.0);
    EXPECT_FALSE(analyse(Recipe{}, catalogue(), {}, 0).instruments);
}

}  // namespace
}  // namespace firn
