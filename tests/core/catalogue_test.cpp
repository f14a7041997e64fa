#include "ingredients/catalogue.h"

#include "../shipped_catalogue.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>

namespace {

using namespace firn;

std::string idOf(std::string_view text)
{
    const auto* ingredient = shippedCatalogue().find(text);
    return ingredient == nullptr ? "nothing" : ingredient->id;
}

std::vector<std::string> idsOf(const std::vector<const Ingredient*>& ingredients)
{
    std::vector<std::string> ids;
    std::ranges::transform(ingredients, std::back_inserter(ids), &Ingredient::id);
    return ids;
}

Ingredient named(std::string id, std::string name, std::vector<std::string> synonyms = {})
{
    Ingredient ingredient;
    ingredient.id = std::move(id);
    ingredient.name = std::move(name);
    ingredient.synonyms = std::move(synonyms);
    return ingredient;
}

TEST(Folded, TakesOffCaseAccentsAndSigns)
{
    EXPECT_EQ(folded("  Crème  fraîche, 30 % fat!"), "creme fraiche 30 fat");
    EXPECT_EQ(folded("cre\u0300me"), "creme");  // accent as a character of its own
    EXPECT_EQ(folded("Œuf, Süßrahm, Øl, Ångström, Łódź, Çilek, þe, ×"), "oeuf sussrahm ol angstrom lodz cilek the");
    EXPECT_EQ(folded("half-and-half"), "half and half");
    EXPECT_EQ(folded("goat’s milk"), folded("goat's milk"));
    EXPECT_EQ(folded(" ,.- "), "");
}

TEST(Folded, KeepsLettersOfOtherScriptsApart)
{
    EXPECT_NE(folded("молоко"), "");
    EXPECT_NE(folded("молоко"), folded("сахар"));
}

TEST(Folded, SurvivesBytesThatAreNoText)
{
    EXPECT_EQ(folded("a\xff"
                     "b\xe2\x82"),
        "a b");
    EXPECT_EQ(folded("\xc3"), "");
}

TEST(Folded, IsTheSameTwice)
{
    for (const auto& ingredient : shippedCatalogue().all()) {
        EXPECT_EQ(folded(folded(ingredient.name)), folded(ingredient.name));
    }
}

TEST(Find, TakesNamesAsCooksWriteThem)
{
    const std::map<std::string, std::string> meant{{"granulated sugar", "sucrose"}, {"Caster Sugar", "sucrose"},
        {"confectioners' sugar", "icing-sugar"}, {"dextrose", "glucose"}, {"glucose syrup", "glucose-syrup-42"},
        {"corn syrup", "light-corn-syrup"}, {"inverted sugar", "invert-sugar"}, {"double cream", "double-cream"},
        {"single cream", "light-cream"}, {"whipping cream", "cream-35"}, {"skimmed milk", "skim-milk"}, {"milk", "whole-milk"},
        {"yoghurt", "yogurt"}, {"cornflour", "cornstarch"}, {"carob bean gum", "locust-bean-gum"},
        {"juice of lemon", "lemon-juice"}, {"sea salt", "salt"}, {"whiskey", "whisky"}, {"prosecco", "prosecco"},
        {"pear cider", "perry"}, {"kasha", "toasted-buckwheat"}, {"half & half", "half-and-half"},
        {"half and half", "half-and-half"}, {"E410", "locust-bean-gum"}};
    for (const auto& [text, id] : meant) {
        EXPECT_EQ(idOf(text), id) << text;
    }
}

TEST(Find, TakesPlurals)
{
    const std::map<std::string, std::string> meant{{"strawberries", "strawberry"}, {"cherries", "sweet-cherry"},
        {"peaches", "peach"}, {"tomatoes", "tomato"}, {"mangos", "mango"}, {"mangoes", "mango"}, {"pears", "pear"},
        {"egg yolks", "egg-yolk"}, {"yolks", "egg-yolk"}, {"eggs", "egg"}, {"mint leaves", "mint"}, {"basil leaves", "basil"},
        {"radishes", "radish"}, {"vanilla pods", "vanilla-pod"}, {"kiwis", "kiwi"}, {"kiwi fruits", "kiwi"}, {"limes", "lime"},
        {"walnut halves", "walnut"}, {"raspberry purées", "raspberry-puree"},
        {"chocolate sandwich cookies", "chocolate-sandwich-biscuit"}, {"hibiscus flowers", "hibiscus"}, {"molasses", "molasses"},
        {"ice cubes", "ice"}, {"blackcurrants", "blackcurrant"}};
    for (const auto& [text, id] : meant) {
        EXPECT_EQ(idOf(text), id) << text;
    }
}

TEST(Find, TakesAccentsOrNone)
{
    EXPECT_EQ(idOf("Strawberry Purée"), "strawberry-puree");
    EXPECT_EQ(idOf("STRAWBERRY PUREE"), "strawberry-puree");
    EXPECT_EQ(idOf("crème fraîche"), "creme-fraiche");
    EXPECT_EQ(idOf("creme fraiche"), "creme-fraiche");
}

TEST(Find, LooksPastWordsOfPreparation)
{
    const std::map<std::string, std::string> meant{{"ripe pears, peeled and cored", "pear"},
        {"large egg yolks, lightly beaten", "egg-yolk"}, {"fresh strawberries (hulled)", "strawberry"},
        {"of cold whole milk", "whole-milk"}, {"unsalted butter, at room temperature", "unsalted-butter"},
        {"freshly squeezed lemon juice", "lemon-juice"}, {"finely grated lemon zest", "lemon-zest"},
        {"rhubarb, cut into pieces", "rhubarb"}};
    for (const auto& [text, id] : meant) {
        EXPECT_EQ(idOf(text), id) << text;
    }
}

TEST(Find, TurnsRoundWhatIsWrittenWithAComma)
{
    const std::map<std::string, std::string> meant{{"sugar, brown", "brown-sugar"}, {"milk, coconut", "coconut-milk"},
        {"butter (salted)", "salted-butter"}, {"cream, sour, chilled", "sour-cream"}, {"butter, peanut", "peanut-butter"}};
    for (const auto& [text, id] : meant) {
        EXPECT_EQ(idOf(text), id) << text;
    }
}

TEST(Find, PrefersNothingToAGuess)
{
    // Two foods of other words each: chocolate milk is none of milk chocolate, and safflower none of sunflower.
    for (const auto* text :
        {"", " ", ",", "of", "fresh", "berry", "straw", "milk, camel", "dried strawberries", "strawberry ice cream", "2", "молоко",
            "butter almond", "mustard seed", "sucralose", "insulin", "vanillin", "lactase", "quassia"}) {
        EXPECT_EQ(idOf(text), "nothing") << text;
    }
}

TEST(Find, TakesWordsInAnyOrderWhereTheyAreKindsAndForms)
{
    const std::map<std::string, std::string> meant{{"glucose syrup dried DE 42", "dried-glucose-syrup-42"},
        {"DE 42 dried glucose syrup", "dried-glucose-syrup-42"}, {"whipping cream 35%", "cream-35"},
        {"cream whipping 35 %", "cream-35"}, {"juice lemon", "lemon-juice"}, {"chocolate milk", "chocolate-milk"},
        {"milk chocolate, chopped", "milk-chocolate"}, {"sugar beet", "sugar-beet"}, {"beet sugar", "sucrose"}};
    for (const auto& [text, id] : meant)
        EXPECT_EQ(idOf(text), id) << text;
}

TEST(Find, ReadsASlipOnlyWhereNothingElseIsAsNear)
{
    const std::map<std::string, std::string> meant{{"strawberies", "strawberry"}, {"rasberries", "raspberry"},
        {"stravbery puree", "strawberry-puree"}, {"sugarr", "sucrose"}, {"waterr", "water"}, {"marscapone", "mascarpone"}};
    for (const auto& [text, id] : meant)
        EXPECT_EQ(idOf(text), id) << text;
    EXPECT_EQ(shippedCatalogue().recognise("strawberies").how, Recognition::Corrected);
    const Catalogue near({named("one", "Mandarin"), named("two", "Mandarim")});
    EXPECT_EQ(near.find("mandarix"), nullptr);
    EXPECT_EQ(near.find("mandarin")->id, "one");
    EXPECT_EQ(near.find("mandarim")->id, "two");
}

TEST(Find, TakesAGeneralWordForItsDefaultAndSaysSo)
{
    for (const auto* text : {"cream", "Creams", "cold cream", "the cream"}) {
        const Recognised found = shippedCatalogue().recognise(text);
        ASSERT_NE(found.ingredient, nullptr) << text;
        EXPECT_EQ(found.ingredient->id, "heavy-cream") << text;
        EXPECT_EQ(found.how, Recognition::ByDefault) << text;
    }
    EXPECT_EQ(shippedCatalogue().recognise("heavy cream").how, Recognition::AsWritten);
    EXPECT_EQ(shippedCatalogue().recognise("Rum").how, Recognition::ByDefault);
    EXPECT_EQ(shippedCatalogue().recognise("rum").how, Recognition::AsWritten);  // the id itself is exact
    Ingredient general = named("general", "Double cream");
    general.defaultFor = {"cream"};
    const Catalogue catalogue({named("own", "Cream"), general});
    EXPECT_EQ(catalogue.find("cream")->id, "own");  // a name comes before a general word
    EXPECT_EQ(catalogue.recognise("cream").how, Recognition::AsWritten);
}

TEST(Find, GivesASharedNameToTheFirst)
{
    const Catalogue catalogue({named("a", "First", {"shared", "b"}), named("b", "Second", {"shared"})});
    EXPECT_EQ(catalogue.find("shared")->id, "a");
    EXPECT_EQ(catalogue.find("b")->id, "b");  // an id before any synonym
    EXPECT_EQ(catalogue.find("Second")->id, "b");
}

TEST(Find, LooksInAnEmptyCatalogue)
{
    EXPECT_EQ(Catalogue{}.find("sugar"), nullptr);
    EXPECT_TRUE(Catalogue{}.search("sugar", 5).empty());
}

TEST(Find, WorksOnACopy)
{
    const Catalogue copy = shippedCatalogue();
    ASSERT_NE(copy.find("pears"), nullptr);
    EXPECT_EQ(copy.find("pears"), copy.find("pear"));
    EXPECT_NE(copy.find("pears"), shippedCatalogue().find("pears"));
}

TEST(Search, PutsTheBestFirst)
{
    const Catalogue catalogue({named("melon", "Watermelon"), named("lemon-juice", "Lemon juice"), named("tart", "Tart of lemon"),
        named("lemon", "Lemon"), named("lime", "Lime", {"lemon's cousin"}), named("demon", "Demon fruit")});
    EXPECT_EQ(idsOf(catalogue.search("LEMON", 10)), (std::vector<std::string>{"lemon", "lemon-juice", "lime", "tart", "demon"}));
    EXPECT_EQ(idsOf(catalogue.search("elon", 10)), (std::vector<std::string>{"melon"}));
    EXPECT_EQ(idsOf(catalogue.search("lemon", 2)), (std::vector<std::string>{"lemon", "lemon-juice"}));
}

TEST(Search, ForgivesOneSlipFromFourLettersOn)
{
    for (const auto* text : {"stravberry", "strwberry", "strrawberry", "starwberry", "strawberyr", "strawbxrry p"}) {
        const auto ids = idsOf(shippedCatalogue().search(text, 20));
        EXPECT_NE(std::ranges::find(ids, "strawberry-puree"), ids.end()) << text;
    }
    EXPECT_TRUE(shippedCatalogue().search("xxstrawberry", 5).empty());
    const Catalogue catalogue({named("gin", "Gin")});
    EXPECT_TRUE(catalogue.search("gix", 5).empty());
}

TEST(Search, FindsWordsInAnyOrderAndPutsWhatIsMeantBeforeSlips)
{
    EXPECT_EQ(idsOf(shippedCatalogue().search("syrup dried glucose 42", 1)), std::vector<std::string>{"dried-glucose-syrup-42"});
    EXPECT_EQ(shippedCatalogue().search("sugr", 3).front()->id, "sucrose");
    for (const auto* text : {"strawberies", "rasberries", "strawbery", "rasberry"})
        EXPECT_FALSE(shippedCatalogue().search(text, 3).empty()) << text;
    const auto bitter = idsOf(shippedCatalogue().search("bitter", 4));
    EXPECT_EQ(bitter.front(), "bitter-aperitif");
    for (const auto* other : {"unsalted-butter", "dark-chocolate-65", "peanut-butter"})
        EXPECT_EQ(std::ranges::find(bitter, other), bitter.end()) << other;
}

TEST(Search, ShowsEachIngredientOnce)
{
    auto ids = idsOf(shippedCatalogue().search("sugar", 100));
    EXPECT_EQ(ids.front(), "sucrose");
    const auto count = ids.size();
    std::ranges::sort(ids);
    ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
    EXPECT_EQ(ids.size(), count);
    EXPECT_GT(count, 10u);
}

TEST(Search, FindsEveryIngredientByItsName)
{
    for (const auto& ingredient : shippedCatalogue().all()) {
        const auto found = shippedCatalogue().search(ingredient.name, 1);
        ASSERT_EQ(found.size(), 1u) << ingredient.name;
        EXPECT_EQ(found.front()->id, ingredient.id);
    }
}

TEST(Search, ShowsTheBeginningOfTheCatalogueForNoText)
{
    EXPECT_EQ(shippedCatalogue().search("", 7).size(), 7u);
    EXPECT_TRUE(shippedCatalogue().search("sugar", 0).empty());
}

}  // namespace
