#include "ingredients/catalogue_filter.h"

#include "../shipped_catalogue.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace {

using namespace firn;

Ingredient described(std::string name, std::string group, std::vector<Allergen> allergens = {})
{
    Ingredient ingredient;
    ingredient.id = folded(name);
    ingredient.name = std::move(name);
    ingredient.group = std::move(group);
    ingredient.allergens = std::move(allergens);
    return ingredient;
}

const Catalogue& larder()
{
    static const Catalogue catalogue({described("Milk", "Dairy", {Allergen::Milk}), described("Pear", "Fruit"),
        described("Praline", "Nuts", {Allergen::Milk, Allergen::Nuts}), described("Peach", "Fruit")});
    return catalogue;
}

std::vector<std::string> names(const CatalogueFilter& filter, const Catalogue& catalogue = larder())
{
    std::vector<std::string> result;
    for (const Ingredient* ingredient : filtered(catalogue, filter))
        result.push_back(ingredient->name);
    return result;
}

using Names = std::vector<std::string>;

TEST(CatalogueFilter, NothingAskedIsEverythingInOrder) { EXPECT_EQ(names({}), Names({"Milk", "Pear", "Praline", "Peach"})); }

TEST(CatalogueFilter, BlanksAskForNothing) { EXPECT_EQ(names({" , "}).size(), 4U); }

TEST(CatalogueFilter, TextIsSearchedAsOneTypes)
{
    EXPECT_EQ(names({"pe"}), Names({"Pear", "Peach"}));
    EXPECT_EQ(names({"unicorn"}), Names());
    EXPECT_EQ(names({"strawbery"}, shippedCatalogue()).front(), "Strawberry");
}

TEST(CatalogueFilter, GroupAndAllergensNarrowTheSearch)
{
    EXPECT_EQ(names({{}, "Fruit", {}, {}}), Names({"Pear", "Peach"}));
    EXPECT_EQ(names({{}, {}, {Allergen::Milk}, {}}), Names({"Milk", "Praline"}));
    EXPECT_EQ(names({{}, {}, {Allergen::Milk, Allergen::Nuts}, {}}), Names({"Praline"}));
    EXPECT_EQ(names({{}, {}, {Allergen::Milk}, {Allergen::Nuts}}), Names({"Milk"}));
    EXPECT_EQ(names({"p", {}, {}, {Allergen::Milk, Allergen::Egg}}), Names({"Pear", "Peach"}));
}

TEST(CatalogueFilter, GroupsStandOnceInOrder) { EXPECT_EQ(groupsOf(larder()), Names({"Dairy", "Fruit", "Nuts"})); }

// The search reads a name as a row of a recipe does.
TEST(CatalogueFilter, FindsWhatARecipeWouldRead)
{
    const auto first = [](const char* text) {
        const auto found = filtered(shippedCatalogue(), {.text = text});
        return found.empty() ? std::string("nothing") : found.front()->id;
    };
    EXPECT_EQ(first("ripe strawberries, hulled"), "strawberry");
    EXPECT_EQ(first("Cream"), "heavy-cream");
    EXPECT_EQ(first("pecans, toasted"), "pecan");
    EXPECT_EQ(first("gin"), "gin");
}

}  // namespace
