// What each cause accounts for in the difference of the two methods.
#include "explain/methods.h"

#include "../shipped_catalogue.h"
#include "freezing/textbook.h"
#include "solution/solute_activity.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

ExplainedAnalysis of(const std::vector<std::pair<std::string, double>>& rows)
{
    Recipe recipe;
    for (const auto& [ingredient, grams] : rows)
        recipe.components.front().rows.push_back({ingredient, {grams, Unit::Gram}, {}, {}});
    return analyseWithWorkings(recipe, shippedCatalogue(), {});
}

const Parting* find(const MethodComparison& comparison, PartingCause cause)
{
    const auto found = std::ranges::find(comparison.partings, cause, &Parting::cause);
    return found == comparison.partings.end() ? nullptr : &*found;
}

double partOf(const MethodComparison& comparison, PartingCause cause)
{
    const Parting* parting = find(comparison, cause);
    return parting ? parting->difference.value : 0.0;
}

bool says(const Parting& parting, std::string_view words) { return english(parting.reason).find(words) != std::string::npos; }

// Worked out by hand, with 0.00969 per kelvin for the ice line near 0 °C and 18.015 g/mol for water.
constexpr double perKelvin = 0.00969;

TEST(Methods, AcidFallsIntoIonsAndItsTableIsSteep)
{
    // 30 g citric acid in 750 g water are 0.2082 mol/kg. The fitted law gives ln a_w = -0.003888, free molecules 0.2082 x 0.018015 = 0.003751:
    // 0.000137 more, 0.014 K colder. What the table for sucrose charges on top makes the line warmer.
    const auto found = compareMethods(of({{"water", 750}, {"sucrose", 350}, {"citric-acid", 30}}));
    ASSERT_TRUE(found);
    const double b = 1000.0 * 30.0 / 192.124 / 750.0;
    const double law = -0.01847014 * b - 0.00108633 * b * b + 0.00048988 * b * b * b;
    EXPECT_NEAR(partOf(*found, PartingCause::Acid), (law + b * 0.018015) / perKelvin, 0.001);
    EXPECT_NEAR(partOf(*found, PartingCause::Acid), -0.014, 0.001);
    EXPECT_TRUE(says(*find(*found, PartingCause::Acid), "falls into ions"));
    EXPECT_TRUE(says(*find(*found, PartingCause::Acid), "The curve is colder."));
    // 30 g count as 53.5 g of sucrose, 7.1 g in 100 g water. In Table 6.1 the way from 46.7 to 53.8 g costs 0.51 K, free molecules cost
    // 0.2082 x 1.86 = 0.387 K.
    EXPECT_NEAR(partOf(*found, PartingCause::Steepness), 0.122, 0.003);
    EXPECT_TRUE(says(*find(*found, PartingCause::Steepness), "The curve is warmer."));
}

TEST(Methods, SaltIsHeldBackALittleAndItsTableIsSteep)
{
    // 10 g salt in 750 g water are 0.2281 mol/kg; its osmotic coefficient by the fitted law is 0.918, so that a twelfth of 0.85 K is missing.
    const auto without = compareMethods(of({{"water", 750}, {"sucrose", 350}, {"citric-acid", 30}}));
    const auto found = compareMethods(of({{"water", 750}, {"sucrose", 350}, {"citric-acid", 30}, {"salt", 10}}));
    ASSERT_TRUE(found && without);
    EXPECT_NEAR(partOf(*found, PartingCause::Salt), (1.0 - 0.918) * 2.0 * 0.2281 * 0.018015 / perKelvin, 0.005);
    EXPECT_NEAR(partOf(*found, PartingCause::Salt), 0.07, 0.005);
    EXPECT_TRUE(says(*find(*found, PartingCause::Salt), "hold each other back"));
    // The salt moves the difference by 0.39 K, of which the ions are the smaller part and 0.32 K the steepness.
    const double whole_k = found->difference.value - without->difference.value;
    const double steepness_k = partOf(*found, PartingCause::Steepness) - partOf(*without, PartingCause::Steepness);
    EXPECT_NEAR(whole_k, 0.39, 0.005);
    EXPECT_NEAR(steepness_k, 0.32, 0.005);
    EXPECT_NEAR(partOf(*found, PartingCause::Salt) + steepness_k, whole_k, 0.005);
}

