#include "exchange/batch_correction_json.h"

#include "exchange/object_writer.h"
#include "exchange/recipe_fields.h"

namespace firn {

namespace {

Result<AddedIngredient> addedFrom(const Json& json)
{
    if (!json.is_object() || json.size() != 2 || !json.contains("ingredient") || !json.contains("g"))
        return failure(phrase("What was added must be an object with \"ingredient\" and \"g\"."));
    AddedIngredient added;
    if (auto fault = readText("ingredient", json["ingredient"], added.ingredient))
        return failure(std::move(*fault));
    if (auto fault = readNumber("g", json["g"], 0.0, largestAmount, added.mass.value))
        return failure(std::move(*fault));
    return added;
}

}  // namespace

Result<BatchCorrection> batchCorrectionFromJson(const Json& json)
{
    if (!json.is_object() || !json.contains("added"))
        return failure(phrase("A batch correction must be an object with \"added\"."));
    BatchCorrection correction;
    UnknownFieldsReader unknown;
    for (const auto& [key, value] : json.items()) {
        Fault fault;
        if (key == "date")
            fault = readDate(key, value, correction.date);
        else if (key == "component")
            fault = readText(key, value, correction.component);
        else if (key == "version")
            fault = readText(key, value, correction.version);
        else if (key == "sugars_before_percent")
            fault = readNumber(key, value, 0.0, 100.0, correction.sugarsBefore_percent);
        else if (key == "sugars_after_percent")
            fault = readNumber(key, value, 0.0, 100.0, correction.sugarsAfter_percent);
        else if (key == "added")
            fault = readList(key, value, "Addition", addedFrom, correction.added);
        else
            unknown.keep(key, value);
        if (fault)
            return failure(std::move(*fault));
    }
    correction.unknown = unknown.text();
    return correction;
}

std::string batchCorrectionToJson(const BatchCorrection& correction)
{
    std::string added;
    for (const AddedIngredient& one : correction.added) {
        ObjectWriter out;
        out.json("ingredient", jsonString(one.ingredient));
        out.number("g", one.mass.value);
        added += (added.empty() ? "" : ", ") + out.object();
    }
    ObjectWriter out;
    out.text("date", correction.date);
    out.text("component", correction.component);
    out.text("version", correction.version);
    out.number("sugars_before_percent", correction.sugarsBefore_percent);
    out.number("sugars_after_percent", correction.sugarsAfter_percent);
    out.json("added", "[" + added + "]");
    out.unknown(correction.unknown);
    return out.object();
}

}  // namespace firn
