// USDA National Nutrient Database for Standard Reference, Release 28 (US Department of Agriculture, Agricultural Research Service,
// Nutrient Data Laboratory, 2015), files FOOD_DES and NUT_DATA: water (nutrient 255) and total sugars (nutrient 269).
// Grams per 100 g of the edible portion, printed to two decimals. By NDB number.
#include "../../shipped_catalogue.h"

#include <gtest/gtest.h>

namespace {

using namespace firn;

struct Row {
    const char* ndb;
    const char* id;
    double water_g;
    double sugars_g;
};

const Row rows[] = {
    {"19336", "icing-sugar", 0.23, 97.81},
    {"19334", "brown-sugar", 1.34, 97.02},
    {"19296", "honey", 17.10, 82.12},
    {"19353", "maple-syrup", 32.39, 60.46},
    {"09003", "apple", 85.56, 10.39},
    {"09019", "apple-puree", 88.22, 9.39},
    {"09016", "apple-juice", 88.24, 9.62},
    {"09021", "apricot", 86.35, 9.24},
    {"09032", "dried-apricot", 30.89, 53.44},
    {"09037", "avocado", 73.23, 0.66},
    {"09040", "banana", 74.91, 12.23},
    {"09042", "blackberry", 88.15, 4.88},
    {"09050", "blueberry", 84.21, 9.96},
    {"09181", "cantaloupe", 90.15, 7.86},
    {"09184", "honeydew", 89.82, 8.12},
    {"09326", "watermelon", 91.45, 6.20},
    {"09070", "sweet-cherry", 82.25, 12.82},
    {"09063", "sour-cherry", 86.13, 8.49},
    {"09433", "clementine", 86.58, 9.18},
    {"09078", "cranberry", 87.32, 4.27},
    {"09084", "redcurrant", 83.95, 7.37},
    {"09089", "fig", 79.11, 16.26},
    {"09132", "grape", 80.54, 15.48},
    {"09135", "grape-juice", 84.51, 14.20},
    {"09112", "grapefruit", 88.06, 6.89},
    {"09123", "grapefruit-juice", 91.20, 7.20},
    {"09139", "guava", 80.80, 8.92},
    {"09148", "kiwi", 83.07, 8.99},
    {"09152", "lemon-juice", 92.31, 2.52},
    {"09160", "lime-juice", 90.79, 1.69},
    {"09164", "lychee", 81.76, 15.23},
    {"09218", "mandarin", 85.17, 10.58},
    {"09176", "mango", 83.46, 13.66},
    {"09202", "orange", 85.97, 8.50},
    {"09206", "orange-juice", 88.30, 8.40},
    {"09226", "papaya", 88.06, 7.82},
    {"09231", "passion-fruit", 72.93, 11.20},
    {"09236", "peach", 88.87, 8.39},
    {"09252", "pear", 83.96, 9.75},
    {"09263", "persimmon", 80.32, 12.53},
    {"09266", "pineapple", 86.00, 9.85},
    {"09273", "pineapple-juice", 86.37, 9.98},
    {"09279", "plum", 87.23, 9.92},
    {"09286", "pomegranate", 77.93, 13.67},
    {"09442", "pomegranate-juice", 85.95, 12.65},
    {"09302", "raspberry", 85.75, 4.42},
    {"09307", "rhubarb", 93.61, 1.10},
    {"09316", "strawberry", 90.95, 4.89},
    {"09318", "frozen-strawberry", 89.97, 4.56},
    {"09320", "sweetened-strawberry", 73.18, 24.01},
    {"11529", "tomato", 94.52, 2.63},
    {"11124", "carrot", 88.29, 4.74},
    {"11080", "beetroot", 87.58, 6.76},
    {"11205", "cucumber", 95.23, 1.67},
    {"11424", "pumpkin-puree", 89.97, 3.30},
    {"11507", "sweet-potato", 77.28, 4.18},
    {"11167", "sweetcorn", 76.05, 6.26},
    {"01077", "whole-milk", 88.13, 5.05},
    {"01079", "reduced-fat-milk", 89.21, 5.06},
    {"01085", "skim-milk", 90.84, 5.09},
    {"01106", "goat-milk", 87.03, 4.45},
    {"01053", "heavy-cream", 57.81, 2.92},
    {"01050", "light-cream", 74.51, 3.67},
    {"01049", "half-and-half", 81.24, 4.13},
    {"01056", "sour-cream", 73.07, 3.41},
    {"01091", "skim-milk-powder", 3.16, 51.98},
    {"01090", "whole-milk-powder", 2.47, 38.42},
    {"01095", "sweetened-condensed-milk", 27.16, 54.40},
    {"01096", "evaporated-milk", 74.04, 10.04},
    {"01115", "whey-powder", 3.19, 74.46},
    {"01256", "nonfat-greek-yogurt", 85.10, 3.24},
    {"01145", "unsalted-butter", 17.94, 0.06},
    {"01017", "cream-cheese", 52.62, 3.76},
    {"01123", "egg", 76.15, 0.37},
    {"01124", "egg-white", 87.57, 0.71},
    {"01125", "egg-yolk", 52.31, 0.56},
    {"14096", "red-wine", 86.49, 0.62},
    {"14106", "white-wine", 86.86, 0.96},
    {"12061", "almond", 4.41, 4.35},
    {"12120", "hazelnut", 5.31, 4.34},
    {"12155", "walnut", 4.07, 2.61},
    {"12104", "coconut", 46.99, 6.23},
    {"19165", "cocoa-powder", 3.00, 1.75},
    {"19903", "dark-chocolate-65", 1.25, 36.71},
    {"19120", "milk-chocolate", 1.50, 51.50},
    {"19087", "white-chocolate", 1.30, 59.00},
    {"14210", "espresso", 97.80, 0.00},
    {"16120", "soy-milk", 88.05, 3.99},
    {"14090", "coconut-water", 95.03, 3.92},
    {"20027", "cornstarch", 8.32, 0.00},
    {"20581", "wheat-flour", 11.92, 0.27},
    {"02069", "balsamic-vinegar", 76.45, 14.95},
    {"04053", "olive-oil", 0.00, 0.00},
};

// Half of the last printed digit.
constexpr double waterTolerance_g = 0.005;
// Total sugars are printed after adding unrounded species; the catalogue holds up to six species, each rounded to two decimals.
constexpr double sugarsTolerance_g = 0.005 + 6 * 0.005;
constexpr double rounding_g = 1e-9;

TEST(UsdaComposition, CatalogueHoldsTheWaterOfRelease28)
{
    for (const auto& row : rows) {
        const auto* ingredient = shippedCatalogue().find(row.id);
        ASSERT_NE(ingredient, nullptr) << row.id;
        const auto& amounts = ingredient->composition.per100g;
        EXPECT_NEAR(amounts[Constituent::Water].value, row.water_g, waterTolerance_g + rounding_g) << row.id;
    }
}

TEST(UsdaComposition, CatalogueHoldsTheSugarsOfRelease28)
{
    using enum Constituent;
    for (const auto& row : rows) {
        const auto* ingredient = shippedCatalogue().find(row.id);
        ASSERT_NE(ingredient, nullptr) << row.id;
        Grams sugars;
        for (const auto sugar : {Sucrose, Glucose, Fructose, Galactose, Lactose, Maltose, Trehalose}) {
            sugars += ingredient->composition.per100g[sugar];
        }
        EXPECT_NEAR(sugars.value, row.sugars_g, sugarsTolerance_g + rounding_g) << row.id;
    }
}

TEST(UsdaComposition, CatalogueNamesTheRecordItCameFrom)
{
    for (const auto& row : rows) {
        const auto* ingredient = shippedCatalogue().find(row.id);
        ASSERT_NE(ingredient, nullptr) << row.id;
        EXPECT_NE(ingredient->source.find(std::string("NDB ") + row.ndb), std::string::npos) << ingredient->source;
    }
}

}  // namespace
