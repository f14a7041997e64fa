#include "exchange/files.h"

#include "exchange/recipe_csv.h"
#include "exchange/recipe_json.h"
#include "exchange/recipe_text.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>
#include <unistd.h>

namespace firn {
namespace {

/// A folder of its own for each test, gone after it.
class Files : public testing::Test {
protected:
    void SetUp() override
    {
        std::filesystem::remove_all(m_folder);
        std::filesystem::create_directories(m_folder);
    }
    void TearDown() override { std::filesystem::remove_all(m_folder); }

    std::filesystem::path file(const std::string& name, const std::string& contents)
    {
        std::ofstream(m_folder / name, std::ios::binary) << contents;
        return m_folder / name;
    }
    const std::filesystem::path& folder() const { return m_folder; }

private:
    std::filesystem::path m_folder =
        std::filesystem::temp_directory_path()
        / ("firn_" + std::to_string(getpid()) + "_" + testing::UnitTest::GetInstance()->current_test_info()->name());
};

std::string refusalOf(const Result<std::string>& contents) { return contents ? "read" : english(contents.error()); }

TEST_F(Files, ContentsAreTheBytes)
{
    const std::string bytes("a\r\n\0\xff", 5);
    EXPECT_EQ(*contentsOf(file("a.txt", bytes)), bytes);
    EXPECT_EQ(*contentsOf(file("empty", "")), "");
    std::istringstream stream(bytes);
    EXPECT_EQ(*contentsOf(stream), bytes);
}

TEST_F(Files, AFolderIsRefused)
{
    EXPECT_EQ(refusalOf(contentsOf(folder())), folder().string() + " is a folder, not a recipe file.");
}

TEST_F(Files, AMissingFileIsRefused)
{
    const auto missing = folder() / "missing.firn";
    EXPECT_EQ(refusalOf(contentsOf(missing)), missing.string() + " does not exist: check the name and the folder.");
}

TEST_F(Files, AFileThatMayNotBeReadIsRefused)
{
    const auto locked = file("locked.firn", "{}");
    std::filesystem::permissions(locked, std::filesystem::perms::none);
    if (std::ifstream(locked))
        GTEST_SKIP() << "this user may read everything";
    EXPECT_EQ(refusalOf(contentsOf(locked)), locked.string() + " cannot be opened: check that you may read it.");
}

TEST_F(Files, SixteenMegabytesAreTheLimit)
{
    const auto large = file("large.firn", "");
    std::filesystem::resize_file(large, largestFile_bytes);
    EXPECT_EQ(contentsOf(large)->size(), largestFile_bytes);
    std::filesystem::resize_file(large, largestFile_bytes + 1024 * 1024);
    EXPECT_EQ(refusalOf(contentsOf(large)), large.string() + " is 17.0 MB, too large for a recipe: the limit is 16 MB.");
}

TEST_F(Files, AStreamHasTheSameLimit)
{
    std::istringstream stream(std::string(largestFile_bytes + 1, ' '));
    EXPECT_EQ(refusalOf(contentsOf(stream)), "This is too large for a recipe: the limit is 16 MB.");
}

const std::string json = R"({"format": "firn-recipe", "version": 1, "title": "Granita", "components": [{"name": "", "rows": [
    {"ingredient": "water", "amount": 250, "unit": "g"}]}]})";
const std::string linkedJson =
    R"({"@context": "https://schema.org", "@type": "Recipe", "name": "Granita", "recipeIngredient": ["250 g water"]})";

TEST(RecipeFromContents, EndingSaysTheKind)
{
    const auto expected = *recipeFromJson(json);
    EXPECT_EQ(*recipeFromContents(json, "a.firn"), expected);
    EXPECT_EQ(*recipeFromContents(json, "a.JSON"), expected);
    EXPECT_EQ(*recipeFromContents(linkedJson, "a.jsonld"), expected);
    EXPECT_EQ(*recipeFromContents(linkedJson, "a.json"), expected);
    EXPECT_EQ(*recipeFromContents("[" + linkedJson + "]", "a.json"), expected);
    EXPECT_EQ(*recipeFromContents("water,250,g", "Granita.csv"), expected);
    EXPECT_EQ(*recipeFromContents("250 g water", "Granita.txt"), expected);
    EXPECT_EQ(*recipeFromContents("Granita:\n250 g water", "other.md"), expected);
    EXPECT_EQ(*recipeFromContents("Granita:\n250 g water", "-"), expected);
}

TEST(RecipeFromContents, ABraceSaysJsonWhateverTheEnding)
{
    const auto expected = *recipeFromJson(json);
    EXPECT_EQ(*recipeFromContents(json, "-"), expected);
    EXPECT_EQ(*recipeFromContents("\xEF\xBB\xBF \n" + json, "a.txt"), expected);
    EXPECT_EQ(*recipeFromContents(linkedJson, "-"), expected);
}

TEST(RecipeFromContents, TheFilesNameIsTheTitleOfARecipeWithoutOne)
{
    EXPECT_EQ(recipeFromContents("250 g water", "menu/Rhubarb granita.txt")->title, "Rhubarb granita");
    EXPECT_EQ(recipeFromContents("250 g water", "-")->title, "");
    EXPECT_EQ(recipeFromContents("250 g water", "cr\xe8me.txt")->title, "");
    EXPECT_EQ(recipeFromContents(json, "other.firn")->title, "Granita");
}

TEST(RecipeFromContents, RefusalsNameTheFile)
{
    const auto refusal = [](const std::string& contents, const char* name) {
        const auto recipe = recipeFromContents(contents, name);
        return recipe ? "read" : english(recipe.error());
    };
    EXPECT_EQ(refusal("", "a.firn"), "a.firn: The file is empty: open a backup of it if there is one.");
    EXPECT_EQ(refusal(json.substr(0, 40), "a.firn"), "a.firn: The file is not valid JSON at line 1, column 41: it may have been "
                                                     "cut short. Open a backup of it, or correct it there.");
    EXPECT_EQ(refusal("250 g water", "a.firn"),
        "a.firn: The file is not valid JSON at line 1, column 5: correct it there, or open a backup.");
    EXPECT_EQ(
        refusal("{\"a\": 1}", "a.json"), "a.json: This is not a Firn recipe: a recipe file says \"format\": \"firn-recipe\".");
    EXPECT_EQ(refusal("cr\xe8me", "a.txt"), "a.txt: This is not UTF-8 text at line 1, column 3. Save it as text in UTF-8.");
    EXPECT_EQ(refusal(std::string("a\0b", 3), "a.csv"),
        "a.csv: This is not text: it has a zero byte at line 1, column 2. Save it as text in UTF-8.");
    EXPECT_EQ(refusal("-5 g salt", "-"), "Line 1: An amount cannot be negative.");
    EXPECT_EQ(refusal(std::string(200000, '['), "a.json"),
        "a.json: The file is nested deeper than 64 levels at line 1, column 65: Firn's files never are.");
}

TEST(RecipeFromContents, EmptyTextIsAnEmptyRecipe)
{
    EXPECT_EQ(*recipeFromContents("", "-"), Recipe{});
    EXPECT_TRUE(recipeFromContents("", "a.csv")->components.front().rows.empty());
}

}  // namespace
}  // namespace firn
