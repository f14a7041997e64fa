#include "exchange/word_suggestions.h"

#include "ingredients/catalogue.h"

#include <algorithm>
#include <array>
#include <span>

namespace firn {

namespace {

struct AllergenWord {
    std::string_view word;
    Allergen allergen;
};

// Common words for what Regulation (EU) 1169/2011, annex II, lists; the choice of words is ours.
constexpr auto allergenWords =
    std::to_array<AllergenWord>({{"milk", Allergen::Milk}, {"buttermilk", Allergen::Milk}, {"cream", Allergen::Milk},
        {"butter", Allergen::Milk}, {"cheese", Allergen::Milk}, {"yogurt", Allergen::Milk}, {"yoghurt", Allergen::Milk},
        {"kefir", Allergen::Milk}, {"whey", Allergen::Milk}, {"casein", Allergen::Milk}, {"egg", Allergen::Egg},
        {"yolk", Allergen::Egg}, {"wheat", Allergen::Gluten}, {"rye", Allergen::Gluten}, {"barley", Allergen::Gluten},
        {"oat", Allergen::Gluten}, {"spelt", Allergen::Gluten}, {"malt", Allergen::Gluten}, {"almond", Allergen::Nuts},
        {"hazelnut", Allergen::Nuts}, {"walnut", Allergen::Nuts}, {"cashew", Allergen::Nuts}, {"pecan", Allergen::Nuts},
        {"pistachio", Allergen::Nuts}, {"macadamia", Allergen::Nuts}, {"peanut", Allergen::Peanut}, {"soy", Allergen::Soya},
        {"soya", Allergen::Soya}, {"soybean", Allergen::Soya}, {"sesame", Allergen::Sesame}, {"tahini", Allergen::Sesame},
        {"wine", Allergen::Sulphites}, {"celery", Allergen::Celery}, {"mustard", Allergen::Mustard}, {"lupin", Allergen::Lupin}});

// Whose "milk", "butter" or "cream" comes from no animal.
constexpr auto plantWords = std::to_array<std::string_view>({"almond", "apple", "cashew", "cocoa", "coconut", "hazelnut", "nut",
    "oat", "peanut", "pea", "rice", "shea", "soy", "soya", "soybean", "tartar", "vegan"});

/// Whether a folded text has this word, be it in the plural.
bool hasWord(const std::string& foldedText, std::string_view word)
{
    const std::string text = " " + foldedText + " ";
    const std::string singular = " " + std::string(word);
    return text.find(singular + " ") != text.npos || text.find(singular + "s ") != text.npos;
}

bool hasAnyWord(const std::string& foldedText, std::span<const std::string_view> words)
{
    return std::ranges::any_of(words, [&](std::string_view word) { return hasWord(foldedText, word); });
}

Sentence milkSolids(Grams fat, Grams solids)
{
    return phrase(
        "Taken for a milk product by its group: milk fat {0} g, milk solids-not-fat {1} g. Correct them where it has other "
        "fat or protein too.",
        Figure{fat.value, 2}, Figure{solids.value, 2});
}

}  // namespace

bool isDairy(const Ingredient& ingredient)
{
    constexpr std::array<std::string_view, 2> groups = {"dairy", "milk"};
    constexpr std::array<std::string_view, 2> eggs = {"egg", "yolk"};
    const std::string name = folded(ingredient.name);
    return hasAnyWord(folded(ingredient.group), groups) && !hasAnyWord(name, eggs) && !hasAnyWord(name, plantWords);
}

void suggestAllergens(ImportedIngredient& imported)
{
    const std::string name = folded(imported.ingredient.name);
    std::vector<Allergen>& allergens = imported.ingredient.allergens;
    const bool isOfPlants = hasAnyWord(name, plantWords);
    for (const auto& [word, allergen] : allergenWords) {
        if (!hasWord(name, word) || (allergen == Allergen::Milk && isOfPlants) || std::ranges::count(allergens, allergen) > 0)
            continue;
        allergens.push_back(allergen);
        imported.guessed.push_back(phrase("The name speaks of “{0}”: the allergen {1} is noted. Check it on the label.",
            std::string(word), std::string(keyOf(allergen))));
    }
    if (isDairy(imported.ingredient) && std::ranges::count(allergens, Allergen::Milk) == 0) {
        allergens.push_back(Allergen::Milk);
        imported.guessed.push_back(phrase("The group speaks of milk: the allergen milk is noted. Check it on the label."));
    }
}

void suggestMilkAndYolk(ImportedIngredient& imported)
{
    using enum Constituent;
    Composition& food = imported.ingredient.composition;
    const Amounts& parts = food.per100g;
    const std::string name = folded(imported.ingredient.name);
    if (isDairy(imported.ingredient)) {
        food.milkFat = parts[Fat];
        food.milkSolidsNotFat = parts[Protein] + parts[Lactose] + parts[Galactose] + parts[Minerals];
        imported.guessed.push_back(milkSolids(food.milkFat, food.milkSolidsNotFat));
    } else if (hasWord(name, "yolk") && hasWord(name, "egg") && !hasWord(name, "white")) {
        food.yolkSolids = parts[Fat] + parts[Protein] + parts[Minerals];
        imported.guessed.push_back(
            phrase("The name speaks of egg yolk: its fat, protein and minerals, {0} g, are taken for yolk solids.",
                Figure{food.yolkSolids.value, 2}));
    }
}

}  // namespace firn
