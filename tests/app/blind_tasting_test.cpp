// Tasting blind: codes on cups, pages to print, and nothing said before its time.
#include "printed_pages.h"
#include "tasting_log.h"

#include "bench/message_bar.h"
#include "recipe/blind_sheet.h"
#include "recipe/versions.h"
#include "tasting/blind_pages.h"
#include "tasting/score_chart.h"

#include <cmath>
#include <map>

namespace firn::app {
namespace {

TEST_F(TastingLog, WhichIsWhichIsNowhereUntilItIsRevealed)
{
    renameVersion(document, "1", "zebra");
    renameVersion(document, "2", "yak");
    renameVersion(document, "3", "walrus");
    auto& versions = find<QListWidget>("blindVersions");
    tabs().setCurrentIndex(2);
    versions.item(0)->setCheckState(Qt::Checked);
    EXPECT_FALSE(find<QPushButton>("makeCodes").isEnabled());
    versions.item(1)->setCheckState(Qt::Checked);
    click("makeCodes");
    ASSERT_EQ(recipe().blindSheets.size(), 1u);
    const BlindSheet sheet = recipe().blindSheets.front();
    ASSERT_EQ(sheet.samples.size(), 2u);

    for (const CodedSample& sample : sheet.samples) {
        click("addTasting");
        taste(QStringLiteral("Cup ") + QString::fromStdString(sample.code));
        write("score iciness", sample.version == "1" ? "8" : "3");
    }
    // All tabs, and each tasting in the form.
    for (int tasting = 0; tasting < 2; ++tasting) {
        find<QListWidget>("tastings").setCurrentRow(tasting);
        for (int tab = 0; tab < 4; ++tab) {
            tabs().setCurrentIndex(tab);
            QApplication::processEvents();
            const QString words = allWords();
            for (const CodedSample& sample : sheet.samples)
                for (const QString& line : words.split(betweenTexts)) {
                    const bool isAboutCup = line.contains(QString::fromStdString(sample.code));
                    EXPECT_FALSE(isAboutCup && (line.contains("zebra") || line.contains("yak"))) << line.toStdString();
                }
            EXPECT_FALSE(words.contains("zebra: ")) << words.toStdString();
            EXPECT_TRUE(words.contains("2 blind tastings are left out"));
        }
    }
    EXPECT_EQ(text("tastingReadings"), "They would say which version it is: shown once the sheet is revealed.");

    tabs().setCurrentIndex(2);
    click("reveal");
    EXPECT_FALSE(recipe().blindSheets.front().isRevealed);
    EXPECT_FALSE(find<QPushButton>("reveal").isEnabled());
    click("revealLater");
    EXPECT_FALSE(find<QPushButton>("revealNow").isVisible());
    QTest::mouseClick(&find<QPushButton>("reveal"), Qt::LeftButton);
    QTest::mouseDClick(&find<QPushButton>("reveal"), Qt::LeftButton);
    EXPECT_FALSE(recipe().blindSheets.front().isRevealed);
    click("revealNow");
    EXPECT_TRUE(recipe().blindSheets.front().isRevealed);
    for (const CodedSample& sample : sheet.samples) {
        const QString name = sample.version == "1" ? "zebra" : "yak";
        EXPECT_TRUE(allWords().contains(QStringLiteral("Cup %1: %2").arg(QString::fromStdString(sample.code), name)));
    }
    EXPECT_EQ(window->findChild<ScoreChart*>()->valueText(), "zebra: 8, one tasting\nyak: 3, one tasting");
    EXPECT_FALSE(find<QPushButton>("reveal").isEnabled());
}

TEST_F(TastingLog, WhatIsOnTheBenchIsKeptBeforeItGetsACode)
{
    changeAmount(document, {0, 1}, {99.0, Unit::Gram});
    auto& versions = find<QListWidget>("blindVersions");
    ASSERT_EQ(versions.count(), 4);
    versions.item(0)->setCheckState(Qt::Checked);
    versions.item(3)->setCheckState(Qt::Checked);
    click("makeCodes");
    EXPECT_EQ(recipe().versions.size(), 4u);
    EXPECT_TRUE(isAsKept(recipe()));
    EXPECT_TRUE(isBehindCode(recipe(), "4"));
}

TEST_F(TastingLog, ThePagesHaveCodesAndScalesButNotTheKey)
{
    renameVersion(document, "1", "zebra");
    renameVersion(document, "2", "yak");
    addBlindSheet(document, {"1", "2"}, 5);
    const BlindSheet& sheet = recipe().blindSheets.front();
    const QString words = textOf(pagesOf(tasterPages(document, sheet, 3, {phrase("Contains EGG.")}), a4));
    for (const CodedSample& sample : sheet.samples)
        EXPECT_GE(words.count(QString::fromStdString(sample.code)), 3 * 3);
    EXPECT_EQ(words.count("10 crushed ice"), 3 * 2);
    EXPECT_EQ(words.count("Contains EGG."), 3);
    EXPECT_FALSE(words.contains("zebra") || words.contains("yak"));
    const auto key = pagesOf(keyPage(document, sheet, 3), a4);
    EXPECT_TRUE(textOf(key).contains("zebra") && textOf(key).contains("Taster 3 gets "));
    EXPECT_EQ(faultOf(key, a4), "");

    tabs().setCurrentIndex(2);
    answers.page = folder.filePath(QStringLiteral("pages.pdf"));
    click("saveSheet");
    EXPECT_EQ(pagesIn(contentsOf(answers.page)), 4);  // a page for each of the usual tasters
    click("saveKey");
    EXPECT_EQ(pagesIn(contentsOf(answers.page)), 1);
    answers.printTo = folder.filePath(QStringLiteral("printed.pdf"));
    click("printSheet");
    EXPECT_EQ(pagesIn(contentsOf(answers.printTo)), 4);
    answers.page = folder.filePath(QStringLiteral("missing/pages.pdf"));
    click("saveSheet");
    const QString sentence = window->findChild<MessageBar*>()->sentence();
    EXPECT_TRUE(sentence.contains("save elsewhere")) << sentence.toStdString();
}

/// How many marks each line of a scale has, from the top.
std::vector<int> marksOn(const PrintedPage& page)
{
    std::map<double, int> marks;
    for (const PrintMark& mark : page.marks)
        if (std::holds_alternative<std::monostate>(mark.ink) && mark.place.height() > mark.place.width())
            ++marks[std::round(mark.place.bottom())];
    std::vector<int> counts;
    for (const auto& [line, count] : marks)
        counts.push_back(count);
    return counts;
}

TEST_F(TastingLog, LinesOfWholeNumbersHaveAMarkForEach)
{
    addScale(document, {"melt", 1.0, 5.0, "slow", "fast"});
    addScale(document, {"sourness", 0.0, 100.0, "none", "much"});
    addScale(document, {"smell", 0.5, 3.5, "none", "much"});
    addBlindSheet(document, {"1", "2"}, 5);
    const auto pages = pagesOf(tasterPages(document, recipe().blindSheets.front(), 1, {}), a4);
    ASSERT_EQ(pages.size(), 1U);
    EXPECT_EQ(marksOn(pages.front()), (std::vector{11, 11, 5, 5, 11, 11, 11, 11}));
    EXPECT_EQ(faultOf(pages, a4), "");
}

TEST_F(TastingLog, EachTastersPagesAreCountedByThemselves)
{
    addBlindSheet(document, {"1", "2", "3"}, 5);
    const auto pages = pagesOf(tasterPages(document, recipe().blindSheets.front(), 4, {}), a4);
    ASSERT_EQ(pages.size(), 4U);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const QString number = QStringLiteral("Taster %1").arg(i + 1);
        EXPECT_EQ(linesOf(pages[i]).count(number), 1) << textOf(pages[i]).toStdString();
        EXPECT_EQ(linesOf(pages[i]).last(), "Page 1 of 1");
    }
}

TEST_F(TastingLog, TheTriangleTestSpeaks)
{
    tabs().setCurrentIndex(3);
    write("triangleTasters", "12");
    write("triangleRight", "8");
    EXPECT_TRUE(text("triangleVerdict").startsWith("A difference was shown"));
    write("triangleRight", "7");
    EXPECT_TRUE(text("triangleVerdict").startsWith("A difference was not shown. 8 right answers are needed"));
    write("triangleRight", "2.5");
    EXPECT_TRUE(text("triangleVerdict").startsWith("A whole number is needed"));
}

TEST_F(TastingLog, TastersHearWhatIsInIt)
{
    document.startWith(recipeFromText("300 g cream\n100 g egg yolk\n80 g sugar").value());
    EXPECT_TRUE(text("tasterCautions").contains("Tell everybody what is in it"));
    EXPECT_TRUE(text("tasterCautions").contains("EGG"));
}

}  // namespace
}  // namespace firn::app
