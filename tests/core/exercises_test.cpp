#include "explain/exercises.h"

#include "exchange/files.h"
#include "readings/mix_family.h"
#include "readings/refractometer.h"

#include "../shipped_catalogue.h"
#include "any_kitchen_recipe.h"
#include "explain/giving_away.h"
#include "freezing/textbook.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
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
        EXPECT_EQ(
            english(exercise->question).find(english(phrase("{0} %", Figure{percent(shareOf(sugars(sheet.mix), sheet.mix)), 1}))),
            std::string::npos)
            << "that is the answer of another exercise";
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
    EXPECT_EQ(english(*sheet.reason), "“moon juice” is not known and would be ignored. Choose it from the list first.");
    recipe.components.front().rows.pop_back();
    EXPECT_FALSE(sheetOf(recipe, 0).reason);
}

using Cells = std::vector<std::vector<std::string>>;

Cells cellsOf(const GivenTable& table)
{
    Cells cells;
    for (const auto& row : table.rows) {
        auto& line = cells.emplace_back();
        for (const Sentence& cell : row)
            line.push_back(english(cell));
    }
    return cells;
}

TEST(Exercises, TheFreezingPointCanBeReckonedFromWhatIsGiven)
{
    Recipe recipe;
    recipe.components.front().rows = {{"water", {700, Unit::Gram}, {}, {}}, {"sucrose", {230, Unit::Gram}, {}, {}}};
    const ExerciseSheet sheet = sheetOf(recipe, 0);
    const Exercise* exercise = find(sheet, ExerciseKind::FreezingPoint);
    ASSERT_TRUE(exercise);
    // 230 g in 700 g are 32.86 g in 100 g. Goff and Hartel 2013, Table 6.1: 1.86 K at 30 g, 2.03 K at 33 g.
    ASSERT_EQ(exercise->tables.size(), 2u);
    EXPECT_EQ(cellsOf(exercise->tables[0]), (Cells{{"Sucrose", "230.0", "1.00"}}));
    const Cells rows = cellsOf(exercise->tables[1]);
    EXPECT_TRUE(std::ranges::count(rows, std::vector<std::string>{"30", "1.86"}));
    EXPECT_TRUE(std::ranges::count(rows, std::vector<std::string>{"33", "2.03"}));
    EXPECT_NEAR(exercise->answer.value, -(1.86 + (2.03 - 1.86) * (100.0 * 230.0 / 700.0 - 30.0) / 3.0), 5e-4)
        << "32.86 g as printed, not 32.857142…";
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
    EXPECT_NEAR(100.0 * free_g * (1.0 - 1.0 / stronger) / 930.0, exercise->answer.value, 0.05) << "from the mass of ice as printed";
    EXPECT_EQ(exercise->solution.size(), 2u) << "the mass of the ice, and its share: how strong the liquid is was given";
    // Between two points of the curve both of them are given, and the solution reckons both.
    const ExerciseSheet between = exercisesFor(recipe, shippedCatalogue(), Conditions{Celsius{-12.3}, {-18.0}, {20.0}, {}}, 0);
    const Exercise* other = find(between, ExerciseKind::IceWhenServed);
    ASSERT_TRUE(other);
    EXPECT_EQ(other->given.size(), 4u);
    EXPECT_EQ(other->solution.back().result.value, other->answer.value);
    EXPECT_EQ(other->solution.size(), 5u) << "both neighbours, and the way between them";
}

