// Figures of the windows beside the bench open in its window for derivations, which says whose they are.
#include "bench.h"
#include "compare/attribution_wording.h"
#include "compare/comparing_window.h"
#include "compare/comparison_table.h"
#include "document/edits.h"
#include "document/tasting_edits.h"
#include "gauges/figure_button.h"
#include "gauges/wording.h"
#include "measure/measure_window.h"
#include "print/pages.h"
#include "recipe/versions.h"
#include "tasting/score_chart.h"
#include "tasting/tasting_window.h"
#include "teach/derivation_handout.h"
#include "teach/derivation_window.h"
#include "teach/figure_link.h"

#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QTabWidget>
#include <QTest>
#include <QTreeWidget>
#include <stdexcept>

namespace firn::app {
namespace {

Row row(const std::string& ingredient, double grams) { return {ingredient, {grams, Unit::Gram}, "", ""}; }

/// Two versions, and what is on the bench.
Recipe threeTrials()
{
    Recipe recipe;
    recipe.title = "Pear granita";
    recipe.components.front().rows = {row("water", 800.0), row("sucrose", 150.0), row("lemon juice", 20.0)};
    recipe.readings.emplace_back().value = 17.0;
    recipe.readings.back().temperature_c = 26.0;
    recipe.readings.back().version = "1";
    recipe = withVersionKept(recipe, {"<b>lean</b>", "", "2026-04-03"});
    recipe.components.front().rows[1].amount.value = 180.0;
    recipe = withVersionKept(recipe, {"rich", "", "2026-04-04"});
    recipe.components.front().rows[1].amount.value = 300.0;
    return recipe;
}

class FiguresElsewhere : public Bench {
protected:
    FiguresElsewhere()
    {
        window.document().startWith(threeTrials());
        window.show();
    }

    static QString tidy(QString text) { return text.replace(QChar(0x202F), u' ').replace(QChar(0x2212), u'-'); }
    QString label(const char* name) const
    {
        const auto* found = derivations.findChild<QLabel*>(QString::fromLatin1(name));
        EXPECT_TRUE(!found || found->textFormat() == Qt::PlainText) << name;
        return found ? tidy(found->text()) : QString();
    }
    FigureLink* link(const QString& figure) const
    {
        for (FigureLink* each : derivations.findChildren<FigureLink*>())
            if (each->figure() == figure)
                return each;
        return nullptr;
    }
    /// The number that the last line begins with.
    double exactly() const { return label("lastLine").section(u' ', 0, 0).remove(u',').toDouble(); }

    DerivationWindow& derivations = *window.findChild<DerivationWindow*>();
};

class ComparedFigures : public FiguresElsewhere {
protected:
    ComparedFigures()
    {
        showComparing(window.document(), answers, window, {QStringLiteral("1"), QStringLiteral("2")});
        comparing = window.findChild<ComparingWindow*>();
        table = comparing->findChild<ComparisonTable*>();
        EXPECT_TRUE(QTest::qWaitFor([this] { return QApplication::activeWindow() == comparing; }));
    }

    QTableWidgetItem& cell(const QString& name, int column)
    {
        for (int line = 0; line < table->rowCount(); ++line)
            if (table->item(line, 0)->text() == name && table->item(line, column))
                return *table->item(line, column);
        throw std::runtime_error(name.toStdString());
    }
    void openByKey(const QString& name, int column)
    {
        table->setCurrentItem(&cell(name, column));
        QTest::keyClick(table, Qt::Key_Return);
    }
    const Comparison& comparison() { return *comparing->comparison(); }

    ComparingWindow* comparing = nullptr;
    ComparisonTable* table = nullptr;
};

TEST_F(ComparedFigures, ACellOpensTheFigureOfItsSideByMouseAndKey)
{
    QTableWidgetItem& lean = cell("Sugars", 1);
    table->scrollToItem(&lean);
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, table->visualItemRect(&lean).center());
    EXPECT_FALSE(derivations.isVisible());
    QTest::mouseDClick(table->viewport(), Qt::LeftButton, {}, table->visualItemRect(&lean).center());
    EXPECT_TRUE(derivations.isVisible());
    EXPECT_EQ(derivations.figure(), "percent.sugars");
    EXPECT_EQ(label("whose"), "“<b>lean</b>” as compared");
    EXPECT_TRUE(derivations.windowTitle().contains("“<b>lean</b>” as compared"));
    EXPECT_TRUE(tidy(lean.text()).startsWith(label("value").section(u' ', 0, 0))) << lean.text().toStdString();
    EXPECT_TRUE(label("lastLine").endsWith(label("value")));

