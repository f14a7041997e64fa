#include "program.h"

#include <QJsonArray>

namespace {

using firn::app::ProgramRun;
using firn::app::runFirn;

class ReadCommand : public firn::app::CommandLineTest {
protected:
    static QJsonArray solutions(const QStringList& reading)
    {
        const ProgramRun run = runFirn(QStringList{"read", "--json"} + reading);
        EXPECT_EQ(run.status, 0) << run.error.toStdString();
        EXPECT_EQ(run.json()["format"].toString(), "firn-reading");
        EXPECT_EQ(run.json()["version"].toInt(), 1);
        return run.json()["solutions"].toArray();
    }
    static QJsonObject onlySolution(const QStringList& reading)
    {
        const QJsonArray all = solutions(reading);
        EXPECT_EQ(all.size(), 1);
        return all.first().toObject();
    }
    static double sugar(const QStringList& reading) { return onlySolution(reading)["sugar_percent"].toDouble(-1); }
    static double alcohol(const QStringList& reading) { return onlySolution(reading)["alcohol_percent"].toDouble(-1); }

    static void expectReason(const QStringList& reading, const QString& part)
    {
        const ProgramRun run = runFirn(QStringList{"read", "--json"} + reading);
        EXPECT_EQ(run.status, 0);
        EXPECT_TRUE(run.json()["solutions"].isArray());
        EXPECT_TRUE(run.json()["solutions"].toArray().isEmpty());
        EXPECT_TRUE(run.json()["reason"].toString().contains(part)) << run.output.toStdString();
    }

