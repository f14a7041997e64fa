// What comes first: the cause of a mix that stays soft, what to do about it, why a reading strays, and what to add. In each pair the first and the
// second differ in the deciding criterion, or that one alone speaks for the first; and the order of the rows speaks once for either.

#include "correction/correction.h"
#include "freezing/freezing_curve.h"
#include "texture/advising.h"
#include "texture/texture_class.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

namespace firn {
namespace {

using Parts = std::vector<std::pair<Constituent, double>>;

Mix mixOf(const Parts& parts)
{
    Mix mix;
    for (const auto& [constituent, grams] : parts)
        mix.amounts[constituent] = {grams};
    mix.amounts[Constituent::Water] = {100.0 - mix.mass().value};
    return mix;
}

// --- The class ---

TEST(RankingOfClasses, TheProcessComesBeforeTheComposition)
{
    using T = TextureClass;
    const Mix iceCream = [] {
        Mix mix = mixOf(
            {{Constituent::Sucrose, 17.0}, {Constituent::Fat, 10.0}, {Constituent::Lactose, 5.0}, {Constituent::Protein, 4.0}});
        mix.milkFat = {10.0};
        mix.milkSolidsNotFat = {9.5};
        return mix;
    }();
    EXPECT_EQ(classOf(iceCream, Process::Churned), T::IceCream);
    EXPECT_EQ(classOf(iceCream, Process::Folded), T::Semifreddo);
    EXPECT_EQ(classOf(iceCream, Process::Still), T::StillFrozenIce);
    EXPECT_EQ(classOf(iceCream, Process::Scraped), T::ScrapedIce);
    EXPECT_EQ(classOf(iceCream, Process::Unfrozen), T::Unfrozen);

    // Next to nothing in it: plain ice, however it is stirred, but not what is folded or not frozen.
    const Mix plain = mixOf({{Constituent::Sucrose, 1.0}});
    for (const Process process : {Process::Churned, Process::Scraped, Process::Still})
        EXPECT_EQ(classOf(plain, process), T::Ice);
    EXPECT_EQ(classOf(plain, Process::Folded), T::Semifreddo);
    EXPECT_EQ(classOf(plain, Process::Unfrozen), T::Unfrozen);
    EXPECT_EQ(classOf(mixOf({{Constituent::Sucrose, 1.0}, {Constituent::Ethanol, 3.0}}), Process::Churned), T::Sorbet)
        << "spirit is something in it";
}

// --- The cause of softness ---

std::string causeSaid(double sugar, double salt)
{
    return english(causeOfSoftness(mixOf({{Constituent::Sucrose, sugar}, {Constituent::Salt, salt}})));
}

// A gram of salt counts as 11.71 g of sucrose: two ions of 58.44 g/mol against 342.3 g/mol.
TEST(RankingOfSolutes, GoesByWhatTheyCountAsAndNotByMass)
{
    EXPECT_EQ(causeSaid(20.0, 1.6), "The main causes are sugar (20.0 % by mass) and salt (1.6 %).");
    EXPECT_EQ(causeSaid(20.0, 1.8), "The main causes are salt (1.8 % by mass) and sugar (20.0 %).");
}

TEST(RankingOfSolutes, TheSecondIsNamedFromThreeFifthsOfTheFirst)
{
    EXPECT_EQ(causeSaid(20.0, 1.0), "The main cause is sugar: 20.0 % by mass.");
    EXPECT_EQ(causeSaid(20.0, 1.05), "The main causes are sugar (20.0 % by mass) and salt (1.1 %).");
}

// --- Advice ---

/// What makes it set comes before what serves it. Of each: the window, what is used less of, what is added, the freezer.
std::pair<Advice::Promise, int> placeOf(const Advice& advice)
{
    const int place = advice.serveBetween ? 0 : advice.freezerAt ? 3 : advice.changes.front().mass.value < 0.0 ? 1 : 2;
    return {advice.promise, place};
}

TEST(RankingOfAdvice, WhatNeedsNothingComesFirstThenWhatIsUsedLessOfThenAdditionsThenTheFreezer)
{
    std::size_t withAllThree = 0, withWindow = 0;
    for (double sugar = 16.0; sugar <= 40.0; sugar += 2.0) {
        for (double ethanol = 0.0; ethanol <= 10.0; ethanol += 1.0) {
            const Mix mix = mixOf({{Constituent::Sucrose, sugar}, {Constituent::Ethanol, ethanol}});
            for (const double serveAt_c : {-6.0, -12.0, -17.0}) {
                const auto advice = texture(mix, freezingCurve(mix), {Process::Churned, 0.0, {serveAt_c}, {-18.0}}).advice;
                EXPECT_TRUE(std::ranges::is_sorted(advice, {}, [](const Advice& each) { return placeOf(each); }))
                    << sugar << " % sugar, " << ethanol << " % alcohol";
                withAllThree += std::ranges::count(advice, Advice::Promise::SetsInFreezer, &Advice::promise) == 3 ? 1 : 0;
                withWindow += advice.size() == 2 && advice.front().serveBetween ? 1 : 0;
            }
        }
    }
    EXPECT_GT(withAllThree, 0u);
    EXPECT_GT(withWindow, 0u);
}

// --- Why a reading strays ---

Ingredient made(std::string name, const Parts& per100g, double sugarsSd_gPer100g = 0.0)
{
    Ingredient ingredient;
    ingredient.id = ingredient.name = std::move(name);
    double rest_g = 100.0;
    for (const auto& [constituent, grams] : per100g) {
        ingredient.composition.per100g[constituent] = {grams};
        rest_g -= grams;
    }
    ingredient.composition.per100g[Constituent::Water] += Grams{rest_g};
    if (sugarsSd_gPer100g > 0.0)
        ingredient.spread.sugars_sd = sugarsSd_gPer100g;
    return ingredient;
}

struct Weighed {
    Ingredient ingredient;
    double grams;
};

/// The recipe with these rows behind water and sugar, and its catalogue.
struct Kitchen {
    Recipe recipe;
    Catalogue catalogue;

