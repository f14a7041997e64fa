#include "exchange/report.h"

#include "exchange/json.h"

namespace firn {

namespace {

Json percentsOf(const Analysis& analysis)
{
    const Shares& shares = analysis.shares;
    return {{"water", percent(shares.water)}, {"sugars", percent(shares.sugars)}, {"fat", percent(shares.fat)},
        {"protein", percent(shares.protein)}, {"alcohol", percent(shares.alcohol)}, {"total_solids", percent(shares.totalSolids)},
        {"milk_fat", percent(shares.milkFat)}, {"milk_solids_not_fat", percent(shares.milkSolidsNotFat)},
        {"alcohol_by_volume", analysis.alcohol_percentByVolume}, {"sugars_uncertainty", percent(analysis.sugarsUncertainty)}};
}

Json sugarsOf(const Mix& mix)
{
    Json sugars = Json::object();
    for (const Constituent sugar : {Constituent::Sucrose, Constituent::Glucose, Constituent::Fructose, Constituent::Lactose,
             Constituent::Maltose, Constituent::Galactose, Constituent::Trehalose})
        sugars[std::string(allConstituents()[static_cast<std::size_t>(sugar)].key)] = mix[sugar].value;
    return sugars;
}

Json rowsOf(const Analysis& analysis)
{
    Json rows = Json::array();
    for (const auto& component : analysis.components) {
        for (const RowAnalysis& row : component) {
            rows.push_back({{"text", row.text}, {"ingredient", row.ingredientId.empty() ? Json() : Json(row.ingredientId)},
                {"grams", row.mass.value}, {"how", english(row.how)},
                {"problem", row.problem ? Json(english(*row.problem)) : Json()}});
            if (row.takenAs)
                rows.back()["taken_as"] = english(*row.takenAs);
            if (!row.suggestions.empty())
                rows.back()["suggestions"] = row.suggestions;
        }
    }
    return rows;
}

Json curveOf(const FreezingCurve& freezing)
{
    Json curve = Json::array();
    for (const FreezingStep& step : freezing.steps)
        curve.push_back({{"temperature_c", step.temperature.value}, {"ice_percent_of_mass", percent(step.ice)},
            {"water_frozen_percent", percent(step.waterFrozen)}});
    return curve;
}

Json textureOf(const Texture& texture)
{
    const auto ice = [&texture](
                         MassFraction share) { return texture.process == Process::Unfrozen ? Json() : Json(percent(share)); };
    Json reasons = Json::array();
    for (const auto& sentences : {texture.reasons, texture.faults}) {
        for (const Sentence& sentence : sentences)
            reasons.push_back(english(sentence));
    }
    Json window;
    if (texture.servingWindow)
        window = {{"warmest", texture.servingWindow->warmest.value}, {"coldest", texture.servingWindow->coldest.value}};
    return {{"class", nameOf(texture.textureClass)}, {"process", keyOf(texture.process)}, {"will_freeze", texture.willFreeze},
        {"ice_percent_at_serving", ice(texture.iceAtServing)}, {"reasons", reasons}, {"firmness", nameOf(texture.firmness)},
        {"ice_percent_in_freezer", ice(texture.iceInFreezer)}, {"serving_window_c", window}};
}

Json readingsOf(const std::optional<Readings>& readings)
{
    if (!readings)
        return nullptr;
    return {{"temperature_c", readings->temperature.value},
        {"refractometer_brix", readings->refractometer_brix ? Json(*readings->refractometer_brix) : Json()},
        {"density_g_ml", readings->density.value}, {"specific_gravity_20_20", readings->specificGravity_20_20},
        {"baume", readings->baume},
        {"egg", {{"floats", readings->egg.floats}, {"exposed_width_mm", readings->egg.exposedWidth.value}}}};
}

Json cautionsOf(const std::vector<Caution>& cautions)
{
    Json sentences = Json::array();
    for (const Caution& caution : cautions)
        sentences.push_back(english(caution.sentence));
    return sentences;
}

}  // namespace

std::string reportJson(const Recipe& recipe, const Analysis& analysis)
{
    // What is not frozen has no figures of freezing, as in the window.
    const bool isFrozen = analysis.texture.process != Process::Unfrozen;
    const FreezingCurve curve = isFrozen ? analysis.freezing : FreezingCurve{};
    const auto& freezingPoint = curve.freezingPoint;
    Json report;
    report["format"] = "firn-report";
    report["version"] = 1;
    report["title"] = recipe.title;
    report["mass_g"] = analysis.mass.value;
    report["water_g"] = analysis.water.value;
    report["volume_ml_20c"] = analysis.volume_20c.value;
    report["percent"] = percentsOf(analysis);
    report["sugars_g"] = sugarsOf(analysis.mix);
    report["sweetness_percent_sucrose"] = analysis.sweetness_percentSucrose;
    report["lactose_g_per_100_g_water"] = analysis.lactose_gPer100gWater;
    report["rows"] = rowsOf(analysis);
    report["freezing_point_c"] = freezingPoint ? Json(freezingPoint->temperature.value) : Json();
    report["freezing_point_extrapolated"] = freezingPoint && freezingPoint->isExtrapolated;
    report["freezing_point_textbook_c"] = isFrozen && analysis.textbook ? Json(analysis.textbook->freezingPoint.value) : Json();
    report["glass_limit_c"] = freezingPoint ? Json(curve.glassLimit.value) : Json();
    report["freezing_curve"] = curveOf(curve);
    report["texture"] = textureOf(analysis.texture);
    report["readings"] = readingsOf(analysis.readings);
    report["cautions"] = cautionsOf(analysis.cautions);
    // A name with bytes that are not UTF-8 must not cost the whole report.
    return report.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace firn
