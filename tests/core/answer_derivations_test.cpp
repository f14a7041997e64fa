// Answers that are no figures of a report come with their derivation, which ends with the answer to the last bit.
#include "correction/correction.h"
#include "correction/measuring.h"
#include "derivation/formula_text.h"
#include "mix/symbols.h"
#include "solution/boiling_point.h"
#include "solution/ethanol.h"
#include "solution/sucrose.h"
#include "syrup/pearson.h"
#include "syrup/scales.h"
#include "syrup/solubility.h"
#include "syrup/syrup.h"

#include "../shipped_catalogue.h"

#include <cmath>
#include <gtest/gtest.h>

namespace firn {
namespace {

Recipe recipeOf(const std::vector<std::pair<const char*, double>>& rows_g)
{
    Recipe recipe;
    for (const auto& [ingredient, grams] : rows_g)
        recipe.components.front().rows.push_back({ingredient, {grams, Unit::Gram}, {}, {}});
    return recipe;
}

Recipe vermouthSorbet()
{
    return recipeOf({{"water", 520.0}, {"orange juice", 250.0}, {"sucrose", 170.0}, {"sweet vermouth", 120.0}});
}

Recipe orangeSorbet() { return recipeOf({{"water", 520.0}, {"orange juice", 250.0}, {"sucrose", 300.0}}); }

/// Where both sides can be reckoned, they agree. At least `spelledOut` steps can.
void expectSound(const Working& working, int spelledOut = 0)
{
    ASSERT_FALSE(working.steps().empty());
    for (const WorkingStep& step : working.steps()) {
        const auto& sides = std::get<Operation>(step.formula.node).parts;
        const auto left = valueOf(sides[0]), right = valueOf(sides[1]);
        if (left && right) {
            --spelledOut;
            EXPECT_NEAR(*left, *right, 1e-9 + 1e-7 * std::abs(*left)) << textOf(step.formula);
        }
    }
    EXPECT_LE(spelledOut, 0) << "too few steps can be reckoned again";
}

double lastOf(const Working& working) { return working.steps().back().result.value; }

enum class Known { Nothing, Sugar, Alcohol };

/// Readings that the recipe's own mix gives, a little off.
void expectFound(const std::vector<Instrument>& instruments, Known what = Known::Nothing, const Recipe& recipe = vermouthSorbet())
{
    std::vector<ReadingRecord> readings;
    for (const Instrument instrument : instruments) {
        readings.emplace_back().instrument = instrument;
        readings.back().temperature_c = 26.0;
    }
    const Measuring before = measuring(recipe, shippedCatalogue(), 0, readings, false, {});
    for (std::size_t i = 0; i < readings.size(); ++i)
        readings[i].value = 1.0001 * *before.beside[i].computed->value;
    Beforehand known;
    if (what == Known::Sugar)
        known.sugar = before.sugar;
    if (what == Known::Alcohol)
        known.alcohol = before.alcohol;

    std::vector<Workings> workings;
    const Measuring found = measuring(recipe, shippedCatalogue(), 0, readings, true, known, &workings);
    ASSERT_FALSE(found.mixes.empty()) << english(found.problem.value_or(Sentence{}));
    ASSERT_EQ(workings.size(), found.mixes.size());
    for (std::size_t i = 0; i < workings.size(); ++i) {
        const Working* sugars = workings[i].find("measured.sugars_percent");
        const Working* alcohol = workings[i].find("measured.alcohol_percent");
        ASSERT_TRUE(sugars && alcohol);
        expectSound(*sugars);
        expectSound(*alcohol);
        for (const auto& [figure, working] : workings[i].all()) {
            for (const WorkingStep& step : working.steps()) {
                for (const Symbol& symbol : symbolsOf(step.formula)) {
                    if (symbol.figure.empty())
                        continue;
                    const Working* other = workings[i].find(symbol.figure);
                    ASSERT_TRUE(other) << figure << " leads to " << symbol.figure;
                    EXPECT_EQ(lastOf(*other), symbol.value) << symbol.figure;
                }
            }
        }
        EXPECT_EQ(lastOf(*sugars), percent(found.mixes[i].estimate.sugar));
        EXPECT_EQ(lastOf(*alcohol), percent(found.mixes[i].estimate.alcohol));
    }
}

TEST(AnswerDerivations, WhatReadingsFind)
{
    using enum Instrument;
    for (const Instrument each : {Refractometer, HydrometerBrix, HydrometerGravity, HydrometerBaume}) {
        expectFound({each});
        expectFound({each}, Known::Sugar);
        expectFound({each}, Known::Alcohol);
    }
    expectFound({Refractometer, HydrometerBrix});
    expectFound({HydrometerBaume, Refractometer});
    expectFound({Refractometer, HydrometerGravity}, Known::Sugar);
    expectFound({HydrometerGravity, Refractometer}, Known::Alcohol);
}

TEST(AnswerDerivations, WhatAnEggAndABoilingPointFind)
{
    expectFound({Instrument::Egg});
    expectFound({Instrument::Egg}, Known::Alcohol);
    expectFound({Instrument::Egg}, Known::Nothing, orangeSorbet());
    expectFound({Instrument::BoilingPoint}, Known::Nothing, orangeSorbet());
}

TEST(AnswerDerivations, ABoilingPointIsSpelledOut)
{
    for (const double sucrose_g : {5.0, 30.0, 65.0, 80.0}) {
        Mix syrup;
        syrup.amounts[Constituent::Sucrose] = {sucrose_g};
        syrup.amounts[Constituent::Water] = {100.0 - sucrose_g};
        Working working = Working::apart();
        const auto boils = boilingPointOf(syrup, {950.0}, &working);
        ASSERT_TRUE(boils);
        expectSound(working, 8);
        EXPECT_EQ(lastOf(working), boils->temperature.value);
        for (const WorkingStep& step : working.steps()) {
            for (const Symbol& symbol : symbolsOf(step.formula))
                EXPECT_EQ(symbol.figure, "") << textOf(symbol);
        }
    }
}

TEST(AnswerDerivations, WhatToAdd)
{
    for (const StrengthTarget& target : {StrengthTarget(SugarsTarget{{0.26}}), StrengthTarget(BrixTarget{27.0})}) {
        const auto plan = corrections(vermouthSorbet(), shippedCatalogue(), 0, {MassFraction{0.19}, {0.002}, {}}, target);
        ASSERT_TRUE(plan);
        ASSERT_FALSE(plan->choices.empty());
        for (const CorrectionChoice& choice : plan->choices) {
            expectSound(choice.working);
            EXPECT_EQ(lastOf(choice.working), choice.added.value) << choice.name;
        }
    }
}

TEST(AnswerDerivations, Syrups)
{
    Working blending, diluting, making, boiling, reducing;
    const auto blend = pearsonSquare({0.6}, {0.2}, {0.3}, {2000.0}, &blending);
    const auto diluted = dilutedTo({0.3}, {1000.0}, {0.65}, &diluting);
    const auto made = syrupOf({0.5}, {1000.0}, {20.0}, &making);
    const auto boiled = boiledTo(MassFraction{0.65}, {1000.0}, {0.5}, &boiling);
    const auto reduced = boiledTo(Grams{800.0}, {1000.0}, {0.5}, &reducing);
    ASSERT_TRUE(blend && diluted && made && boiled && reduced);
    for (const Working* each : {&blending, &diluting, &making, &boiling, &reducing})
        expectSound(*each);
    EXPECT_EQ(lastOf(blending), blend->second.value);
    EXPECT_EQ(lastOf(diluting), diluted->water.value);
    EXPECT_EQ(lastOf(making), made->sugar.value);
    EXPECT_EQ(lastOf(boiling), boiled->mass.value);
    EXPECT_EQ(lastOf(reducing), percent(reduced->strength));
}

TEST(AnswerDerivations, WhatDissolves)
{
    struct Case {
        Constituent solute;
        double amount_g, warm_c, cool_c;
    };
    for (const auto& [solute, amount_g, warm_c, cool_c] :
        {Case{Constituent::Sucrose, 600.0, 80.0, 5.0}, Case{Constituent::Sucrose, 2500.0, 80.0, 5.0},
            Case{Constituent::Sucrose, 100.0, 80.0, 5.0}, Case{Constituent::Glucose, 400.0, 60.0, 20.0},
            Case{Constituent::Lactose, 90.0, 60.0, 4.0}, Case{Constituent::Lactose, 900.0, 60.0, 4.0},
            Case{Constituent::Fructose, 3000.0, 50.0, 20.0}, Case{Constituent::Salt, 100.0, 100.0, 0.0}}) {
        Working working, share;
        const auto dissolved = dissolve(solute, {amount_g}, {300.0}, {warm_c}, {cool_c}, &working);
        const auto cold = solubilityOf(solute, {cool_c}, &share);
        ASSERT_TRUE(dissolved && cold);
        expectSound(working, 2);
        EXPECT_EQ(lastOf(share), percent(cold->share));
        EXPECT_EQ(lastOf(working), dissolved->warm.solid.value > 0.0       ? dissolved->warm.solid.value
                                   : dissolved->waterForCooled.value > 0.0 ? dissolved->waterForCooled.value
                                                                           : 100.0 * dissolved->cooled.ratio);
    }
}

TEST(AnswerDerivations, ScalesOfSyrups)
{
    for (const double share : {0.0, 0.1, 0.5, 0.74}) {
        for (const SyrupScaleFacts& facts : allSyrupScales()) {
            Working working;
            const auto value = valueOn(facts.scale, {share}, &working);
            ASSERT_TRUE(value) << facts.name;
            expectSound(working, 1);
            EXPECT_EQ(lastOf(working), *value) << facts.name;
        }
    }
}

TEST(AnswerDerivations, DensitiesAreSpelledOutAtAnyTemperature)
{
    for (const double t_c : {2.0, 15.5, 20.0, 35.0}) {
        for (const double share : {0.02, 0.4, 0.9}) {
            const Symbol t = temperatureSymbol({t_c}), water = waterDensitySymbol({t_c});
            const Symbol w{"w", "", share, "", {}};
            Working working;
            recordWaterDensity(working, water, t);
            recordSucroseDensity(working, {"ρ", "", sucroseSolutionDensity({share}, {t_c}).value, "g/mL", {}}, w, water, t);
            recordEthanolDensity(working, {"ρ", "", ethanolSolutionDensity({share}, {t_c}).value, "g/mL", {}}, w, t);
            expectSound(working, int(working.steps().size()));
        }
    }
}

TEST(AnswerDerivations, TheDensityOfASugarSolutionIsSpelledOut)
{
    Working working;
    ASSERT_TRUE(syrupOf({0.5}, {1000.0}, {20.0}, &working));
    EXPECT_NE(textOf(working.steps()[2].formula).find("385.1761"), std::string::npos) << textOf(working.steps()[2].formula);
}

}  // namespace
}  // namespace firn
