#include "program.h"

#include <QImage>
#include <QJsonArray>

namespace {

class CommandLine : public firn::app::CommandLineTest {};

using firn::app::ProgramRun;
using firn::app::runFirn;

TEST_F(CommandLine, ReportOfTextAsJson)
{
    const ProgramRun run = runFirn({"report", written("ice.txt", "Ice\n\n75 g water\n25 g sucrose\n5 g unicorn dust\n"), "--json"});
    EXPECT_EQ(run.status, 0);
    EXPECT_EQ(run.error.toStdString(), "");
    const QJsonObject json = run.json();
    EXPECT_EQ(json["format"].toString(), "firn-report");
    EXPECT_EQ(json["version"].toInt(), 1);
    EXPECT_EQ(json["title"].toString(), "Ice");
    EXPECT_EQ(json["rows"].toArray().size(), 3);
    EXPECT_TRUE(json["rows"].toArray().at(2).toObject()["ingredient"].isNull());
    EXPECT_EQ(json["readings"].toObject()["temperature_c"].toDouble(), 20.0);
}

TEST_F(CommandLine, ReportOfOneComponent)
{
    const QString file = written("cup.firn",
        R"({"format":"firn-recipe","version":1,"title":"Cup","components":[
            {"name":"Granita","rows":[{"ingredient":"water","amount":75,"unit":"g"},{"ingredient":"sucrose","amount":25,"unit":"g"}]},
            {"name":"Syrup","rows":[{"ingredient":"sucrose","amount":100,"unit":"g"}]}]})");
    EXPECT_DOUBLE_EQ(runFirn({"report", file, "--json"}).json()["mass_g"].toDouble(), 200.0);
    EXPECT_DOUBLE_EQ(runFirn({"report", file, "--json", "--component", "granita"}).json()["mass_g"].toDouble(), 100.0);
    const ProgramRun missing = runFirn({"report", file, "--component", "cream"});
    EXPECT_EQ(missing.status, 2);
    EXPECT_EQ(missing.error.toStdString(), "firn: “Cup” has no component “cream”.\n");
}

TEST_F(CommandLine, ConditionsComeFromTheCommandLineWithEitherDecimalMark)
{
    const QString file = written("ice.txt", "75 g water\n25 g sucrose\n");
    const auto ice = [&](const QString& serveAt) {
        return runFirn({"report", file, "--json", "--serve-at", serveAt, "--process", "scraped"}).json()["texture"].toObject();
    };
    EXPECT_EQ(ice("-8,5"), ice("-8.5"));
    EXPECT_LT(ice("-5")["ice_percent_at_serving"].toDouble(), ice("-15")["ice_percent_at_serving"].toDouble());
    EXPECT_EQ(ice("-8")["process"].toString(), "scraped");
    EXPECT_EQ(runFirn({"report", file, "--json", "--read-at=30"}).json()["readings"].toObject()["temperature_c"].toDouble(), 30.0);
}

TEST_F(CommandLine, TemperaturesAreTakenInEitherUnit)
{
    const QString file = written("ice.txt", "75 g water\n25 g sucrose\n");
    const auto texture = [&](const QString& option, const QString& temperature) {
        return runFirn({"report", file, "--json", option, temperature}).json()["texture"].toObject();
    };
    for (const char* option : {"--serve-at", "--freezer-at"}) {
        EXPECT_FALSE(texture(option, "-10").isEmpty());
        for (const char* same : {"14F", "14 °F", "14f", "-10 C", "-10 °C"})
            EXPECT_EQ(texture(option, same), texture(option, "-10")) << option << ' ' << same;
    }
    const auto readAt = [&](const QString& temperature) {
        return runFirn({"report", file, "--json", "--read-at", temperature})
            .json()["readings"]
            .toObject()["temperature_c"]
            .toDouble();
    };
    EXPECT_NEAR(readAt("86F"), 30.0, 1e-9);
    // Whatever the locale, a number alone is in °C.
    qputenv("LC_ALL", "en_US.UTF-8");
    EXPECT_EQ(readAt("30"), 30.0);
    qunsetenv("LC_ALL");
    expectRefusal(runFirn({"report", file, "--serve-at", "14K"}), "14K");
    expectRefusal(runFirn({"report", file, "--serve-at", "-100F"}), "-73.3 °C is outside -60 °C to 60 °C.");
}

