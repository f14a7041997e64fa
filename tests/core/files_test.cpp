#include "exchange/files.h"

#include "exchange/recipe_csv.h"
#include "exchange/recipe_json.h"
#include "exchange/recipe_text.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>
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
    EXPECT_EQ(refusalOf(contentsOf(folder())), folder().string() + " is a folder. Choose a file in it.");
}

TEST_F(Files, WhatAReaderCouldWaitOnForEverIsRefusedAtOnce)
{
    const std::string refusal = " is a pipe, a socket or a device. Choose an ordinary file.";
    const auto pipe = folder() / "pipe.firn";
    ASSERT_EQ(mkfifo(pipe.c_str(), 0600), 0);
    EXPECT_EQ(refusalOf(contentsOf(pipe)), pipe.string() + refusal);

    const auto link = folder() / "link.firn";
    std::filesystem::create_symlink(pipe, link);
    EXPECT_EQ(refusalOf(contentsOf(link)), link.string() + refusal);

    const auto socketFile = folder() / "socket.firn";
    const int descriptor = socket(AF_UNIX, SOCK_STREAM, 0);
    ASSERT_GE(descriptor, 0);
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    ASSERT_LT(socketFile.string().size(), sizeof address.sun_path);
    std::ranges::copy(socketFile.string(), address.sun_path);
    ASSERT_EQ(bind(descriptor, reinterpret_cast<const sockaddr*>(&address), sizeof address), 0);
    EXPECT_EQ(refusalOf(contentsOf(socketFile)), socketFile.string() + refusal);
    close(descriptor);

    EXPECT_EQ(refusalOf(contentsOf("/dev/zero")), "/dev/zero" + refusal);
}

TEST_F(Files, AGigabyteIsRefusedUnread)
{
    const auto huge = file("huge.firn", "");
    std::filesystem::resize_file(huge, std::uintmax_t{1024} * 1024 * 1024);  // a hole, which takes no room
    EXPECT_EQ(refusalOf(contentsOf(huge)), huge.string() + " is 1024.0 MB and the limit is 16 MB. Choose a smaller file.");
}

TEST_F(Files, AMissingFileIsRefused)
{
    const auto missing = folder() / "missing.firn";
    EXPECT_EQ(refusalOf(contentsOf(missing)), missing.string() + " does not exist. Check the name and the folder.");
}

TEST_F(Files, AFileThatMayNotBeReadIsRefused)
{
    const auto locked = file("locked.firn", "{}");
    std::filesystem::permissions(locked, std::filesystem::perms::none);
    if (std::ifstream(locked))
        GTEST_SKIP() << "this user may read everything";
    EXPECT_EQ(refusalOf(contentsOf(locked)), locked.string() + " could not be opened. Check that you have permission to read it.");
}

TEST_F(Files, SixteenMegabytesAreTheLimit)
{
    const auto large = file("large.firn", "");
    std::filesystem::resize_file(large, largestFile_bytes);
    EXPECT_EQ(contentsOf(large)->size(), largestFile_bytes);
    std::filesystem::resize_file(large, largestFile_bytes + 1024 * 1024);
    EXPECT_EQ(refusalOf(contentsOf(large)), large.string() + " is 17.0 MB and the limit is 16 MB. Choose a smaller file.");
}

TEST_F(Files, AStreamHasTheSameLimit)
{
    std::istringstream stream(std::string(largestFile_bytes + 1, ' '));
    EXPECT_EQ(refusalOf(contentsOf(stream)), "This is more than 16 MB. No recipe is that long.");
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
    EXPECT_EQ(refusal("", "a.firn"), "a.firn: The file is empty. Open a backup of it if there is one.");
    EXPECT_EQ(refusal(json.substr(0, 40), "a.firn"), "a.firn: The file is not valid JSON at line 1, column 41: it may have been "
                                                     "cut short. Open a backup of it, or correct it there.");
    EXPECT_EQ(refusal("250 g water", "a.firn"),
        "a.firn: The file is not valid JSON at line 1, column 5. Correct it there, or open a backup.");
    EXPECT_EQ(
        refusal("{\"a\": 1}", "a.json"), "a.json: This is not a Firn recipe: a recipe file says \"format\": \"firn-recipe\".");
    EXPECT_EQ(refusal("cr\xe8me", "a.txt"), "a.txt: This is not UTF-8 text at line 1, column 3. Save it as text in UTF-8.");
    const std::string other = "This is not a recipe or a text file. Choose a .firn, .txt or .csv file.";
    EXPECT_EQ(refusal(std::string("a\0b", 3), "a.csv"), "a.csv: " + other);
    EXPECT_EQ(refusal("\x89PNG\r\n\x1a\n" + std::string(8, '\0'), "pear.png"), "pear.png: " + other);
    EXPECT_EQ(refusal("%PDF-1.7\n1 0 obj", "menu.pdf"), "menu.pdf: " + other);
    EXPECT_EQ(refusal("{\\rtf1 pears}", "menu.rtf"), "menu.rtf: " + other);
    EXPECT_EQ(refusal("<?xml version=\"1.0\"?><svg/>", "pear.svg"), "pear.svg: " + other);
    EXPECT_EQ(refusal("\x1f\x8b\x08\x01\xe8\x02", "a.firn"), "a.firn: " + other);
    EXPECT_EQ(refusal(std::string("\xff\xfe"
                                  "2\0",
                          4),
                  "a.txt"),
        "a.txt: This is not UTF-8 text at line 1, column 1. Save it as text in UTF-8.");
    EXPECT_EQ(refusal("pears and perry", "a.txt"), "a.txt: No ingredient here has an amount. Write lines such as 250 g water.");
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
