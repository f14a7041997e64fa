#include "ingredients/composition.h"

#include "ingredients/ingredient.h"

#include <gtest/gtest.h>
#include <set>

namespace {

using namespace firn;

TEST(Composition, EveryConstituentIsFoundByItsKey)
{
    std::set<std::string_view> labels;
    std::size_t position = 0;
    for (const auto& facts : allConstituents()) {
        EXPECT_EQ(static_cast<std::size_t>(facts.constituent), position++);
        EXPECT_EQ(constituentNamed(facts.key), facts.constituent);
        EXPECT_TRUE(labels.insert(facts.label).second) << facts.label << " stands twice";
    }
    EXPECT_EQ(position, constituentCount);
}

TEST(Composition, NothingElseIsAConstituent)
{
    for (const auto* word : {"", "Water", "sugar", "sucrose ", "energy"}) {
        EXPECT_FALSE(constituentNamed(word)) << word;
    }
}

TEST(Composition, AmountsAddUpAndMix)
{
    Amounts syrup;
    syrup[Constituent::Water] = {60.0};
    syrup[Constituent::Sucrose] = {40.0};
    EXPECT_DOUBLE_EQ(syrup.total().value, 100.0);

    Amounts mix;
    mix[Constituent::Water] = {10.0};
    mix.add(syrup, 0.5);
    EXPECT_DOUBLE_EQ(mix[Constituent::Water].value, 40.0);
    EXPECT_DOUBLE_EQ(mix[Constituent::Sucrose].value, 20.0);
    EXPECT_DOUBLE_EQ(mix.total().value, 60.0);
    EXPECT_DOUBLE_EQ(Amounts{}.total().value, 0.0);
}

TEST(Ingredient, EveryAllergenAndHazardIsFoundByItsKey)
{
    for (auto allergen = Allergen::Milk; allergen <= Allergen::Lupin;
         allergen = static_cast<Allergen>(static_cast<int>(allergen) + 1)) {
        EXPECT_EQ(allergenNamed(keyOf(allergen)), allergen) << keyOf(allergen);
    }
    for (auto hazard = Hazard::RawEgg; hazard <= Hazard::Tonka; hazard = static_cast<Hazard>(static_cast<int>(hazard) + 1)) {
        EXPECT_EQ(hazardNamed(keyOf(hazard)), hazard) << keyOf(hazard);
    }
    EXPECT_EQ(keyOf(Allergen::Soya), "soya");
    EXPECT_EQ(keyOf(Hazard::InfantHoney), "infant-honey");
    EXPECT_FALSE(allergenNamed("raw-egg"));
    EXPECT_FALSE(hazardNamed("egg"));
}

}  // namespace
