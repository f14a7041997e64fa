#include "exchange/step_json.h"

#include "exchange/object_writer.h"
#include "exchange/recipe_fields.h"

namespace firn {

namespace {

constexpr double coldest_c = -273.15;
constexpr double hottest_c = 400.0;
constexpr double longest_min = 1e6;
constexpr double largestMass_g = 1e9;
constexpr double largestSoaking_gPerG = 1000.0;

/// Everything that takes something away, as the file has it: at most one of the groups may be there.
struct LossFields {
    std::optional<double> heldBack_g;
    std::optional<std::string> of;
    std::optional<double> soaksUp_gPerG;
    std::optional<double> extracted_percent;
    std::optional<double> to_g;
    std::optional<double> to_brix;
};

Result<Loss> lossFrom(const LossFields& fields)
{
    const int groups = int(fields.heldBack_g.has_value()) + int(fields.of.has_value()) + int(fields.to_g.has_value())
                       + int(fields.to_brix.has_value());
    if (groups > 1)
        return failure(phrase("A step takes away one thing only. Keep one of \"held_back_g\", \"of\", \"to_g\" and \"to_brix\"."));
    if (!fields.of && (fields.soaksUp_gPerG || fields.extracted_percent))
        return failure(phrase("\"of\" is missing. Name the row that is steeped."));
    if (fields.heldBack_g)
        return HeldBack{{*fields.heldBack_g}};
    if (fields.of)
        return Steeped{*fields.of, fields.soaksUp_gPerG.value_or(0.0), fields.extracted_percent.value_or(0.0)};
    if (fields.to_g)
        return BoiledToMass{{*fields.to_g}};
    if (fields.to_brix)
        return BoiledToBrix{*fields.to_brix};
    return Loss{};
}

Fault readKind(const Json& value, StepKind& kind)
{
    const auto named = value.is_string() ? stepNamed(value.get<std::string>()) : std::nullopt;
    if (!named)
        return phrase("\"step\" must be \"dissolve\", \"heat\", \"steep\", \"strain\", \"reduce\", \"chill\", \"fold\", \"churn\" "
                      "or \"freeze\".");
    kind = *named;
    return std::nullopt;
}

}  // namespace

Result<Step> stepFromJson(const Json& json)
{
    if (!json.is_object() || !json.contains("step"))
        return failure(phrase("A step must be an object with \"step\"."));
    Step step;
    LossFields loss;
    UnknownFieldsReader unknown;
    for (const auto& [key, value] : json.items()) {
        Fault fault;
        if (key == "step")
            fault = readKind(value, step.kind);
        else if (key == "temperature_c")
            fault = readNumber(key, value, coldest_c, hottest_c, step.temperature_c);
        else if (key == "minutes")
            fault = readNumber(key, value, 0.0, longest_min, step.minutes);
        else if (key == "held_back_g")
            fault = readNumber(key, value, 0.0, largestMass_g, loss.heldBack_g);
        else if (key == "of")
            fault = readText(key, value, loss.of.emplace());
        else if (key == "soaks_up_g_per_g")
            fault = readNumber(key, value, 0.0, largestSoaking_gPerG, loss.soaksUp_gPerG);
        else if (key == "extracted_percent")
            fault = readNumber(key, value, 0.0, 100.0, loss.extracted_percent);
        else if (key == "to_g")
            fault = readNumber(key, value, 0.0, largestMass_g, loss.to_g);
        else if (key == "to_brix")
            fault = readNumber(key, value, 0.0, 100.0, loss.to_brix);
        else if (key == "note")
            fault = readText(key, value, step.note);
        else
            unknown.keep(key, value);
        if (fault)
            return failure(std::move(*fault));
    }
    auto read = lossFrom(loss);
    if (!read)
        return failure(std::move(read.error()));
    step.loss = std::move(*read);
    step.unknown = unknown.text();
    return step;
}

std::string stepToJson(const Step& step)
{
    ObjectWriter out;
    out.json("step", jsonString(keyOf(step.kind)));
    if (const auto* held = std::get_if<HeldBack>(&step.loss))
        out.number("held_back_g", held->mass.value);
    if (const auto* steeped = std::get_if<Steeped>(&step.loss)) {
        out.json("of", jsonString(steeped->ingredient));
        out.number("soaks_up_g_per_g", steeped->soaksUp_gPerG);
        out.number("extracted_percent", steeped->extracted_percent);
    }
    if (const auto* boiled = std::get_if<BoiledToMass>(&step.loss))
        out.number("to_g", boiled->mass.value);
    if (const auto* boiled = std::get_if<BoiledToBrix>(&step.loss))
        out.number("to_brix", boiled->brix);
    out.number("temperature_c", step.temperature_c);
    out.number("minutes", step.minutes);
    out.text("note", step.note);
    out.unknown(step.unknown);
    return out.object();
}

}  // namespace firn
