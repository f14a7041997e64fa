#include "exchange/recipe_json.h"

#include "any_recipe.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

const std::string exampleFile = R"({
  "format": "firn-recipe",
  "version": 1,
  "title": "Rhubarb granita",
  "process": "scraped",
  "overrun_percent": 12.5,
  "serve_at_c": -8,
  "freezer_at_c": -18,
  "notes": "Invented.\nTwo lines.",
  "components": [
    {
      "name": "granita",
      "rows": [
        {"ingredient": "sucrose", "amount": 200, "unit": "g"},
        {"ingredient": "crème", "amount": 0.3333333333333333, "unit": "metric cup", "note": "\"cold\"", "colour": {"r":1,"g":[2.50001]}}
      ],
      "garnishes": [
        "steep",
        {
          "minutes": 20
        }
      ]
    },
    {
      "name": "",
      "rows": []
    }
  ],
  "portions": 8,
  "history": {
    "versions": []
  }
}
)";

std::string recipeWith(const std::string& fields)
{
    return R"({"format": "firn-recipe", "version": 1, "components": [{"name": "base", "rows": []}], )" + fields + "}";
}

std::string recipeWithRow(const std::string& row)
{
    return R"({"format": "firn-recipe", "version": 1, "components": [{"rows": []}, {"rows": [
        {"ingredient": "water", "amount": 1, "unit": "g"}, )"
           + row + "]}]}";
}

std::string refusal(std::string_view text)
{
    const auto recipe = recipeFromJson(text);
    return recipe ? "read as " + recipeToJson(*recipe) : english(recipe.error());
}

TEST(RecipeJson, ReadsEveryField)
{
    const auto recipe = recipeFromJson(exampleFile);
    ASSERT_TRUE(recipe) << english(recipe.error());
    EXPECT_EQ(recipe->title, "Rhubarb granita");
    EXPECT_EQ(recipe->process, Process::Scraped);
    EXPECT_EQ(recipe->overrun_percent, 12.5);
    EXPECT_EQ(recipe->serveAt_c, -8.0);
    EXPECT_EQ(recipe->freezerAt_c, -18.0);
    EXPECT_EQ(recipe->notes, "Invented.\nTwo lines.");
    ASSERT_EQ(recipe->components.size(), 2U);
    ASSERT_EQ(recipe->components[0].rows.size(), 2U);
    EXPECT_EQ(recipe->components[0].name, "granita");
    EXPECT_EQ(recipe->components[0].rows[0], (Row{"sucrose", {200, Unit::Gram}, "", ""}));
    EXPECT_EQ(recipe->components[0].rows[1],
        (Row{"crème", {1.0 / 3.0, Unit::MetricCup}, "\"cold\"", R"({"colour":{"r":1,"g":[2.50001]}})"}));
    EXPECT_EQ(recipe->unknown, R"({"portions":8,"history":{"versions":[]}})");
}

TEST(RecipeJson, WritesOneRowALineInAStableOrder)
{
    const auto recipe = recipeFromJson(exampleFile);
    ASSERT_TRUE(recipe) << english(recipe.error());
    EXPECT_EQ(recipeToJson(*recipe), exampleFile);
}

TEST(RecipeJson, FieldsThatAreNotKnownComeBackFromAnyPlace)
{
    const auto recipe = recipeFromJson(R"({"x": [{"deep": null}], "format": "firn-recipe", "components":
        [{"y": 1e-7, "rows": [{"z": "", "ingredient": "a", "unit": "g", "amount": 1, "Amount": 2}]}], "version": 1})");
    ASSERT_TRUE(recipe) << english(recipe.error());
    EXPECT_EQ(recipe->unknown, R"({"x":[{"deep":null}]})");
    EXPECT_EQ(recipe->components[0].unknown, R"({"y":1e-07})");
    EXPECT_EQ(recipe->components[0].rows[0].unknown, R"({"z":"","Amount":2})");
    EXPECT_EQ(*recipeFromJson(recipeToJson(*recipe)), *recipe);
}