TEST(Methods, PartingsAddUpToTheDifferenceOfTheReport)
{
    const auto explained =
        of({{"whole milk", 400}, {"gin", 60}, {"sucrose", 120}, {"salt", 2}, {"citric-acid", 2}, {"gelatin", 3}, {"pear", 100}});
    const auto comparison = compareMethods(explained);
    ASSERT_TRUE(comparison);
    const Analysis& analysis = explained.analysis;
    EXPECT_DOUBLE_EQ(
        comparison->difference.value, (analysis.freezing.freezingPoint->temperature - analysis.textbook->freezingPoint).value);
    EXPECT_EQ(comparison->waterActivity.result().value, analysis.freezing.freezingPoint->temperature.value);
    EXPECT_EQ(comparison->textbook.result().value, analysis.textbook->freezingPoint.value);
    EXPECT_EQ(comparison->partings.size(), 7u);
}

/// What a part would be if its cause alone acted the other way round: the law of each, evaluated here from its own terms.
std::optional<bool> isWarmerByItsLaw(PartingCause cause, const Mix& mix)
{
    const double kilograms = mix[Constituent::Water].value / 1000.0;
    // As many free particles as the textbook's equivalents are molecules of sucrose, by Raoult's law.
    const auto ofParticles = [&](Constituent c) {
        Mix alone;
        alone.amounts[c] = mix[c];
        return -textbookMix(alone).sucroseEquivalents.value / 342.3 / kilograms * water_g_mol / 1000.0;
    };
    const auto electrolyte = [&](Constituent c) {
        const auto& each = *std::ranges::find(electrolyteActivities(), c, &ElectrolyteActivity::constituent);
        return lnActivityOf(each, mix[c].value / each.molarMass_g_mol / kilograms) > ofParticles(c);
    };
    switch (cause) {
    case PartingCause::Salt:
        return electrolyte(Constituent::Salt);
    case PartingCause::Acid:
        return electrolyte(Constituent::Acid);
    case PartingCause::Alcohol:
        return lnActivityOfEthanol(mix[Constituent::Ethanol].value / ethanol_g_mol / kilograms) > ofParticles(Constituent::Ethanol);
    case PartingCause::HeldWater:
        return false;
    default:
        return std::nullopt;
    }
}

std::vector<std::pair<std::string, double>> anyRows()
{
    std::vector<std::pair<std::string, double>> rows{{"water", *rc::gen::inRange(1, 800)}};
    const int others = *rc::gen::inRange(0, 8);
    for (int i = 0; i < others; ++i)
        rows.emplace_back(*rc::gen::element<std::string>("sucrose", "glucose", "fructose", "glycerol", "salt", "citric-acid",
                              "ethanol", "gin", "whole milk", "skim milk powder", "gelatin", "raspberry", "lemon juice"),
            *rc::gen::inRange(0, 4000) / 10.0);
    return rows;
}

RC_GTEST_PROP(Methods, PartsAreTheDifferenceAndEachReasonSaysWhatItsSignSays, ())
{
    const ExplainedAnalysis explained = of(anyRows());
    const auto found = compareMethods(explained);
    RC_PRE(found.has_value());
    double sum_k = 0.0;
    for (const Parting& parting : found->partings) {
        sum_k += parting.difference.value;
        RC_ASSERT(std::isfinite(parting.difference.value));
        const bool isShownAsNothing = std::abs(parting.difference.value) < 0.005;
        RC_ASSERT(says(parting, isShownAsNothing                  ? ": less than 0.01 K here."
                                : parting.difference.value >= 0.0 ? "The curve is warmer."
                                                                  : "The curve is colder."));
        // The freezing point is solved for to 1e-5 K; nearer to zero a sign says nothing.
        constexpr double certain_k = 1e-4;
        if (std::abs(parting.difference.value) < certain_k)
            continue;
        if (const auto isWarmer = isWarmerByItsLaw(parting.cause, explained.analysis.mix))
            RC_ASSERT(*isWarmer == (parting.difference.value > 0.0));
        const std::string reason = english(parting.reason);
        for (const char* less : {"lower it less", "hold each other back", "at a higher temperature"})
            RC_ASSERT(reason.find(less) == std::string::npos || parting.difference.value > 0.0);
        for (const char* more :
            {"lower it more", "lowers it more", "falls into ions", "the rest is stronger", "at a lower temperature"})
            RC_ASSERT(reason.find(more) == std::string::npos || parting.difference.value < 0.0);
    }
    RC_ASSERT(std::abs(sum_k - found->difference.value) < 1e-9);
    // The two slopes that the steepness names are in the order of its sign.
    if (const Parting* steep = find(*found, PartingCause::Steepness); steep && std::abs(steep->difference.value) > 0.01) {
        const double table = std::get<Figure>(steep->reason.values[2]).value;
        const double particles = std::get<Figure>(steep->reason.values[3]).value;
        RC_ASSERT((table > particles) == (steep->difference.value > 0.0));
    }
}

