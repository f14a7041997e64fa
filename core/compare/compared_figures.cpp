#include "compare/compared_figures.h"

#include "compare/shown_figures.h"
#include "units/deviation.h"

#include <algorithm>
#include <array>

namespace firn {

namespace {

using Value = std::optional<double>;

struct KindOfFigure {
    std::string_view key, label, unit;
    int decimals;
    bool isOfBatch;  // grows with the batch
    Value (*of)(const Analysis&);
};

constexpr std::string_view coldestKey = "texture.serving_window_c.coldest";

/// What is not frozen has no figures of freezing.
bool isFrozen(const Analysis& analysis) { return analysis.texture.process != Process::Unfrozen; }

/// Whether it may be served as cold as it is kept, or as the curve goes: another setting would be another figure for the same mix.
bool isSetByFreezer(const Analysis& analysis)
{
    return analysis.texture.servingWindow->coldest == std::max(analysis.conditions.freezerAt, coldestOfCurve);
}

constexpr std::array figureKinds{
    KindOfFigure{"mass_g", "Mass", "g", 1, true, [](const Analysis& a) -> Value { return a.mass.value; }},
    KindOfFigure{"finished_volume_ml", "Finished volume at 20 °C", "mL", 0, true,
        [](const Analysis& a) -> Value { return a.finishedVolume.value; }},
    KindOfFigure{"percent.water", "Water", "%", 1, false, [](const Analysis& a) -> Value { return percent(a.shares.water); }},
    KindOfFigure{"percent.sugars", "Sugars", "%", 1, false, [](const Analysis& a) -> Value { return percent(a.shares.sugars); }},
    KindOfFigure{"percent.total_solids", "Total solids", "%", 1, false,
        [](const Analysis& a) -> Value { return percent(a.shares.totalSolids); }},
    KindOfFigure{"percent.fat", "Fat", "%", 1, false, [](const Analysis& a) -> Value { return percent(a.shares.fat); }},
    KindOfFigure{"percent.protein", "Protein", "%", 1, false, [](const Analysis& a) -> Value { return percent(a.shares.protein); }},
    KindOfFigure{"percent.alcohol", "Alcohol", "%", 1, false, [](const Analysis& a) -> Value { return percent(a.shares.alcohol); }},
    KindOfFigure{"percent.alcohol_by_volume", "Alcohol by volume", "% vol", 1, false,
        [](const Analysis& a) -> Value { return a.alcohol_percentByVolume; }},
    KindOfFigure{"sweetness_percent_sucrose", "Sweet as sucrose of", "%", 1, false,
        [](const Analysis& a) -> Value { return a.sweetness_percentSucrose; }},
    KindOfFigure{"lactose_g_per_100_g_water", "Lactose in 100 g water", "g", 1, false,
        [](const Analysis& a) -> Value { return a.lactose_gPer100gWater; }},
    KindOfFigure{"freezing_point_c", "Freezing point", "°C", 2, false,
        [](const Analysis& a) -> Value {
            return isFrozen(a) && a.freezing.freezingPoint ? Value(a.freezing.freezingPoint->temperature.value) : std::nullopt;
        }},
    KindOfFigure{"freezing_point_textbook_c", "Textbook freezing point", "°C", 2, false,
        [](const Analysis& a) -> Value {
            return isFrozen(a) && a.textbook ? Value(a.textbook->freezingPoint.value) : std::nullopt;
        }},
    KindOfFigure{"texture.ice_percent_at_serving", "Ice when served", "%", 1, false,
        [](const Analysis& a) -> Value { return isFrozen(a) ? Value(percent(a.texture.iceAtServing)) : std::nullopt; }},
    KindOfFigure{"texture.ice_percent_in_freezer", "Ice in the freezer", "%", 1, false,
        [](const Analysis& a) -> Value { return isFrozen(a) ? Value(percent(a.texture.iceInFreezer)) : std::nullopt; }},
    KindOfFigure{"texture.serving_window_c.warmest", "Serve no warmer than", "°C", 1, false,
        [](const Analysis& a) -> Value {
            return a.texture.servingWindow ? Value(a.texture.servingWindow->warmest.value) : std::nullopt;
        }},
    KindOfFigure{coldestKey, "Serve no colder than", "°C", 1, false,
        [](const Analysis& a) -> Value {
            return a.texture.servingWindow ? Value(a.texture.servingWindow->coldest.value) : std::nullopt;
        }},
    KindOfFigure{"readings.refractometer_brix", "Refractometer", "°Bx", 1, false,
        [](const Analysis& a) -> Value { return a.readings ? a.readings->refractometer_brix : std::nullopt; }},
    KindOfFigure{"readings.specific_gravity_20_20", "Specific gravity 20/20", "", 4, false,
        [](const Analysis& a) -> Value { return a.readings ? Value(a.readings->specificGravity_20_20) : std::nullopt; }},
    KindOfFigure{"readings.baume", "Baumé", "°Bé", 1, false,
        [](const Analysis& a) -> Value { return a.readings ? Value(a.readings->baume) : std::nullopt; }},
};

}  // namespace

std::vector<ComparedFigure> comparedFigures(std::span<const Analysis* const> analyses, std::span<const double> perBasis)
{
    std::vector<ComparedFigure> figures;
    for (const KindOfFigure& kind : figureKinds) {
        ComparedFigure& figure = figures.emplace_back();
        figure.key = kind.key;
        figure.label = kind.label;
        figure.unit = kind.unit;
        figure.decimals = kind.decimals;
        figure.isOfBatch = kind.isOfBatch;
        for (std::size_t i = 0; i < analyses.size(); ++i) {
            Value value = kind.of(*analyses[i]);
            if (value && kind.isOfBatch)
                *value *= perBasis[i];
            figure.isFreezers.push_back(kind.key == coldestKey && value && isSetByFreezer(*analyses[i]));
            const bool isChange =
                i > 0 && value && figure.values.front() && !figure.isFreezers.front() && !figure.isFreezers.back();
            figure.changes.push_back(isChange ? Value(*value - *figure.values.front()) : std::nullopt);
            figure.values.push_back(value);
            figure.uncertainties.push_back(kind.key == "percent.sugars" ? percent(analyses[i]->sugarsUncertainty) : 0.0);
        }
    }
    return figures;
}

bool isNothing(const ComparedFigure& figure)
{
    return std::ranges::all_of(
        figure.values, [&figure](const std::optional<double>& value) { return value && isShownAsZero(*value, figure.decimals); });
}

std::optional<double> shownChange(const ComparedFigure& figure, std::size_t side)
{
    return figure.changes[side] ? std::optional(shownChange(*figure.values.front(), *figure.values[side], figure.decimals))
                                : std::nullopt;
}

std::optional<double> shownUncertainty(const ComparedFigure& figure, std::size_t side)
{
    const double uncertainty = figure.uncertainties[side];
    return figure.values[side] && uncertainty > 0.0 ? std::optional(shownDeviation(figure.decimals, uncertainty)) : std::nullopt;
}

const ComparedFigure* figureIn(const std::vector<ComparedFigure>& figures, std::string_view key)
{
    const auto found = std::ranges::find(figures, key, &ComparedFigure::key);
    return found == figures.end() ? nullptr : &*found;
}

}  // namespace firn