    explicit Kitchen(const std::vector<Weighed>& rows, double water_g = 600.0, double sugar_g = 200.0)
    {
        recipe.process = Process::Scraped;
        std::vector<Weighed> all{{made("water", {}), water_g}, {made("sucrose", {{Constituent::Sucrose, 100.0}}), sugar_g}};
        all.insert(all.end(), rows.begin(), rows.end());
        std::vector<Ingredient> ingredients;
        for (const Weighed& each : all) {
            ingredients.push_back(each.ingredient);
            recipe.components.front().rows.push_back({each.ingredient.name, {each.grams, Unit::Gram}, {}, {}});
        }
        catalogue = Catalogue(std::move(ingredients));
    }

    CorrectionPlan plan(const MeasuredState& measured, double target) const
    {
        return *corrections(recipe, catalogue, 0, measured, SugarsTarget{{target}});
    }
};

/// Where among the causes this kind with these rows stands; past the end where it is not named.
std::size_t placeOf(const CorrectionPlan& plan, CauseKind kind, const std::vector<std::size_t>& rows)
{
    const auto found = std::ranges::find_if(plan.causes,
        [&](const Cause& cause) { return cause.kind == kind && std::ranges::equal(cause.rows, rows, {}, &RowAsItWas::index); });
    return std::size_t(found - plan.causes.begin());
}

TEST(RankingOfCauses, TheSmallerSlipOfTheScaleComesFirst)
{
    const Weighed little{made("vanilla sugar", {{Constituent::Sucrose, 100.0}}), 60.0};
    const Weighed much{made("cane sugar", {{Constituent::Sucrose, 100.0}}), 240.0};
    for (const bool isLittleFirst : {true, false}) {
        const Kitchen kitchen(isLittleFirst ? std::vector{little, much} : std::vector{much, little}, 700.0, 0.001);
        const double now = 300.0 / 1000.0;
        const CorrectionPlan plan = kitchen.plan({MassFraction{now - 0.02}, {0.001}}, 0.3);
        const std::size_t ofLittle = isLittleFirst ? 2 : 3, ofMuch = isLittleFirst ? 3 : 2;
        ASSERT_LT(placeOf(plan, CauseKind::WrongAmount, {ofLittle}), plan.causes.size());
        EXPECT_LT(placeOf(plan, CauseKind::WrongAmount, {ofMuch}), placeOf(plan, CauseKind::WrongAmount, {ofLittle}));
    }
}

/// Two fruits that are alike but for their mass; what is missing, in standard deviations of the larger row.
CorrectionPlan strayedBy(double ofLarger_sd, bool isLargerFirst)
{
    constexpr double sd_gPer100g = 2.0, larger_g = 400.0, smaller_g = 200.0, water_g = 200.0, sugar_g = 200.0;
    const Parts fruit{{Constituent::Fructose, 12.0}};
    const Weighed larger{made("plum", fruit, sd_gPer100g), larger_g}, smaller{made("peach", fruit, sd_gPer100g), smaller_g};
    const Kitchen kitchen(isLargerFirst ? std::vector{larger, smaller} : std::vector{smaller, larger}, water_g, sugar_g);
    const double mass_g = water_g + sugar_g + larger_g + smaller_g;
    const double sugars_g = sugar_g + 0.12 * (larger_g + smaller_g) - ofLarger_sd * sd_gPer100g / 100.0 * larger_g;
    return kitchen.plan({MassFraction{sugars_g / mass_g}, {0.0001}}, 0.27);
}

TEST(RankingOfCauses, TheSmallerDeviationComesFirstAndAPairOnlyWhereNoneWouldDoAlone)
{
    for (const bool isLargerFirst : {true, false}) {
        const std::size_t larger = isLargerFirst ? 2 : 3, smaller = isLargerFirst ? 3 : 2;
        const CorrectionPlan near = strayedBy(1.4, isLargerFirst);
        ASSERT_LT(placeOf(near, CauseKind::Spread, {smaller}), near.causes.size());
        EXPECT_LT(placeOf(near, CauseKind::Spread, {larger}), placeOf(near, CauseKind::Spread, {smaller}));

        const CorrectionPlan alone = strayedBy(1.95, isLargerFirst);
        EXPECT_EQ(placeOf(alone, CauseKind::Spread, {2, 3}), alone.causes.size()) << "1.95 of one explain it";
        const CorrectionPlan together = strayedBy(2.05, isLargerFirst);
        ASSERT_LT(placeOf(together, CauseKind::Spread, {larger}), together.causes.size());
        EXPECT_LT(placeOf(together, CauseKind::Spread, {2, 3}), placeOf(together, CauseKind::Spread, {larger}))
            << "1.83 of both are fewer than 2.05 of one";
    }
}

TEST(RankingOfCauses, ADeviationComesBeforeALeftOutRowUpToTwoStandardDeviations)
{
    constexpr double fruit_g = 400.0, drops_g = 12.0, water_g = 400.0, sugar_g = 188.0;
    const double mass_g = fruit_g + drops_g + water_g + sugar_g, sugars_g = 0.12 * fruit_g + drops_g + sugar_g;
    const double without = (sugars_g - drops_g) / (mass_g - drops_g);
    const double missing_g = sugars_g - mass_g * without;
    for (const double deviations : {1.9, 2.1}) {
        const Ingredient fruit = made("plum", {{Constituent::Fructose, 12.0}}, 100.0 * missing_g / deviations / fruit_g);
        const Kitchen kitchen(
            {{made("sugar drops", {{Constituent::Sucrose, 100.0}}), drops_g}, {fruit, fruit_g}}, water_g, sugar_g);
        const CorrectionPlan plan = kitchen.plan({MassFraction{without}, {0.0001}}, 0.25);
        const std::size_t leftOut = placeOf(plan, CauseKind::LeftOut, {2}), strayed = placeOf(plan, CauseKind::Spread, {3});
        ASSERT_LT(std::max(leftOut, strayed), plan.causes.size());
        EXPECT_EQ(strayed < leftOut, deviations < 2.0) << deviations;
    }
}

TEST(RankingOfCauses, TheMoreWaterIsLostTheLaterItComes)
{
    // A tenth of the mix lost as water is as odd as 2.4 standard deviations.
    constexpr double fruit_g = 400.0, water_g = 400.0, sugar_g = 200.0, lost_g = 100.0;
    constexpr double mass_g = fruit_g + water_g + sugar_g, sugars_g = 0.12 * fruit_g + sugar_g;
    const double found = sugars_g / (mass_g - lost_g);
    for (const double deviations : {2.3, 2.5}) {
        const Ingredient fruit =
            made("plum", {{Constituent::Fructose, 12.0}}, 100.0 * (mass_g * found - sugars_g) / deviations / fruit_g);
        const CorrectionPlan plan = Kitchen({{fruit, fruit_g}}, water_g, sugar_g).plan({MassFraction{found}, {0.0001}}, 0.25);
        const std::size_t lost = placeOf(plan, CauseKind::WaterLost, {0}), strayed = placeOf(plan, CauseKind::Spread, {2});
        ASSERT_LT(std::max(lost, strayed), plan.causes.size());
        EXPECT_EQ(strayed < lost, deviations < 2.4) << deviations;
    }
}

// --- What to add ---

/// Whether the first of two rows is offered before the second, whichever stands first in the recipe.
void expectFirst(const Parts& first, const Parts& second)
{
    const Weighed better{made("better", first), 1.0}, worse{made("worse", second), 1.0};
    for (const bool isBetterFirst : {true, false}) {
        const Kitchen kitchen(isBetterFirst ? std::vector{better, worse} : std::vector{worse, better}, 740.0, 258.0);
        const auto choices = kitchen.plan({}, 0.30).choices;
        const auto ofBetter = std::ranges::find(choices, "better", &CorrectionChoice::name);
        const auto ofWorse = std::ranges::find(choices, "worse", &CorrectionChoice::name);
        ASSERT_NE(ofBetter, choices.end());
        ASSERT_NE(ofWorse, choices.end());
        EXPECT_LT(ofBetter - choices.begin(), ofWorse - choices.begin());
        EXPECT_LT(ofBetter->disturbance, ofWorse->disturbance);
    }
}

constexpr auto sucrose = Constituent::Sucrose;

TEST(RankingOfChoices, LessMassComesFirst) { expectFirst({{sucrose, 90.0}}, {{sucrose, 60.0}}); }

// Lactose freezes as sucrose does, and is less sweet.
TEST(RankingOfChoices, NearerSweetnessComesFirst) { expectFirst({{sucrose, 70.0}}, {{Constituent::Lactose, 70.0}}); }

TEST(RankingOfChoices, NearerFreezingPointComesFirst)
{
    expectFirst({{sucrose, 70.0}}, {{sucrose, 70.0}, {Constituent::Salt, 4.0}});
}

// The salt of the first moves the freezing point by more than the acid or the alcohol of the second, which are noticed for themselves.
TEST(RankingOfChoices, LessAcidComesFirst)
{
    expectFirst({{sucrose, 70.0}, {Constituent::Salt, 0.8}}, {{sucrose, 70.0}, {Constituent::Acid, 3.0}});
}

TEST(RankingOfChoices, LessAlcoholComesFirst)
{
    expectFirst({{sucrose, 70.0}, {Constituent::Salt, 4.5}}, {{sucrose, 70.0}, {Constituent::Ethanol, 6.0}});
}

}  // namespace
}  // namespace firn
