#include "exchange/files.h"
#include "explain/explain.h"
#include "explain/sources.h"

#include "../shipped_catalogue.h"

#include <gtest/gtest.h>
#include <set>

namespace firn {
namespace {

TEST(Sources, ThePageInTheDocsIsWhatTheProgramShows)
{
    EXPECT_EQ(contentsOf(std::filesystem::path(FIRN_SOURCE_DIR "/docs/sources.md")).value_or(""), sourcesPage());
}

TEST(Sources, EachIsListedOnceAndLivesWhereItSays)
{
    std::set<Source> seen;
    for (const SourceFacts& facts : allSources()) {
        EXPECT_TRUE(seen.insert(facts.source).second) << facts.name;
        EXPECT_EQ(&factsOf(facts.source), &facts);
        for (const std::string_view text : {facts.name, facts.publication, facts.range, facts.error})
            EXPECT_FALSE(text.empty()) << facts.name;
        const std::string path = FIRN_SOURCE_DIR "/" + std::string(facts.code);
        EXPECT_TRUE(std::filesystem::exists(path + ".h")) << path;
    }
    for (int i = 0; i <= static_cast<int>(Source::Attribution); ++i)
        EXPECT_TRUE(seen.contains(static_cast<Source>(i))) << "source " << i << " is not listed";
}

}  // namespace
}  // namespace firn