TEST_F(CommandLine, AnAmountWithTwoMeaningsIsAskedAboutWithBoth)
{
    const ProgramRun run = runFirn({"report", "-"}, "1.015 g sugar\n");
    EXPECT_TRUE((run.output + run.error).contains("“1.015” can mean 1015 g or 1.0150 g."))
        << run.output.toStdString() << run.error.toStdString();
}

TEST_F(CommandLine, StandardInputIsText)
{
    const ProgramRun run = runFirn({"report", "-", "--json"}, "250 g water\n1 1/2 cups granulated sugar\n");
    EXPECT_EQ(run.status, 0);
    EXPECT_EQ(run.json()["rows"].toArray().size(), 2);
}

// One line that cannot be read used to cost the whole report.
TEST_F(CommandLine, ARowThatCannotBeReadIsMarkedInTheReport)
{
    const ProgramRun run = runFirn({"report", "-", "--json"}, "250 g water\n-5 g salt\nsugar, to taste\n");
    EXPECT_EQ(run.status, 0);
    const QJsonArray rows = run.json()["rows"].toArray();
    ASSERT_EQ(rows.size(), 3);
    EXPECT_TRUE(rows.at(0).toObject()["problem"].isNull());
    EXPECT_EQ(rows.at(1).toObject()["text"].toString().toStdString(), "-5 g salt");
    EXPECT_EQ(rows.at(1).toObject()["problem"].toString().toStdString(), "An amount cannot be negative.");
    EXPECT_EQ(rows.at(2).toObject()["problem"].toString().toStdString(),
        "“sugar” (to taste) has no weight and is ignored. Type an amount, or leave it.");
    EXPECT_EQ(run.json()["mass_g"].toDouble(), 250.0);
    for (const char* text : {"-5 g salt\n", "see you on Thursday\n"}) {
        const ProgramRun nothing = runFirn({"report", "-", "--json"}, text);
        EXPECT_EQ(nothing.status, 2) << text;
        EXPECT_EQ(nothing.error.count('\n'), 1) << text;
    }
}

// A window used to open on the "file".
TEST_F(CommandLine, WhatIsNeitherACommandNorAFileIsRefused)
{
    for (const QStringList& arguments :
        {QStringList{"nonsense"}, QStringList{"nonsense", "--json"}, QStringList{"reprot", "ice.txt"}}) {
        const ProgramRun run = runFirn(arguments);
        EXPECT_EQ(run.status, 2);
        EXPECT_EQ(run.error,
            QStringLiteral("firn: There is no command or file “%1”. Run “firn --help” for usage.\n").arg(arguments.front()));
    }
    const QString file = written("ice.txt", "75 g water\n");
    EXPECT_EQ(runFirn({file, "--json"}).error, "firn: There is no option --json. Run “firn --help” for usage.\n");
    expectRefusal(runFirn({"report", written("pear.png", QByteArray("\x89PNG\r\n\0\0", 8))}),
        "This is not a recipe or a text file. Choose a .firn, .txt or .csv file.");
}

TEST_F(CommandLine, EmptyRecipeStillHasAReport)
{
    const ProgramRun run = runFirn({"report", "-", "--json"}, "");
    EXPECT_EQ(run.status, 0);
    EXPECT_EQ(run.json()["mass_g"].toDouble(-1), 0.0);
}

