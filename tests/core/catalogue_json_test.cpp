#include "exchange/catalogue_json.h"

#include "../shipped_catalogue.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace {

using namespace firn;

std::string catalogueOf(const std::string& ingredients)
{
    return R"({"format": "firn-catalogue", "version": 1, "about": "test", "ingredients": [)" + ingredients + "]}";
}

std::string reasonAgainst(const std::string& text)
{
    const auto catalogue = catalogueFromJson(text);
    return catalogue ? "nothing against it" : english(catalogue.error());
}

const std::string syrup = R"({"id": "syrup", "name": "Syrup", "per_100_g": {"water": 50, "sucrose": 50.5}})";

/// The syrup with one more field.
std::string syrupWith(const std::string& field) { return syrup.substr(0, syrup.size() - 1) + ", " + field + "}"; }

TEST(CatalogueJson, ReadsEveryField)
{
    const auto catalogue = catalogueFromJson(catalogueOf(R"({"id": "mousse-2", "name": "Möusse", "synonyms": ["foam", "froth"],
        "group": "Dairy", "per_100_g": {"water": 60, "fat": 20, "lactose": 15.25, "other": 5}, "milk_fat": 18,
        "milk_solids_not_fat": 16, "yolk_solids": 2, "density_g_ml": 0.5, "density_source": "a table",
        "measures": [{"unit": "fl oz", "grams": 15, "note": "level", "source": "a cook"}, {"unit": "piece", "grams": 40}],
        "spread": {"water_sd": 1, "sugars_sd": 0.5, "estimate": true}, "allergens": ["milk", "egg"], "hazards": ["raw-egg"],
        "source": "a book"})"));
    ASSERT_TRUE(catalogue) << english(catalogue.error());
    Ingredient expected;
    expected.id = "mousse-2";
    expected.name = "Möusse";
    expected.synonyms = {"foam", "froth"};
    expected.group = "Dairy";
    expected.composition.per100g[Constituent::Water] = {60};
    expected.composition.per100g[Constituent::Fat] = {20};
    expected.composition.per100g[Constituent::Lactose] = {15.25};
    expected.composition.per100g[Constituent::Other] = {5};
    expected.composition.milkFat = {18};
    expected.composition.milkSolidsNotFat = {16};
    expected.composition.yolkSolids = {2};
    expected.density = GramsPerMillilitre{0.5};
    expected.densitySource = "a table";
    expected.measures = {{Unit::FluidOunce, {15}, "level", "a cook"}, {Unit::Piece, {40}, "", ""}};
    expected.spread = {1.0, 0.5, true};
    expected.allergens = {Allergen::Milk, Allergen::Egg};
    expected.hazards = {Hazard::RawEgg};
    expected.source = "a book";
    ASSERT_EQ(catalogue->all().size(), 1u);
    EXPECT_EQ(catalogue->all()[0], expected);
}

TEST(CatalogueJson, LetsFieldsBeAbsent)
{
    const auto catalogue = catalogueFromJson(catalogueOf(syrup));
    ASSERT_TRUE(catalogue) << english(catalogue.error());
    const auto& ingredient = catalogue->all()[0];
    EXPECT_FALSE(ingredient.density);
    EXPECT_FALSE(ingredient.spread.water_sd);
    EXPECT_DOUBLE_EQ(ingredient.composition.milkFat.value, 0.0);
    EXPECT_TRUE(catalogueFromJson(catalogueOf("")));
}

TEST(CatalogueJson, ReadsTheShippedFile)
{
    const auto catalogue = catalogueFromJson(shippedCatalogueText());
    ASSERT_TRUE(catalogue) << english(catalogue.error());
    EXPECT_GE(catalogue->all().size(), 230u);
}

