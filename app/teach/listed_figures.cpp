#include "teach/listed_figures.h"

#include <algorithm>
#include <array>

namespace firn::app {

namespace {

constexpr std::array onGauges{"percent.sugars", "percent.total_solids", "freezing_point_c", "freezing_point_textbook_c",
    "percent.water", "percent.fat", "percent.protein", "percent.alcohol", "percent.alcohol_by_volume", "mass_g", "volume_ml_20c",
    "sweetness_percent_sucrose", "lactose_g_per_100_g_water", "readings.refractometer_brix", "readings.density_g_ml",
    "readings.specific_gravity_20_20", "readings.baume", "readings.egg.exposed_width_mm", "texture.serving_window_c.warmest",
    "texture.serving_window_c.coldest", "glass_limit_c"};

bool isOneOfMany(std::string_view key)
{
    return key.starts_with("freezing_curve[") || key.starts_with("components[") || key.ends_with("].share_percent");
}

bool isAbsent(std::string_view key, const Working& working)
{
    return (key.starts_with("constituents_g.") || key.starts_with("sugars_g.")) && working.steps().back().result.value == 0.0;
}

}  // namespace

std::vector<std::string> listedFigures(const Workings& workings)
{
    std::vector<std::string> keys;
    for (const std::string_view key : onGauges) {
        const Working* working = workings.find(std::string(key));
        if (working && !working->steps().empty())
            keys.emplace_back(key);
    }
    for (const auto& [key, working] : workings.all()) {
        if (!working.steps().empty() && !isOneOfMany(key) && !isAbsent(key, working)
            && std::ranges::find(onGauges, key) == onGauges.end())
            keys.push_back(key);
    }
    return keys;
}

}  // namespace firn::app
