#include "explain/exercises.h"

#include "exchange/files.h"
#include "readings/mix_family.h"
#include "readings/refractometer.h"

#include "../shipped_catalogue.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <set>

namespace firn {
namespace {

Recipe sample(const char* name)
{
    const auto path = std::filesystem::path(FIRN_SOURCE_DIR "/resources/samples") / name;
    return *recipeFromContents(*contentsOf(path), path);
}

ExerciseSheet sheetOf(const Recipe& recipe, std::uint64_t seed) { return exercisesFor(recipe, shippedCatalogue(), {}, seed); }

const Exercise* find(const ExerciseSheet& sheet, ExerciseKind kind)
{
    const auto found = std::ranges::find(sheet.exercises, kind, &Exercise::kind);
    return found == sheet.exercises.end() ? nullptr : &*found;
}

TEST(Exercises, SolutionsEndWithTheAnswer)
{
    for (const char* name : {"pear-perry-sorbet.firn", "cucumber-gin-ice.firn", "toasted-buckwheat-ice-cream.firn"}) {
        for (const std::uint64_t seed : {0u, 1u, 2u, 77u}) {
            const ExerciseSheet sheet = sheetOf(sample(name), seed);
            EXPECT_GE(sheet.exercises.size(), 5u) << name;
            for (const Exercise& exercise : sheet.exercises) {
                ASSERT_FALSE(exercise.solution.empty());
                EXPECT_EQ(exercise.solution.back().result.value, exercise.answer.value);
                EXPECT_EQ(exercise.solution.back().result.unit, exercise.answer.unit);
                EXPECT_GE(exercise.hints.size(), 2u);
                EXPECT_EQ(english(exercise.question).find('{'), std::string::npos) << english(exercise.question);
                const std::string typed = english(phrase("{0} {1}", Figure{exercise.answer.value, 2}, exercise.answer.unit));
                const auto judgement = judge(typed, exercise.answer);
                ASSERT_TRUE(judgement) << typed;
                EXPECT_EQ(judgement->verdict, Verdict::Right) << typed;
            }
        }
    }
}

TEST(Exercises, TheSameSeedIsTheSameSheetAndAnotherOneIsAnother)
{
    const Recipe recipe = sample("pear-perry-sorbet.firn");
    EXPECT_EQ(sheetOf(recipe, 0).recipe, recipe);
    EXPECT_EQ(sheetOf(recipe, 5).recipe, sheetOf(recipe, 5).recipe);
    std::set<double> answers;
    for (std::uint64_t seed = 0; seed < 20; ++seed)
        answers.insert(sheetOf(recipe, seed).exercises.front().answer.value);
    EXPECT_EQ(answers.size(), 20u);
}

TEST(Exercises, AddingTheSucroseReachesWhatWasAskedFor)
{
    Recipe recipe;
    recipe.components.front().rows = {{"water", {700, Unit::Gram}, {}, {}}, {"sucrose", {150, Unit::Gram}, {}, {}}};
    for (const std::uint64_t seed : {0u, 3u, 9u}) {
        ExerciseSheet sheet = sheetOf(recipe, seed);
        const Exercise* exercise = find(sheet, ExerciseKind::SucroseToReach);
        ASSERT_TRUE(exercise);
        const double wanted_percent = std::get<Figure>(exercise->question.values[2]).value;
        sheet.recipe.components.front().rows.push_back({"sucrose", {exercise->answer.value, Unit::Gram}, {}, {}});
        EXPECT_NEAR(percent(analyse(sheet.recipe, shippedCatalogue(), {}).shares.sugars), wanted_percent, 1e-9);
    }
}

TEST(Exercises, OnlyAboutWhatTheRecipeHas)
{
    EXPECT_TRUE(find(sheetOf(sample("cucumber-gin-ice.firn"), 0), ExerciseKind::AlcoholByVolume));
    EXPECT_FALSE(find(sheetOf(sample("toasted-buckwheat-ice-cream.firn"), 0), ExerciseKind::AlcoholByVolume));
    EXPECT_TRUE(sheetOf({}, 4).exercises.empty());
}

TEST(Exercises, NoneFromARecipeWithARowThatNothingIsKnownAbout)
{
    Recipe recipe;
    recipe.components.front().rows = {
        {"water", {700, Unit::Gram}, {}, {}}, {"sucrose", {150, Unit::Gram}, {}, {}}, {"moon juice", {50, Unit::Gram}, {}, {}}};
    const ExerciseSheet sheet = sheetOf(recipe, 0);
    EXPECT_TRUE(sheet.exercises.empty());
    ASSERT_TRUE(sheet.reason);
    EXPECT_EQ(english(*sheet.reason), "“moon juice” is not known and would count for nothing: choose it from the list first.");
    recipe.components.front().rows.pop_back();
    EXPECT_FALSE(sheetOf(recipe, 0).reason);
}

TEST(Exercises, TheFreezingPointCanBeReckonedFromWhatIsGiven)
{
    Recipe recipe;
    recipe.components.front().rows = {{"water", {700, Unit::Gram}, {}, {}}, {"sucrose", {230, Unit::Gram}, {}, {}}};
    const ExerciseSheet sheet = sheetOf(recipe, 0);
    const Exercise* exercise = find(sheet, ExerciseKind::FreezingPoint);
    ASSERT_TRUE(exercise);
    std::vector<std::string> given;
    for (const Sentence& line : exercise->given)
        given.push_back(english(line));
    // 230 g in 700 g are 32.86 g in 100 g. Goff and Hartel 2013, Table 6.1: 1.86 K at 30 g, 2.03 K at 33 g.
    EXPECT_TRUE(std::ranges::count(given, "30 g of sucrose in 100 g water: 1.86 K below 0 °C."));
    EXPECT_TRUE(std::ranges::count(given, "33 g of sucrose in 100 g water: 2.03 K below 0 °C."));
    EXPECT_TRUE(std::ranges::count(given, "Sucrose: 230.0 g; a gram counts as 1.00 g of sucrose."));
    EXPECT_NEAR(exercise->answer.value, -(1.86 + (2.03 - 1.86) * (100.0 * 230.0 / 700.0 - 30.0) / 3.0), 1e-9);
    EXPECT_TRUE(exercise->answer.byOtherMethod);
    EXPECT_TRUE(find(sheetOf(sample("cucumber-gin-ice.firn"), 0), ExerciseKind::FreezingPoint));
}

TEST(Exercises, TheIceWhenServedCanBeReckonedFromWhatIsGiven)
{
    Recipe recipe;
    recipe.components.front().rows = {{"water", {700, Unit::Gram}, {}, {}}, {"sucrose", {230, Unit::Gram}, {}, {}}};
    const ExerciseSheet sheet = sheetOf(recipe, 0);
    const Exercise* exercise = find(sheet, ExerciseKind::IceWhenServed);
    ASSERT_TRUE(exercise);
    ASSERT_EQ(exercise->given.size(), 3u);
    const double free_g = std::get<Figure>(exercise->given[1].values[0]).value;
    const double stronger = std::get<Figure>(exercise->given[2].values[1]).value;
    EXPECT_NEAR(100.0 * free_g * (1.0 - 1.0 / stronger) / 930.0, exercise->answer.value, 1e-6);
    EXPECT_GE(exercise->solution.size(), 3u);
    // Between two points of the curve both of them are given, and the solution reckons both.
    const ExerciseSheet between = exercisesFor(recipe, shippedCatalogue(), Conditions{Celsius{-12.3}, {-18.0}, {20.0}, {}}, 0);
    const Exercise* other = find(between, ExerciseKind::IceWhenServed);
    ASSERT_TRUE(other);
    EXPECT_EQ(other->given.size(), 4u);
    EXPECT_EQ(other->solution.back().result.value, other->answer.value);
    EXPECT_GE(other->solution.size(), 7u);
}

TEST(Exercises, AReadingOfSugarInWaterIsCorrectedToTwentyDegreesAndIsTheShareOfSugar)
{
    Recipe recipe;
    recipe.components.front().rows = {{"water", {800, Unit::Gram}, {}, {}}, {"sucrose", {200, Unit::Gram}, {}, {}}};
    const ExerciseSheet sheet = sheetOf(recipe, 0);
    const Exercise* exercise = find(sheet, ExerciseKind::SugarsByRefractometer);
    ASSERT_TRUE(exercise);
    const double shown_brix = std::get<Figure>(exercise->question.values[0]).value;
    EXPECT_EQ(shown_brix, 19.0);
    EXPECT_EQ(std::get<Figure>(exercise->question.values[1]).value, 30.0);
    ASSERT_EQ(exercise->solution.size(), 5u);
    const double corrected_brix = exercise->solution[2].result.value;
    // OIV-MA-AS2-02, Table I: 0.07 °Bx a kelvin, and a little more above 20 °C.
    EXPECT_NEAR(corrected_brix - shown_brix, 0.75, 0.1);
    EXPECT_EQ(exercise->solution[3].result.value, corrected_brix - shown_brix);
    EXPECT_NEAR(exercise->answer.value, corrected_brix, 0.01);
}

TEST(Exercises, TheMixThatWasFoundReadsAsTheQuestionSays)
{
    Recipe recipe = sample("cucumber-gin-ice.firn");
    std::set<std::pair<double, double>> readings;
    for (std::uint64_t seed = 0; seed < 12; ++seed) {
        const ExerciseSheet sheet = sheetOf(recipe, seed);
        const Exercise* exercise = find(sheet, ExerciseKind::SugarsByRefractometer);
        ASSERT_TRUE(exercise) << seed;
        const double brix = std::get<Figure>(exercise->question.values[0]).value;
        const Celsius temperature{std::get<Figure>(exercise->question.values[1]).value};
        readings.insert({brix, temperature.value});
        const MixFamily family(sheet.mix, MixFamily::Alcohol::StaysInTheWater);
        const auto shown = read(Refractometer{}, family.at({exercise->answer.value / 100.0}, {}), temperature);
        ASSERT_TRUE(shown && shown->value);
        EXPECT_NEAR(*shown->value, brix, 1e-6) << seed;
    }
    EXPECT_GE(readings.size(), 6u);
}

TEST(Exercises, NoReadingOfWhatHoldsNoSugar)
{
    Recipe recipe;
    recipe.components.front().rows = {{"water", {800, Unit::Gram}, {}, {}}, {"salt", {80, Unit::Gram}, {}, {}}};
    EXPECT_FALSE(find(sheetOf(recipe, 0), ExerciseKind::SugarsByRefractometer));
}

TEST(Exercises, OtherSheetsHaveAmountsThatCanBeWeighed)
{
    Recipe recipe;
    recipe.components.front().rows = {{"water", {333, Unit::Gram}, {}, {}}, {"sucrose", {0.75, Unit::Cup}, {}, {}}};
    for (std::uint64_t seed = 1; seed < 20; ++seed) {
        const std::vector<Row> rows = sheetOf(recipe, seed).recipe.components.front().rows;
        EXPECT_EQ(rows[0].amount.value, std::round(rows[0].amount.value));
        EXPECT_NEAR(rows[1].amount.value, 0.75, 0.15 * 0.75 + 0.001);
        EXPECT_LE(amountNumber(rows[1].amount).size(), 5u) << amountNumber(rows[1].amount);
    }
}

struct Typed {
    const char* text;
    Verdict verdict;
};

TEST(Answers, EitherMarkEitherMinusAndTheUnit)
{
    const ExpectedAnswer cold{-2.7, 0.2, "°C", 1};
    for (const Typed& typed : {Typed{"-2.7 °C", Verdict::Right}, Typed{" −2,7°C ", Verdict::Right}, Typed{"-2.8 C", Verdict::Right},
             Typed{"-2.9 °C", Verdict::Right}, Typed{"-2.7", Verdict::RightButNoUnit}, Typed{"2.7 °C", Verdict::SignLost},
             Typed{"1 °C", Verdict::TooHigh}, Typed{"-2.91 °C", Verdict::TooLow}, Typed{"-2.7 %", Verdict::WrongUnit},
             Typed{"-2.7 °F", Verdict::WrongUnit}})
        EXPECT_EQ(judge(typed.text, cold)->verdict, typed.verdict) << typed.text;
    const ExpectedAnswer sugar{120.0, 2.0, "g", 0};
    for (const Typed& typed : {Typed{"120 g", Verdict::Right}, Typed{"0,12 kg", Verdict::Right},
             Typed{"121.5 grams", Verdict::Right}, Typed{"26 %", Verdict::WrongUnit}, Typed{"100 g", Verdict::TooLow}})
        EXPECT_EQ(judge(typed.text, sugar)->verdict, typed.verdict) << typed.text;
}

std::string saidOn(const char* typed, const ExpectedAnswer& expected)
{
    const auto judgement = judge(typed, expected);
    return english(judgement ? judgement->sentence : judgement.error());
}

TEST(Answers, WhatWentWrongIsSaid)
{
    const ExpectedAnswer cold{-2.7, 0.2, "°C", 1, -3.4};
    EXPECT_EQ(saidOn("2.7 °C", cold), "Mind the sign.");
    EXPECT_EQ(saidOn("-3.4 °C", cold), "That is the other method.");
    EXPECT_EQ(saidOn("-5 °C", cold), "Colder than it is.");
    EXPECT_EQ(saidOn("-1 °C", cold), "Warmer than it is.");
    EXPECT_EQ(saidOn(" ", cold), "Type an answer first.");
    EXPECT_EQ(saidOn("-2.6 °C", cold), "Right. It is -2.7 °C, and ± 0.2 °C counts as right.");
    const ExpectedAnswer share{26.24, 0.5, "%", 1};
    EXPECT_EQ(saidOn("0.26", share), "In percent, please: that is a fraction.");
    EXPECT_EQ(saidOn("0.26 %", share), "In percent, please: that is a fraction.");
    EXPECT_EQ(saidOn("20 %", share), "Too low.");
    EXPECT_EQ(saidOn("26", share), "Right, in %. It is 26.2 %, and ± 0.5 % counts as right.");
}

TEST(Answers, WhatIsNoNumberIsRefusedInOneSentence)
{
    for (const char* text : {"", "cold", "--2 °C", "1/0 g", "nan", "%"}) {
        const auto judgement = judge(text, {1.0, 0.1, "g", 1});
        const bool isRefused = !judgement || judgement->verdict == Verdict::WrongUnit;
        EXPECT_TRUE(isRefused) << text;
    }
    EXPECT_EQ(english(judge("<b>cold</b>", {1.0, 0.1, "g", 1}).error()),
        "“<b>cold</b>” is no answer: type a number and its unit, such as 26 % or -2.7 °C.");
}

}  // namespace
}  // namespace firn
