#include "exchange/recipe_jsonld.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

std::string refusal(std::string_view text)
{
    const auto recipe = recipeFromJsonLd(text);
    return recipe ? "read" : english(recipe.error());
}

TEST(RecipeJsonLd, ReadsNameIngredientsAndInstructions)
{
    const auto recipe =
        recipeFromJsonLd(R"({"@context": "https://schema.org", "@type": "Recipe", "name": "Pear sorbet", "recipeYield": "8",
        "recipeIngredient": ["450 g pears", "1½ cups sugar", "juice of 1 lemon"],
        "recipeInstructions": "Blend and churn."})");
    ASSERT_TRUE(recipe) << english(recipe.error());
    EXPECT_EQ(recipe->title, "Pear sorbet");
    EXPECT_EQ(recipe->notes, "Blend and churn.");
    ASSERT_EQ(recipe->components.size(), 1U);
    EXPECT_EQ(recipe->components[0].rows, (std::vector<Row>{{"pears", {450, Unit::Gram}, "", ""},
                                              {"sugar", {1.5, Unit::Cup}, "", ""}, {"lemon juice", {1, Unit::Piece}, "", ""}}));
}

TEST(RecipeJsonLd, AnIngredientThatCannotBeReadStopsNothing)
{
    const auto recipe = recipeFromJsonLd(R"({"@type": "Recipe", "recipeIngredient": ["2 eggs", "-2 lemons", "1-2 tbsp rum"]})");
    ASSERT_TRUE(recipe) << english(recipe.error());
    EXPECT_EQ(recipe->components[0].rows, (std::vector<Row>{{"eggs", {2, Unit::Piece}, "", ""}, {"-2 lemons", {}, "", ""},
                                              {"rum", {1.5, Unit::Tablespoon}, "mean of 1 and 2 tbsp", ""}}));
}

TEST(RecipeJsonLd, FindsTheRecipeInListsAndGraphs)
{
    const std::string recipe = R"({"@type": ["Thing", "Recipe"], "name": "Found", "recipeIngredient": "2 eggs"})";
    for (const std::string& text : {recipe, "[1, " + recipe + "]", R"({"@graph": [{"@type": "WebPage"}, )" + recipe + "]}",
             R"({"@type": "WebPage", "mainEntity": )" + recipe + "}"}) {
        const auto read = recipeFromJsonLd(text);
        ASSERT_TRUE(read) << text << ": " << english(read.error());
        EXPECT_EQ(read->title, "Found");
        EXPECT_EQ(read->components[0].rows, (std::vector<Row>{{"eggs", {2, Unit::Piece}, "", ""}}));
    }
}

TEST(RecipeJsonLd, ReadsStepsAndSectionsAndTheOlderField)
{
    const auto recipe = recipeFromJsonLd(R"({"@type": "Recipe", "ingredients": ["2 eggs"], "recipeInstructions": [
        "Whisk.", {"@type": "HowToStep", "text": "Fold."},
        {"@type": "HowToSection", "name": "Freeze", "itemListElement": [{"text": "Pour."}, {"text": "Wait."}, {"image": "x"}]}]})");
    ASSERT_TRUE(recipe) << english(recipe.error());
    EXPECT_EQ(recipe->notes, "Whisk.\nFold.\nPour.\nWait.");
    EXPECT_EQ(recipe->components[0].rows.size(), 1U);
}

TEST(RecipeJsonLd, RefusesWhatIsNoRecipe)
{
    for (const std::string_view text : {"{}", "[]", "3", R"({"@type": "WebPage"})", R"({"@type": 5, "recipeIngredient": []})"})
        EXPECT_EQ(refusal(text), "There is no recipe in this file: nothing in it has \"@type\": \"Recipe\".") << text;
    EXPECT_EQ(refusal(R"({"@type": "Recipe"})"), "The recipe has no ingredients: \"recipeIngredient\" is missing.");
    EXPECT_EQ(refusal(R"({"@type": "Recipe", "recipeIngredient": ["2 eggs", 5]})"), "Ingredient 2 must be text.");
    EXPECT_EQ(refusal(R"({"@type": "Recipe")"),
        "The file is not valid JSON at line 1, column 19: it may have been cut short. Open a backup of it, or correct it there.");
}

}  // namespace
}  // namespace firn
