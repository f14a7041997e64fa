#include "analysis/recorded_reading.h"
#include "exchange/reading_json.h"
#include "exchange/recipe_json.h"

#include "syrup_mix.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

Result<ReadingRecord> fromText(std::string_view text) { return readingFromJson(*jsonFromText(text)); }

std::string refusal(std::string_view text)
{
    const auto read = fromText(text);
    return read ? "read" : english(read.error());
}

const std::string example =
    R"({"date": "2026-04-03T15:20", "instrument": "refractometer", "value": 19.4, "temperature_c": 31, "component": "granita", )"
    R"("compensates": true, "scale_from": 0, "scale_to": 32, "division": 0.2, "note": "after straining", "by": {"hand":[1]}})";

TEST(ReadingRecord, ComesBackByteForByte)
{
    const auto record = fromText(example);
    ASSERT_TRUE(record.has_value());
    EXPECT_EQ(record->instrument, Instrument::Refractometer);
    EXPECT_EQ(record->value, 19.4);
    EXPECT_EQ(record->temperature_c, 31.0);
    EXPECT_TRUE(record->compensates);
    EXPECT_EQ(record->to, 32.0);
    EXPECT_EQ(readingToJson(*record), example);
}

RC_GTEST_PROP(ReadingRecord, AnyRecordSurvives, ())
{
    const auto number = [] { return *rc::gen::inRange(-90000, 90000) / 128.0; };
    const auto maybe = [&]() -> std::optional<double> {
        return *rc::gen::arbitrary<bool>() ? std::optional(number()) : std::nullopt;
    };
    ReadingRecord record;
    record.date = *rc::gen::element<std::string>("", "2026-04-03", "2026-02-28T23:59:59");
    record.instrument = static_cast<Instrument>(*rc::gen::inRange(0, 6));
    record.value = number();
    record.component = *rc::gen::string<std::string>();
    record.compensates = *rc::gen::arbitrary<bool>();
    record.isMadeFor60F = *rc::gen::arbitrary<bool>();
    record.from = maybe();
    record.to = maybe();
    record.eggMass = *rc::gen::arbitrary<bool>() ? std::optional(Grams{57.5}) : std::nullopt;
    record.pressure = *rc::gen::arbitrary<bool>() ? std::optional(Hectopascals{987.5}) : std::nullopt;
    record.component.erase(
        std::remove_if(record.component.begin(), record.component.end(), [](char c) { return c < ' '; }), record.component.end());
    const auto read = fromText(readingToJson(record));
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == record);
}

TEST(ReadingRecord, IsKeptInTheRecipe)
{
    Recipe recipe;
    recipe.readings = {*fromText(example), *fromText(R"({"instrument": "egg", "value": 25})")};
    const std::string text = recipeToJson(recipe);
    const auto again = recipeFromJson(text);
    ASSERT_TRUE(again) << english(again.error());
    EXPECT_EQ(again->readings, recipe.readings);
    EXPECT_EQ(recipeToJson(*again), text);

    const auto torn = recipeFromJson(R"({"format": "firn-recipe", "version": 1, "components": [], "readings": [{"value": 3}]})");
    ASSERT_FALSE(torn);
    EXPECT_TRUE(english(torn.error()).starts_with("Reading 1: ")) << english(torn.error());
}

TEST(ReadingRecord, RefusalsNameTheField)
{
    EXPECT_NE(refusal("{}").find("instrument"), std::string::npos);
    EXPECT_NE(refusal(R"({"instrument": "thumb", "value": 1})").find("\"instrument\""), std::string::npos);
    EXPECT_NE(refusal(R"({"instrument": "egg", "value": "wide"})").find("\"value\""), std::string::npos);
    EXPECT_NE(refusal(R"({"instrument": "egg", "value": 20, "egg_g": 5000})").find("\"egg_g\""), std::string::npos);
    EXPECT_NE(refusal(R"({"instrument": "egg", "value": 20, "date": "yesterday"})").find("yesterday"), std::string::npos);
    EXPECT_NE(refusal(R"({"instrument": "egg", "value": 20, "date": 7})").find("\"date\""), std::string::npos);
    EXPECT_NE(
        refusal(R"({"instrument": "refractometer", "value": 20, "compensates": "yes"})").find("true or false"), std::string::npos);
}

TEST(ReadingRecord, Dates)
{
    for (const char* good : {"", "2026-04-03", "2024-02-29", "2026-04-03T15:20", "2026-04-03T15:20:09"})
        EXPECT_FALSE(faultOfDate(good).has_value()) << good;
    for (const char* bad : {"2026-4-3", "2026-02-29", "2026-13-01", "2026-04-03T25:00", "2026-04-03 15:20", "2026-04-03T15:2", "x",
             "2026-04-03T", "2026-04-+3", "2026-04-03T15:20Z?"})
        EXPECT_TRUE(faultOfDate(bad).has_value()) << bad;
}

TEST(RecordedReading, MeasuredBesideComputedWithEveryInstrument)
{
    for (const auto instrument : {Instrument::Refractometer, Instrument::HydrometerBrix, Instrument::HydrometerGravity,
             Instrument::HydrometerBaume, Instrument::Egg, Instrument::BoilingPoint}) {
        SCOPED_TRACE(keyOf(instrument));
        ReadingRecord record;
        record.instrument = instrument;
        record.temperature_c = 25.0;
        record.isMadeFor60F = true;
        const GramsPerMillilitre egg{1.08};
        record.eggDensity = egg;
        const auto computed = computedFor(record, syrup(62.0, 38.0));
        ASSERT_TRUE(computed.has_value());
        ASSERT_TRUE(computed->value.has_value());
        EXPECT_GT(combined(computed->errors), 0.0);
        record.value = *computed->value;
        const auto mixes = mixesBy(record);
        ASSERT_TRUE(mixes.has_value());
        EXPECT_NEAR(percent(mixes->front().sugar), 62.0, instrument == Instrument::Egg ? 1.0 : 1e-4);  // an egg's range is not even
        EXPECT_EQ(instrumentNamed(keyOf(instrument)), instrument);
    }
}

TEST(RecordedReading, OffItsScaleThereIsNothingToCompare)
{
    ReadingRecord record;
    record.to = 32.0;
    EXPECT_FALSE(computedFor(record, syrup(62.0, 38.0))->value.has_value());
    record.instrument = Instrument::Egg;
    EXPECT_FALSE(computedFor(record, Mix{}).has_value());
}

}  // namespace
}  // namespace firn
