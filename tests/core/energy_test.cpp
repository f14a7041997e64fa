#include "ingredients/energy.h"

#include "../shipped_catalogue.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <set>

namespace {

using namespace firn;
using enum Constituent;

TEST(Energy, FollowsTheFactorsOfTheRegulation)
{
    // Regulation (EU) 1169/2011, annex XIV, kcal per gram.
    const std::pair<Constituent, double> factors[] = {{Water, 0}, {Fat, 9}, {Protein, 4}, {Sucrose, 4}, {Lactose, 4}, {Starch, 4},
        {Maltitol, 2.4}, {Erythritol, 0}, {Fibre, 2}, {Salt, 0}, {Acid, 3}, {Ethanol, 7}};
    for (const auto& [constituent, factor] : factors) {
        Amounts amounts;
        amounts[constituent] = {10.0};
        EXPECT_DOUBLE_EQ(energy_kcal(amounts), 10.0 * factor) << int(constituent);
    }
}

TEST(Energy, AddsUpAGranita)
{
    // Worked by hand: 20.4 × 4 + 0.6 × 2 + 0.3 × 4 + 0.1 × 9 + 2.0 × 7 + 0.4 × 3 = 100.1 kcal.
    Amounts granita;
    granita[Water] = {76.2};
    granita[Sucrose] = {20.4};
    granita[Fibre] = {0.6};
    granita[Protein] = {0.3};
    granita[Fat] = {0.1};
    granita[Ethanol] = {2.0};
    granita[Acid] = {0.4};
    EXPECT_NEAR(energy_kcal(granita), 100.1, 1e-9);
}

constexpr double share = 0.05;       // of the published energy
constexpr double watery_kcal = 2.0;  // in 100 g: a few tenths of a gram of anything are more than 5 % of a watery food

TEST(Energy, EveryRowOfTheCatalogueAgreesWithItsTableOrSaysWhyNot)
{
    int checked = 0;
    int explained = 0;
    for (const auto& ingredient : shippedCatalogue().all()) {
        if (!ingredient.energy_kcalPer100g)
            continue;
        ++checked;
        const double published_kcal = *ingredient.energy_kcalPer100g;
        const double found_kcal = energy_kcal(ingredient.composition.per100g);
        const bool agrees = std::abs(found_kcal - published_kcal) <= std::max(watery_kcal, share * published_kcal);
        explained += agrees ? 0 : 1;
        EXPECT_EQ(agrees, ingredient.energyNote.empty())
            << ingredient.id << ": " << found_kcal << " kcal, published " << published_kcal << ": " << ingredient.energyNote;
    }
    RecordProperty("checked", checked);
    RecordProperty("explained", explained);
    EXPECT_GE(checked, 250);
}

TEST(Energy, RowsWithoutAPublishedOneArePureComposedOrFromMemory)
{
    const auto begins = [](const std::string& source) {
        return std::ranges::any_of(
            std::initializer_list<std::string_view>{"Pure", "Stoichiometry", "Nominal", "Typical", "Estimate", "Calculated",
                "Equal masses", "Two parts", "Non-crystallising", "Crystalline", "Mixture", "Saccharides of", "Aromatic water"},
            [&](std::string_view word) { return source.starts_with(word); });
    };
    const auto holds = [](const std::string& source) {
        return source.find("from memory") != std::string::npos || source.find("% vol, OIML R 22") != std::string::npos;
    };
    // Records of CIQUAL 2020 for which no energy is at hand.
    const std::set<std::string> withoutEntry = {"vanilla-sugar", "agave-syrup", "blackcurrant", "blackcurrant-puree",
        "carrot-juice", "dulce-de-leche", "kefir", "mascarpone", "sparkling-wine", "roasted-hazelnut", "hazelnut-paste", "chestnut",
        "chestnut-cream", "hazelnut-spread", "soy-cream", "meringue"};
    std::size_t found = 0;
    for (const auto& ingredient : shippedCatalogue().all()) {
        if (ingredient.energy_kcalPer100g)
            continue;
        const bool hasNoEntry = withoutEntry.contains(ingredient.id);
        found += hasNoEntry ? 1 : 0;
        EXPECT_TRUE(begins(ingredient.source) || holds(ingredient.source) || hasNoEntry)
            << ingredient.id << ": " << ingredient.source;
    }
    EXPECT_EQ(found, withoutEntry.size());
}

}  // namespace
