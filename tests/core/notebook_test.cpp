#include "exchange/recipe_json.h"
#include "exchange/recipe_text.h"
#include "notebook/search.h"

#include "../shipped_catalogue.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

Recipe recipeOf(const std::string& title, const std::string& rows, std::optional<Process> process = {})
{
    Recipe recipe = recipeFromText(rows).value();
    recipe.title = title;
    recipe.process = process;
    return recipe;
}

RecipeCard analysedCard(const Recipe& recipe, const std::string& file = "/a/recipe.firn", std::int64_t changed_s = 0)
{
    return withFigures(cardOf(recipe, file, changed_s), analyse(recipe, shippedCatalogue(), conditionsOf(recipe)));
}

Recipe rhubarb()
{
    Recipe recipe = recipeOf("Rhubarb granita", "300 g rhubarb\n190 g sucrose\n500 g water", Process::Scraped);
    recipe.notes = "From the canal-side bistro.\nServe with crème fraîche.";
    recipe.tags = {"spring", "no dairy"};
    return recipe;
}

bool finds(const RecipeCard& card, std::string_view typed)
{
    const auto query = queryFrom(typed);
    EXPECT_TRUE(query) << typed << ": " << english(query.error());
    return query && !found({&card, 1}, {0}, {*query}).empty();
}

/// A card with nothing but figures.
RecipeCard withSugarAndFreezing(double sugars_percent, double freezesAt_c)
{
    RecipeCard card;
    card.figures.emplace();
    card.figures->sugars = fromPercent(sugars_percent);
    card.figures->freezingPoint = Celsius{freezesAt_c};
    return card;
}

TEST(RecipeCard, HoldsWhatAnAnalysisSays)
{
    const Recipe recipe = rhubarb();
    const Analysis analysis = analyse(recipe, shippedCatalogue(), conditionsOf(recipe));
    const RecipeCard card = analysedCard(recipe);
    ASSERT_TRUE(card.figures);
    EXPECT_EQ(card.title, "Rhubarb granita");
    EXPECT_EQ(card.ingredients, (std::vector<std::string>{"rhubarb", "sucrose", "water"}));
    EXPECT_EQ(card.figures->sugars, analysis.shares.sugars);
    EXPECT_EQ(card.figures->freezingPoint, analysis.freezing.freezingPoint->temperature);
    EXPECT_EQ(card.figures->textureClass, TextureClass::Granita);
    EXPECT_EQ(card.figures->ribbon, analysis.ribbon);
    EXPECT_EQ(card.tags, recipe.tags);
}

TEST(RecipeCard, GoesByTheFileWhereTheRecipeHasNoTitle)
{
    EXPECT_EQ(analysedCard(recipeOf(" ", "1 g water"), "/a/Pear ice.firn").title, "Pear ice");
}

TEST(RecipeCard, OfAnUnreadableFileSaysWhyAndIsFoundByItsName)
{
    const RecipeCard card = unreadableCard("/a/Torn pear.firn", 0, phrase("It is torn."));
    EXPECT_EQ(card.title, "Torn pear.firn");
    EXPECT_EQ(english(*card.fault), "It is torn.");
    EXPECT_TRUE(finds(card, "pear"));
    EXPECT_FALSE(finds(card, "sugar > 0"));
}

TEST(Search, LooksInTitleIngredientsNotesTagsClassAndProcess)
{
    const RecipeCard card = analysedCard(rhubarb());
    for (const char* typed : {"", "rhubarb", "sucrose", "bistro", "spring", "granita", "scraped", "rhub gran spr"})
        EXPECT_TRUE(finds(card, typed)) << typed;
    for (const char* typed : {"pear", "hubarb", "rhubarb pear", "sorbet"})
        EXPECT_FALSE(finds(card, typed)) << typed;
}

TEST(Search, FindsAnIngredientByTheCataloguesName)
{
    const Ingredient* sugar = shippedCatalogue().find("table sugar");
    ASSERT_TRUE(sugar);
    const RecipeCard card = analysedCard(recipeOf("Ice", "100 g table sugar\n500 g water"));
    EXPECT_TRUE(finds(card, sugar->name)) << sugar->name;
}

TEST(Search, FoldsCaseAndAccents)
{
    const RecipeCard card = analysedCard(rhubarb());
    EXPECT_TRUE(finds(card, "CREME fraiche"));
    EXPECT_TRUE(finds(analysedCard(recipeOf("Creme", "1 g water")), "Crème"));
    EXPECT_TRUE(finds(card, "canal-side"));
}

