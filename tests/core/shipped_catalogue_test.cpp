#include "../shipped_catalogue.h"
#include "ingredients/matching.h"

#include <algorithm>
#include <cctype>
#include <gtest/gtest.h>
#include <map>
#include <regex>
#include <set>

namespace {

using namespace firn;

std::string idOf(std::string_view text)
{
    const auto* ingredient = shippedCatalogue().find(text);
    return ingredient == nullptr ? "nothing" : ingredient->id;
}

TEST(ShippedCatalogue, IsLarge) { EXPECT_GE(shippedCatalogue().all().size(), 520u); }

TEST(ShippedCatalogue, EveryRowClosesTo100g)
{
    for (const auto& ingredient : shippedCatalogue().all()) {
        EXPECT_NEAR(ingredient.composition.per100g.total().value, 100.0, 1.0) << ingredient.id;
    }
}

TEST(ShippedCatalogue, PartsAreNoMoreThanTheWhole)
{
    using enum Constituent;
    constexpr double rounding_g = 0.01;
    for (const auto& ingredient : shippedCatalogue().all()) {
        const auto& food = ingredient.composition;
        const double solids_g = food.per100g.total().value - food.per100g[Water].value - food.per100g[Ethanol].value;
        EXPECT_LE(food.milkFat.value, food.per100g[Fat].value) << ingredient.id;
        EXPECT_LE(food.milkFat.value + food.milkSolidsNotFat.value, solids_g + 1.0) << ingredient.id;
        EXPECT_LE(food.yolkSolids.value, solids_g + rounding_g) << ingredient.id;
        for (const auto& facts : allConstituents()) {
            EXPECT_GE(food.per100g[facts.constituent].value, 0.0) << ingredient.id;
        }
    }
}

TEST(ShippedCatalogue, IdsAreUniqueAndWellFormed)
{
    const std::regex form("[a-z0-9]+(-[a-z0-9]+)*");
    std::set<std::string> ids;
    for (const auto& ingredient : shippedCatalogue().all()) {
        EXPECT_TRUE(std::regex_match(ingredient.id, form)) << ingredient.id;
        EXPECT_TRUE(ids.insert(ingredient.id).second) << ingredient.id;
        EXPECT_FALSE(ingredient.name.empty() || ingredient.group.empty() || ingredient.source.empty()) << ingredient.id;
    }
}

TEST(ShippedCatalogue, PureSubstancesArePure)
{
    using enum Constituent;
    const std::map<std::string, Constituent> pure{{"water", Water}, {"sucrose", Sucrose}, {"glucose", Glucose},
        {"fructose", Fructose}, {"lactose", Lactose}, {"maltose", Maltose}, {"trehalose", Trehalose}, {"glycerol", Glycerol},
        {"sorbitol", Sorbitol}, {"xylitol", Xylitol}, {"erythritol", Erythritol}, {"ethanol", Ethanol}, {"salt", Salt},
        {"citric-acid", Acid}};
    for (const auto& [id, constituent] : pure) {
        const auto* ingredient = shippedCatalogue().find(id);
        ASSERT_NE(ingredient, nullptr) << id;
        EXPECT_EQ(ingredient->id, id);
        EXPECT_DOUBLE_EQ(ingredient->composition.per100g[constituent].value, 100.0) << id;
        EXPECT_DOUBLE_EQ(ingredient->composition.per100g.total().value, 100.0) << id;
    }
}

TEST(ShippedCatalogue, NoNameOrSynonymMeansTwoIngredients)
{
    for (const auto& ingredient : shippedCatalogue().all()) {
        EXPECT_EQ(idOf(ingredient.id), ingredient.id);
        EXPECT_EQ(idOf(ingredient.name), ingredient.id) << ingredient.name;
        for (const auto& synonym : ingredient.synonyms) {
            EXPECT_EQ(idOf(synonym), ingredient.id) << synonym;
        }
    }
}

TEST(ShippedCatalogue, EveryGeneralWordHasOneDefaultAndOthersToChoose)
{
    std::set<std::string> words;
    for (const auto& ingredient : shippedCatalogue().all()) {
        for (const auto& word : ingredient.defaultFor) {
            EXPECT_TRUE(words.insert(folded(word)).second) << word;
            // With a capital letter, as a person may write it: in small letters it may be the id, which is exact.
            std::string written = word;
            written.front() = char(std::toupper(static_cast<unsigned char>(written.front())));
            const NameMatch match = matchName(shippedCatalogue(), written);
            EXPECT_EQ(match.recognition, Recognition::ByDefault) << word;
            EXPECT_EQ(match.ingredient, &ingredient) << word;
            EXPECT_FALSE(match.others.empty()) << word;
            // Who chooses it by its name has chosen, and is not told again.
            EXPECT_EQ(shippedCatalogue().recognise(ingredient.name).how, Recognition::AsWritten) << ingredient.name;
        }
    }
    for (const auto* word : {"cream", "milk", "sugar", "butter", "yogurt", "egg", "chocolate", "flour", "oil", "vinegar", "rum",
             "coffee", "tea", "cheese"})
        EXPECT_TRUE(words.contains(word)) << word;
}

TEST(ShippedCatalogue, HoldsWhatCooksMissedAndNoBrand)
{
    for (const auto* id :
        {"blood-orange", "bergamot-juice", "yuzu-juice", "amaro", "bitter-aperitif", "demerara-sugar", "muscovado-sugar",
            "goat-cheese", "agave-syrup", "elderflower-cordial", "reduced-fat-milk", "espresso", "strong-coffee", "sweet-vermouth",
            "triple-sec", "coffee-liqueur", "anise-liqueur", "allulose", "galactose", "cranberry-juice", "green-apple",
            "cantaloupe", "lavender", "sparkling-water", "stabiliser", "raspberry-puree-10", "raspberry-puree"})
        EXPECT_EQ(idOf(id), id);
}

TEST(ShippedCatalogue, EveryMeasureAndDensityNamesItsSource)
{
    for (const auto& ingredient : shippedCatalogue().all()) {
        for (const auto& measure : ingredient.measures) {
            EXPECT_FALSE(measure.source.empty()) << ingredient.id;
        }
        EXPECT_EQ(ingredient.density.has_value(), !ingredient.densitySource.empty()) << ingredient.id;
    }
}

// DE counts reducing ends against glucose, one a molecule, so the molecules of 100 g dry syrup are DE/180.16 mol
// (definition of DE). Molar masses 180.16, 342.30, 504.4 g/mol; dextrins count as 4000 g/mol.
TEST(ShippedCatalogue, GlucoseSyrupsHaveTheMoleculesOfTheirDextroseEquivalent)
{
    using enum Constituent;
    for (const auto& [id, de] :
        std::map<std::string, double>{{"glucose-syrup-30", 30}, {"glucose-syrup-42", 42}, {"glucose-syrup-54", 54},
            {"glucose-syrup-63", 63}, {"high-maltose-syrup", 43}, {"dried-glucose-syrup-42", 42}, {"maltodextrin-18", 18}}) {
        const auto* syrup = shippedCatalogue().find(id);
        ASSERT_NE(syrup, nullptr) << id;
        const auto& g = syrup->composition.per100g;
        const double moles =
            g[Glucose].value / 180.16 + g[Maltose].value / 342.3 + g[Oligosaccharides].value / 504.4 + g[Dextrins].value / 4000.0;
        EXPECT_NEAR(moles / (100.0 - g[Water].value) * 100.0 * 180.16, de, 0.05) << id;
    }
}

TEST(ShippedCatalogue, NamesAllergensAndHazards)
{
    const auto has = [](const auto& list, auto item) { return std::ranges::find(list, item) != list.end(); };
    const auto& catalogue = shippedCatalogue();
    EXPECT_TRUE(has(catalogue.find("egg yolk")->hazards, Hazard::RawEgg));
    EXPECT_FALSE(has(catalogue.find("pasteurised egg yolk")->hazards, Hazard::RawEgg));
    EXPECT_TRUE(has(catalogue.find("pasteurised egg yolk")->allergens, Allergen::Egg));
    EXPECT_TRUE(has(catalogue.find("rhubarb")->hazards, Hazard::ToxicLeaves));
    EXPECT_TRUE(has(catalogue.find("apricot")->hazards, Hazard::FruitKernels));
    EXPECT_TRUE(has(catalogue.find("honey")->hazards, Hazard::InfantHoney));
    EXPECT_TRUE(has(catalogue.find("hazelnut")->hazards, Hazard::WholeNuts));
    EXPECT_TRUE(has(catalogue.find("tonka bean")->hazards, Hazard::Tonka));
    EXPECT_TRUE(has(catalogue.find("elderberries")->hazards, Hazard::Elderberry));
    EXPECT_TRUE(has(catalogue.find("lactose")->allergens, Allergen::Milk));
    EXPECT_TRUE(has(catalogue.find("white wine")->allergens, Allergen::Sulphites));
    EXPECT_TRUE(has(catalogue.find("oat milk")->allergens, Allergen::Gluten));
}

}  // namespace