TEST(Methods, TheReasonsAreThoseOfWhatTheMixHolds)
{
    const auto sugarOnly = compareMethods(of({{"water", 80}, {"sucrose", 20}}));
    EXPECT_LT(std::abs(sugarOnly->difference.value), 0.1);
    EXPECT_EQ(sugarOnly->partings.size(), 1u);
    EXPECT_TRUE(find(*compareMethods(of({{"water", 60}, {"sucrose", 15}, {"ethanol", 10}})), PartingCause::Alcohol));
    EXPECT_TRUE(find(*compareMethods(of({{"water", 80}, {"salt", 10}})), PartingCause::Salt));
    const auto strong = compareMethods(of({{"water", 35}, {"sucrose", 65}}));
    EXPECT_TRUE(says(*find(*strong, PartingCause::Sugars), "stronger than the textbook's table"));
    EXPECT_TRUE(find(*compareMethods(of({{"water", 50}, {"skim milk powder", 50}})), PartingCause::HeldWater));
}

TEST(Methods, NoReasonNamesWhatIsNotInTheMix)
{
    const auto gum = compareMethods(of({{"sucrose", 150}, {"glucose syrup", 150}, {"water", 600}, {"locust bean gum", 2}}));
    const Parting* minerals = find(*gum, PartingCause::MilkSalts);
    ASSERT_TRUE(minerals);
    for (const char* absent : {"fruit", "milk solids", "Salts of milk"})
        EXPECT_FALSE(says(*minerals, absent)) << english(minerals->reason);
    EXPECT_TRUE(says(*minerals, "there is no milk in this mix")) << english(minerals->reason);
    EXPECT_TRUE(says(*find(*gum, PartingCause::Sugars), "simple sugars as 1.9"));
    const auto sucrose = compareMethods(of({{"water", 75}, {"sucrose", 45}}));
    EXPECT_FALSE(says(*find(*sucrose, PartingCause::Sugars), "simple sugars")) << english(sucrose->partings.front().reason);
    const auto milk = compareMethods(of({{"whole milk", 600}, {"sucrose", 100}}));
    EXPECT_TRUE(says(*find(*milk, PartingCause::MilkSalts), "milk solids-not-fat"));
}

TEST(Methods, DifferencesAreInKelvins)
{
    const auto found = compareMethods(of({{"water", 700}, {"sucrose", 200}, {"salt", 20}}));
    const std::string summary = english(found->summary);
    EXPECT_TRUE(summary.ends_with(" K apart.")) << summary;
    for (const Parting& parting : found->partings)
        EXPECT_EQ(english(parting.reason).find("°C"), std::string::npos) << english(parting.reason);
}

TEST(Methods, AnyMixWithAlcoholIsToldWhichToTrust)
{
    const auto found = compareMethods(of({{"water", 60}, {"sucrose", 15}, {"ethanol", 5}}));
    ASSERT_TRUE(found->advice);
    EXPECT_TRUE(english(*found->advice).starts_with("With alcohol in it the curve is the one to trust"));
    EXPECT_FALSE(compareMethods(of({{"water", 80}, {"sucrose", 20}}))->advice);
}

TEST(Methods, WithoutWaterThereIsNothingToCompare)
{
    EXPECT_FALSE(compareMethods(of({{"sucrose", 10}})).has_value());
    EXPECT_FALSE(compareMethods(of({})).has_value());
}

}  // namespace
}  // namespace firn