TEST(RecipeJson, AnyNameOfAUnitIsReadAndItsSymbolWritten)
{
    const auto recipe = recipeFromJson(recipeWithRow(R"({"ingredient": "sugar", "amount": 2, "unit": "Tablespoons"})"));
    ASSERT_TRUE(recipe) << english(recipe.error());
    EXPECT_EQ(recipe->components[1].rows[1].amount, (Amount{2, Unit::Tablespoon}));
    EXPECT_NE(recipeToJson(*recipe).find(R"("unit": "tbsp")"), std::string::npos);
}

TEST(RecipeJson, NoComponentsAreOneEmptyOne)
{
    const auto recipe = recipeFromJson(R"({"format": "firn-recipe", "version": 1, "components": []})");
    ASSERT_TRUE(recipe) << english(recipe.error());
    EXPECT_EQ(*recipe, Recipe{});
}

TEST(RecipeJson, NewerFormatsAreRefused)
{
    EXPECT_EQ(refusal(R"({"format": "firn-recipe", "version": 2, "components": {"a": "new shape"}})"),
        "This recipe was written by a newer Firn (format version 2); this one reads version 1.");
    EXPECT_EQ(refusal(R"({"format": "firn-recipe", "version": 18446744073709551615})"),
        "This recipe was written by a newer Firn (format version 18446744073709551615); this one reads version 1.");
}

TEST(RecipeJson, OtherJsonIsRefused)
{
    const std::string sentence = "This is not a Firn recipe: a recipe file says \"format\": \"firn-recipe\".";
    for (const std::string_view text : {"{}", "[]", "1", "null", R"({"format": "firn-report", "version": 1})", R"({"format": 1})"})
        EXPECT_EQ(refusal(text), sentence) << text;
    for (const std::string_view version : {"0", "-1", "1.5", "\"1\"", "null"})
        EXPECT_EQ(refusal(R"({"format": "firn-recipe", "version": )" + std::string(version) + "}"),
            "\"version\" must be a whole number from 1 up.");
    EXPECT_EQ(refusal(R"({"format": "firn-recipe"})"), "\"version\" must be a whole number from 1 up.");
    EXPECT_EQ(refusal(R"({"format": "firn-recipe", "version": 1})"), "\"components\" is missing.");
}

TEST(RecipeJson, TornAndTwistedFilesAreRefused)
{
    EXPECT_EQ(refusal(exampleFile.substr(0, 60)),
        "The file is not valid JSON at line 4, column 16: it may have been cut short. Open a backup of it, or correct it there.");
    EXPECT_EQ(refusal(""), "The file is empty. Open a backup of it if there is one.");
    EXPECT_EQ(refusal(recipeWith(R"("title": "a", "title": "b")")),
        "“title” stands twice in one object, the second time in line 1. Keep one of them.");
    EXPECT_EQ(refusal(recipeWith("\"x\": " + std::string(200000, '['))),
        "The file is nested deeper than 64 levels at line 1, column 155: Firn's files never are.");
}

TEST(RecipeJson, EveryCutOfAFileIsRefused)
{
    for (std::size_t length = 0; length + 2 < exampleFile.size(); ++length)
        EXPECT_FALSE(recipeFromJson(std::string_view(exampleFile).substr(0, length))) << length;
}

TEST(RecipeJson, WrongFieldsOfTheRecipeAreNamed)
{
    EXPECT_EQ(refusal(recipeWith(R"("title": 5)")), "\"title\" must be text.");
    EXPECT_EQ(refusal(recipeWith(R"("notes": null)")), "\"notes\" must be text.");
    EXPECT_EQ(refusal(recipeWith(R"("process": "spun")")),
        "\"process\" must be \"still\", \"scraped\", \"churned\", \"folded\" or \"unfrozen\".");
    EXPECT_EQ(refusal(recipeWith(R"("overrun_percent": -1)")), "\"overrun_percent\" must be a number from 0 to 1000.");
    EXPECT_EQ(refusal(recipeWith(R"("serve_at_c": "cold")")), "\"serve_at_c\" must be a number from -100 to 100.");
    EXPECT_EQ(refusal(recipeWith(R"("freezer_at_c": 1e308)")), "\"freezer_at_c\" must be a number from -100 to 100.");
    EXPECT_EQ(refusal(R"({"format": "firn-recipe", "version": 1, "components": {}})"), "\"components\" must be a list.");
}

