// USDA National Nutrient Database for Standard Reference, Release 28 (US Department of Agriculture, Agricultural Research Service,
// Nutrient Data Laboratory, 2015), file WEIGHT: household measures. Grams per measure, printed to one decimal at most and to three
// figures; many are whole grams. By NDB number.
#include "../../shipped_catalogue.h"
#include "ingredients/weighing.h"

#include <gtest/gtest.h>

namespace {

using namespace firn;

struct Row {
    const char* ndb;
    const char* what;  // as a cook would write it
    Amount amount;
    double mass_g;
};

const Row rows[] = {
    {"19335", "granulated sugar", {1, Unit::Cup}, 200},
    {"19335", "sugar", {1, Unit::Teaspoon}, 4.2},
    {"19336", "icing sugar", {1, Unit::Cup}, 120},
    {"19336", "powdered sugar", {1, Unit::Tablespoon}, 8},
    {"19334", "brown sugar", {1, Unit::Cup}, 220},
    {"19334", "brown sugar", {1, Unit::Teaspoon}, 4.6},
    {"19296", "honey", {1, Unit::Cup}, 339},
    {"19296", "honey", {1, Unit::Tablespoon}, 21},
    {"19304", "molasses", {1, Unit::Cup}, 337},
    {"19353", "maple syrup", {1, Unit::Cup}, 315},
    {"19353", "maple syrup", {1, Unit::Tablespoon}, 20},
    {"19350", "light corn syrup", {1, Unit::Cup}, 341},
    {"09003", "apple", {1, Unit::Piece}, 182},
    {"09019", "applesauce", {1, Unit::Cup}, 244},
    {"09040", "banana", {1, Unit::Piece}, 118},
    {"09040", "mashed bananas", {1, Unit::Cup}, 225},
    {"09042", "blackberries", {1, Unit::Cup}, 144},
    {"09050", "blueberries", {1, Unit::Cup}, 148},
    {"09152", "lemon juice", {1, Unit::Cup}, 244},
    {"09152", "lemon juice", {1, Unit::FluidOunce}, 30.5},
    {"09156", "lemon zest", {1, Unit::Teaspoon}, 2.0},
    {"09160", "lime juice", {1, Unit::Cup}, 242},
    {"09206", "orange juice", {1, Unit::Cup}, 248},
    {"09252", "pear", {1, Unit::Piece}, 178},
    {"09252", "pears, cubed", {1, Unit::Cup}, 161},
    {"09273", "pineapple juice", {1, Unit::Cup}, 250},
    {"09302", "raspberries", {1, Unit::Cup}, 123},
    {"09307", "rhubarb", {1, Unit::Cup}, 122},
    {"09316", "strawberries", {1, Unit::Cup}, 144},
    {"09316", "strawberry purée", {1, Unit::Cup}, 232},
    {"11205", "cucumber", {1, Unit::Cup}, 104},
    {"01077", "whole milk", {1, Unit::Cup}, 244},
    {"01077", "milk", {1, Unit::FluidOunce}, 30.5},
    {"01079", "semi-skimmed milk", {1, Unit::Quart}, 976},
    {"01085", "skim milk", {1, Unit::Quart}, 980},
    {"01088", "buttermilk", {1, Unit::Cup}, 245},
    {"01088", "buttermilk", {1, Unit::Quart}, 980},
    {"01053", "heavy cream", {1, Unit::Cup}, 238},
    {"01053", "heavy cream", {1, Unit::Tablespoon}, 15},
    {"01049", "half-and-half", {1, Unit::Cup}, 242},
    {"01056", "sour cream", {1, Unit::Cup}, 230},
    {"01091", "skim milk powder", {1, Unit::Cup}, 120},
    {"01091", "skim milk powder", {5, Unit::Tablespoon}, 23},
    {"01095", "condensed milk", {1, Unit::Cup}, 306},
    {"01116", "yogurt", {1, Unit::Cup}, 245},
    {"01145", "unsalted butter", {1, Unit::Cup}, 227},
    {"01145", "butter", {1, Unit::Tablespoon}, 14.2},
    {"01123", "egg", {1, Unit::Piece}, 50},
    {"01124", "egg white", {1, Unit::Piece}, 33},
    {"01125", "egg yolks", {1, Unit::Piece}, 17},
    {"14037", "vodka", {1, Unit::FluidOunce}, 27.8},
    {"14049", "gin-45", {1, Unit::FluidOunce}, 27.8},
    {"14106", "white wine", {1, Unit::FluidOunce}, 29.4},
    {"12061", "almonds", {1, Unit::Cup}, 143},
    {"12120", "ground hazelnuts", {1, Unit::Cup}, 75},
    {"12151", "pistachios", {1, Unit::Cup}, 123},
    {"19165", "cocoa powder", {1, Unit::Cup}, 86},
    {"19165", "cocoa powder", {1, Unit::Tablespoon}, 5.4},
    {"20027", "cornstarch", {1, Unit::Cup}, 128},
    {"02047", "salt", {1, Unit::Teaspoon}, 6},
    {"02050", "vanilla extract", {1, Unit::Teaspoon}, 4.2},
    {"02010", "ground cinnamon", {1, Unit::Teaspoon}, 2.6},
    {"04053", "olive oil", {1, Unit::Tablespoon}, 13.5},
    {"14411", "water", {1, Unit::FluidOunce}, 29.6},
    {"14411", "water", {1, Unit::Litre}, 1000},
};

// The source rounds spirits of every strength to 27.8 g; cups and spoons of one food differ by this much among themselves.
constexpr double tolerance = 0.03;

TEST(UsdaMeasures, KitchenMeasuresWeighWhatRelease28Says)
{
    for (const auto& row : rows) {
        const auto* ingredient = shippedCatalogue().find(row.what);
        ASSERT_NE(ingredient, nullptr) << row.what;
        const auto weighing = weigh(row.amount, *ingredient);
        ASSERT_TRUE(weighing) << english(weighing.error());
        EXPECT_NEAR(weighing->mass.value, row.mass_g, tolerance * row.mass_g) << row.what << ", NDB " << row.ndb;
    }
}

// The jigger of 1.5 fl oz of the same release, which Firn calls a shot.
TEST(UsdaMeasures, AShotOfSpiritIsAJigger)
{
    for (const char* spirit : {"vodka", "gin-45"})
        EXPECT_NEAR(weigh({1, Unit::Shot}, *shippedCatalogue().find(spirit))->mass.value, 42.0, tolerance * 42.0) << spirit;
}

// Volumes that the catalogue does not hold itself: scaled from another measure of the same food. A tablespoon of 14.787 mL is one
// sixteenth of a cup.
TEST(UsdaMeasures, OtherVolumesOfAFoodAgreeWithItsWeighedMeasures)
{
    const Row scaled[] = {
        {"19296", "honey", {16, Unit::Tablespoon}, 339},
        {"19335", "sugar", {48, Unit::Teaspoon}, 200},
        {"01077", "milk", {1, Unit::Pint}, 488},
        {"09152", "lemon juice", {1, Unit::Tablespoon}, 15.25},
        {"01145", "butter", {0.5, Unit::Cup}, 113},
    };
    for (const auto& row : scaled) {
        const auto* ingredient = shippedCatalogue().find(row.what);
        ASSERT_NE(ingredient, nullptr) << row.what;
        const auto weighing = weigh(row.amount, *ingredient);
        ASSERT_TRUE(weighing) << english(weighing.error());
        EXPECT_NEAR(weighing->mass.value, row.mass_g, tolerance * row.mass_g) << row.what << ", NDB " << row.ndb;
    }
}

}  // namespace