TEST(CatalogueJson, NamesTheIngredientThatIsWrong)
{
    const std::vector<std::pair<std::string, std::string>> wrong{
        {R"("colour": "red")",
            R"(catalogue, ingredient syrup: the field "colour" is not known. Remove it or correct its spelling.)"},
        {R"("group": 3)", R"(catalogue, ingredient syrup: "group" must be a text in quotation marks.)"},
        {R"("synonyms": "sirup")", R"(catalogue, ingredient syrup: "synonyms" must be a list in square brackets.)"},
        {R"("synonyms": [1])", R"(catalogue, ingredient syrup: "synonyms" must hold texts in quotation marks.)"},
        {R"("milk_fat": -1)", R"(catalogue, ingredient syrup: "milk_fat" must be a number, and not negative.)"},
        {R"("milk_fat": "1")", R"(catalogue, ingredient syrup: "milk_fat" must be a number, and not negative.)"},
        {R"("density_g_ml": 0)", "catalogue, ingredient syrup: the density is zero. Correct or remove it."},
        {R"("allergens": ["milk", "cheese"])",
            R"(catalogue, ingredient syrup: "cheese" in "allergens" is not known. Remove it or correct its spelling.)"},
        {R"("hazards": ["milk"])",
            R"(catalogue, ingredient syrup: "milk" in "hazards" is not known. Remove it or correct its spelling.)"},
        {R"("spread": {"fat_sd": 1})",
            R"(catalogue, ingredient syrup: the field "fat_sd" is not known. Remove it or correct its spelling.)"},
        {R"("spread": {"estimate": 1})", R"(catalogue, ingredient syrup: "estimate" must be true or false.)"},
        {R"("spread": 1)", "catalogue, ingredient syrup: write an object in braces here."},
        {R"("measures": [{"unit": "bucket", "grams": 9}])",
            R"(catalogue, ingredient syrup: "bucket" is not a measure of volume or a piece. Correct the unit.)"},
        {R"("measures": [{"unit": "kg", "grams": 9}])",
            R"(catalogue, ingredient syrup: "kg" is not a measure of volume or a piece. Correct the unit.)"},
        {R"("measures": [{"unit": "cup"}])", R"(catalogue, ingredient syrup: a measure weighs nothing. Give its "grams".)"},
        {R"("measures": [{"unit": "cup", "grams": 9, "size": 1}])",
            R"(catalogue, ingredient syrup: the field "size" is not known. Remove it or correct its spelling.)"},
        {R"("measures": [3])", "catalogue, ingredient syrup: write an object in braces here."}};
    for (const auto& [field, sentence] : wrong) {
        EXPECT_EQ(reasonAgainst(catalogueOf(syrupWith(field))), sentence) << field;
    }
}

TEST(CatalogueJson, RefusesCompositionsThatDoNotClose)
{
    const auto with = [](const std::string& per_100_g) {
        return catalogueOf(R"({"id": "x", "name": "X", "per_100_g": )" + per_100_g + "}");
    };
    EXPECT_EQ(reasonAgainst(with(R"({"water": 99})")), "nothing against it");
    EXPECT_EQ(reasonAgainst(with(R"({"water": 98.9})")),
        R"(catalogue, ingredient x: "per_100_g" adds up to 98.9 g. Correct it so that it adds up to 100 g.)");
    EXPECT_EQ(reasonAgainst(with(R"({"water": 90, "fat": 11.5})")),
        R"(catalogue, ingredient x: "per_100_g" adds up to 101.5 g. Correct it so that it adds up to 100 g.)");
    EXPECT_EQ(reasonAgainst(with(R"({"water": 50, "gold": 50})")),
        R"(catalogue, ingredient x: "gold" in "per_100_g" is not known. Remove it or correct its spelling.)");
    EXPECT_EQ(reasonAgainst(with(R"({"water": 150, "fat": -50})")),
        R"(catalogue, ingredient x: "fat" must be a number, and not negative.)");
    EXPECT_EQ(reasonAgainst(with("7")), "catalogue, ingredient x: write an object in braces here.");
}