    /// What the report says of a mix, to be read back.
    QJsonObject report(const QString& file, const QStringList& more = {})
    {
        return runFirn(QStringList{"report", file, "--json"} + more).json();
    }
};

TEST_F(ReadCommand, OneReadingGivesTheSugar)
{
    const QJsonObject found = onlySolution({"--brix", "19"});
    EXPECT_NEAR(found["sugar_percent"].toDouble(), 19.0, 1e-6);
    EXPECT_GT(found["sugar_uncertainty"].toDouble(), 0.05);
    EXPECT_EQ(found["alcohol_percent"].toDouble(-1), 0.0);
    EXPECT_EQ(found["alcohol_uncertainty"].toDouble(-1), 0.0);
    EXPECT_NEAR(sugar({"--brix", "19,0", "--at", "31"}), 19.9, 0.05);  // warm, it reads 0.9 °Bx too little
    EXPECT_NEAR(sugar({"--brix", "19", "--at", "31", "--compensated"}), 19.0, 1e-6);
    EXPECT_NEAR(sugar({"--sg", "1.1057"}), 25.0, 0.05);
    EXPECT_NEAR(sugar({"--baume", "13.86"}), 25.0, 0.1);
}

TEST_F(ReadCommand, TemperaturesAreTakenInEitherUnit)
{
    EXPECT_NEAR(sugar({"--brix", "19", "--at", "86F"}), sugar({"--brix", "19", "--at", "30"}), 1e-9);
    EXPECT_NEAR(sugar({"--boils-at", "219.2F"}), sugar({"--boils-at", "104"}), 1e-6);
}

TEST_F(ReadCommand, TwoReadingsGiveSugarAndAlcohol)
{
    const QString file = written("ice.txt", "200 g sucrose\n60 g ethanol\n740 g water\n");
    const QJsonObject readings = report(file)["readings"].toObject();
    const QStringList both{"--brix", QString::number(readings["refractometer_brix"].toDouble(), 'f', 6), "--sg",
        QString::number(readings["specific_gravity_20_20"].toDouble(), 'f', 7)};
    EXPECT_NEAR(sugar(both), 20.0, 0.01);
    EXPECT_NEAR(alcohol(both), 6.0, 0.01);
    EXPECT_GT(onlySolution(both)["alcohol_uncertainty"].toDouble(), 0.1);
}

TEST_F(ReadCommand, AlcoholOrSugarMayBeKnown)
{
    EXPECT_EQ(alcohol({"--brix", "19", "--alcohol-known", "5"}), 5.0);
    EXPECT_LT(sugar({"--brix", "19", "--alcohol-known", "5"}), 18.0);
    EXPECT_NEAR(alcohol({"--sg", "0.9", "--sugar-known", "0"}), 56.0, 1.0);
    EXPECT_EQ(solutions({"--brix", "20.8", "--sugar-known", "0"}).size(), 2);  // the index of strong spirit falls again
}

TEST_F(ReadCommand, WithARecipeOnlyItsSugarIsInQuestion)
{
    const QString file = written("ice.txt", "200 g sucrose\n30 g ethanol\n20 g citric-acid\n10 g salt\n740 g water\n");
    const QJsonObject at12 = report(file, {"--read-at", "12"});
    const QString brix = QString::number(at12["readings"].toObject()["refractometer_brix"].toDouble(), 'f', 6);
    EXPECT_NEAR(sugar({"--brix", brix, "--at", "12", "--recipe", file}), 20.0, 1e-3);
    EXPECT_NEAR(alcohol({"--brix", brix, "--at", "12", "--recipe", file}), 3.0, 1e-3);
    EXPECT_GT(sugar({"--brix", brix, "--at", "12"}), 22.0);
}

TEST_F(ReadCommand, RowsThatCannotBeCountedAreSaid)
{
    const QStringList words{"read", "--brix", "19", "--recipe", written("ice.txt", "80 g water\n20 g sucrose\n5 g unicorn dust\n")};
    EXPECT_TRUE(runFirn(words).output.contains("unicorn dust"));
    EXPECT_EQ(runFirn(words + QStringList{"--json"}).json()["cautions"].toArray().size(), 1);
}

TEST_F(ReadCommand, EggAndBoilingPoint)
{
    const QJsonObject egg = onlySolution({"--egg-mm", "25"});
    EXPECT_GT(egg["sugar_uncertainty"].toDouble(), 5.0);
    EXPECT_NEAR(egg["sugar_percent"].toDouble(), 19.0, 3.0);
    EXPECT_NEAR(sugar({"--boils-at", "105.7"}), 70.0, 0.2);
    EXPECT_GT(sugar({"--boils-at", "100", "--altitude", "1500"}), 60.0);
}

TEST_F(ReadCommand, WhatCannotBeIsSaid)
{
    expectReason({"--brix", "-2"}, "less than no sugar");
    expectReason({"--sg", "0.7"}, "lighter than pure alcohol");
    expectReason({"--sg", "0.98"}, "more alcohol");
    expectReason({"--brix", "10", "--sg", "1.1"}, "together");
    expectReason({"--brix", "10", "--at", "-5"}, "0 °C to 60 °C");
    expectReason({"--boils-at", "90"}, "even without sugar");
    const ProgramRun words = runFirn({"read", "--sg", "0.7"});
    EXPECT_EQ(words.status, 0);
    EXPECT_TRUE(words.output.contains("lighter than pure alcohol"));
}

TEST_F(ReadCommand, WordsForPeople)
{
    EXPECT_EQ(runFirn({"read", "--brix", "19", "--alcohol-known", "0"}).output.toStdString(),
        "sugar 19.0 % by mass ± 0.1, alcohol 0.0 % by mass\n");
    EXPECT_TRUE(runFirn({"read", "--brix", "19"}).output.contains("taken as none"));
    EXPECT_TRUE(runFirn({"read", "--brix", "20.8", "--sugar-known", "0"}).output.contains("\nor sugar"));
}

TEST_F(ReadCommand, RefusalsAreOneLine)
{
    expectRefusal(runFirn({"read"}), "--brix");
    expectRefusal(runFirn({"read", "--brix", "much"}), "much");
    expectRefusal(runFirn({"read", "--brix"}), "brix");
    expectRefusal(runFirn({"read", "--brix", "19", "--at", "warm"}), "warm");
    expectRefusal(runFirn({"read", "--brix", "19", "--alcohol-known", "120"}), "120");
    expectRefusal(runFirn({"read", "--sg", "1.1", "--baume", "13"}), "one reading");
    expectRefusal(runFirn({"read", "--egg-mm", "20", "--brix", "19"}), "alone");
    expectRefusal(runFirn({"read", "--boils-at", "101", "--alcohol-known", "5"}), "steam");
    expectRefusal(runFirn({"read", "--boils-at", "101", "--altitude", "9000"}), "altitude");
    expectRefusal(runFirn({"read", "--brix", "19", "--recipe", "nowhere.firn"}), "nowhere.firn");
    expectRefusal(runFirn({"read", "19"}), "19");
    expectRefusal(runFirn({"read", "--colour"}), "colour");
}

}  // namespace