// The reading is that of another batch, 3 °Bx or more beside the recipe's own, which would tell the answer of an exercise before.
TEST(Exercises, AReadingOfSugarInWaterIsCorrectedToTwentyDegreesAndIsTheShareOfSugar)
{
    Recipe recipe;
    recipe.components.front().rows = {{"water", {800, Unit::Gram}, {}, {}}, {"sucrose", {200, Unit::Gram}, {}, {}}};
    const ExerciseSheet sheet = sheetOf(recipe, 0);
    const Exercise* exercise = find(sheet, ExerciseKind::SugarsByRefractometer);
    ASSERT_TRUE(exercise);
    const double shown_brix = std::get<Figure>(exercise->question.values[0]).value;
    EXPECT_EQ(shown_brix, 16.0);
    EXPECT_EQ(std::get<Figure>(exercise->question.values[1]).value, 30.0);
    ASSERT_EQ(exercise->solution.size(), 2u) << "both corrections are given";
    const double corrected_brix = exercise->solution[0].result.value;
    // OIV-MA-AS2-02, Table I: 0.07 °Bx a kelvin, and a little more above 20 °C.
    EXPECT_NEAR(corrected_brix - shown_brix, 0.75, 0.1);
    EXPECT_NEAR(exercise->answer.value, corrected_brix, 0.02);
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
        // The corrections are given to 0.01 °Bx, and the answer is what they add up to.
        EXPECT_NEAR(*shown->value, brix, 0.03) << seed;
        const auto own = read(Refractometer{}, sheet.mix, temperature);
        EXPECT_GE(std::abs(*own->value - brix), 2.5) << "the recipe's own reading is asked for in another exercise";
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
    recipe.components.front().rows = {{"water", {333, Unit::Gram}, {}, {}}, {"sucrose", {0.75, Unit::Cup}, {}, {}},
        {"salt", {0.435, Unit::Gram}, "a pinch", {}}, {"egg", {2, Unit::Piece}, {}, {}}};
    for (std::uint64_t seed = 1; seed < 20; ++seed) {
        const std::vector<Row> rows = sheetOf(recipe, seed).recipe.components.front().rows;
        EXPECT_EQ(rows[0].amount.value, std::round(rows[0].amount.value));
        // In cups, or in spoons where no mark of a cup is near enough.
        const double cups = rows[1].amount.value * factsOf(rows[1].amount.unit).size / factsOf(Unit::Cup).size;
        EXPECT_NEAR(cups, 0.75, 0.15 * 0.75 + 0.02);
        EXPECT_LE(amountNumber(rows[1].amount).size(), 6u) << amountNumber(rows[1].amount);
        EXPECT_NEAR(10.0 * rows[2].amount.value, std::round(10.0 * rows[2].amount.value), 1e-9) << "tenths of a gram";
        EXPECT_GT(rows[2].amount.value, 0.0);
        EXPECT_EQ(rows[3].amount.value, 2.0) << "nobody weighs 2.1 eggs";
    }
}

TEST(Exercises, RowsReadAsACookWritesThem)
{
    Recipe recipe;
    recipe.components.front().rows = {{"water", {750, Unit::Gram}, {}, {}}, {"citric-acid", {1.1, Unit::Gram}, {}, {}},
        {"salt", {0.4, Unit::Gram}, "a pinch", {}}, {"granulated sugar", {350, Unit::Gram}, {}, {}},
        {"egg", {2, Unit::Piece}, {}, {}}};
    const ExerciseSheet sheet = sheetOf(recipe, 0);
    ASSERT_EQ(sheet.lines.size(), 1u);
    EXPECT_EQ(sheet.lines.front()[0], "750 g water");
    EXPECT_TRUE(sheet.lines.front()[1].starts_with("1.1 g citric acid")) << sheet.lines.front()[1];
    EXPECT_EQ(sheet.lines.front()[2].substr(0, 10), "0.4 g salt");
    EXPECT_TRUE(sheet.lines.front()[2].ends_with(", a pinch")) << sheet.lines.front()[2];
    EXPECT_EQ(sheet.lines.front()[3], "350 g granulated sugar");
    EXPECT_EQ(sheet.lines.front()[4].substr(0, 2), "2 ");
}

TEST(Exercises, RowsSayNothingTwiceAndOnlyWhatCanBeMeasured)
{
    Recipe recipe;
    recipe.components.front().rows = {{"hibiscus", {8, Unit::Gram}, "dried; off the heat", {}},
        {"lemon juice", {1.5, Unit::Tablespoon}, {}, {}}, {"water", {1, Unit::Cup}, {}, {}},
        {"sucrose", {200, Unit::Gram}, {}, {}}};
    const std::vector<std::string> lines = sheetOf(recipe, 0).lines.front();
    EXPECT_TRUE(lines[0].ends_with(", off the heat")) << lines[0];
    EXPECT_EQ(lines[0].find("dried, dried"), std::string::npos) << lines[0];
    for (std::uint64_t seed = 1; seed < 30; ++seed) {
        for (const Row& row : sheetOf(recipe, seed).recipe.components.front().rows) {
            // Spoons and cups have halves, thirds, quarters and eighths.
            const double parts = row.amount.value * 24.0;
            const bool isSpooned = row.amount.unit == Unit::Gram || std::abs(parts - std::round(parts)) < 1e-6;
            EXPECT_TRUE(isSpooned) << seed << ": " << amountText(row.amount);
        }
    }
}

