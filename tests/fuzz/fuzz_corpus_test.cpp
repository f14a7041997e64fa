// The corpus of the fuzzers as ordinary tests, without libFuzzer: one a subject.
#include "subjects.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <string>

namespace firn {
namespace {

const std::filesystem::path corpus = FIRN_SOURCE_DIR "/tests/fuzz/corpus";

class FuzzCorpus : public testing::TestWithParam<FuzzSubject> {};

TEST_P(FuzzCorpus, EveryFileHolds)
{
    int files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(corpus / GetParam().name)) {
        std::ifstream file(entry.path(), std::ios::binary);
        const std::string bytes{std::istreambuf_iterator<char>(file), {}};
        EXPECT_TRUE(GetParam().holds(bytes)) << entry.path();
        ++files;
    }
    EXPECT_GE(files, 10) << "the corpus is missing";
}

INSTANTIATE_TEST_SUITE_P(OfSubject, FuzzCorpus, testing::ValuesIn(fuzzSubjects().begin(), fuzzSubjects().end()),
    [](const auto& subject) { return std::string(subject.param.name); });

TEST(FuzzCorpus, EveryFolderHasASubject)
{
    for (const auto& entry : std::filesystem::directory_iterator(corpus))
        EXPECT_EQ(std::ranges::count(fuzzSubjects(), entry.path().filename().string(), &FuzzSubject::name), 1) << entry.path();
}

}  // namespace
}  // namespace firn