TEST(Search, HoldsThePhraseOfQuotationMarksTogether)
{
    const RecipeCard card = analysedCard(rhubarb());
    EXPECT_TRUE(finds(card, "\"crème fraîche\""));
    EXPECT_TRUE(finds(card, "“no dairy”"));
    EXPECT_FALSE(finds(card, "\"fraîche crème\""));
    EXPECT_FALSE(finds(card, "\"no dai\"")) << "a closed phrase has whole words";
    EXPECT_TRUE(finds(card, "\"no dai")) << "one that is still being typed has not";
    EXPECT_FALSE(finds(card, "\"granita rhubarb\"")) << "a phrase does not run from one text into the next";
}

struct Typed {
    const char* text;
    CardRange range;
};

void PrintTo(const Typed& typed, std::ostream* stream) { *stream << typed.text; }

class Ranges : public testing::TestWithParam<Typed> {};

TEST_P(Ranges, AreReadAsPeopleWriteThem)
{
    const auto query = queryFrom(GetParam().text);
    ASSERT_TRUE(query) << english(query.error());
    ASSERT_EQ(query->ranges.size(), 1U);
    EXPECT_EQ(query->ranges.front(), GetParam().range);
    EXPECT_TRUE(query->words.empty());
}

constexpr CardRange sugar24to28{CardFigure::Sugar, 24.0, 28.0};
constexpr CardRange freezes5to2{CardFigure::FreezingPoint, -5.0, -2.0};

INSTANTIATE_TEST_SUITE_P(Search, Ranges,
    testing::Values(Typed{"sugar 24..28", sugar24to28}, Typed{"Sugars 24 .. 28", sugar24to28}, Typed{"sugar 24…28 %", sugar24to28},
        Typed{"sugar 24-28", sugar24to28}, Typed{"sugar 24 – 28 %", sugar24to28}, Typed{"sugar 24 % to 28 %", sugar24to28},
        Typed{"sugar 28..24", sugar24to28}, Typed{"sugar 24,5..28.5", {CardFigure::Sugar, 24.5, 28.5}},
        Typed{"sugar 24..", {CardFigure::Sugar, 24.0, {}}}, Typed{"sugar ..28", {CardFigure::Sugar, {}, 28.0}},
        Typed{"alcohol > 0", {CardFigure::Alcohol, 0.0, {}, false}}, Typed{"alcohol>0", {CardFigure::Alcohol, 0.0, {}, false}},
        Typed{"alcohol over 2 % vol", {CardFigure::Alcohol, 2.0, {}, false}},
        Typed{"fat < 5", {CardFigure::Fat, {}, 5.0, true, false}}, Typed{"fat under 5", {CardFigure::Fat, {}, 5.0, true, false}},
        Typed{"fat <= 5", {CardFigure::Fat, {}, 5.0}}, Typed{"fat ≥ 5", {CardFigure::Fat, 5.0, {}}},
        Typed{"freezes < -3", {CardFigure::FreezingPoint, {}, -3.0, true, false}},
        Typed{"freezing point < −3 °C", {CardFigure::FreezingPoint, {}, -3.0, true, false}},
        Typed{"freezes at -5..-2", freezes5to2}, Typed{"freezes -2 to -5", freezes5to2}, Typed{"freezes -5--2", freezes5to2},
        Typed{"ice 58", {CardFigure::Ice, 57.5, 58.5, true, false}},
        Typed{"sweetness > 20", {CardFigure::Sweetness, 20.0, {}, false}}, Typed{"fat ≤ 5", {CardFigure::Fat, {}, 5.0}},
        Typed{"fat >= 5", {CardFigure::Fat, 5.0, {}}}, Typed{"fats < 5", {CardFigure::Fat, {}, 5.0, true, false}},
        Typed{"alcohol above 2", {CardFigure::Alcohol, 2.0, {}, false}},
        Typed{"alcohol below 2", {CardFigure::Alcohol, {}, 2.0, true, false}},
        Typed{"sweet = 20", {CardFigure::Sweetness, 19.5, 20.5, true, false}},
        Typed{"ice 58.", {CardFigure::Ice, 57.5, 58.5, true, false}}, Typed{"ice 58,", {CardFigure::Ice, 57.5, 58.5, true, false}},
        Typed{"ice 58.5", {CardFigure::Ice, 58.5 - 0.05, 58.5 + 0.05, true, false}}, Typed{"freezing -5 .. -2", freezes5to2},
        Typed{"sugar ...28", {CardFigure::Sugar, {}, 28.0}}));

