// Answers that are no figures of a report come with their derivation, which ends with the answer to the last bit.
#include "correction/correction.h"
#include "correction/measuring.h"
#include "derivation/formula_text.h"
#include "syrup/pearson.h"
#include "syrup/syrup.h"

#include "../shipped_catalogue.h"

#include <cmath>
#include <gtest/gtest.h>

namespace firn {
namespace {

Recipe vermouthSorbet()
{
    Recipe recipe;
    for (const auto& [ingredient, grams] : {std::pair("water", 520.0), std::pair("orange juice", 250.0),
             std::pair("sucrose", 170.0), std::pair("sweet vermouth", 120.0)})
        recipe.components.front().rows.push_back({ingredient, {grams, Unit::Gram}, {}, {}});
    return recipe;
}

/// Where both sides can be reckoned, they agree.
void expectSound(const Working& working)
{
    ASSERT_FALSE(working.steps().empty());
    for (const WorkingStep& step : working.steps()) {
        const auto& sides = std::get<Operation>(step.formula.node).parts;
        const auto left = valueOf(sides[0]), right = valueOf(sides[1]);
        if (left && right) {
            EXPECT_NEAR(*left, *right, 1e-9 + 1e-7 * std::abs(*left)) << textOf(step.formula);
        }
    }
}

double lastOf(const Working& working) { return working.steps().back().result.value; }

enum class Known { Nothing, Sugar, Alcohol };

/// Readings that the recipe's own mix gives, a little off.
void expectFound(const std::vector<Instrument>& instruments, Known what = Known::Nothing)
{
    std::vector<ReadingRecord> readings;
    for (const Instrument instrument : instruments) {
        readings.emplace_back().instrument = instrument;
        readings.back().temperature_c = 26.0;
    }
    const Recipe recipe = vermouthSorbet();
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

TEST(AnswerDerivations, TheDensityOfASugarSolutionIsSpelledOut)
{
    Working working;
    ASSERT_TRUE(syrupOf({0.5}, {1000.0}, {20.0}, &working));
    EXPECT_NE(textOf(working.steps()[1].formula).find("385.1761"), std::string::npos) << textOf(working.steps()[1].formula);
}

}  // namespace
}  // namespace firn
