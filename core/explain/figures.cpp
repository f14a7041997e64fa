#include "explain/figures.h"

#include "units/text.h"

#include <algorithm>
#include <array>
#include <numeric>
#include <utility>

namespace firn {

namespace {

constexpr std::size_t fewNear = 4;

constexpr std::array<std::string_view, 13> missable{"freezing_point_c", "freezing_point_textbook_c", "glass_limit_c",
    "texture.ice_percent_at_serving", "texture.ice_percent_in_freezer", "texture.serving_window_c.warmest",
    "texture.serving_window_c.coldest", "readings.temperature_c", "readings.refractometer_brix", "readings.density_g_ml",
    "readings.specific_gravity_20_20", "readings.baume", "readings.egg.exposed_width_mm"};

constexpr auto besideReport = std::to_array<std::string_view>({"finished_volume_ml_20c", "instruments.refractometer_brix",
    "instruments.hydrometer_brix", "instruments.hydrometer_gravity", "instruments.hydrometer_baume", "measured.sugars_percent",
    "measured.alcohol_percent", "measured.sugars_least_percent", "measured.sugars_likely_percent", "measured.sugars_most_percent",
    "correction.added_g", "syrup.answer", "tasting.triangle_chance", "tasting.triangle_least_right"});

/// "rows[]" of "rows[12].grams", with the rest: what is counted, without the number.
std::string withoutNumbers(std::string_view key)
{
    std::string result;
    bool isInside = false;
    for (const char c : key) {
        isInside = c == '[' || (isInside && c != ']');
        if (!isInside || c == '[')
            result += c;
    }
    return result;
}

/// How many letters have to be put in, taken out or changed to make one of the other (Levenshtein 1966).
std::size_t distance(std::string_view a, std::string_view b)
{
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 0; i < a.size(); ++i) {
        std::size_t diagonal = std::exchange(row[0], i + 1);
        for (std::size_t j = 0; j < b.size(); ++j) {
            const std::size_t changed = diagonal + (a[i] == b[j] ? 0 : 1);
            diagonal = row[j + 1];
            row[j + 1] = std::min({row[j] + 1, row[j + 1] + 1, changed});
        }
    }
    return row.back();
}

/// Far, unless one holds the other: "baume" is meant for "readings.baume".
std::size_t strangeness(std::string_view typed, std::string_view key)
{
    const std::size_t apart = distance(typed, key);
    return !typed.empty() && key.find(typed) != std::string_view::npos ? apart / 10 : apart;
}

}  // namespace

std::span<const std::string_view> missableFigures() { return missable; }

std::span<const std::string_view> figuresBesideReport() { return besideReport; }

Sentence titleOf(std::string_view key, const Symbol& result)
{
    if (key == "texture.ice_percent_at_serving")
        return phrase("ice in the mix when it is served, by mass");
    if (key == "texture.ice_percent_in_freezer")
        return phrase("ice in the mix in the freezer, by mass");
    if (key == "texture.serving_window_c.warmest")
        return phrase("warmest at which it is best eaten");
    if (key == "freezing_point_c")
        return phrase("freezing point, by water activity");
    if (key == "sweetness_percent_sucrose")
        return phrase("sweetness, as sucrose in water of this strength");
    if (key == "glass_limit_c")
        return phrase("glass limit: colder than this no more ice forms");
    if (key == "readings.refractometer_brix")
        return phrase("what a refractometer without compensation shows");
    if (key == "instruments.refractometer_brix")
        return phrase("what your refractometer shows");
    if (key == "measured.sugars_least_percent")
        return phrase("least sugars that the egg allows");
    if (key == "measured.sugars_likely_percent")
        return phrase("sugars by the likeliest egg");
    if (key == "measured.sugars_most_percent")
        return phrase("most sugars that the egg allows");
    return result.meaning;
}

bool isFigure(std::string_view key)
{
    if (std::ranges::find(missable, key) != missable.end() || std::ranges::find(besideReport, key) != besideReport.end())
        return true;
    const std::string kind = withoutNumbers(key);
    return kind == "syrup.figures[]" || kind == "rows[].grams" || kind == "rows[].share_percent"
           || kind == "freezing_curve[].temperature_c" || kind == "freezing_curve[].ice_percent_of_mass"
           || kind == "freezing_curve[].water_frozen_percent" || kind == "tasting.mean_score[]";
}

Sentence reasonForNone(std::string_view key)
{
    if (key.starts_with("rows["))
        return phrase("rows are counted from 0, through all components.");
    if (key.starts_with("freezing_curve["))
        return phrase("its curve is shorter, or it is not frozen. Temperatures are counted from 0, the freezing point.");
    if (key.starts_with("texture.ice_"))
        return phrase("it is not frozen.");
    if (key.starts_with("texture."))
        return phrase("it is not scooped at any temperature of this freezer.");
    if (key.starts_with("measured."))
        return phrase("no reading is kept that finds it.");
    if (key.starts_with("correction."))
        return phrase("choose what to add in Measure and correct.");
    if (key.starts_with("syrup."))
        return phrase("ask for one in Syrups.");
    if (key.starts_with("tasting.mean_score"))
        return phrase("give scores in Tasting.");
    if (key.starts_with("tasting."))
        return phrase("type the answers of a triangle test in Tasting.");
    if (key.starts_with("instruments."))
        return phrase("the mix is off the scale of this instrument, or there is no liquid to read in.");
    if (key == "readings.refractometer_brix")
        return phrase("the reading is beyond the refractometer's scale.");
    if (key.starts_with("readings."))
        return phrase("there is no water or alcohol to read in.");
    if (key == "freezing_point_textbook_c")
        return phrase("it is not frozen, or the textbook's table does not reach so far, for want of water.");
    return phrase("it is not frozen, or has no water to freeze.");
}

std::vector<std::string> figuresNear(std::string_view key, const Workings& workings)
{
    const std::string typed = lowered(key);
    std::vector<std::pair<std::size_t, std::string>> found;
    for (const auto& [figure, working] : workings.all()) {
        // Rows, temperatures of the curve and single constituents are many, and hide what was meant.
        const auto isUncalledFor = [&](std::string_view part) {
            return figure.find(part) != std::string::npos && typed.find(part) == std::string::npos;
        };
        if (!working.steps().empty() && !isUncalledFor("[") && !isUncalledFor("constituents"))
            found.emplace_back(strangeness(typed, figure), figure);
    }
    std::ranges::sort(found);
    std::vector<std::string> keys;
    for (const auto& each : found) {
        if (keys.size() < fewNear)
            keys.push_back(each.second);
    }
    return keys;
}

std::string listOf(const std::vector<std::string>& words)
{
    std::string list;
    for (std::size_t i = 0; i < words.size(); ++i)
        list += (i == 0 ? "" : i + 1 == words.size() ? " and " : ", ") + words[i];
    return list;
}

}  // namespace firn