TEST(Search, TakesTheNameOfAFigureForAWordWhereNoRangeFollows)
{
    EXPECT_EQ(queryFrom("ice cream")->words, (std::vector<std::string>{" ice", " cream"}));
    EXPECT_EQ(queryFrom("sugar")->words, (std::vector<std::string>{" sugar"}));
    EXPECT_EQ(queryFrom("2% fat milk")->words, (std::vector<std::string>{" 2", " fat", " milk"}));
    EXPECT_EQ(queryFrom("sugar over there")->words, (std::vector<std::string>{" sugar", " over", " there"}));
}

TEST(Search, TakesWordsAndRangesTogether)
{
    const auto query = queryFrom("rhubarb sugar 20..30 \"no dairy\" alcohol < 1");
    ASSERT_TRUE(query);
    EXPECT_EQ(query->words, (std::vector<std::string>{" rhubarb", " no dairy "}));
    EXPECT_EQ(query->ranges.size(), 2U);
}

TEST(Search, SaysInOneSentenceWhichRangeItCannotRead)
{
    for (const char* typed :
        {"alcohol >", "sugar 24x", "sugar 24..28x", "sugar 24-", "freezes -5-2", "freezes -5 -2", "sugar 1.2.3"}) {
        const auto query = queryFrom(typed);
        ASSERT_FALSE(query) << typed;
        EXPECT_EQ(english(query.error()),
            "“" + std::string(typed) + "” is not a range yet. Write it as sugar 24..28, alcohol > 0 or freezes < -3.");
    }
    for (const char* typed : {"> 5", "24..28", "..28", "= 3"})
        EXPECT_EQ(english(queryFrom(typed).error()),
            "“" + std::string(typed) + "” needs the name of a figure in front: sugar, fat, alcohol, freezes, ice or sweetness.");
}

TEST(Search, ReadsAnyTextWithoutEnd)
{
    // Bytes that are no UTF-8, signs alone, and ends in the middle of everything.
    for (const char* typed :
        {"\xff\xfe", "\"", "“", "-", "sugar", "sugar ", "sugar -", "freezes at", "freezing point", "%", "°C", "…"})
        EXPECT_EQ(queryFrom(typed).has_value(), std::string_view(typed) != "…") << typed;
}

TEST(Search, ComparesFiguresAsTheyAreShown)
{
    EXPECT_TRUE(finds(withSugarAndFreezing(28.04, -2.0), "sugar 24..28")) << "28.0 is read";
    EXPECT_FALSE(finds(withSugarAndFreezing(28.06, -2.0), "sugar 24..28")) << "28.1 is read";
    EXPECT_FALSE(finds(withSugarAndFreezing(0.04, -2.0), "sugar > 0"));
    for (const char* held : {"sugar <= 28", "sugar >= 28", "sugar 28..", "sugar ..28", "sugar 28..30", "sugar 28"})
        EXPECT_TRUE(finds(withSugarAndFreezing(28.0, -2.0), held)) << held;
    for (const char* left : {"sugar < 28", "sugar > 28", "sugar 28.1..30", "sugar 20..27.9"})
        EXPECT_FALSE(finds(withSugarAndFreezing(28.0, -2.0), left)) << left;
    EXPECT_TRUE(finds(withSugarAndFreezing(25.3, -2.0), "sugar 25"));
    EXPECT_FALSE(finds(withSugarAndFreezing(25.5, -2.0), "sugar 25"));
    EXPECT_TRUE(finds(withSugarAndFreezing(25.3, -3.1), "freezes < -3"));
    EXPECT_FALSE(finds(withSugarAndFreezing(25.3, -3.0), "freezes < -3"));
}