TEST_F(CommandLine, SeveralFilesOneObjectAfterAnother)
{
    const QString file = written("ice.txt", "75 g water\n25 g sucrose\n");
    const ProgramRun run = runFirn({"report", file, file, "--json"});
    EXPECT_EQ(run.output.count("\"firn-report\""), 2);
}

TEST_F(CommandLine, RefusalsAreOneLine)
{
    const QString file = written("ice.txt", "75 g water\n");
    expectRefusal(runFirn({"report", "nowhere.txt"}), "nowhere.txt");
    expectRefusal(runFirn({"report", folder.path()}), folder.path());
    expectRefusal(runFirn({"report"}), "recipe");
    expectRefusal(runFirn({"report", file, "--serve-at", "cold"}), "cold");
    expectRefusal(runFirn({"report", file, "--serve-at", "-61"}), "-61");
    expectRefusal(runFirn({"report", file, "--serve-at"}), "serve-at");
    expectRefusal(runFirn({"report", file, "--process", "boiled"}), "boiled");
    expectRefusal(runFirn({"report", file, "--colour"}), "colour");
    expectRefusal(runFirn({"report", written("torn.firn", "{\"format\": \"firn-rec")}), "torn.firn");
    expectRefusal(runFirn({"report", "-"}, "1/0 cups sugar\n"), "1");
    expectRefusal(runFirn({"--colour"}), "colour");
    expectRefusal(runFirn({"picture"}), "picture");
    expectRefusal(runFirn({"picture", "x.png", "--size", "big"}), "1366x768");
}

TEST_F(CommandLine, OneBadFileAmongGoodOnesPrintsNoHalfReport)
{
    expectRefusal(runFirn({"report", written("ice.txt", "75 g water\n"), "nowhere.txt"}), "nowhere.txt");
}

TEST_F(CommandLine, WithoutADisplayTheWindowSaysSo) { expectRefusal(runFirn({}), "display"); }

TEST_F(CommandLine, IngredientsAreListedAndSearched)
{
    const QJsonArray all = runFirn({"ingredients", "--json"}).json()["ingredients"].toArray();
    const QJsonArray some = runFirn({"ingredients", "strawberr", "--json"}).json()["ingredients"].toArray();
    EXPECT_GT(all.size(), some.size());
    ASSERT_GT(some.size(), 0);
    const QJsonObject first = some.first().toObject();
    EXPECT_EQ(first["id"].toString(), "strawberry");
    EXPECT_GT(first["per_100g"].toObject()["water"].toDouble(), 80.0);
    EXPECT_FALSE(first["source"].toString().isEmpty());
    EXPECT_TRUE(runFirn({"ingredients", "strawberr"}).output.contains("strawberry: Strawberr"));
}

TEST_F(CommandLine, SearchThatFindsNothingSaysSo)
{
    const ProgramRun run = runFirn({"ingredients", "zzzz"});
    EXPECT_EQ(run.status, 0);
    EXPECT_EQ(run.output.toStdString(), "No ingredient matches “zzzz”.\n");
    const ProgramRun json = runFirn({"ingredients", "zzzz", "--json"});
    EXPECT_EQ(json.status, 0);
    EXPECT_TRUE(json.json()["ingredients"].isArray());
    EXPECT_EQ(json.json()["ingredients"].toArray().size(), 0);
}

TEST_F(CommandLine, ExplainEndsWithTheReportsFigure)
{
    const QString file = written("ice.txt", "75 g water\n25 g sucrose\n");
    const ProgramRun run = runFirn({"explain", "freezing_point_c", file, "--json"});
    EXPECT_EQ(run.status, 0);
    const QJsonObject json = run.json();
    EXPECT_EQ(json["figure"].toString(), "freezing_point_c");
    EXPECT_EQ(json["unit"].toString(), QStringLiteral("°C"));
    EXPECT_EQ(json["value"].toDouble(), runFirn({"report", file, "--json"}).json()["freezing_point_c"].toDouble(1));
    const QJsonArray steps = json["steps"].toArray();
    ASSERT_GT(steps.size(), 3);
    EXPECT_EQ(steps.last().toObject()["result"].toDouble(), json["value"].toDouble());
    for (const QJsonValue& step : steps) {
        for (const char* key : {"formula", "with_values", "source"})
            EXPECT_FALSE(step.toObject()[QLatin1String(key)].toString().isEmpty()) << key;
    }
}