    openByKey("Sugars", 2);
    EXPECT_EQ(label("whose"), "“rich” as compared");
    EXPECT_TRUE(tidy(cell("Sugars", 2).text()).startsWith(label("value").section(u' ', 0, 0)));
    derivations.open("percent.sugars");
    EXPECT_EQ(label("whose"), "");
    EXPECT_EQ(label("value"), tidy(percentText(window.document().analysis().shares.sugars)));
    EXPECT_FALSE(derivations.windowTitle().contains("compared"));
}

TEST_F(ComparedFigures, EveryCellWithAFigureReadsAsItsDerivation)
{
    std::size_t opened = 0;
    for (int line = 0; line < table->rowCount(); ++line) {
        for (int column = 1; column < table->columnCount(); ++column) {
            const QTableWidgetItem* item = table->item(line, column);
            if (!item || !item->toolTip().contains("explain this number"))
                continue;
            if (item->text().startsWith("straight"))  // from the freezer: words for a limit that is not a figure of the mix
                continue;
            derivations.close();
            table->setCurrentCell(line, column);
            QTest::keyClick(table, Qt::Key_Return);
            ASSERT_TRUE(derivations.isVisible()) << item->text().toStdString();
            const QString value = label("value");
            EXPECT_FALSE(value.isEmpty()) << item->text().toStdString();
            EXPECT_EQ(tidy(item->text()).section(u' ', 0, 0), value.section(u' ', 0, 0))
                << table->item(line, 0)->text().toStdString();
            ++opened;
        }
    }
    EXPECT_GT(opened, 40u);
}

TEST_F(ComparedFigures, ACellWithoutAFigureOpensNothing)
{
    for (const char* name : {"Texture", "sucrose"}) {
        openByKey(QString::fromLatin1(name), 3);
        EXPECT_FALSE(derivations.isVisible()) << name;
    }
    table->setCurrentCell(0, 0);
    QTest::keyClick(table, Qt::Key_Return);
    EXPECT_FALSE(derivations.isVisible());
}

TEST_F(ComparedFigures, ContextMenuAndCtrlEOpenItToo)
{
    table->setCurrentItem(&cell("Freezing point", 2));
    QTest::keyClick(table, Qt::Key_E, Qt::ControlModifier);
    EXPECT_EQ(derivations.figure(), "freezing_point_c");
    EXPECT_EQ(label("whose"), "“rich” as compared");
    table->setCurrentItem(&cell("Freezing point", 1));
    QContextMenuEvent menuKey(QContextMenuEvent::Keyboard, {}, {});
    QApplication::sendEvent(table->viewport(), &menuKey);
    auto* menu = table->findChild<QMenu*>();
    ASSERT_TRUE(menu);
    menu->actions().front()->trigger();
    menu->close();
    EXPECT_EQ(label("whose"), "“<b>lean</b>” as compared");
}

TEST_F(ComparedFigures, SymbolsStayWithinTheSideAndBackAndForwardReturn)
{
    openByKey("Sugars", 1);
    const QString sugars = label("value");
    ASSERT_TRUE(link("mass_g"));
    QTest::mouseClick(link("mass_g"), Qt::LeftButton);
    EXPECT_EQ(derivations.figure(), "mass_g");
    EXPECT_EQ(exactly(), 970.0);  // with 150 g of sucrose
    EXPECT_EQ(label("whose"), "“<b>lean</b>” as compared");
    derivations.open("mass_g");
    EXPECT_EQ(exactly(), 1120.0);  // with 300 g, on the bench
    EXPECT_EQ(label("whose"), "");
    derivations.goBack();
    EXPECT_EQ(exactly(), 970.0);
    EXPECT_EQ(label("whose"), "“<b>lean</b>” as compared");
    derivations.goBack();
    EXPECT_EQ(label("value"), sugars);
    derivations.goForward();
    derivations.goForward();
    EXPECT_EQ(exactly(), 1120.0);
}

TEST_F(ComparedFigures, TheListHasTheFiguresOfTheSideThatIsShown)
{
    auto* list = derivations.findChild<QTreeWidget*>("allFigures");
    const auto listed = [list](const QString& key) {
        for (int i = 0; i < list->topLevelItemCount(); ++i)
            if (list->topLevelItem(i)->data(0, Qt::UserRole).toString() == key)
                return list->topLevelItem(i);
        throw std::runtime_error(key.toStdString());
    };
    openByKey("Sugars", 1);
    EXPECT_EQ(tidy(listed("mass_g")->text(1)), "970 g");
    list->setCurrentItem(listed("mass_g"));
    EXPECT_EQ(exactly(), 970.0);
    EXPECT_EQ(label("whose"), "“<b>lean</b>” as compared");
    derivations.open("percent.sugars");
    EXPECT_EQ(tidy(listed("mass_g")->text(1)), "1120 g");
    openByKey("Sugars", 2);
    derivations.openList();
    EXPECT_EQ(label("whose"), "");
}

TEST_F(ComparedFigures, ADifferenceLeadsToBothSides)
{
    openByKey("Freezing point", 3);
    EXPECT_EQ(derivations.figure(), "change.freezing_point_c");
    EXPECT_EQ(label("whose"), "“rich” less “<b>lean</b>”");
    EXPECT_EQ(label("value").section(u' ', 0, 0), tidy(cell("Freezing point", 3).text()));
    ASSERT_TRUE(link("sides[0].freezing_point_c") && link("sides[1].freezing_point_c"));
    QTest::mouseClick(link("sides[1].freezing_point_c"), Qt::LeftButton);
    EXPECT_EQ(derivations.figure(), "freezing_point_c");
    EXPECT_EQ(label("whose"), "“rich” as compared");
    EXPECT_EQ(label("value"), tidy(cell("Freezing point", 2).text()));
    derivations.goBack();
    QTest::mouseClick(link("sides[0].freezing_point_c"), Qt::LeftButton);
    EXPECT_EQ(label("whose"), "“<b>lean</b>” as compared");
    EXPECT_EQ(label("value"), tidy(cell("Freezing point", 1).text()));
}

TEST_F(ComparedFigures, WhatDidItAddsUpToTheWhole)
{
    auto* why = comparing->findChild<FigureLink*>();
    ASSERT_TRUE(why && why->isVisible());
    QTest::keyClick(why, Qt::Key_Return);
    EXPECT_EQ(derivations.figure(), "attribution.freezing_point_k");
    EXPECT_EQ(label("whose"), "“rich” less “<b>lean</b>”");
    EXPECT_EQ(label("value").section(u' ', 0, 0), tidy(cell("Freezing point", 3).text()));
}

TEST_F(ComparedFigures, WhatAnInstrumentWouldHaveShownOpens)
{
    openByKey("computed for it", 1);
    EXPECT_EQ(derivations.figure(), "computed.refractometer_brix");
    EXPECT_EQ(label("whose"), "“<b>lean</b>” as it was read");
    EXPECT_EQ(label("value"), tidy(cell("computed for it", 1).text()));
    ASSERT_TRUE(link("readings.temperature_c"));
    QTest::mouseClick(link("readings.temperature_c"), Qt::LeftButton);
    EXPECT_EQ(exactly(), 26.0);
}

TEST_F(ComparedFigures, CopiesAndPagesSayWhoseItIs)
{
    openByKey("Sugars", 1);
    derivations.copyText();
    EXPECT_EQ(QApplication::clipboard()->text().section(u'\n', 2, 2), "“<b>lean</b>” as compared");
    const Derivation derivation{"percent.sugars", {{{"w", "", 15.463, "%"}, equation(1.0, 1.0), Source::Definition}}};
    const Handout handout = handoutOf(derivation, {"Sugars", "“lean” as compared", "15.5 %"}, "Pear granita");
    const auto textOf = [&handout](std::size_t block) {
        return std::get<TextBlock>(handout.sections.front().blocks.at(block).content).text;
    };
    EXPECT_EQ(textOf(0), "Sugars: 15.5 %");
    EXPECT_EQ(textOf(1), "Pear granita: “lean” as compared, step by step");
    EXPECT_TRUE(textOf(handout.sections.front().blocks.size() - 1).endsWith("shown as 15.5 %"));
}

TEST_F(FiguresElsewhere, TheMeasuringTableOpensByColumns)
{
    showMeasuring(window.document(), window);
    auto* measure = window.findChild<MeasureWindow*>();
    ASSERT_TRUE(measure);
    const auto button = [measure](const QString& figure) -> FigureButton* {
        for (FigureButton* each : measure->findChildren<FigureButton*>())
            if (each->figure() == figure)
                return each;
        return nullptr;
    };
    ASSERT_TRUE(button("percent.sugars") && button("computed.refractometer_brix"));
    EXPECT_TRUE(button("percent.sugars")->isVisible());
    EXPECT_TRUE(button("computed.refractometer_brix")->isVisible());
    QTest::mouseClick(button("percent.sugars"), Qt::LeftButton);
    EXPECT_EQ(label("value"), tidy(percentText(window.document().analysis().shares.sugars)));
    EXPECT_TRUE(label("whose").endsWith("in Measure and correct")) << label("whose").toStdString();
    QTest::keyClick(button("computed.refractometer_brix"), Qt::Key_Return);
    EXPECT_EQ(derivations.figure(), "computed.refractometer_brix");
    EXPECT_TRUE(button("computed.refractometer_brix")->accessibleName().endsWith(derivations.findChild<QLabel*>("value")->text()));

    auto* reading = measure->findChild<QLineEdit*>("refractometerReading");
    reading->setFocus();
    QTest::keyClicks(reading, "20");
    ASSERT_TRUE(button("apart.sugars_percent")->isVisible());
    measure->activateWindow();
    EXPECT_TRUE(QTest::qWaitFor([measure] { return QApplication::activeWindow() == measure; }));
    button("apart.sugars_percent")->setFocus();
    QTest::keyClick(button("apart.sugars_percent"), Qt::Key_E, Qt::ControlModifier);
    EXPECT_EQ(derivations.figure(), "apart.sugars_percent");
    ASSERT_TRUE(link("measured.sugars_percent") && link("percent.sugars"));
    const double apart = exactly();
    QTest::mouseClick(link("measured.sugars_percent"), Qt::LeftButton);
    const double measured = exactly();
    derivations.goBack();
    QTest::mouseClick(link("percent.sugars"), Qt::LeftButton);
    EXPECT_NEAR(measured - exactly(), apart, 0.011);
}

class TastedFigures : public FiguresElsewhere {
protected:
    TastedFigures()
    {
        Recipe recipe = threeTrials();
        recipe.scales.push_back({"iciness", 0.0, 10.0, "", ""});
        for (const auto& [version, score] : {std::pair("1", 6.0), std::pair("2", 3.0), std::pair("1", 7.0), std::pair("1", 7.0)}) {
            Tasting& one = recipe.tastings.emplace_back();
            one.version = version;
            one.scores.push_back({"iciness", score});
        }
        window.document().startWith(recipe);
        showTasting(window.document(), answers, window);
        tasting = window.findChild<TastingWindow*>();
    }
    void write(const char* field, const QString& text)
    {
        auto& line = *tasting->findChild<QLineEdit*>(QString::fromLatin1(field));
        line.setFocus();
        line.selectAll();
        QTest::keyClicks(&line, text);
    }