TEST(RecipeJson, WrongComponentsAndRowsAreNamedByNumber)
{
    const auto withComponent = [](const std::string& component) {
        return R"({"format": "firn-recipe", "version": 1, "components": [{"rows": []}, )" + component + "]}";
    };
    EXPECT_EQ(refusal(withComponent("3")), "Component 2 must be an object with \"rows\".");
    EXPECT_EQ(refusal(withComponent("{}")), "Component 2 must be an object with \"rows\".");
    EXPECT_EQ(refusal(withComponent(R"({"rows": 1})")), "Component 2: \"rows\" must be a list.");
    EXPECT_EQ(refusal(withComponent(R"({"rows": [], "name": []})")), "Component 2: \"name\" must be text.");
    EXPECT_EQ(
        refusal(recipeWithRow("7")), "Component 2, row 2: A row must be an object with \"ingredient\", \"amount\" and \"unit\".");
    EXPECT_EQ(refusal(recipeWithRow(R"({"ingredient": "a", "amount": 1})")), "Component 2, row 2: \"unit\" is missing.");
    EXPECT_EQ(refusal(recipeWithRow(R"({"amount": 1, "unit": "g"})")), "Component 2, row 2: \"ingredient\" is missing.");
    EXPECT_EQ(refusal(recipeWithRow(R"({"ingredient": 1, "amount": 1, "unit": "g"})")),
        "Component 2, row 2: \"ingredient\" must be text.");
    EXPECT_EQ(
        refusal(recipeWithRow(R"({"ingredient": "a", "amount": 1, "unit": 2})")), "Component 2, row 2: \"unit\" must be text.");
    EXPECT_EQ(refusal(recipeWithRow(R"({"ingredient": "a", "amount": 1, "unit": "smidgen"})")),
        "Component 2, row 2: “smidgen” is not a unit that Firn knows; the units are g, kg, mg, oz, lb, mL, L, tsp, tbsp, cup, "
        "metric "
        "tsp, metric tbsp, metric cup, imperial cup, fl oz, pt, qt, imperial fl oz, imperial pt, shot, dash, pinch, drop, piece, "
        "%.");
}

TEST(RecipeJson, WrongAmountsAreNamedByRow)
{
    const auto withAmount = [](const std::string& amount) {
        return refusal(recipeWithRow(R"({"ingredient": "a", "unit": "g", "amount": )" + amount + "}"));
    };
    EXPECT_EQ(withAmount("-1"), "Component 2, row 2: An amount cannot be negative.");
    EXPECT_EQ(withAmount("1e308"), "Component 2, row 2: An amount cannot be larger than 1000000000.");
    EXPECT_EQ(withAmount("\"1 1/2\""), "Component 2, row 2: \"amount\" must be a number.");
    EXPECT_EQ(withAmount("null"), "Component 2, row 2: \"amount\" must be a number.");
    EXPECT_EQ(withAmount("NaN"), "The file is not valid JSON at line 2, column 103. Correct it there, or open a backup.");
    EXPECT_EQ(withAmount("1e999"), "The number that ends at line 2, column 107 is too large. Correct it.");
    EXPECT_TRUE(withAmount("1e9").starts_with("read as"));
    EXPECT_TRUE(withAmount("-0.0").starts_with("read as"));
}

TEST(RecipeJson, MinusZeroIsWrittenAsZero)
{
    const auto recipe = recipeFromJson(recipeWith(R"("serve_at_c": -0.0)"));
    ASSERT_TRUE(recipe) << english(recipe.error());
    EXPECT_NE(recipeToJson(*recipe).find("\"serve_at_c\": 0,"), std::string::npos);
}

UnknownFields anyUnknownFields()
{
    return *rc::gen::elementOf(std::vector<UnknownFields>{
        "", R"({"a":1})", R"({"b":[1.5,-3,"\u0001é",{"c":null}],"d":{"e":{}}})", R"({"":true,"z":1e+300})"});
}

std::optional<double> anyTemperature_c()
{
    const int thirds = *rc::gen::inRange(-300, 100);
    return thirds % 5 == 0 ? std::nullopt : std::optional(thirds / 3.0);
}

