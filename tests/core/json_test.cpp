#include "exchange/json.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

std::string refusal(std::string_view text)
{
    const auto json = jsonFromText(text);
    return json ? "read as " + json->dump() : english(json.error());
}

TEST(Json, KeepsTheOrderOfKeys)
{
    EXPECT_EQ(jsonFromText(R"({"z": 1, "a": [true, null, -2, 1.5, "é\n"], "m": {}})")->dump(),
        R"({"z":1,"a":[true,null,-2,1.5,"é\n"],"m":{}})");
}

TEST(Json, ByteOrderMarkIsTolerated) { EXPECT_EQ(jsonFromText("\xEF\xBB\xBF{}")->dump(), "{}"); }

TEST(Json, TornTextIsRefusedWithItsPlace)
{
    EXPECT_EQ(refusal("{\"a\": [1,\n  2"),
        "The file is not valid JSON at line 2, column 4: it may have been cut short. Open a backup of it, or correct it there.");
    EXPECT_EQ(refusal("{\"title\": \"Granité"),
        "The file is not valid JSON at line 1, column 19: it may have been cut short. Open a backup of it, or correct it there.");
    EXPECT_EQ(refusal("nul"),
        "The file is not valid JSON at line 1, column 4: it may have been cut short. Open a backup of it, or correct it there.");
}

TEST(Json, FaultsInTheMiddleAreRefusedWithTheirPlace)
{
    EXPECT_EQ(refusal("{\n \"é\": ,}"), "The file is not valid JSON at line 2, column 7. Correct it there, or open a backup.");
    EXPECT_EQ(refusal("{\"a\":1]"), "The file is not valid JSON at line 1, column 7. Correct it there, or open a backup.");
    EXPECT_EQ(refusal("[1]x"), "The file is not valid JSON at line 1, column 4. Correct it there, or open a backup.");
    for (const std::string_view word :
        {"[NaN]", "[Inf]", "['a']", "[+1]", "[01]", "[.5]", "[1,]", "[\"\\ud800\"]", "[\"a\tb\"]", "// x\n1"})
        EXPECT_TRUE(refusal(word).starts_with("The file is not valid JSON at line 1, column ")) << refusal(word);
}

TEST(Json, EmptyTextIsRefused)
{
    for (const std::string_view text : {"", " \r\n\t", "\xEF\xBB\xBF"})
        EXPECT_EQ(refusal(text), "The file is empty. Open a backup of it if there is one.");
}

TEST(Json, RepeatedKeysAreRefused)
{
    EXPECT_EQ(refusal("{\"a\": 1,\n \"b\": 2,\n \"a\": 3}"),
        "“a” stands twice in one object, the second time in line 3. Keep one of them.");
    EXPECT_EQ(
        refusal(R"({"a": {"b": 1, "\u0062": 2}})"), "“b” stands twice in one object, the second time in line 1. Keep one of them.");
    EXPECT_TRUE(jsonFromText(R"({"a": {"a": 1}, "b": {"a": 1}, "c": [{"a": 1}, {"a": 2}]})"));
}

TEST(Json, NumbersBeyondADoubleAreRefused)
{
    EXPECT_EQ(refusal("[1, 1e999]"), "The number that ends at line 1, column 9 is too large. Correct it.");
    EXPECT_EQ(refusal("-1e309"), "The number that ends at line 1, column 6 is too large. Correct it.");
    EXPECT_EQ(jsonFromText("1e308")->get<double>(), 1e308);
}

TEST(Json, NestingIsLimited)
{
    const auto nested = [](int levels) {
        return std::string(static_cast<std::size_t>(levels), '[') + std::string(static_cast<std::size_t>(levels), ']');
    };
    EXPECT_TRUE(jsonFromText(nested(deepestJson)));
    EXPECT_EQ(
        refusal(nested(deepestJson + 1)), "The file is nested deeper than 64 levels at line 1, column 65: Firn's files never are.");
}

// The library parses 200,000 levels and crashes when the value is copied.
TEST(Json, TwoHundredThousandLevelsAreRefusedNotSurvived)
{
    EXPECT_EQ(refusal(std::string(200000, '[')),
        "The file is nested deeper than 64 levels at line 1, column 65: Firn's files never are.");
    std::string objects;
    for (int i = 0; i < 200000; ++i)
        objects += "{\"a\":";
    EXPECT_EQ(refusal(objects), "The file is nested deeper than 64 levels at line 1, column 321: Firn's files never are.");
}

TEST(Json, BytesThatAreNotUtf8AreRefusedWithTheirPlace)
{
    const auto sentence = [](int column) {
        return "This is not UTF-8 text at line 1, column " + std::to_string(column) + ". Save it as text in UTF-8.";
    };
    EXPECT_EQ(refusal("[\"cr\xe8me\"]"), sentence(5));
    EXPECT_EQ(refusal("\xff"), sentence(1));
    EXPECT_EQ(refusal("é\xc3"), sentence(2));             // cut short
    EXPECT_EQ(refusal("\xc0\xaf"), sentence(1));          // longer than need be
    EXPECT_EQ(refusal("\xe0\x80\xaf"), sentence(1));      // longer than need be
    EXPECT_EQ(refusal("\xed\xa0\x80"), sentence(1));      // half of a surrogate pair
    EXPECT_EQ(refusal("\xf4\x90\x80\x80"), sentence(1));  // beyond U+10FFFF
    EXPECT_EQ(refusal(std::string_view("[\0]", 3)),
        "This is not text: it has a zero byte at line 1, column 2. Save it as text in UTF-8.");
    EXPECT_TRUE(jsonFromText("\"é漢🍐\u0080\U0010FFFF\""));
}

TEST(JsonString, EscapesAndNeverFails)
{
    EXPECT_EQ(jsonString("a\"\\\n\x01é"), "\"a\\\"\\\\\\n\\u0001é\"");
    EXPECT_EQ(jsonString("cr\xe8me"), "\"cr\uFFFDme\"");
}

}  // namespace
}  // namespace firn