TEST_F(CommandLine, ExplainHeedsConditionsAndComponents)
{
    const QString file = written("cup.firn",
        R"({"format":"firn-recipe","version":1,"title":"Cup","components":[
            {"name":"Granita","rows":[{"ingredient":"water","amount":75,"unit":"g"},{"ingredient":"sucrose","amount":25,"unit":"g"}]},
            {"name":"Syrup","rows":[{"ingredient":"sucrose","amount":100,"unit":"g"}]}]})");
    EXPECT_EQ(runFirn({"explain", "mass_g", file, "--json"}).json()["value"].toDouble(), 200.0);
    EXPECT_EQ(runFirn({"explain", "mass_g", file, "--json", "--component", "granita"}).json()["value"].toDouble(), 100.0);
    const QStringList warm{"texture.ice_percent_at_serving", file, "--json", "--component", "granita", "--serve-at", "-4,5"};
    EXPECT_EQ(runFirn(QStringList{"explain"} + warm).json()["value"].toDouble(),
        runFirn(QStringList{"report"} + warm.mid(1)).json()["texture"].toObject()["ice_percent_at_serving"].toDouble(1));
}

TEST_F(CommandLine, ExplainForPeople)
{
    const ProgramRun run = runFirn({"explain", "percent.sugars", "-"}, "75 g water\n25 g sucrose\n");
    EXPECT_EQ(run.status, 0);
    EXPECT_TRUE(run.output.startsWith(QStringLiteral("percent.sugars = 25 %\n"))) << run.output.toStdString();
    EXPECT_TRUE(run.output.contains(QStringLiteral("w_sugars = 100 % · 25 g / 100 g = 25 %"))) << run.output.toStdString();
    expectRefusal(runFirn({"explain", "baume", "-"}, "75 g water\n"), "readings.baume");
    expectRefusal(runFirn({"explain", "freezing_point_c", "-"}, "75 g sucrose\n"), "no water");
    expectRefusal(runFirn({"explain", "freezing_point_c"}), "explain --help");
}

TEST_F(CommandLine, HelpAndVersion)
{
    EXPECT_TRUE(runFirn({"--help"}).output.contains("firn report"));
    EXPECT_TRUE(runFirn({"report", "--help"}).output.contains("--serve-at"));
    EXPECT_TRUE(runFirn({"explain", "--help"}).output.contains("FIGURE"));
    EXPECT_TRUE(runFirn({"ingredients", "--help"}).output.contains("SEARCH"));
    EXPECT_TRUE(runFirn({"picture", "--help"}).output.contains("--dark"));
    EXPECT_TRUE(runFirn({"read", "--help"}).output.contains("--alcohol-known"));
    EXPECT_TRUE(runFirn({"--version"}).output.startsWith("firn "));
}

TEST_F(CommandLine, PictureOfTheWindowNeedsNoDisplay)
{
    const auto ground = [&](const QStringList& more) {
        const QString path = folder.filePath(QStringLiteral("window.png"));
        const ProgramRun run = runFirn(QStringList{"picture", path, "--size", "1366x768"} + more);
        EXPECT_EQ(run.status, 0) << run.error.toStdString();
        const QImage picture(path);
        EXPECT_EQ(picture.size(), QSize(1366, 768));
        return picture.pixelColor(2, 60).lightness();
    };
    EXPECT_GT(ground({}), 200);
    EXPECT_LT(ground({"--dark"}), 60);
}

}  // namespace
