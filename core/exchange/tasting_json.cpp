#include "exchange/tasting_json.h"

#include "exchange/object_writer.h"
#include "exchange/recipe_fields.h"
#include "tasting/scales.h"

namespace firn {

namespace {

constexpr double coldest_c = -100.0;
constexpr double hottest_c = 100.0;
constexpr double longest_h = 1e6;

Result<Score> scoreFrom(const Json& json)
{
    if (!json.is_object() || !json.contains("scale") || !json.contains("score") || json.size() != 2)
        return failure(phrase("A score must be an object with \"scale\" and \"score\" only."));
    Score score;
    if (auto fault = readText("scale", json["scale"], score.scale))
        return failure(std::move(*fault));
    if (auto fault = readNumber("score", json["score"], -largestScore, largestScore, score.value))
        return failure(std::move(*fault));
    return score;
}

Result<CodedSample> sampleFrom(const Json& json)
{
    if (!json.is_object() || !json.contains("code") || !json.contains("version") || json.size() != 2)
        return failure(phrase("A sample must be an object with \"code\" and \"version\" only."));
    CodedSample sample;
    if (auto fault = readText("code", json["code"], sample.code))
        return failure(std::move(*fault));
    if (auto fault = readText("version", json["version"], sample.version))
        return failure(std::move(*fault));
    return sample;
}

/// Objects in a list on one line.
template <class Thing, class Write>
std::string listOnOneLine(const std::vector<Thing>& things, Write write)
{
    std::string text;
    for (const Thing& thing : things)
        text += (text.empty() ? "" : ", ") + write(thing);
    return "[" + text + "]";
}

}  // namespace

Result<TastingScale> scaleFromJson(const Json& json)
{
    if (!json.is_object() || !json.contains("name"))
        return failure(phrase("A scale must be an object with \"name\"."));
    TastingScale scale;
    UnknownFieldsReader unknown;
    for (const auto& [key, value] : json.items()) {
        Fault fault;
        if (key == "name")
            fault = readText(key, value, scale.name);
        else if (key == "from")
            fault = readNumber(key, value, -largestScore, largestScore, scale.from);
        else if (key == "to")
            fault = readNumber(key, value, -largestScore, largestScore, scale.to);
        else if (key == "low")
            fault = readText(key, value, scale.low);
        else if (key == "high")
            fault = readText(key, value, scale.high);
        else
            unknown.keep(key, value);
        if (fault)
            return failure(std::move(*fault));
    }
    if (!(scale.from < scale.to))
        return failure(phrase("\"from\" must be less than \"to\"."));
    scale.unknown = unknown.text();
    return scale;
}

Result<Tasting> tastingFromJson(const Json& json)
{
    if (!json.is_object())
        return failure(phrase("A tasting must be an object in braces."));
    Tasting tasting;
    UnknownFieldsReader unknown;
    for (const auto& [key, value] : json.items()) {
        Fault fault;
        if (key == "date")
            fault = readDate(key, value, tasting.date);
        else if (key == "version")
            fault = readText(key, value, tasting.version);
        else if (key == "code")
            fault = readText(key, value, tasting.code);
        else if (key == "tasters")
            fault = readText(key, value, tasting.tasters);
        else if (key == "served_at_c")
            fault = readNumber(key, value, coldest_c, hottest_c, tasting.servedAt_c);
        else if (key == "frozen_h")
            fault = readNumber(key, value, 0.0, longest_h, tasting.frozen_h);
        else if (key == "scores")
            fault = readList(key, value, "Score", scoreFrom, tasting.scores);
        else if (key == "words")
            fault = readText(key, value, tasting.words);
        else if (key == "next")
            fault = readText(key, value, tasting.next);
        else if (key == "photo")
            fault = readText(key, value, tasting.photo);
        else
            unknown.keep(key, value);
        if (fault)
            return failure(std::move(*fault));
    }
    tasting.unknown = unknown.text();
    return tasting;
}

Result<BlindSheet> blindSheetFromJson(const Json& json)
{
    if (!json.is_object() || !json.contains("samples"))
        return failure(phrase("A blind sheet must be an object with \"samples\"."));
    BlindSheet sheet;
    UnknownFieldsReader unknown;
    for (const auto& [key, value] : json.items()) {
        Fault fault;
        if (key == "date")
            fault = readDate(key, value, sheet.date);
        else if (key == "samples")
            fault = readList(key, value, "Sample", sampleFrom, sheet.samples);
        else if (key == "revealed")
            fault = readTruth(key, value, sheet.isRevealed);
        else
            unknown.keep(key, value);
        if (fault)
            return failure(std::move(*fault));
    }
    sheet.unknown = unknown.text();
    return sheet;
}

std::string scaleToJson(const TastingScale& scale)
{
    ObjectWriter out;
    out.json("name", jsonString(scale.name));
    out.number("from", scale.from);
    out.number("to", scale.to);
    out.text("low", scale.low);
    out.text("high", scale.high);
    out.unknown(scale.unknown);
    return out.object();
}

std::string tastingToJson(const Tasting& tasting)
{
    ObjectWriter out;
    out.text("date", tasting.date);
    out.text("version", tasting.version);
    out.text("code", tasting.code);
    out.text("tasters", tasting.tasters);
    out.number("served_at_c", tasting.servedAt_c);
    out.number("frozen_h", tasting.frozen_h);
    if (!tasting.scores.empty())
        out.json("scores", listOnOneLine(tasting.scores, [](const Score& score) {
            return "{\"scale\": " + jsonString(score.scale) + ", \"score\": " + exactNumber(score.value) + "}";
        }));
    out.text("words", tasting.words);
    out.text("next", tasting.next);
    out.text("photo", tasting.photo);
    out.unknown(tasting.unknown);
    return out.object();
}

std::string blindSheetToJson(const BlindSheet& sheet)
{
    ObjectWriter out;
    out.text("date", sheet.date);
    out.json("samples", listOnOneLine(sheet.samples, [](const CodedSample& sample) {
        return "{\"code\": " + jsonString(sample.code) + ", \"version\": " + jsonString(sample.version) + "}";
    }));
    out.truth("revealed", sheet.isRevealed);
    out.unknown(sheet.unknown);
    return out.object();
}

}  // namespace firn
