#include "program.h"

#include "exchange/recipe_json.h"
#include "recipe/versions.h"

#include <QJsonArray>

namespace {

using namespace firn;
using firn::app::ProgramRun;
using firn::app::runFirn;

class CompareCommand : public firn::app::CommandLineTest {
protected:
    const QString weak = written("weak.txt", "weak:\n800 g water\n150 g sucrose\n10 g lemon juice\n");
    const QString strong = written("strong.txt", "strong:\n800 g water\n200 g sucrose\n10 g lemon juice\n");

    static QJsonObject compared(const QStringList& words)
    {
        const ProgramRun run = runFirn(QStringList{"compare", "--json"} + words);
        EXPECT_EQ(run.status, 0) << run.error.toStdString();
        EXPECT_EQ(run.json()["format"].toString(), "firn-comparison");
        EXPECT_EQ(run.json()["version"].toInt(), 1);
        return run.json();
    }
    static QJsonObject figure(const QJsonObject& comparison, const QString& key)
    {
        for (const QJsonValueRef& one : comparison["figures"].toArray())
            if (one.toObject()["figure"].toString() == key)
                return one.toObject();
        return {};
    }
    /// A granita of three versions: 150, 180 and, on the bench, 200 g of sucrose.
    QString granita()
    {
        Recipe recipe;
        recipe.title = "Pear granita";
        recipe.components.front().rows = {{"water", {800.0, Unit::Gram}, "", ""}, {"sucrose", {150.0, Unit::Gram}, "", ""}};
        recipe = withVersionKept(recipe, {"lean", "", ""});
        recipe.components.front().rows[1].amount.value = 180.0;
        recipe = withVersionKept(recipe, {"", "", ""});
        recipe.components.front().rows[1].amount.value = 200.0;
        return written("granita.firn", QByteArray::fromStdString(recipeToJson(recipe)));
    }
};

TEST_F(CompareCommand, FiguresAreTheReports)
{
    const QJsonObject comparison = compared({weak, strong, "--serve-at", "-10", "--freezer-at=-20"});
    int side = 0;
    for (const QString& file : {weak, strong}) {
        const QJsonObject report = runFirn({"report", file, "--json", "--serve-at", "-10", "--freezer-at", "-20"}).json();
        const auto value = [&](const QString& key) { return figure(comparison, key)["values"].toArray()[side].toDouble(); };
        EXPECT_EQ(value("freezing_point_c"), report["freezing_point_c"].toDouble());
        EXPECT_EQ(value("percent.sugars"), report["percent"].toObject()["sugars"].toDouble());
        EXPECT_EQ(value("texture.ice_percent_at_serving"), report["texture"].toObject()["ice_percent_at_serving"].toDouble());
        EXPECT_EQ(comparison["recipes"].toArray()[side].toObject()["serve_at_c"].toDouble(), -10.0);
        ++side;
    }
    const QJsonObject attribution = comparison["attributions"].toArray()[0].toObject();
    ASSERT_EQ(attribution["changes"].toArray().size(), 1);
    EXPECT_NEAR(attribution["changes"].toArray()[0].toObject()["freezing_point_k"].toDouble(),
        attribution["whole"].toObject()["freezing_point_k"].toDouble(), 1e-6);
}

TEST_F(CompareCommand, VersionsInsideAFile)
{
    const QString file = granita();
    const QJsonArray recipes = compared({file + "@lean", file + "@2", file})["recipes"].toArray();
    ASSERT_EQ(recipes.size(), 3);
    EXPECT_EQ(recipes[0].toObject()["name"].toString(), "lean");
    EXPECT_EQ(recipes[1].toObject()["name"].toString(), "Version 2");
    EXPECT_EQ(recipes[2].toObject()["name"].toString(), "Pear granita");
    EXPECT_EQ(compared({file + "@1", file + "@1"})["recipes"].toArray()[0].toObject()["name"].toString(), "granita.firn@1");
    const QString odd = written("a@2", "100 g water\n");
    EXPECT_EQ(compared({odd, weak})["recipes"].toArray().size(), 2);
}

TEST_F(CompareCommand, EveryCommandReadsVersions)
{
    const QString file = granita();
    const auto sucrose = [](const QString& operand) {
        return runFirn({"report", operand, "--json"}).json()["rows"].toArray()[1].toObject()["grams"].toDouble();
    };
    EXPECT_EQ(sucrose(file), 200.0);
    EXPECT_EQ(sucrose(file + "@2"), 180.0);
    EXPECT_EQ(sucrose(file + "@lean"), 150.0);
    const QJsonObject explained = runFirn({"explain", "rows[1].grams", file + "@1", "--json"}).json();
    EXPECT_EQ(explained["value"].toDouble(), 150.0);
    EXPECT_TRUE(runFirn({"exercises", file + "@1"}).output.contains("150"));
    EXPECT_EQ(runFirn({"read", "--brix", "18", "--recipe", file + "@1"}).status, 0);
    EXPECT_EQ(runFirn({"picture", folder.filePath("lean.png"), file + "@lean"}).status, 0);
    for (const char* command : {"report", "compare", "explain", "exercises"})
        EXPECT_TRUE(runFirn({command, "--help"}).output.contains("FILE@VERSION")) << command;
    EXPECT_TRUE(runFirn({"--help"}).output.contains("FILE@VERSION"));
}

TEST_F(CompareCommand, AFileWithTheWholeNameIsMeant)
{
    const QString file = granita();
    const QString literal = written("granita.firn@1", "100 g water\n25 g sucrose\n");
    EXPECT_EQ(runFirn({"report", literal, "--json"}).json()["rows"].toArray()[1].toObject()["grams"].toDouble(), 25.0);
    expectRefusal(runFirn({"report", file + "@9"}), "no version “9”");
    expectRefusal(runFirn({"report", folder.filePath("lemon@home.firn")}), "lemon@home.firn");
    expectRefusal(runFirn({"picture", folder.filePath("none.png"), file + "@9"}), "no version “9”");
}

TEST_F(CompareCommand, BasisAndPortion)
{
    const auto mass = [&](const QStringList& words) {
        return figure(compared(QStringList{weak, strong} + words), "mass_g")["values"].toArray()[1].toDouble();
    };
    EXPECT_NEAR(mass({}), 100.0, 1e-9);
    EXPECT_NEAR(mass({"--basis", "batch"}), 1010.0, 0.5);
    EXPECT_NEAR(mass({"--portion", "80"}), 80.0, 1e-9);
    EXPECT_NEAR(mass({"--basis", "portion", "--portion", "62,5"}), 62.5, 1e-9);
}

TEST_F(CompareCommand, WordsForPeople)
{
    const ProgramRun run = runFirn({"compare", weak, strong, "--basis", "batch"});
    EXPECT_EQ(run.status, 0);
    for (const char* words :
        {"▲ 200 g", "What did it: weak → strong", "the freezing point falls by", "together", "Grams are those of the whole batch"})
        EXPECT_TRUE(run.output.contains(QString::fromUtf8(words))) << words << "\n" << run.output.toStdString();
    EXPECT_TRUE(runFirn({"compare", "--help"}).output.contains("--portion"));
    EXPECT_TRUE(runFirn({"--help"}).output.contains("firn compare"));
}

TEST_F(CompareCommand, EmptyRecipesAndHostileNames)
{
    const QString empty = written("empty.txt", "");
    EXPECT_TRUE(runFirn({"compare", weak, empty}).output.contains("has a weight"));
    const QString hostile = written("hostile.txt", "<img src=x>\x1b[31m:\n100 g <b>water</b>\n100 g water\n");
    const ProgramRun run = runFirn({"compare", weak, hostile});
    EXPECT_EQ(run.status, 0);
    EXPECT_TRUE(run.output.contains("<b>water</b>"));
    EXPECT_FALSE(run.output.contains(QChar(0x1b)));
}

TEST_F(CompareCommand, BadInputIsRefusedInOneSentence)
{
    expectRefusal(runFirn({"compare"}), "two to four");
    expectRefusal(runFirn({"compare", weak}), "two to four");
    expectRefusal(runFirn({"compare", weak, weak, weak, weak, weak}), "two to four");
    expectRefusal(runFirn({"compare", weak, "/nowhere/at-all.firn"}), "at-all.firn");
    expectRefusal(runFirn({"compare", weak + "@1", strong}), "keeps no versions");
    expectRefusal(runFirn({"compare", granita() + "@7", strong}), "no version “7”");
    expectRefusal(runFirn({"compare", weak, strong, "--basis", "litre"}), "not a basis");
    expectRefusal(runFirn({"compare", weak, strong, "--basis", "portion"}), "--portion 80");
    expectRefusal(runFirn({"compare", weak, strong, "--portion", "0"}), "more than 0 g");
    expectRefusal(runFirn({"compare", weak, strong, "--portion", "much"}), "--portion");
    expectRefusal(runFirn({"compare", weak, strong, "--serve-at", "900"}), "°C");
    expectRefusal(runFirn({"compare", weak, strong, "--colour", "red"}), "colour");
}

}  // namespace
