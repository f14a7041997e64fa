#include "exchange/comparison.h"

#include "compare/attribution_wording.h"
#include "exchange/json.h"

namespace firn {

namespace {

Json orNull(const std::optional<double>& value) { return value ? Json(*value) : Json(); }

Json sentencesOf(const std::vector<Sentence>& sentences)
{
    Json json = Json::array();
    for (const Sentence& sentence : sentences)
        json.push_back(english(sentence));
    return json;
}

Json basisOf(const Basis& basis)
{
    constexpr std::array<std::string_view, 3> names = {"100g", "batch", "portion"};
    return {
        {"per", names.at(std::size_t(basis.per))}, {"portion_g", basis.per == Basis::Portion ? Json(basis.portion.value) : Json()}};
}

Json sideOf(const ComparedSide& side)
{
    const Analysis& analysis = side.analysis;
    Json curve = Json::array();
    for (const FreezingStep& step : analysis.freezing.steps)
        curve.push_back({{"temperature_c", step.temperature.value}, {"ice_percent_of_mass", percent(step.ice)},
            {"water_frozen_percent", percent(step.waterFrozen)}});
    Json readings = Json::array();
    for (const BesideReading& reading : side.readings) {
        readings.push_back({{"instrument", keyOf(reading.record.instrument)}, {"value", reading.record.value},
            {"temperature_c", orNull(reading.record.temperature_c)},
            {"computed", reading.computed ? orNull(reading.computed->value) : Json()}, {"difference", orNull(reading.difference)}});
    }
    return {{"name", side.name}, {"title", side.recipe.title}, {"serve_at_c", analysis.conditions.serveAt.value},
        {"freezer_at_c", analysis.conditions.freezerAt.value}, {"process", keyOf(analysis.texture.process)},
        {"times_the_first", side.batchFactor}, {"class", nameOf(analysis.texture.textureClass)},
        {"firmness", nameOf(analysis.texture.firmness)}, {"reasons", sentencesOf(analysis.texture.reasons)},
        {"faults", sentencesOf(analysis.texture.faults)}, {"freezing_curve", curve}, {"readings", readings}};
}

Json rowsOf(const Comparison& comparison)
{
    Json rows = Json::array();
    for (const ComparedComponent& component : comparison.components) {
        for (const ComparedRow& row : component.rows) {
            Json cells = Json::array();
            for (const ComparedCell& cell : row.cells)
                cells.push_back({{"written", cell.isThere ? Json(cell.written) : Json()},
                    {"grams", cell.isThere ? Json(cell.mass.value) : Json()}, {"difference", nameOf(cell.difference)}});
            rows.push_back({{"component", component.name}, {"ingredient", row.name}, {"in", cells}});
        }
    }
    return rows;
}

Json differencesOf(const Comparison& comparison)
{
    Json differences = Json::array();
    for (const HeaderDifference& difference : comparison.differences) {
        Json values = Json::array();
        for (const auto& parts : difference.values)
            values.push_back(sentencesOf(parts));
        differences.push_back({{"what", difference.label}, {"of", difference.part}, {"in", values}});
    }
    return differences;
}

Json figuresOf(const Comparison& comparison)
{
    Json figures = Json::array();
    for (const ComparedFigure& figure : comparison.figures) {
        Json values = Json::array(), changes = Json::array();
        for (const auto& value : figure.values)
            values.push_back(orNull(value));
        for (const auto& change : figure.changes)
            changes.push_back(orNull(change));
        figures.push_back({{"figure", figure.key}, {"unit", figure.unit}, {"decimals", figure.decimals}, {"values", values},
            {"changes", changes}, {"uncertainties", figure.uncertainties}});
    }
    return figures;
}

Json attributionOf(const Comparison& comparison, std::size_t index)
{
    const Attribution& attribution = comparison.attributions[index];
    Json changes = Json::array();
    for (std::size_t i = 0; i < attribution.changes.size(); ++i) {
        Json change = {{"what", english(attribution.changes[i].what)}};
        for (const AttributedKind& kind : attributedKinds()) {
            const AttributedFigure& figure = attribution.*kind.figure;
            change[std::string(kind.key)] = figure.whyNone ? Json() : Json(figure.parts[i]);
        }
        changes.push_back(std::move(change));
    }
    Json whole = Json::object(), sentences = Json::array();
    const std::string &from = comparison.sides.front().name, &to = comparison.sides[index + 1].name;
    for (const AttributedKind& kind : attributedKinds()) {
        const AttributedFigure& figure = attribution.*kind.figure;
        whole[std::string(kind.key)] = figure.from && figure.to ? Json(*figure.to - *figure.from) : Json();
        sentences.push_back(english(inASentence(attribution, kind, from, to)));
    }
    return {{"to", to}, {"whole", whole}, {"changes", changes}, {"orders", attribution.orders}, {"is_sample", attribution.isSample},
        {"sentences", sentences}};
}

}  // namespace

std::string comparisonJson(const Comparison& comparison)
{
    Json sides = Json::array(), attributions = Json::array();
    for (const ComparedSide& side : comparison.sides)
        sides.push_back(sideOf(side));
    for (std::size_t i = 0; i < comparison.attributions.size(); ++i)
        attributions.push_back(attributionOf(comparison, i));
    Json json;
    json["format"] = "firn-comparison";
    json["version"] = 1;
    json["basis"] = basisOf(comparison.basis);
    json["fairness"] = sentencesOf(comparison.fairness);
    json["recipes"] = std::move(sides);
    json["differences"] = differencesOf(comparison);
    json["rows"] = rowsOf(comparison);
    json["figures"] = figuresOf(comparison);
    json["attributions"] = std::move(attributions);
    // A name with bytes that are not UTF-8 must not cost the whole comparison.
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace firn
