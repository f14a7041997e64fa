#include "analysis/row_weight.h"

#include "../shipped_catalogue.h"
#include "solution/estimated_density.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

using enum Constituent;

Ingredient holding(std::initializer_list<std::pair<Constituent, double>> constituents)
{
    Ingredient ingredient;
    ingredient.name = "Own";
    for (const auto& [constituent, grams] : constituents)
        ingredient.composition.per100g[constituent] = {grams};
    return ingredient;
}

double mass_g(const Amount& amount, const Ingredient& ingredient)
{
    const auto weighed = weightOf(amount, {"Own", amount, {}, {}}, ingredient);
    return weighed ? weighed->mass.value : 0.0;
}

// 100 mL of an own syrup of 60 °Bx once counted 0 g. Its density by the sucrose table (tests/reference) rounds to 1.287 g/mL.
TEST(RowWeight, AnOwnSyrupGoesByTheDensityOfItsComposition)
{
    const Ingredient syrup = holding({{Water, 40.0}, {Sucrose, 60.0}});
    const auto weighed = weightOf({100.0, Unit::Millilitre}, {"Own", {}, {}, {}}, syrup).value();
    EXPECT_NEAR(weighed.mass.value, 128.7, 1e-6);
    EXPECT_EQ(english(weighed.how), "density 1.287 g/mL, estimated from the composition, ±2 %");
    EXPECT_NEAR(mass_g({2.0, Unit::Tablespoon}, syrup), 2 * 14.78676478125 * 1.287, 1e-6);
}

TEST(RowWeight, AKnownDensityOrMeasureComesFirst)
{
    Ingredient syrup = holding({{Water, 40.0}, {Sucrose, 60.0}});
    syrup.measures = {{Unit::Cup, {300.0}, "", "scales"}};
    EXPECT_DOUBLE_EQ(mass_g({1.0, Unit::Cup}, syrup), 300.0);
    EXPECT_NEAR(mass_g({118.29411825, Unit::Millilitre}, syrup), 150.0, 1e-9);
    syrup.density = GramsPerMillilitre{1.3};
    EXPECT_DOUBLE_EQ(mass_g({100.0, Unit::Millilitre}, syrup), 130.0);
}

// A cup of berries holds half of what a cup of their purée does, and a powder has air between its grains.
TEST(RowWeight, HeapsAndPowdersAreNotTakenForLiquids)
{
    const Ingredient berries = holding({{Water, 85.0}, {Fructose, 9.0}, {Fibre, 6.0}});
    EXPECT_EQ(mass_g({1.0, Unit::Cup}, berries), 0.0);
    EXPECT_NEAR(mass_g({100.0, Unit::Millilitre}, berries), 105.0, 2.0);
    const Ingredient powder = holding({{Water, 5.0}, {Sucrose, 95.0}});
    EXPECT_EQ(mass_g({1.0, Unit::Cup}, powder), 0.0);
    EXPECT_EQ(mass_g({100.0, Unit::Millilitre}, powder), 0.0);
    const Ingredient nuts = holding({{Water, 4.0}, {Fat, 66.0}, {Protein, 15.0}, {Fibre, 10.0}, {Other, 5.0}});
    EXPECT_EQ(mass_g({100.0, Unit::Millilitre}, nuts), 0.0);
}

TEST(RowWeight, OilAndSpiritFlow)
{
    EXPECT_NEAR(mass_g({100.0, Unit::Millilitre}, holding({{Fat, 100.0}})), 92.0, 1.0);
    EXPECT_NEAR(mass_g({100.0, Unit::Millilitre}, holding({{Water, 66.7}, {Ethanol, 33.3}})), 94.8, 0.1);
}

// Lines of the catalogue that were estimated by hand, and every measured density of a liquid: the estimate is worth its ±2 %.
TEST(RowWeight, HandMadeEstimatesOfTheCatalogueAgree)
{
    int count = 0;
    for (const Ingredient& ingredient : shippedCatalogue().all()) {
        if (!ingredient.densitySource.starts_with("estimated from the composition"))
            continue;
        const auto density = estimatedDensity(ingredient.composition, Filling::Poured);
        ASSERT_TRUE(density) << ingredient.id;
        EXPECT_NEAR(density->value / ingredient.density->value, 1.0, 0.02) << ingredient.id;
        ++count;
    }
    EXPECT_GT(count, 30);
}

// Of each drink and syrup that has neither a density nor a volume that was weighed, a millilitre weighs something.
TEST(RowWeight, EverythingInTheCatalogueThatFlowsCanBePoured)
{
    for (const Ingredient& ingredient : shippedCatalogue().all()) {
        const auto& per100g = ingredient.composition.per100g;
        if (per100g[Water] + per100g[Ethanol] < Grams{15.0})
            continue;
        EXPECT_TRUE(weightOf({100.0, Unit::Millilitre}, {ingredient.id, {}, {}, {}}, ingredient)) << ingredient.id;
    }
}

}  // namespace
}  // namespace firn