// "F" was taken for a word, so that only recipes with one beginning so were found.
TEST(Search, TakesFreezingPointsInFahrenheit)
{
    using enum TemperatureUnit;
    const std::pair<const char*, CardRange> cases[] = {
        {"freezes < 27 F", {CardFigure::FreezingPoint, {}, 27.0, true, false, Fahrenheit}},
        {"freezes < 27F", {CardFigure::FreezingPoint, {}, 27.0, true, false, Fahrenheit}},
        {"freezing point 24..27 °F", {CardFigure::FreezingPoint, 24.0, 27.0, true, true, Fahrenheit}},
        {"freezes 24 F to 27 F", {CardFigure::FreezingPoint, 24.0, 27.0, true, true, Fahrenheit}},
        {"freezes < -3 C", {CardFigure::FreezingPoint, {}, -3.0, true, false}},
    };
    for (const auto& [typed, range] : cases) {
        const auto query = queryFrom(typed);
        ASSERT_TRUE(query) << typed << ": " << english(query.error());
        EXPECT_TRUE(query->words.empty()) << typed;
        EXPECT_EQ(query->ranges, std::vector<CardRange>{range}) << typed;
    }
    EXPECT_EQ(queryFrom("freezes < 27", Fahrenheit)->ranges.front().unit, Fahrenheit);
    EXPECT_EQ(queryFrom("freezes < -3 °C", Fahrenheit)->ranges.front().unit, Celsius);
    EXPECT_EQ(queryFrom("freezes < 27 figs")->words, (std::vector<std::string>{" figs"}));

    // As it is read: -3.0 °C is 26.6 °F, and 26.96 °F is shown as 27.0.
    EXPECT_TRUE(finds(withSugarAndFreezing(25.0, -3.0), "freezes < 27 F"));
    EXPECT_FALSE(finds(withSugarAndFreezing(25.0, -2.8), "freezes < 27 F"));
    EXPECT_FALSE(finds(withSugarAndFreezing(25.0, -2.0), "freezes < 27 F"));
}

TEST(Notebook, OrdersByTitleDateAndFigures)
{
    std::vector<RecipeCard> cards{analysedCard(recipeOf("pear ice", "100 g sucrose\n900 g water"), "/a/1", 3),
        analysedCard(recipeOf("Pear", "300 g sucrose\n700 g water"), "/a/2", 1),
        unreadableCard("/a/Zest.firn", 2, phrase("It is torn.")),
        analysedCard(recipeOf("Éclair ice", "200 g sucrose\n700 g water\n100 g gin"), "/a/3", 4)};
    using Places = std::vector<std::size_t>;
    EXPECT_EQ(ordered(cards, CardOrder::Title), (Places{3, 1, 0, 2}));
    EXPECT_EQ(ordered(cards, CardOrder::ChangedLast), (Places{3, 0, 2, 1}));
    EXPECT_EQ(ordered(cards, CardOrder::MostSugar), (Places{1, 3, 0, 2}));
    EXPECT_EQ(ordered(cards, CardOrder::MostAlcohol), (Places{3, 1, 0, 2}));
    EXPECT_EQ(ordered(cards, CardOrder::FreezesColdest), (Places{3, 1, 0, 2}));
}

TEST(Notebook, KeepsArchivedRecipesOnAShelfOfTheirOwn)
{
    std::vector<RecipeCard> cards(3);
    cards[1].isFavourite = true;
    cards[2].isFavourite = cards[2].isArchived = true;
    using Places = std::vector<std::size_t>;
    EXPECT_EQ(found(cards, ordered(cards, CardOrder::Title), {}), (Places{0, 1}));
    EXPECT_EQ(found(cards, ordered(cards, CardOrder::Title), {{}, Shelf::Favourites}), (Places{1}));
    EXPECT_EQ(found(cards, ordered(cards, CardOrder::Title), {{}, Shelf::Archived}), (Places{2}));
}

TEST(Notebook, FiltersByAWholeTag)
{
    std::vector<RecipeCard> cards(3);
    setTags(cards[0], {"ripe pear", "Menu"});
    setTags(cards[1], {"Pear"});
    EXPECT_EQ(found(cards, ordered(cards, CardOrder::Title), {{}, Shelf::All, "pear"}), (std::vector<std::size_t>{1}));
    EXPECT_EQ(tagsIn(cards), (std::vector<std::string>{"Menu", "Pear", "ripe pear"}));
}

TEST(Tags, AreReadAsTyped)
{
    EXPECT_EQ(tagsFrom(" summer menu, gin,, Gin ,pear "), (std::vector<std::string>{"summer menu", "gin", "pear"}));
    EXPECT_TRUE(tagsFrom(" , ").empty());
}

}  // namespace
}  // namespace firn
