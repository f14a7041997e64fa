// The corpus of the fuzzers as an ordinary test, without libFuzzer.
#include "round_trips.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <string>

namespace firn {
namespace {

void expectEveryFileReadsBack(const std::string& folder, bool (*readsBack)(std::string_view))
{
    int files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(FIRN_SOURCE_DIR "/tests/fuzz/corpus/" + folder)) {
        std::ifstream file(entry.path(), std::ios::binary);
        const std::string bytes{std::istreambuf_iterator<char>(file), {}};
        EXPECT_TRUE(readsBack(bytes)) << entry.path();
        ++files;
    }
    EXPECT_GE(files, 10) << "the corpus is missing";
}

TEST(FuzzCorpus, TextReadsBack) { expectEveryFileReadsBack("text", textReadsBack); }
TEST(FuzzCorpus, JsonReadsBack) { expectEveryFileReadsBack("json", jsonReadsBack); }
TEST(FuzzCorpus, CsvReadsBack) { expectEveryFileReadsBack("csv", csvReadsBack); }
TEST(FuzzCorpus, QuantityReadsBack) { expectEveryFileReadsBack("quantity", quantityReadsBack); }
TEST(FuzzCorpus, IngredientCsvCanBeKept) { expectEveryFileReadsBack("ingredient_csv", ingredientCsvCanBeKept); }
TEST(FuzzCorpus, FoodDataCanBeKept) { expectEveryFileReadsBack("food_data", foodDataCanBeKept); }

}  // namespace
}  // namespace firn