    TastingWindow* tasting = nullptr;
};

TEST_F(TastedFigures, TheMeanOfAVersionOpens)
{
    auto* chart = tasting->findChild<ScoreChart*>();
    FigureButton* first = chart->buttonOf("tasting.mean_score[0]");
    ASSERT_TRUE(first && chart->buttonOf("tasting.mean_score[1]"));
    EXPECT_TRUE(chart->rect().contains(first->geometry()));
    QTest::mouseClick(first, Qt::LeftButton);
    EXPECT_EQ(label("whose"), "“<b>lean</b>” as tasted");
    EXPECT_EQ(label("value"), "mean 6.7 of 3 tastings");
    EXPECT_EQ(exactly(), 6.667);
    QTest::keyClick(first, Qt::Key_Right);
    QTest::keyClick(chart->buttonOf("tasting.mean_score[1]"), Qt::Key_Return);
    EXPECT_EQ(label("whose"), "“rich” as tasted");
    EXPECT_EQ(exactly(), 3.0);
}

TEST_F(TastedFigures, TheNumbersOfATriangleTestOpen)
{
    tasting->findChild<QTabWidget*>()->setCurrentIndex(3);
    const auto linkTo = [this](const QString& figure) {
        for (FigureLink* each : tasting->findChildren<FigureLink*>())
            if (each->figure() == figure)
                return each;
        throw std::runtime_error(figure.toStdString());
    };
    FigureLink* chance = linkTo("tasting.triangle_chance");
    EXPECT_FALSE(chance->isVisible());
    write("triangleTasters", "12");
    write("triangleRight", "13");
    EXPECT_FALSE(chance->isVisible());
    write("triangleRight", "7");
    ASSERT_TRUE(chance->isVisible());
    QTest::mouseClick(chance, Qt::LeftButton);
    EXPECT_EQ(label("whose"), "Triangle test: 7 of 12 right");
    const QString verdict = tidy(tasting->findChild<QLabel*>("triangleVerdict")->text());
    EXPECT_TRUE(verdict.contains(label("value").section(u' ', 0, 0) + " %")) << verdict.toStdString();
    QTest::keyClick(linkTo("tasting.triangle_least_right"), Qt::Key_Return);
    EXPECT_EQ(label("value"), "8");
    EXPECT_TRUE(verdict.contains("8 right answers are needed")) << verdict.toStdString();
}

}  // namespace
}  // namespace firn::app
