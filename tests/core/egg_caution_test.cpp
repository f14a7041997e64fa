// What is said of egg follows the steps: 71 °C is home advice (US extension texts, 160 °F); 68.3 °C for 30 min or 79.4 °C for 25 s is 21 CFR 135.3.

#include "analysis/analysis.h"

#include "../shipped_catalogue.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace firn {
namespace {

Component custard(std::optional<double> temperature_c = {}, std::optional<double> minutes = {})
{
    Component component;
    for (const auto& [ingredient, grams] :
        std::vector<std::pair<std::string, double>>{{"whole milk", 500}, {"egg yolk", 90}, {"sucrose", 120}})
        component.rows.push_back({ingredient, {grams, Unit::Gram}, {}, {}});
    if (temperature_c)
        component.steps.push_back(
            {.kind = StepKind::Heat, .temperature_c = temperature_c, .minutes = minutes, .loss = {}, .note = {}, .unknown = {}});
    return component;
}

const Caution& eggCautionOf(const Analysis& analysis)
{
    const auto found = std::ranges::find_if(analysis.cautions, [](const Caution& each) {
        return english(each.sentence).find("your local food code decides") != std::string::npos
               || english(each.sentence).find("Your local food code decides") != std::string::npos;
    });
    EXPECT_NE(found, analysis.cautions.end());
    return *found;
}

Caution cautionFor(std::vector<Component> components)
{
    Recipe recipe;
    recipe.components = std::move(components);
    return eggCautionOf(analyse(recipe, shippedCatalogue(), {}));
}

TEST(EggCaution, WithoutHeatNamesTemperatureAndTime)
{
    const Caution caution = cautionFor({custard()});
    EXPECT_EQ(caution.severity, Severity::Danger);
    for (const char* part : {"71 °C (160 °F)", "68.3 °C for 30 min", "79.4 °C for 25 s", "21 CFR 135.3", "salmonella"})
        EXPECT_NE(english(caution.sentence).find(part), std::string::npos) << part;
}

TEST(EggCaution, SaysWhetherTheStepIsHotAndLongEnough)
{
    struct Row {
        double temperature_c;
        std::optional<double> minutes;
        const char* said;
    };
    constexpr const char *lawful = "is as long and hot as US law asks", *home = "reaches the 71 °C (160 °F) advised at home",
                         *raw = "Raw or lightly cooked";
    for (const Row& row :
        {Row{82.0, 5.0, lawful}, {79.4, 0.42, lawful}, {79.4, 0.41, home}, {79.3, 5.0, home}, {68.3, 30.0, lawful},
            {68.3, 29.0, raw}, {68.2, 30.0, raw}, {85.0, {}, home}, {71.0, {}, home}, {70.9, 20.0, raw}, {60.0, 60.0, raw}}) {
        const Caution caution = cautionFor({custard(row.temperature_c, row.minutes)});
        EXPECT_NE(english(caution.sentence).find(row.said), std::string::npos)
            << row.temperature_c << " °C, " << row.minutes.value_or(-1.0) << " min: " << english(caution.sentence);
        EXPECT_EQ(caution.severity, row.said == raw ? Severity::Danger : Severity::Warning);
    }
}

TEST(EggCaution, TheComponentThatIsHeatedLeastDecides)
{
    EXPECT_EQ(cautionFor({custard(82.0, 5.0), custard()}).severity, Severity::Danger);
    EXPECT_EQ(cautionFor({custard(), custard(82.0, 5.0)}).severity, Severity::Danger);
    EXPECT_NE(english(cautionFor({custard(82.0, 5.0), custard(75.0)}).sentence).find("advised at home"), std::string::npos);
    Component sugar;
    sugar.rows.push_back({"sucrose", {100.0, Unit::Gram}, {}, {}});
    EXPECT_EQ(cautionFor({custard(82.0, 5.0), sugar}).severity, Severity::Warning) << "a part without egg needs no heat";
}

}  // namespace
}  // namespace firn
