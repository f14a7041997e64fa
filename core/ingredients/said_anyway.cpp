#include "ingredients/said_anyway.h"

#include <algorithm>
#include <array>
#include <unordered_set>

namespace firn {

namespace {

constexpr auto sugars = std::to_array<Constituent>({Constituent::Sucrose, Constituent::Glucose, Constituent::Fructose,
    Constituent::Galactose, Constituent::Lactose, Constituent::Maltose, Constituent::Trehalose});

// In 100 g of the ingredient.
constexpr double dryWater_g = 15.0, leanFat_g = 15.0, pureSugar_g = 90.0, spirit_g = 10.0, strongSpirit_g = 25.0, sweet_g = 10.0,
                 sweetNut_g = 20.0, freshWater_g = 60.0, oilFat_g = 95.0;

const Words dry{"powder", "crystal", "granule"};
const Words fresh{"frozen", "fruit", "berry", "flesh", "pulp", "puree", "mashed"};
const Words colours{"dark", "golden", "pink", "purple", "red", "white", "yellow"};  // not green: a green mango is unripe
const Words dryPlant{"dried", "whole", "ground", "powder", "raw", "roasted"};
const Words nut{"whole", "ground", "raw", "roasted", "natural", "nut", "kernel", "seed", "blanched", "flake"};
const Words nutPaste{"smooth", "crunchy", "natural", "pure", "roasted"};
const Words oil{"oil", "refined", "virgin", "pure", "raw", "light", "mild", "neutral"};
const Words baked{"crumb"};
const Words biscuit{"biscuit", "cookie"};
const Words chocolate{"chip", "bar", "chunk", "button", "callet", "pistole", "block", "cooking", "baking", "eating"};
const Words dairy{"cow", "dairy"};
const Words egg{"hen"};

const Words unsweetened{"unsweetened", "natural"};
const Words sweetening{"sugar", "sweetened", "syrup", "nectar", "drink", "cordial", "sweet"};

/// Whether one of the words stands in the name or a synonym.
bool isCalled(const Ingredient& ingredient, const Words& words)
{
    const auto hasOne = [&](std::string_view label) {
        return std::ranges::any_of(
            plainWords(label), [&](const std::string& word) { return std::ranges::find(words, word) != words.end(); });
    };
    return hasOne(ingredient.name) || std::ranges::any_of(ingredient.synonyms, hasOne);
}

std::vector<const Words*> listsFor(const Ingredient& ingredient)
{
    const Amounts& g = ingredient.composition.per100g;
    const double water_g = g[Constituent::Water].value, fat_g = g[Constituent::Fat].value;
    const std::string& group = ingredient.group;
    const bool isDry = water_g <= dryWater_g;
    std::vector<const Words*> lists;
    // Baked things and sweets of several parts have allergens, and their powder is something else.
    if (isDry && fat_g <= leanFat_g && ingredient.allergens.empty())
        lists.push_back(&dry);
    if ((group == "Fruit and juice" || group == "Vegetables") && water_g >= freshWater_g)
        lists.push_back(&fresh);
    if (group == "Fruit and juice" && water_g >= freshWater_g && !isCalled(ingredient, sweetening))
        lists.insert(lists.end(), {&unsweetened, &colours});
    if (group == "Plant milks" && !isCalled(ingredient, sweetening))
        lists.push_back(&unsweetened);
    if (group == "Herbs, spices and flavourings" && isDry)
        lists.push_back(&dryPlant);
    if (group == "Nuts and seeds" && isDry && g[Constituent::Sucrose].value < sweetNut_g)
        lists.insert(lists.end(), {&nut, &nutPaste});
    if (group == "Grains, biscuits and fats")
        lists.push_back(fat_g >= oilFat_g ? &oil : &baked);
    if (group == "Grains, biscuits and fats" && isCalled(ingredient, biscuit))
        lists.push_back(&biscuit);
    if (group == "Cocoa and chocolate" && fat_g > leanFat_g)
        lists.push_back(&chocolate);
    if (group == "Dairy" || group == "Cheese")
        lists.push_back(&dairy);
    if (group == "Eggs")
        lists.push_back(&egg);
    return lists;
}

}  // namespace

Words saidAnyway(const Ingredient& ingredient)
{
    const Amounts& g = ingredient.composition.per100g;
    double sugars_g = 0.0;
    for (const Constituent sugar : sugars)
        sugars_g += g[sugar].value;
    Words words;
    for (const Words* list : listsFor(ingredient))
        words.insert(words.end(), list->begin(), list->end());
    if (g[Constituent::Water].value <= dryWater_g && sugars_g >= pureSugar_g && ingredient.allergens.empty())
        words.emplace_back("sugar");
    if (g[Constituent::Ethanol].value >= spirit_g && sugars_g >= sweet_g)
        words.emplace_back("liqueur");
    if (g[Constituent::Ethanol].value >= strongSpirit_g && sugars_g < sweet_g)
        words.emplace_back("spirit");
    if (ingredient.group == "Cheese")
        words.emplace_back("cheese");
    return words;
}

bool isSaidAnywayOfSome(const std::string& word)
{
    static const std::unordered_set<std::string> all = [] {
        std::unordered_set<std::string> words{"sugar", "liqueur", "spirit", "cheese"};
        for (const Words* list :
            {&dry, &fresh, &unsweetened, &colours, &dryPlant, &nut, &nutPaste, &oil, &baked, &biscuit, &chocolate, &dairy, &egg})
            words.insert(list->begin(), list->end());
        return words;
    }();
    return all.contains(word);
}

}  // namespace firn