/// "2. gives away 1.: …", or nothing.
std::string leaksOn(const ExerciseSheet& sheet)
{
    std::string leaks;
    for (const Exercise& one : sheet.exercises) {
        for (const Exercise& other : sheet.exercises) {
            if (&one != &other && givesAway(textOf(one), other.answer))
                leaks +=
                    std::string(nameOf(one.kind)) + " gives away " + std::string(nameOf(other.kind)) + ":\n" + textOf(one) + "\n";
        }
    }
    return leaks;
}

TEST(Exercises, NoneGivesTheAnswerOfAnotherAwayOnSheetsOfSamples)
{
    for (const char* name : {"pear-perry-sorbet.firn", "cucumber-gin-ice.firn", "toasted-buckwheat-ice-cream.firn",
             "rhubarb-hibiscus-granita.firn", "hazelnut-semifreddo.firn", "buttermilk-cream.firn"}) {
        for (std::uint64_t seed = 0; seed < 12; ++seed)
            EXPECT_EQ(leaksOn(sheetOf(sample(name), seed)), "") << name << " " << seed;
    }
}

RC_GTEST_PROP(Exercises, NoneGivesTheAnswerOfAnotherAway, ())
{
    const Recipe recipe = anyRecipe();
    RC_ASSERT(leaksOn(sheetOf(recipe, *rc::gen::inRange<std::uint64_t>(0, 1000))) == "");
}

TEST(Exercises, WhatGivesAnAnswerAwayIsANumberWithItsUnit)
{
    const ExpectedAnswer share{24.8, 0.5, "%", 1}, cold{-2.8, 0.2, "°C", 1}, grams{30.0, 1.0, "g", 0},
        strength{7.0, 0.3, "% vol", 1};
    EXPECT_TRUE(givesAway("1065.4 g of the mix hold 24.8 % sugars by mass.", share));
    EXPECT_TRUE(givesAway("It begins to freeze at -2.7 °C.", cold));
    EXPECT_FALSE(givesAway("It stands at 2.7 °C.", cold));
    EXPECT_FALSE(givesAway("The mix weighs 24.8 g.", share));
    EXPECT_FALSE(givesAway("24.8 % vol", share));
    EXPECT_TRUE(givesAway("A liqueur of 7 % vol.", strength));
    EXPECT_TRUE(givesAway("30 g of sucrose in 100 g water", grams));
    EXPECT_FALSE(givesAway("30 g/mL", grams));
    EXPECT_FALSE(givesAway("26 % sugars", share));
}

TEST(Exercises, SolutionsStartFromWhatIsGiven)
{
    // Each number that a solution starts from stands in its exercise: nothing has to be looked up elsewhere.
    const ExerciseSheet sheet = sheetOf(sample("cucumber-gin-ice.firn"), 0);
    for (const Exercise& exercise : sheet.exercises) {
        EXPECT_LE(exercise.solution.size(), 5u) << nameOf(exercise.kind);
        std::set<std::string> found{"pi"};
        for (const WorkingStep& step : exercise.solution)
            found.insert(std::string(step.result.name) + "_" + step.result.subscript);
        const std::string text = textOf(exercise);
        for (const WorkingStep& step : exercise.solution) {
            for (const Symbol& symbol : symbolsOf(step.formula)) {
                if (found.contains(symbol.name + "_" + symbol.subscript))
                    continue;
                // With three digits at least, or exactly.
                const bool isWhole = symbol.value == std::round(symbol.value);
                bool isGiven = false;
                for (int decimals = 0; decimals <= 5; ++decimals)
                    isGiven =
                        isGiven
                        || ((isWhole || std::abs(symbol.value) * std::pow(10.0, decimals) >= 100.0
                                || std::abs(roundedTo(decimals, symbol.value) - symbol.value) < 1e-9)
                            && text.find(english(phrase("{0}", Figure{std::abs(symbol.value), decimals}))) != std::string::npos);
                EXPECT_TRUE(isGiven) << nameOf(exercise.kind) << ": " << symbol.name << "_" << symbol.subscript << " = "
                                     << symbol.value << "\n"
                                     << text;
            }
        }
    }
}