TEST(CatalogueJson, RefusesBadIds)
{
    const auto with = [](const std::string& id) {
        return catalogueOf(R"({"id": ")" + id + R"(", "name": "X", "per_100_g": {"water": 100}})");
    };
    EXPECT_EQ(reasonAgainst(with("whole-milk-2")), "nothing against it");
    for (const auto* id : {"Whole-milk", "whole milk", "-milk", "milk-", "whole--milk", "crème"}) {
        EXPECT_EQ(reasonAgainst(with(id)), "catalogue, ingredient " + std::string(id)
                                               + ": an id is made of lower-case letters, digits and single hyphens. Correct it.");
    }
    EXPECT_EQ(reasonAgainst(with("")), R"(catalogue, ingredient : "id" is missing or empty. Add it.)");
    EXPECT_EQ(reasonAgainst(catalogueOf(syrup + R"(, {"name": "Nameless"})")),
        R"(catalogue, ingredient 2: "id" is missing or empty. Add it.)");
    EXPECT_EQ(reasonAgainst(catalogueOf(syrup + ", " + syrup)),
        "catalogue: two ingredients have the id syrup. Give one of them another.");
    EXPECT_EQ(reasonAgainst(catalogueOf("7")), "catalogue, ingredient 1: write an object in braces here.");
}

TEST(CatalogueJson, RefusesOtherFiles)
{
    const std::string other =
        "This is not a catalogue of version 1. Choose a file that says \"format\": \"firn-catalogue\" and \"version\": 1.";
    EXPECT_EQ(reasonAgainst(R"({"format": "firn-recipe", "version": 1, "ingredients": []})"), other);
    EXPECT_EQ(reasonAgainst(R"({"format": "firn-catalogue", "version": 2, "ingredients": []})"), other);
    EXPECT_EQ(reasonAgainst(R"({"format": "firn-catalogue", "ingredients": []})"), other);
    EXPECT_EQ(reasonAgainst("[]"), "catalogue: write an object in braces here.");
    EXPECT_EQ(
        reasonAgainst(R"({"format": "firn-catalogue", "version": 1})"), R"(catalogue: "ingredients" is missing. Add the list.)");
    EXPECT_EQ(reasonAgainst(R"({"format": "firn-catalogue", "version": 1, "ingredients": {}})"),
        R"(catalogue: "ingredients" must be a list in square brackets.)");
    EXPECT_EQ(reasonAgainst(R"({"format": "firn-catalogue", "version": 1, "ingredients": [], "extra": 1})"),
        R"(catalogue: the field "extra" is not known. Remove it or correct its spelling.)");
    EXPECT_FALSE(catalogueFromJson(""));
    EXPECT_FALSE(catalogueFromJson("garbage"));
    EXPECT_FALSE(catalogueFromJson(R"({"format": "firn-catalogue", "format": "firn-catalogue", "version": 1, "ingredients": []})"));
}

TEST(CatalogueJson, WritesWhatItReads)
{
    const auto shipped = shippedCatalogue().all();
    const auto again = catalogueFromJson(catalogueToJson(shipped));
    ASSERT_TRUE(again) << english(again.error());
    EXPECT_TRUE(std::ranges::equal(again->all(), shipped));

    Ingredient torn;
    torn.id = "torn";
    torn.name = "to\xffrn";
    torn.composition.per100g[Constituent::Water] = {100};
    torn.energy_kcalPer100g = 0.5;
    torn.energyNote = "a table";
    const auto mended = catalogueFromJson(catalogueToJson({&torn, 1}));
    ASSERT_TRUE(mended) << english(mended.error());
    EXPECT_EQ(mended->all()[0].name, "to\uFFFDrn");
    EXPECT_EQ(mended->all()[0].energy_kcalPer100g, 0.5);
    EXPECT_EQ(mended->all()[0].energyNote, "a table");
}

}  // namespace
