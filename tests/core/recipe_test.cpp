#include "recipe/recipe.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

TEST(Process, KeysNameTheProcess)
{
    for (const Process process : allProcesses)
        EXPECT_EQ(processNamed(keyOf(process)), process);
    EXPECT_EQ(keyOf(Process::Scraped), "scraped");
    EXPECT_EQ(processNamed("Scraped"), std::nullopt);
    EXPECT_EQ(processNamed(""), std::nullopt);
}

TEST(Recipe, HasAComponentFromTheBeginning) { EXPECT_EQ(Recipe{}.components.size(), 1U); }

}  // namespace
}  // namespace firn