TEST(Exercises, UsualSlipsAreNamed)
{
    Recipe recipe;
    recipe.components.front().rows = {{"water", {1000, Unit::Gram}, {}, {}}, {"sucrose", {550, Unit::Gram}, {}, {}}};
    const ExerciseSheet sheet = sheetOf(recipe, 0);
    const auto saidOn = [&](ExerciseKind kind, double value) {
        const Exercise& exercise = *find(sheet, kind);
        const auto judgement = judge(english(phrase("{0} {1}", Figure{value, 3}, exercise.answer.unit)), exercise.answer);
        return judgement->verdict == Verdict::Slip ? english(judgement->sentence)
                                                   : "verdict " + std::to_string(int(judgement->verdict));
    };
    // 550 g in 1000 g of water are 55 % of the water and 35.5 % of the mix.
    EXPECT_EQ(saidOn(ExerciseKind::SugarsByMass, 55.0), "That is sugars per 100 g of water. Divide by the mass of the whole mix.");
    const Exercise& added = *find(sheet, ExerciseKind::SucroseToReach);
    const double target = std::get<Figure>(added.question.values[2]).value / 100.0;
    EXPECT_EQ(saidOn(ExerciseKind::SucroseToReach, 1550.0 * target - 550.0),
        "The mix grows by the sucrose, too: you divided by the old mass.");
    // Ice of the mix against ice of the water.
    const Exercise& ice = *find(sheet, ExerciseKind::IceWhenServed);
    EXPECT_EQ(saidOn(ExerciseKind::IceWhenServed, ice.answer.value * 1.55),
        "That is ice of the water. Divide by the mass of the whole mix.");
    // 550 g in 1550 g of mix are 35.5 g in 100 g: Table 6.1 has 2.21 K at 36 g and 2.03 K at 33 g.
    EXPECT_EQ(saidOn(ExerciseKind::FreezingPoint, -(2.03 + 0.18 * (35.48 - 33.0) / 3.0)),
        "You took the equivalents in 100 g of the mix. Take them in 100 g of its water.");
    const Exercise& reading = *find(sheet, ExerciseKind::SugarsByRefractometer);
    EXPECT_EQ(saidOn(ExerciseKind::SugarsByRefractometer, std::get<Figure>(reading.question.values[0]).value),
        "That is the reading itself. Correct it for temperature, and for what else shows on the scale.");
}

TEST(Exercises, MassForVolumeIsNamed)
{
    Recipe recipe;
    recipe.components.front().rows = {
        {"water", {600, Unit::Gram}, {}, {}}, {"sucrose", {200, Unit::Gram}, {}, {}}, {"ethanol", {60, Unit::Gram}, {}, {}}};
    const ExerciseSheet sheet = sheetOf(recipe, 0);
    const Exercise& exercise = *find(sheet, ExerciseKind::AlcoholByVolume);
    const auto said = judge(english(phrase("{0} % vol", Figure{100.0 * 60.0 / 860.0, 2})), exercise.answer);
    EXPECT_EQ(said->verdict, Verdict::Slip);
    EXPECT_EQ(english(said->sentence), "That is by mass. Turn the grams of alcohol into millilitres first.");
}

