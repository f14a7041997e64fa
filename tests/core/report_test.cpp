#include "exchange/report.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace firn {
namespace {

using Json = nlohmann::ordered_json;

/// A recipe and what might be known about it; the figures are invented.
struct Example {
    Recipe recipe;
    Analysis analysis;
};

Example example()
{
    Example e;
    e.recipe.title = "Strawberry granita";
    e.recipe.components = {{"granita", {}, ""}, {"cream", {}, ""}};
    Analysis& a = e.analysis;
    RowAnalysis berries;
    berries.text = "1 1/2 cups strawberries";
    berries.ingredientId = "strawberry";
    berries.mass = {249.0};
    berries.how = phrase("cup weight, {0}", std::string("USDA"));
    berries.share = {0.498};
    RowAnalysis unknown;
    unknown.text = "1 smidgen";
    unknown.problem = phrase("Nobody knows what this is.");
    a.components = {{berries}, {unknown}};
    a.mix.amounts[Constituent::Sucrose] = {100.25};
    a.mix.amounts[Constituent::Trehalose] = {3.0};
    a.mass = {500.0};
    a.water = {375.0};
    a.volume_20c = {450.5};
    a.shares.water = {0.75};
    a.shares.sugars = {0.2};
    a.shares.alcohol = {0.01};
    a.alcohol_percentByVolume = 1.3;
    a.sweetness_percentSucrose = 21.0;
    a.freezing.freezingPoint = FreezingPoint{Celsius{-2.34}, true};
    a.freezing.glassLimit = Celsius{-32.0};
    a.freezing.steps = {
        {Celsius{-2.34}, {0.0}, {0.0}, true}, {Celsius{-5.0}, {0.375}, {0.5}, false}, {Celsius{-30.0}, {0.6}, {0.8}, false}};
    a.textbook = TextbookFreezing{};
    a.textbook->freezingPoint = Celsius{-2.5};
    a.texture.textureClass = TextureClass::Granita;
    a.texture.process = Process::Scraped;
    a.texture.willFreeze = true;
    a.texture.iceAtServing = {0.55};
    a.texture.servingWindow = TemperatureRange{Celsius{-6.0}, Celsius{-9.0}};
    a.texture.reasons = {phrase("Coarse on purpose.")};
    a.texture.faults = {phrase("Too hard at {0} °C.", Figure{-18.0, 0})};
    Readings readings;
    readings.temperature = Celsius{20.0};
    readings.density = {1.0812};
    readings.specificGravity_20_20 = 1.083;
    readings.refractometer_brix = 20.5;
    readings.baume = 11.1;
    readings.egg.floats = true;
    readings.egg.exposedWidth = {18.4};
    a.readings = readings;
    a.cautions = {{Severity::Danger, phrase("Raw egg.")}, {Severity::Note, phrase("Cool quickly.")}};
    return e;
}

Json reportOf(const Example& e) { return Json::parse(reportJson(e.recipe, e.analysis)); }

TEST(ReportJson, HasTheFieldsThatUsersRelyOn)
{
    const Json report = reportOf(example());
    EXPECT_EQ(report["format"], "firn-report");
    EXPECT_EQ(report["version"], 1);
    EXPECT_EQ(report["title"], "Strawberry granita");
    EXPECT_EQ(report["mass_g"], 500.0);
    EXPECT_EQ(report["water_g"], 375.0);
    EXPECT_EQ(report["volume_ml_20c"], 450.5);
    EXPECT_EQ(report["percent"]["water"], 75.0);
    EXPECT_EQ(report["percent"]["sugars"], 20.0);
    EXPECT_EQ(report["percent"]["alcohol"], 1.0);
    for (const char* part : {"fat", "protein", "total_solids"})
        EXPECT_TRUE(report["percent"][part].is_number_float()) << part;
    EXPECT_EQ(report["sugars_g"]["sucrose"], 100.25);
    EXPECT_EQ(report["sugars_g"]["trehalose"], 3.0);
    for (const char* sugar : {"glucose", "fructose", "lactose", "maltose"})
        EXPECT_EQ(report["sugars_g"][sugar], 0.0) << sugar;
    EXPECT_EQ(report["sweetness_percent_sucrose"], 21.0);
    EXPECT_EQ(report["freezing_point_c"], -2.34);
    EXPECT_EQ(report["freezing_point_textbook_c"], -2.5);
    EXPECT_EQ(report["freezing_point_extrapolated"], true);
}

TEST(ReportJson, RowsOfAllComponentsAreOneList)
{
    EXPECT_EQ(reportOf(example())["rows"], Json::parse(R"([
        {"text": "1 1/2 cups strawberries", "ingredient": "strawberry", "grams": 249.0, "how": "cup weight, USDA", "problem": null},
        {"text": "1 smidgen", "ingredient": null, "grams": 0.0, "how": "", "problem": "Nobody knows what this is."}])"));
}

TEST(ReportJson, CurveHasTheStepsOfTheAnalysis)
{
    EXPECT_EQ(reportOf(example())["freezing_curve"], Json::parse(R"([
        {"temperature_c": -2.34, "ice_percent_of_mass": 0.0, "water_frozen_percent": 0.0},
        {"temperature_c": -5.0, "ice_percent_of_mass": 37.5, "water_frozen_percent": 50.0},
        {"temperature_c": -30.0, "ice_percent_of_mass": 60.0, "water_frozen_percent": 80.0}])"));
}

TEST(ReportJson, TextureTellsClassProcessReasonsAndFaults)
{
    const Json texture = reportOf(example())["texture"];
    EXPECT_EQ(texture["class"], std::string(nameOf(TextureClass::Granita)));
    EXPECT_EQ(texture["process"], "scraped");
    EXPECT_EQ(texture["will_freeze"], true);
    EXPECT_DOUBLE_EQ(texture["ice_percent_at_serving"].get<double>(), 55.0);
    EXPECT_EQ(texture["reasons"], Json::parse(R"(["Coarse on purpose.", "Too hard at -18 °C."])"));
    EXPECT_EQ(texture["serving_window_c"], Json::parse(R"({"warmest": -6.0, "coldest": -9.0})"));
}

TEST(ReportJson, ReadingsAndCautions)
{
    const Json report = reportOf(example());
    EXPECT_EQ(report["readings"], Json::parse(R"({"temperature_c": 20.0, "refractometer_brix": 20.5, "density_g_ml": 1.0812,
        "specific_gravity_20_20": 1.083, "baume": 11.1, "egg": {"floats": true, "exposed_width_mm": 18.4}})"));
    EXPECT_EQ(report["cautions"], Json::parse(R"(["Raw egg.", "Cool quickly."])"));
}

TEST(ReportJson, WhatHasNoValueIsNull)
{
    const Json report = reportOf({});
    EXPECT_EQ(report["freezing_point_c"], nullptr);
    EXPECT_EQ(report["freezing_point_textbook_c"], nullptr);
    EXPECT_EQ(report["readings"], nullptr);
    EXPECT_EQ(report["texture"]["serving_window_c"], nullptr);
    EXPECT_EQ(report["rows"], Json::array());
    EXPECT_EQ(report["freezing_curve"], Json::array());
    EXPECT_EQ(report["cautions"], Json::array());

    Example dark = example();
    dark.analysis.readings->refractometer_brix.reset();
    EXPECT_EQ(reportOf(dark)["readings"]["refractometer_brix"], nullptr);
}

TEST(ReportJson, BytesThatAreNotUtf8DoNotCostTheReport)
{
    Example e = example();
    e.recipe.title = "cr\xe8me";
    EXPECT_EQ(reportOf(e)["title"], "cr\uFFFDme");
}

std::string reportTextOf(const Example& e) { return reportText(e.recipe, e.analysis); }

testing::AssertionResult holds(const std::string& page, const std::string& part)
{
    if (page.find(part) != std::string::npos)
        return testing::AssertionSuccess();
    return testing::AssertionFailure() << "no “" << part << "” in:\n" << page;
}

TEST(ReportText, IsAPageThatReadsFromTopToBottom)
{
    const std::string page = reportTextOf(example());
    EXPECT_TRUE(page.starts_with("Strawberry granita\n==================\n\ngranita\n-------\n"));
    EXPECT_TRUE(holds(page, "  1 1/2 cups strawberries               249.0 g   49.8 %  cup weight, USDA\n"));
    EXPECT_TRUE(holds(page, "  1 smidgen                               0.0 g    0.0 %  see cautions\n"));
    EXPECT_TRUE(holds(page, "  Mass                       500.0 g, 450 mL at 20 °C\n"));
    EXPECT_TRUE(holds(page, "    Sucrose                  100.2 g\n"));
    EXPECT_TRUE(holds(page, "  Freezing point             -2.3 °C (beyond what was measured)\n"));
    EXPECT_TRUE(holds(page, "    by the textbook method   -2.5 °C\n"));
    EXPECT_TRUE(holds(page, "  Serve between              -9.0 and -6.0 °C\n"));
    EXPECT_TRUE(holds(page, "  - Coarse on purpose.\n  - Too hard at -18 °C.\n"));
    EXPECT_TRUE(holds(page, "Readings at 20 °C\n-----------------\n  Refractometer              20.5 °Bx\n"));
    EXPECT_TRUE(holds(page, "  Egg                        floats and shows 18 mm of shell\n"));
    EXPECT_TRUE(page.ends_with("Cautions\n--------\n  Danger:  Raw egg.\n  Note:    Cool quickly.\n"));
}

TEST(ReportText, LinesFitThePageWhateverTheNames)
{
    Example e = example();
    std::string pears;
    for (int i = 0; i < 200; ++i)
        pears += "🍐é";
    e.recipe.title = pears;
    e.analysis.components[0][0].text = pears;
    e.analysis.components[0][0].how = phrase("{0}", pears);
    e.analysis.cautions[0].sentence = phrase("A long caution that says what is wrong, and why, and what the cook should do about "
                                             "it, has to be broken into several lines.");
    std::istringstream page(reportTextOf(e));
    for (std::string line; std::getline(page, line);) {
        const auto columns =
            std::count_if(line.begin(), line.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; });
        EXPECT_LE(columns, 80) << line;
        EXPECT_FALSE(line.ends_with(' ')) << line;
    }
}

TEST(ReportText, ControlCharactersOfAFileDoNotReachTheTerminal)
{
    Example e = example();
    e.recipe.title = "a\x1b[31mred\u009b";
    e.analysis.components[0][0].text = "b\nc\td\x7f";
    const std::string page = reportTextOf(e);
    EXPECT_TRUE(page.starts_with("a [31mred \n"));
    EXPECT_TRUE(holds(page, "  b c d "));
}

TEST(ReportText, AnEmptyRecipeHasAPageToo)
{
    const std::string page = reportTextOf({});
    EXPECT_TRUE(page.starts_with("Untitled recipe\n===============\n"));
    EXPECT_TRUE(holds(page, "  Freezing point             none\n"));
    EXPECT_FALSE(holds(page, "Readings"));
    EXPECT_FALSE(holds(page, "Cautions"));
}

}  // namespace
}  // namespace firn
