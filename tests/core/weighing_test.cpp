#include "ingredients/weighing.h"

#include "../shipped_catalogue.h"
#include "analysis/analysis.h"

#include <gtest/gtest.h>

namespace {

using namespace firn;

Ingredient flour()
{
    Ingredient flour;
    flour.name = "Flour";
    flour.measures = {
        {Unit::Cup, {120.0}, "sifted", "a cook"}, {Unit::Cup, {140.0}, "packed", "a cook"}, {Unit::Teaspoon, {3.0}, "", "a cook"}};
    return flour;
}

Ingredient wine()
{
    Ingredient wine;
    wine.name = "Wine";
    wine.density = GramsPerMillilitre{0.99};
    wine.densitySource = "a table";
    return wine;
}

struct Case {
    Amount amount;
    Ingredient ingredient;
    double mass_g;
    const char* how;
};

void expectWeighs(const Case& expected)
{
    const auto weighing = weigh(expected.amount, expected.ingredient);
    ASSERT_TRUE(weighing) << english(weighing.error());
    EXPECT_NEAR(weighing->mass.value, expected.mass_g, 1e-9);
    EXPECT_EQ(english(weighing->how), expected.how);
}

TEST(Weighing, TakesMassesAsTheyAre)
{
    expectWeighs({{250, Unit::Gram}, flour(), 250, "weighed"});
    expectWeighs({{1.5, Unit::Kilogram}, flour(), 1500, "weighed"});
    expectWeighs({{1, Unit::Pound}, wine(), 453.59237, "weighed"});
    expectWeighs({{0, Unit::Ounce}, wine(), 0, "weighed"});
}

TEST(Weighing, TakesTheFirstMeasureOfTheUnit)
{
    expectWeighs({{1.5, Unit::Cup}, flour(), 180, "cup weight, sifted; a cook"});
    expectWeighs({{2, Unit::Teaspoon}, flour(), 6, "weight of one tsp, a cook"});
}

TEST(Weighing, ScalesTheMeasureOfTheNearestVolume)
{
    // One tablespoon is three teaspoons, sixteen are a cup: the spoon serves for the little, the cup for the much.
    expectWeighs({{1, Unit::Tablespoon}, flour(), 9, "weight of one tsp, a cook, scaled by volume"});
    expectWeighs({{16, Unit::Tablespoon}, flour(), 120, "cup weight, sifted; a cook, scaled by volume"});
    expectWeighs({{236.5882365, Unit::Millilitre}, flour(), 120, "cup weight, sifted; a cook, scaled by volume"});
    expectWeighs({{1, Unit::Pint}, flour(), 240, "cup weight, sifted; a cook, scaled by volume"});
}

TEST(Weighing, TakesTheDensityWhereThereIsNoMeasure)
{
    expectWeighs({{250, Unit::Millilitre}, wine(), 247.5, "density 0.99 g/mL, a table"});
    expectWeighs({{0.5, Unit::Litre}, wine(), 495, "density 0.99 g/mL, a table"});
    expectWeighs({{1, Unit::MetricCup}, wine(), 247.5, "density 0.99 g/mL, a table"});
}

TEST(Weighing, PrefersDensityForMillilitresAndMeasuresForTheKitchen)
{
    Ingredient milk = wine();
    milk.measures = {{Unit::Cup, {240.0}, "", "a cook"}};
    expectWeighs({{100, Unit::Millilitre}, milk, 99, "density 0.99 g/mL, a table"});
    expectWeighs({{1, Unit::Cup}, milk, 240, "cup weight, a cook"});
    expectWeighs({{4, Unit::Tablespoon}, milk, 60, "cup weight, a cook, scaled by volume"});
}

TEST(Weighing, CountsPieces)
{
    Ingredient egg;
    egg.name = "Egg";
    egg.measures = {{Unit::Piece, {50.0}, "large", "a hen"}, {Unit::Piece, {44.0}, "medium", "a hen"}};
    expectWeighs({{3, Unit::Piece}, egg, 150, "piece weight (large), a hen"});
    egg.measures = {{Unit::Piece, {50.0}, "", "a hen"}};
    expectWeighs({{0.5, Unit::Piece}, egg, 25, "piece weight, a hen"});
}

TEST(Weighing, TakesTheMeasureThatTheNoteNames)
{
    const auto grams = [](const char* name, const Amount& amount, const char* note) {
        const auto* ingredient = shippedCatalogue().find(name);
        const auto weighing = ingredient == nullptr ? failure(phrase("unknown")) : weigh(amount, *ingredient, note);
        EXPECT_TRUE(weighing) << english(weighing.error());
        return weighing ? weighing->mass.value : 0.0;
    };
    // USDA SR28, NDB 09316, 19336, 09003, 01123, 11529, 09298, 01012.
    EXPECT_DOUBLE_EQ(grams("strawberry", {1, Unit::Cup}, ""), 144.0);
    EXPECT_DOUBLE_EQ(grams("strawberry", {1, Unit::Cup}, "very ripe"), 144.0);
    EXPECT_DOUBLE_EQ(grams("strawberry", {1, Unit::Cup}, "Thinly sliced"), 166.0);
    EXPECT_DOUBLE_EQ(grams("strawberry", {1, Unit::Cup}, "in slices"), 166.0);
    EXPECT_DOUBLE_EQ(grams("strawberry", {1, Unit::Cup}, "halved"), 152.0);
    EXPECT_DOUBLE_EQ(grams("strawberry", {1, Unit::Cup}, "pureed and strained"), 232.0);
    EXPECT_NEAR(grams("strawberry", {236.5882365, Unit::Millilitre}, "sliced"), 166.0, 1e-9);  // scaled from the cup of slices
    EXPECT_DOUBLE_EQ(grams("tomato", {1, Unit::Cup}, "sliced"), 180.0);                        // "chopped or sliced"
    EXPECT_DOUBLE_EQ(grams("raisin", {1, Unit::Cup}, "packed"), 165.0);
    EXPECT_DOUBLE_EQ(grams("raisin", {1, Unit::Cup}, "not packed"), 145.0);
    EXPECT_DOUBLE_EQ(grams("cottage cheese", {1, Unit::Cup}, "large curd"), 210.0);
    EXPECT_DOUBLE_EQ(grams("icing sugar", {1, Unit::Cup}, "sifted"), 100.0);
    EXPECT_DOUBLE_EQ(grams("apple", {1, Unit::Piece}, "peeled, large"), 223.0);
    EXPECT_DOUBLE_EQ(grams("apple", {1, Unit::Piece}, "cut in small dice"), 182.0);
    EXPECT_DOUBLE_EQ(grams("egg", {2, Unit::Piece}, "extra large"), 112.0);
    EXPECT_DOUBLE_EQ(grams("egg", {2, Unit::Piece}, "medium"), 88.0);
    EXPECT_EQ(english(weigh({1, Unit::Cup}, flour(), "packed").value().how), "cup weight, packed; a cook");
    EXPECT_DOUBLE_EQ(weigh({250, Unit::Gram}, flour(), "packed").value().mass.value, 250.0);
}

TEST(Weighing, TheNoteOfARowReachesTheScale)
{
    Recipe recipe;
    recipe.components.front().rows = {{"strawberry", {1, Unit::Cup}, "thinly sliced", {}}};
    EXPECT_DOUBLE_EQ(analyse(recipe, shippedCatalogue(), {}).components[0][0].mass.value, 166.0);
}

TEST(Weighing, SaysWhatIsMissing)
{
    Ingredient powder;
    powder.name = "Powder";
    EXPECT_EQ(english(weigh({1, Unit::Cup}, powder).error()), "Powder has no known density or cup weight. Give it in grams.");
    EXPECT_EQ(
        english(weigh({100, Unit::Millilitre}, powder).error()), "Powder has no known density or cup weight. Give it in grams.");
    EXPECT_EQ(
        english(weigh({2, Unit::Piece}, powder).error()), "The weight of one piece of Powder is not known. Give it in grams.");
    EXPECT_EQ(english(weigh({2, Unit::Piece}, wine()).error()), "The weight of one piece of Wine is not known. Give it in grams.");
    powder.measures = {{Unit::Piece, {1.0}, "", ""}};
    EXPECT_FALSE(weigh({1, Unit::Cup}, powder));  // a piece is not a volume
}

TEST(Weighing, LeavesSharesOfTheMixToTheMix)
{
    EXPECT_EQ(english(weigh({5, Unit::PercentOfMix}, wine()).error()),
        "A share of the mix can only be weighed together with the other rows. Give Wine in grams.");
}

TEST(Weighing, NeedsNoIngredientForAMass)
{
    EXPECT_DOUBLE_EQ(weighWithoutIngredient({2, Unit::Kilogram})->mass.value, 2000.0);
    for (const auto unit : {Unit::Cup, Unit::Millilitre, Unit::Piece, Unit::PercentOfMix}) {
        EXPECT_FALSE(weighWithoutIngredient({1, unit}));
    }
}

// A shot of a spirit is a jigger; one of espresso is what a machine draws.
TEST(Weighing, AShotOfEspressoIsItsOwnMeasure)
{
    const auto grams = [](const char* name) { return weigh({1, Unit::Shot}, *shippedCatalogue().find(name))->mass.value; };
    EXPECT_DOUBLE_EQ(grams("espresso"), 30.0);
    EXPECT_DOUBLE_EQ(grams("ristretto"), 20.0);
    EXPECT_NEAR(grams("vodka"), 42.0, 1.0);
}

TEST(Weighing, NamesTheSourceOfTheShippedFigures)
{
    const auto how = [](const Amount& amount, std::string_view name) {
        const auto* ingredient = shippedCatalogue().find(name);
        const auto weighing = ingredient == nullptr ? failure(phrase("unknown")) : weigh(amount, *ingredient);
        return english(weighing ? weighing->how : weighing.error());
    };
    EXPECT_EQ(how({1, Unit::Cup}, "granulated sugar"), "cup weight, USDA SR28, NDB 19335");
    EXPECT_EQ(how({1.5, Unit::Cup}, "strawberries"), "cup weight, whole; USDA SR28, NDB 09316");
    EXPECT_EQ(how({100, Unit::Millilitre}, "gin"), "density 0.948 g/mL, OIML R 22, 40 % vol at 20 °C");
    EXPECT_EQ(how({100, Unit::Millilitre}, "water"), "density 0.9982 g/mL, 20 °C, OIML R 22");
    EXPECT_EQ(how({2, Unit::Piece}, "pears"), "piece weight (medium), USDA SR28, NDB 09252");
    EXPECT_EQ(how({1, Unit::Cup}, "locust bean gum"), "Locust bean gum has no known density or cup weight. Give it in grams.");
}

}  // namespace
