#include "exchange/linked_recipes.h"

#include "../shipped_catalogue.h"
#include "analysis/analysis.h"
#include "exchange/recipe_json.h"
#include "recipe/own_ingredients.h"

#include <fstream>
#include <gtest/gtest.h>

namespace firn {
namespace {

namespace fs = std::filesystem;

Row row(const char* ingredient, double amount, Unit unit = Unit::Gram) { return {ingredient, {amount, unit}, {}, {}}; }

Recipe recipeOf(const char* title, std::vector<Row> rows)
{
    Recipe recipe;
    recipe.title = title;
    recipe.components[0].rows = std::move(rows);
    return recipe;
}

/// A cook's own syrup: half sucrose, half water, with an allergen that must not get lost.
Ingredient houseSyrup()
{
    Ingredient syrup;
    syrup.id = "house-syrup";
    syrup.name = "House syrup";
    syrup.group = "Sugars and syrups";
    syrup.composition.per100g[Constituent::Water] = {50};
    syrup.composition.per100g[Constituent::Sucrose] = {50};
    syrup.allergens = {Allergen::Sesame};
    return syrup;
}

class LinkedRecipes : public testing::Test {
protected:
    LinkedRecipes()
        : folder(fs::temp_directory_path()
                 / ("firn-linked-" + std::to_string(testing::UnitTest::GetInstance()->random_seed())
                     + testing::UnitTest::GetInstance()->current_test_info()->name()))
    {
        fs::create_directories(folder);
    }
    ~LinkedRecipes() override { fs::remove_all(folder); }

    fs::path written(const char* name, const Recipe& recipe)
    {
        std::ofstream(folder / name, std::ios::binary) << recipeToJson(recipe);
        return folder / name;
    }

    LinkedRecipe taken(const fs::path& file, const fs::path& home = {})
    {
        auto linked = takenIn(file, home);
        EXPECT_TRUE(linked) << english(linked.error());
        return linked ? *linked : LinkedRecipe{};
    }

