// Text as people paste it: nearly all of it is read as meant, what is not is marked, and nothing is wrong without a word.
#include "pasted_lines.h"

#include "../shipped_catalogue.h"
#include "analysis/preparation.h"
#include "exchange/recipe_text.h"
#include "pasted_messages.h"

#include <cmath>
#include <gtest/gtest.h>

namespace firn {
namespace {

constexpr double leastRight = 0.95;

std::vector<std::string> parted(std::string_view text, char mark)
{
    std::vector<std::string> parts(1);
    for (const char c : text) {
        if (c == mark)
            parts.emplace_back();
        else
            parts.back() += c;
    }
    return parts;
}

std::string trimmedText(std::string text)
{
    const auto first = text.find_first_not_of(' ');
    return first == std::string::npos ? "" : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

/// What a line should be read as.
struct Expected {
    std::string first;  // the line, or the component
    std::optional<Amount> amount;
    std::string ingredient;
    char mark = ' ';
};

Expected expectedFrom(std::string_view line)
{
    const auto parts = parted(line, '|');
    EXPECT_EQ(parts.size(), 4U) << line;
    Expected expected{trimmedText(parts.at(0)), {}, trimmedText(parts.at(2)), ' '};
    if (const std::string amount = trimmedText(parts.at(1)); !amount.empty())
        expected.amount = parseAmount(amount).value();
    if (const std::string mark = trimmedText(parts.at(3)); !mark.empty())
        expected.mark = mark.front();
    for (std::size_t tab = expected.first.find("⇥"); tab != std::string::npos; tab = expected.first.find("⇥"))
        expected.first.replace(tab, std::string_view("⇥").size(), "\t");
    return expected;
}

bool isSameAmount(const Amount& a, const Amount& b)
{
    const UnitFacts& first = factsOf(a.unit);
    const UnitFacts& second = factsOf(b.unit);
    return first.dimension == second.dimension && std::abs(a.value * first.size - b.value * second.size) < 1e-9 * (1.0 + b.value);
}

enum class Outcome { Right, Marked, SilentlyWrong };

Outcome outcomeOf(const Row& row, const RowAnalysis& analysis, const Expected& expected)
{
    const bool isNamed = analysis.ingredientId == expected.ingredient;
    const bool isMean = row.note.find("mean of") != std::string::npos;
    const auto right = [&] {
        switch (expected.mark) {
        case '!':
            return analysis.problem && analysis.ingredientId.empty() && row.amount == Amount{};
        case '-':
            return analysis.problem && isNamed && row.amount == Amount{};
        default:
            return isNamed && !analysis.problem && isSameAmount(row.amount, *expected.amount) && isMean == (expected.mark == '~');
        }
    };
    return right() ? Outcome::Right : analysis.problem ? Outcome::Marked : Outcome::SilentlyWrong;
}

struct Count {
    int right = 0;
    int all = 0;

    void add(Outcome outcome, const std::string& what, const Row& row)
    {
        ++all;
        right += outcome == Outcome::Right ? 1 : 0;
        const std::string read = what + " is read as " + amountText(row.amount) + " [" + row.ingredient + "] [" + row.note + "]";
        EXPECT_NE(outcome, Outcome::SilentlyWrong) << read;
        if (outcome == Outcome::Marked)
            std::cout << "marked: " << read << "\n";
    }
    void isNearlyAll() const
    {
        std::cout << right << " of " << all << " right\n";
        EXPECT_GE(right, leastRight * all);
    }
};

void countLines(std::string_view list, Count& count)
{
    for (const std::string& line : parted(list, '\n')) {
        if (line.empty())
            continue;
        const Expected expected = expectedFrom(line);
        Recipe recipe;
        recipe.components.front().rows = {
            rowFromLine(expected.first), {"water", {100, Unit::Gram}, "", ""}};  // for what is % of it
        const Preparation preparation = prepared(recipe, shippedCatalogue());
        const Row& row = recipe.components.front().rows.front();
        count.add(outcomeOf(row, preparation.components.front().rows.front().analysis, expected), expected.first, row);
    }
}

constexpr std::array lists{plainLines, amountLastLines, listedLines, roughLines, rangeLines, sizeLines, sumLines, partLines,
    vagueLines, eitherLines, notedLines, unreadableLines, columnLines};

TEST(PastedLines, AreReadAsMeantOrMarked)
{
    Count count;
    for (const std::string_view list : lists)
        countLines(list, count);
    EXPECT_GE(count.all, 200);
    count.isNearlyAll();
}

// What a line says is written and read again as the same row.
TEST(PastedLines, ReadBack)
{
    for (const std::string_view list : lists) {
        for (const std::string& line : parted(list, '\n')) {
            const Row row = rowFromLine(line.empty() ? "salt" : expectedFrom(line).first);
            const auto read = recipeFromText("1 g water\n" + rowsToText({row}));
            ASSERT_TRUE(read) << line;
            ASSERT_EQ(read->components.front().rows.size(), 2U) << line;
            EXPECT_EQ(read->components.front().rows.back(), row) << line;
        }
    }
}

// Such a name in a row without an amount would be taken for a line that went wrong.
TEST(PastedLines, NoNameOfTheCatalogueIsALineThatCannotBeRead)
{
    for (const Ingredient& ingredient : shippedCatalogue().all()) {
        std::vector<std::string> names = ingredient.synonyms;
        names.insert(names.end(), {ingredient.id, ingredient.name});
        for (const std::string& name : names)
            EXPECT_FALSE(faultOfLine({name, {}, "", ""}).has_value()) << name;
    }
}

class PastedMessages : public testing::TestWithParam<PastedMessage> {};

/// A row, and the component that it belongs to.
struct Placed {
    std::string component;
    Row row;
    RowAnalysis analysis;
};

std::vector<Placed> placedRows(const Recipe& recipe)
{
    const Preparation preparation = prepared(recipe, shippedCatalogue());
    std::vector<Placed> rows;
    for (std::size_t c = 0; c < recipe.components.size(); ++c)
        for (std::size_t r = 0; r < recipe.components[c].rows.size(); ++r)
            rows.push_back({recipe.components[c].name, recipe.components[c].rows[r], preparation.components[c].rows[r].analysis});
    return rows;
}

TEST_P(PastedMessages, AreReadAsMeantOrMarked)
{
    const auto recipe = recipeFromText(GetParam().text);
    ASSERT_TRUE(recipe) << english(recipe.error());
    EXPECT_EQ(recipe->title, GetParam().title);
    const auto rows = placedRows(*recipe);
    std::vector<Expected> expected;
    for (const std::string& line : parted(GetParam().rows, '\n'))
        if (!line.empty())
            expected.push_back(expectedFrom(line));
    std::string names;
    for (const Placed& row : rows)
        names += row.component + ": " + amountText(row.row.amount) + " " + row.row.ingredient + "\n";
    ASSERT_EQ(rows.size(), expected.size()) << names << "notes: " << recipe->notes;
    Count count;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        EXPECT_EQ(rows[i].component, expected[i].first) << rows[i].row.ingredient;
        count.add(outcomeOf(rows[i].row, rows[i].analysis, expected[i]), rows[i].row.ingredient, rows[i].row);
    }
    EXPECT_GE(count.right, count.all - 1);
    EXPECT_EQ(*recipeFromText(recipeToText(*recipe)), *recipe);
}

INSTANTIATE_TEST_SUITE_P(All, PastedMessages, testing::ValuesIn(pastedMessages));

}  // namespace
}  // namespace firn