RC_GTEST_PROP(Exercises, NoSlipIsTheRightAnswer, ())
{
    // What counts as right is told so, even where a slip comes to the same.
    for (const Exercise& exercise : sheetOf(anyRecipe(), 0).exercises) {
        if (std::abs(exercise.answer.value) > largestAmount)
            continue;  // no number that can be typed
        const auto judgement = judge(exactNumber(exercise.answer.value) + " " + exercise.answer.unit, exercise.answer);
        RC_ASSERT(judgement.has_value());
        RC_LOG() << nameOf(exercise.kind) << ": " << exactNumber(exercise.answer.value) << " " << exercise.answer.unit
                 << ", right within " << exercise.answer.tolerance << ", verdict " << int(judgement->verdict);
        RC_ASSERT(judgement->verdict == Verdict::Right);
        for (const Slip& slip : exercise.answer.slips)
            RC_ASSERT(std::isfinite(slip.value));
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
             Typed{"27.1 °F", Verdict::RightInAnotherUnit}, Typed{"-2.7 °F", Verdict::TooLow},
             Typed{"270.4 K", Verdict::RightInAnotherUnit}, Typed{"270,45 kelvin", Verdict::RightInAnotherUnit}})
        EXPECT_EQ(judge(typed.text, cold)->verdict, typed.verdict) << typed.text;
    const ExpectedAnswer sugar{120.0, 2.0, "g", 0};
    for (const Typed& typed : {Typed{"120 g", Verdict::Right}, Typed{"0,12 kg", Verdict::RightInAnotherUnit},
             Typed{"4.23 oz", Verdict::RightInAnotherUnit}, Typed{"0.265 lb", Verdict::RightInAnotherUnit},
             Typed{"120 mL", Verdict::WrongUnit}, Typed{"121.5 grams", Verdict::Right}, Typed{"26 %", Verdict::WrongUnit},
             Typed{"100 g", Verdict::TooLow}})
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
    EXPECT_EQ(saidOn("2.7 °C", cold), "Check the sign.");
    EXPECT_EQ(saidOn("-3.4 °C", cold), "That is the other method.");
    const char* const difference =
        "That is how far it lies below the freezing point of water, a difference. Give the temperature itself, in °C.";
    for (const char* typed : {"2.7 K", "-2.7 K", "2,8 kelvin", "4.9 °F"})
        EXPECT_EQ(saidOn(typed, cold), difference) << typed;
    EXPECT_EQ(saidOn("1.5 K", cold), "So few kelvins are a difference of temperatures. Give the temperature itself, in °C.");
    EXPECT_EQ(saidOn("260 K", cold), "Colder than it is.");
    EXPECT_EQ(saidOn("-5 °C", cold), "Colder than it is.");
    EXPECT_EQ(saidOn("-1 °C", cold), "Warmer than it is.");
    EXPECT_EQ(saidOn(" ", cold), "Type an answer first.");
    EXPECT_EQ(saidOn("-2.6 °C", cold), "Right. It is -2.7 °C, and ± 0.2 °C counts as right.");
    const ExpectedAnswer share{26.24, 0.5, "%", 1};
    EXPECT_EQ(saidOn("0.26", share), "In percent, please: that is a fraction.");
    EXPECT_EQ(saidOn("0.26 %", share), "In percent, please: that is a fraction.");
    EXPECT_EQ(saidOn("20 %", share), "Too low.");
    EXPECT_EQ(saidOn("26", share), "Right, in %. It is 26.2 %, and ± 0.5 percentage points count as right.");
    EXPECT_EQ(saidOn("26 %", share), "Right. It is 26.2 %, and ± 0.5 percentage points count as right.");
    EXPECT_EQ(saidOn("26.8 °F", cold), "Right: that is -2.9 °C. It is -2.7 °C, and ± 0.2 °C counts as right.");
    EXPECT_EQ(saidOn("270.4 K", cold), "Right: that is -2.8 °C. It is -2.7 °C, and ± 0.2 °C counts as right.");
    EXPECT_EQ(saidOn("0.024 kg", {24.0, 1.0, "g", 0}), "Right: that is 24.0 g. It is 24.0 g, and ± 1 g counts as right.");
    EXPECT_EQ(saidOn("0.8 oz", {22.7, 1.0, "g", 0}), "Right: that is 22.7 g. It is 22.7 g, and ± 1 g counts as right.");
    EXPECT_EQ(saidOn("26 g", share), "The answer should be in %.");
}

TEST(Answers, AToleranceOfPercentagesIsInPercentagePoints)
{
    EXPECT_EQ(english(toleranceOf({26.24, 0.5, "%", 1})), "± 0.5 percentage points");
    EXPECT_EQ(english(toleranceOf({7.0, 0.3, "% vol", 1})), "± 0.3 percentage points");
    EXPECT_EQ(english(toleranceOf({-2.7, 0.2, "°C", 1})), "± 0.2 °C");
    EXPECT_EQ(english(toleranceOf({120.0, 2.0, "g", 0})), "± 2 g");
}

TEST(Answers, TheNearestSlipIsNamedAndNoneFarFromAll)
{
    const ExpectedAnswer answer{20.0, 0.5, "%", 1, {}, {{25.0, phrase("Per water.")}, {25.8, phrase("Per sugar.")}}};
    EXPECT_EQ(saidOn("25.1 %", answer), "Per water.");
    EXPECT_EQ(saidOn("25.7 %", answer), "Per sugar.");
    EXPECT_EQ(saidOn("0.2", answer), "In percent, please: that is a fraction.");
    EXPECT_EQ(saidOn("27 %", answer), "Too high.");
    EXPECT_EQ(saidOn("20.2 %", answer), "Right. It is 20.0 %, and ± 0.5 percentage points count as right.");
}

TEST(Answers, WhatIsNoNumberIsRefusedInOneSentence)
{
    for (const char* text : {"", "cold", "--2 °C", "1/0 g", "nan", "%"}) {
        const auto judgement = judge(text, {1.0, 0.1, "g", 1});
        const bool isRefused = !judgement || judgement->verdict == Verdict::WrongUnit;
        EXPECT_TRUE(isRefused) << text;
    }
    EXPECT_EQ(english(judge("<b>cold</b>", {1.0, 0.1, "g", 1}).error()),
        "“<b>cold</b>” is not an answer. Type a number and its unit, such as 26 % or -2.7 °C.");
}

}  // namespace
}  // namespace firn
