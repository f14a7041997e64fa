#include "program.h"

#include <QJsonArray>

namespace {

class ExercisesCommand : public firn::app::CommandLineTest {
protected:
    QString sorbet() { return written("ice.txt", "Ice\n\n75 g water\n25 g sucrose\n"); }
};

using firn::app::ProgramRun;
using firn::app::runFirn;

TEST_F(ExercisesCommand, PrintsQuestionsAndKeepsTheAnswers)
{
    const ProgramRun run = runFirn({"exercises", sorbet()});
    EXPECT_EQ(run.status, 0) << run.error.toStdString();
    EXPECT_TRUE(run.output.startsWith("Ice\nSheet 0\n\n75 g water\n25 g sugar (sucrose)\n\n1. Sugars by mass\n"))
        << run.output.toStdString();
    EXPECT_FALSE(run.output.contains("Answer:"));
}

TEST_F(ExercisesCommand, NoExercisePrintsTheAnswerOfAnother)
{
    const QString page = runFirn({"exercises", sorbet()}).output;
    EXPECT_FALSE(page.contains("25.0 %")) << page.toStdString();
    const ProgramRun solved = runFirn({"exercises", sorbet(), "--solutions", "--json"});
    for (const QJsonValue& each : solved.json()["exercises"].toArray()) {
        const QJsonObject exercise = each.toObject();
        if (exercise["name"].toString() == QLatin1String("Freezing point")) {
            EXPECT_FALSE(page.contains(QString::number(exercise["answer"].toDouble(), 'f', 1) + " °C")) << page.toStdString();
        }
    }
}

TEST_F(ExercisesCommand, WithSolutionsTheSugarsComeToTheirShare)
{
    const ProgramRun run = runFirn({"exercises", sorbet(), "--solutions"});
    EXPECT_TRUE(run.output.contains("Answer: 25.0 %\n")) << run.output.toStdString();
    EXPECT_TRUE(run.output.contains("Source: "));
}

TEST_F(ExercisesCommand, JsonHasAnswersOnlyWithSolutionsAndAnotherSeedHasOthers)
{
    const auto first = [&](const QStringList& options) {
        const QJsonObject json = runFirn(QStringList{"exercises", sorbet(), "--json"} + options).json();
        EXPECT_EQ(json["format"].toString(), "firn-exercises");
        EXPECT_EQ(json["version"].toInt(), 1);
        return json["exercises"].toArray().at(0).toObject();
    };
    EXPECT_FALSE(first({}).contains("answer"));
    EXPECT_DOUBLE_EQ(first({"--solutions"})["answer"].toDouble(), 25.0);
    EXPECT_FALSE(first({"--solutions"})["steps"].toArray().isEmpty());
    EXPECT_NE(first({"--solutions", "--seed", "3"})["answer"].toDouble(), 25.0);
}

TEST_F(ExercisesCommand, RefusesInOneSentence)
{
    expectRefusal(runFirn({"exercises"}), "Name one recipe");
    expectRefusal(runFirn({"exercises", sorbet(), "--seed", "one"}), "“one” is not a sheet number");
    expectRefusal(runFirn({"exercises", "/nowhere/ice.txt"}), "/nowhere/ice.txt");
}

}  // namespace