Step anyStep()
{
    Step step;
    step.kind = *rc::gen::element(StepKind::Dissolve, StepKind::Steep, StepKind::Strain, StepKind::Reduce, StepKind::Freeze);
    step.loss = *rc::gen::element(
        Loss{}, Loss{HeldBack{{12.5}}}, Loss{Steeped{"leaves", 2.5, 40.0}}, Loss{BoiledToMass{{700.0}}}, Loss{BoiledToBrix{61.5}});
    step.temperature_c = *rc::gen::element<std::optional<double>>(std::nullopt, -18.0, 95.5);
    step.minutes = *rc::gen::element<std::optional<double>>(std::nullopt, 0.0, 12.5);
    step.note = anyText(allCharacters());
    step.unknown = anyUnknownFields();
    return step;
}

Recipe anyRecipe()
{
    Recipe recipe;
    recipe.title = anyText(allCharacters());
    recipe.process = *rc::gen::element<std::optional<Process>>(
        std::nullopt, Process::Still, Process::Scraped, Process::Churned, Process::Folded, Process::Unfrozen);
    recipe.overrun_percent = *rc::gen::inRange(0, 1000) / 7.0;
    recipe.serveAt_c = anyTemperature_c();
    recipe.freezerAt_c = anyTemperature_c();
    recipe.notes = anyText(allCharacters());
    recipe.unknown = anyUnknownFields();
    recipe.components.clear();
    for (int c = *rc::gen::inRange(1, 4); c > 0; --c) {
        Component component{anyText(allCharacters()), {}, anyUnknownFields()};
        for (int r = *rc::gen::inRange(0, 4); r > 0; --r)
            component.rows.push_back({anyText(allCharacters()), anyAmount(), anyText(allCharacters()), anyUnknownFields()});
        for (int n = *rc::gen::inRange(0, 3); n > 0; --n)
            component.steps.push_back(anyStep());
        if (!component.rows.empty() && *rc::gen::arbitrary<bool>())
            component.rows[0].measuredBrix = *rc::gen::inRange(0, 1000) / 10.0;
        recipe.components.push_back(component);
    }
    return recipe;
}

RC_GTEST_PROP(RecipeJson, WhatIsWrittenIsReadBack, ())
{
    const Recipe recipe = anyRecipe();
    const std::string written = recipeToJson(recipe);
    const auto read = recipeFromJson(written);
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == recipe);
    RC_ASSERT(recipeToJson(*read) == written);
}

TEST(RecipeJson, StepsThatCannotBeReadAreNamed)
{
    const auto refusal = [](const std::string& step) {
        const auto read =
            recipeFromJson(R"({"format":"firn-recipe","version":1,"components":[{"rows":[],"steps":[)" + step + "]}]}");
        return read ? std::string() : english(read.error());
    };
    EXPECT_EQ(refusal(R"({"step":"sing"})"),
        "Component 1, step 1: \"step\" must be \"dissolve\", \"heat\", \"steep\", \"strain\", \"reduce\", \"chill\", \"fold\", "
        "\"churn\" or \"freeze\".");
    EXPECT_EQ(refusal(R"({"step":"strain","held_back_g":-1})"),
        "Component 1, step 1: \"held_back_g\" must be a number from 0 to 1000000000.");
    EXPECT_EQ(refusal(R"({"step":"reduce","to_g":500,"to_brix":60})"),
        "Component 1, step 1: A step takes away one thing only. Keep one of \"held_back_g\", \"of\", \"to_g\" and \"to_brix\".");
    EXPECT_EQ(refusal(R"({"step":"steep","soaks_up_g_per_g":2})"),
        "Component 1, step 1: \"of\" is missing. Name the row that is steeped.");
    EXPECT_EQ(refusal(R"({"minutes":2})"), "Component 1, step 1: A step must be an object with \"step\".");
}

TEST(RecipeJson, TenThousandRowsAreReadBack)
{
    Recipe recipe;
    for (int i = 0; i < 10000; ++i)
        recipe.components[0].rows.push_back(
            {"sucrose " + std::to_string(i), {i / 3.0, Unit::Gram}, "", R"({"id":)" + std::to_string(i) + "}"});
    EXPECT_EQ(*recipeFromJson(recipeToJson(recipe)), recipe);
}

}  // namespace
}  // namespace firn
