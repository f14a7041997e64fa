// One matcher for table, paste, files and command line: what cooks write finds what they mean, and nothing is wrong in silence.
#include "names_that_cooks_write.h"

#include "../shipped_catalogue.h"
#include "ingredients/kitchen_words.h"
#include "ingredients/matching.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <set>

namespace {

using namespace firn;

/// Every id, name and synonym, folded.
const std::set<std::string>& textsOfTheCatalogue()
{
    static const std::set<std::string> texts = [] {
        std::set<std::string> all;
        for (const Ingredient& ingredient : shippedCatalogue().all()) {
            all.insert(folded(ingredient.id));
            all.insert(folded(ingredient.name));
            for (const std::string& synonym : ingredient.synonyms)
                all.insert(folded(synonym));
        }
        return all;
    }();
    return texts;
}

bool isOffered(const NameMatch& match, std::string_view id)
{
    return std::ranges::find(match.others, id, [](const Ingredient* other) { return std::string_view(other->id); })
           != match.others.end();
}

/// Whether the ingredient is called so, in these very words.
bool keysShared(std::string_view name, const Ingredient& ingredient)
{
    const auto plain = [](std::string_view text) {
        Words words = withoutFillers(plainWords(text));
        std::ranges::sort(words);
        return words;
    };
    return plain(name) == plain(ingredient.name) || plain(name) == plain(ingredient.id)
           || std::ranges::any_of(ingredient.synonyms, [&](const std::string& synonym) { return plain(synonym) == plain(name); });
}

std::string described(const NameMatch& match)
{
    std::string text = match.ingredient ? match.ingredient->id : "unknown";
    for (const Ingredient* other : match.others)
        text += ", " + other->id;
    return text;
}

TEST(NamesThatCooksWrite, AreNotCopiedFromTheCatalogue)
{
    std::set<std::string_view> seen;
    for (const auto& [name, id] : namesThatCooksWrite) {
        EXPECT_TRUE(seen.insert(name).second) << name << " stands twice";
        EXPECT_TRUE(shippedCatalogue().find(id)) << id << ", meant by " << name;
        // A general word is what its default is not called itself, though it may be its id.
        const NameMatch match = matchName(shippedCatalogue(), name);
        EXPECT_TRUE(match.recognition == Recognition::ByDefault || !textsOfTheCatalogue().contains(folded(name))) << name;
    }
    EXPECT_GE(namesThatCooksWrite.size(), 400U);
}

TEST(NamesThatCooksWrite, FindWhatIsMeantOrOfferIt)
{
    std::size_t right = 0;
    for (const auto& [name, id] : namesThatCooksWrite) {
        const NameMatch match = matchName(shippedCatalogue(), name);
        // A stated default is said in the row, which offers the others.
        if ((match.ingredient && match.ingredient->id == id) || match.recognition == Recognition::ByDefault)
            ++right;
        else {
            EXPECT_TRUE(!match.ingredient && isOffered(match, id)) << name << ": " << id << " wanted, found " << described(match);
        }
    }
    RecordProperty("right", int(right));
    std::cout << right << " of " << namesThatCooksWrite.size() << " right\n";
    EXPECT_GE(double(right), 0.97 * double(namesThatCooksWrite.size()));
}

TEST(NamesThatCooksWrite, UnknownOnesOfferNoMoreThanThree)
{
    for (const auto* name : {"sugr", "berry", "moon dust", "hazelnut something", ""}) {
        const NameMatch match = matchName(shippedCatalogue(), name);
        EXPECT_EQ(match.recognition, Recognition::Unknown) << name;
        EXPECT_EQ(match.ingredient, nullptr) << name;
        EXPECT_LE(match.others.size(), 3U) << name;
    }
    EXPECT_EQ(matchName(shippedCatalogue(), "sugr").others.front()->id, "sucrose");
    EXPECT_EQ(matchName(shippedCatalogue(), "creme", 20).others.size(), 20U);
}

// A letter left out, doubled, changed or swapped with the next in any name or synonym never gives another ingredient: unless what comes out is
// what that other one is called.
RC_GTEST_PROP(NamesThatCooksWrite, OneSlipNeverGivesAnotherIngredient, ())
{
    const auto& all = shippedCatalogue().all();
    const Ingredient& ingredient = all[*rc::gen::inRange<std::size_t>(0, all.size())];
    const std::size_t which = *rc::gen::inRange<std::size_t>(0, ingredient.synonyms.size() + 1);
    std::string name = folded(which == 0 ? ingredient.name : ingredient.synonyms[which - 1]);
    const auto isLetter = [](char c) { return c >= 'a' && c <= 'z'; };
    const std::size_t at = *rc::gen::inRange<std::size_t>(0, name.size());
    RC_PRE(isLetter(name[at]));
    switch (*rc::gen::inRange(0, 4)) {
    case 0:
        name.erase(at, 1);
        break;
    case 1:
        name.insert(at, 1, *rc::gen::inRange('a', '{'));
        break;
    case 2:
        name[at] = *rc::gen::inRange('a', '{');
        break;
    default:
        RC_PRE(at + 1 < name.size() && isLetter(name[at + 1]));
        std::swap(name[at], name[at + 1]);
    }
    const NameMatch match = matchName(shippedCatalogue(), name);
    const bool isHere = !match.ingredient || match.ingredient->id == ingredient.id;
    const bool isSaid = match.recognition == Recognition::ByDefault;
    RC_LOG() << name << " for " << ingredient.id << ": " << described(match);
    // RC_ASSERT looks at all of its operands.
    const bool isRight = isHere || isSaid || keysShared(name, *match.ingredient);
    RC_ASSERT(isRight);
}

}  // namespace