    fs::path folder;
};

std::string cautionsOf(const Analysis& analysis)
{
    std::string text;
    for (const Caution& caution : analysis.cautions)
        text += english(caution.sentence) + "\n";
    return text;
}

TEST_F(LinkedRecipes, IsAnIngredientWithTheMixOfItsFinishedDessert)
{
    Recipe cream = recipeOf("Buttermilk cream", {row("buttermilk", 300), row("heavy cream", 300), row("sucrose", 60)});
    cream.components[0].steps = {{StepKind::Reduce, {}, {}, BoiledToMass{{600}}, {}, {}}};
    Recipe cup = recipeOf("Cup", {row("buttermilk CREAM", 100), row("water", 100)});
    cup.linked = {taken(written("cream.firn", cream))};
    const Analysis whole = analyse(cream, shippedCatalogue(), {});
    const Analysis found = analyse(cup, shippedCatalogue(), {});
    EXPECT_EQ(found.components[0][0].ingredientName, "Buttermilk cream");
    EXPECT_NEAR(found.shares.sugars.value, whole.shares.sugars.value / 2.0, 1e-12);
    EXPECT_NE(cautionsOf(found).find("MILK"), std::string::npos) << "the allergens of a linked recipe must be named";
}

TEST_F(LinkedRecipes, SaysSoWhenTheLinkedRecipeIsNotAllCounted)
{
    Recipe cup = recipeOf("Cup", {row("cream", 100)});
    cup.linked = {{"cream", "cream.firn", recipeOf("Cream", {row("heavy cream", 300), row("moon dust", 5)})}};
    EXPECT_NE(cautionsOf(analyse(cup, shippedCatalogue(), {})).find("linked recipe “cream”"), std::string::npos);
}

TEST_F(LinkedRecipes, ComesBackFromTheFileAsItWas)
{
    Recipe cream = recipeOf("Cream \"double\"\n", {row("heavy cream", 300)});
    cream.ingredients = {houseSyrup()};
    cream.components[0].process = Process::Folded;
    cream.components[0].overrun_percent = 35.5;
    Recipe cup = recipeOf("Cup", {row("cream", 100)});
    cup.linked = {{"cream", "cream.firn", cream}, {"other", "/far/other.firn", recipeOf("Other", {})}};
    cup.ingredients = {houseSyrup(), houseSyrup()};
    const std::string text = recipeToJson(cup);
    const auto again = recipeFromJson(text);
    ASSERT_TRUE(again) << english(again.error());
    EXPECT_TRUE(*again == cup);
    EXPECT_EQ(recipeToJson(*again), text);
}

TEST_F(LinkedRecipes, ChangesAndLossesOfTheFileAreSeen)
{
    const fs::path file = written("cream.firn", recipeOf("Cream", {row("heavy cream", 300)}));
    const LinkedRecipe linked = taken(file);
    auto now = changedSinceTakenIn(linked, folder);
    ASSERT_TRUE(now) << english(now.error());
    EXPECT_FALSE(*now);

    const Recipe changed = recipeOf("Cream", {row("heavy cream", 250)});
    written("cream.firn", changed);
    now = changedSinceTakenIn(linked, folder);
    ASSERT_TRUE(now && *now);
    EXPECT_TRUE(**now == changed);

    fs::remove(file);
    now = changedSinceTakenIn(linked, folder);
    ASSERT_FALSE(now);
    EXPECT_NE(english(now.error()).find("“Cream” could not be read again, so the saved copy is used"), std::string::npos);
    EXPECT_NE(english(now.error()).find("cream.firn"), std::string::npos);
}

TEST_F(LinkedRecipes, ACircleIsRefusedWithItsChain)
{
    const fs::path cup = written("cup.firn", recipeOf("Cup", {row("water", 1)}));
    Recipe sauce = recipeOf("Sauce", {row("Cup", 10)});
    sauce.linked = {taken(cup)};
    const fs::path sauceFile = written("sauce.firn", sauce);
    Recipe cream = recipeOf("Cream", {row("Sauce", 10)});
    cream.linked = {taken(sauceFile)};
    cream = withLinksFrom(folder, cream);
    EXPECT_EQ(cream.linked[0].file, "sauce.firn");
    const fs::path creamFile = written("cream.firn", cream);

    auto circle = takenIn(creamFile, cup);
    ASSERT_FALSE(circle);
    EXPECT_NE(english(circle.error()).find("Cream → Sauce → Cup"), std::string::npos) << english(circle.error());
    circle = takenIn(cup, folder / "." / "cup.firn");
    ASSERT_FALSE(circle);
    EXPECT_NE(english(circle.error()).find("Cup → Cup"), std::string::npos);
    EXPECT_TRUE(takenIn(creamFile, folder / "another.firn"));
}

TEST_F(LinkedRecipes, ChainsAreOnlySoLongThatTheFileReadsBack)
{
    Recipe recipe = recipeOf("0", {row("water", 1)});
    for (std::size_t i = 1; i <= longestChainOfLinks; ++i) {
        Recipe next = recipeOf(std::to_string(i).c_str(), {row("water", 1)});
        next.linked = {taken(written("link.firn", recipe))};
        recipe = next;
    }
    EXPECT_TRUE(recipeFromJson(recipeToJson(recipe)));
    const auto tooDeep = takenIn(written("link.firn", recipe), {});
    ASSERT_FALSE(tooDeep);
    EXPECT_NE(english(tooDeep.error()).find("8 deep"), std::string::npos);
}

TEST_F(LinkedRecipes, PathsMoveWithTheFolder)
{
    Recipe cup;
    cup.linked = {{"near", "/kitchen/spring/cream.firn", {}}, {"far", "/cellar/syrup.firn", {}}};
    const Recipe inFile = withLinksFrom("/kitchen", cup);
    EXPECT_EQ(inFile.linked[0].file, "spring/cream.firn");
    EXPECT_EQ(inFile.linked[1].file, "/cellar/syrup.firn");
    EXPECT_EQ(withAbsoluteLinks("/attic", inFile).linked[0].file, "/attic/spring/cream.firn");
    EXPECT_EQ(withAbsoluteLinks("/attic", inFile).linked[1].file, "/cellar/syrup.firn");
}

TEST_F(LinkedRecipes, BadLinksInAFileAreRefusedWithTheirPlace)
{
    const auto reason = [](const std::string& link) {
        const auto recipe =
            recipeFromJson(R"({"format": "firn-recipe", "version": 1, "components": [], "linked_recipes": [)" + link + "]}");
        return recipe ? "nothing against it" : english(recipe.error());
    };
    EXPECT_EQ(reason(R"({"name": "x", "recipe": {}})"), "Linked recipe 1: \"file\" is missing.");
    EXPECT_EQ(reason(R"({"name": "x", "file": "x.firn", "recipe": {}})"),
        "Linked recipe 1: This is not a Firn recipe: a recipe file says \"format\": \"firn-recipe\".");
    EXPECT_EQ(reason(R"({"name": 1, "file": "x.firn", "recipe": {}})"), "Linked recipe 1: \"name\" must be text.");
    EXPECT_EQ(reason("7"), "Linked recipe 1: \"name\" is missing.");
}

TEST(OwnIngredients, TravelInTheRecipeAndComeBeforeTheCatalogue)
{
    Recipe recipe = recipeOf("Syrup", {row("house syrup, chilled", 100)});
    EXPECT_TRUE(analyse(recipe, shippedCatalogue(), {}).components[0][0].problem);
    recipe.ingredients = {houseSyrup()};
    recipe.ingredients[0].synonyms = {"honey"};
    const Analysis found = analyse(recipe, shippedCatalogue(), {});
    EXPECT_FALSE(found.components[0][0].problem);
    EXPECT_NEAR(percent(found.shares.sugars), 50.0, 1e-9);
    EXPECT_NE(cautionsOf(found).find("SESAME"), std::string::npos);
    recipe.components[0].rows = {row("honey", 100)};
    EXPECT_EQ(analyse(recipe, shippedCatalogue(), {}).components[0][0].ingredientId, "house-syrup");
    // A name that the catalogue knows better is not taken away from it.
    recipe.components[0].rows = {row("acacia honey", 100)};
    EXPECT_NE(analyse(recipe, shippedCatalogue(), {}).components[0][0].ingredientId, "house-syrup");
}

TEST(OwnIngredients, AreCopiedIntoTheRecipeThatUsesThem)
{
    const std::vector<Ingredient> own{houseSyrup()};
    std::vector<Ingredient> all = own;
    all.insert(all.end(), shippedCatalogue().all().begin(), shippedCatalogue().all().end());
    const Catalogue catalogue(all);

    Recipe recipe = recipeOf("Syrup", {row("House Syrups", 100), row("sucrose", 10), row("House syrup", 5)});
    recipe = withOwnIngredients(recipe, catalogue, own);
    ASSERT_EQ(recipe.ingredients.size(), 1u);
    EXPECT_EQ(recipe.ingredients[0], houseSyrup());
    EXPECT_TRUE(withOwnIngredients(recipe, catalogue, own) == recipe) << "what travels already is not copied again";
    EXPECT_TRUE(changedOwnIngredients(recipe, own).empty());
    EXPECT_TRUE(withOwnIngredients(recipeOf("None", {row("sucrose", 10)}), catalogue, own).ingredients.empty());

    std::vector<Ingredient> changed = own;
    changed[0].composition.per100g[Constituent::Water] = {49.5};
    EXPECT_EQ(withOwnIngredients(recipe, Catalogue(changed), changed).ingredients[0], houseSyrup());
    ASSERT_EQ(changedOwnIngredients(recipe, changed).size(), 1u);
    EXPECT_EQ(*changedOwnIngredients(recipe, changed)[0], changed[0]);
}

TEST(ComponentProcess, IsItsOwnWhereItDiffersFromTheRecipes)
{
    Recipe cup;
    cup.process = Process::Scraped;
    cup.components = {{"Granita", {row("water", 750), row("sucrose", 250)}, {}}, {"Cream", {row("heavy cream", 200)}, {}}};
    cup.components[1].process = Process::Folded;
    cup.components[1].overrun_percent = 80.0;
    EXPECT_EQ(analyse(cup, shippedCatalogue(), {}, 0).texture.process, Process::Scraped);
    const Analysis cream = analyse(cup, shippedCatalogue(), {}, 1);
    EXPECT_EQ(cream.texture.process, Process::Folded);
    EXPECT_NEAR(cream.overrun_percent, 80.0, 1e-12);
    const Analysis whole = analyse(cup, shippedCatalogue(), {});
    EXPECT_EQ(whole.texture.process, Process::Scraped);
    EXPECT_NEAR(whole.overrun_percent * whole.volume_20c.value, 80.0 * cream.volume_20c.value, 1e-9);
}

TEST(StepsInView, TheFiguresAreThoseAfterSoManySteps)
{
    Recipe recipe = recipeOf("Reduction", {row("water", 500), row("sucrose", 100)});
    recipe.components[0].steps = {
        {StepKind::Reduce, {}, {}, BoiledToMass{{400}}, {}, {}}, {StepKind::Reduce, {}, {}, BoiledToMass{{200}}, {}, {}}};
    const auto mass_g = [&](std::optional<std::size_t> stepsDone) {
        return analyse(recipe, shippedCatalogue(), {}, 0, stepsDone).mass.value;
    };
    EXPECT_NEAR(mass_g(0), 600.0, 1e-9);
    EXPECT_NEAR(mass_g(1), 400.0, 1e-9);
    EXPECT_NEAR(mass_g(2), 200.0, 1e-9);
    EXPECT_NEAR(mass_g(9), 200.0, 1e-9);
    EXPECT_NEAR(mass_g(std::nullopt), 200.0, 1e-9);
}

}  // namespace
}  // namespace firn
