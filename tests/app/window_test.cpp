#include "bench.h"

#include "document/built_in.h"
#include "document/typed_numbers.h"
#include "gauges/freezing_chart.h"
#include "gauges/readings_panel.h"
#include "gauges/sugar_scale.h"

#include <QAction>
#include <QDockWidget>
#include <QTabBar>
#include <QTest>

namespace firn::app {
namespace {

class Window : public Bench {
protected:
    QDockWidget* dock(const char* name) { return window.findChild<QDockWidget*>(QString::fromLatin1(name)); }
};

TEST_F(Window, EverythingIsInSightOnASmallLaptop)
{
    window.document().startWith(greetingSample());
    QApplication::processEvents();
    EXPECT_EQ(window.size(), QSize(1366, 768));
    for (const char* name : {"sugar", "freezing", "texture", "readings", "cautions"}) {
        ASSERT_TRUE(dock(name)) << name;
        EXPECT_TRUE(window.rect().contains(dock(name)->geometry())) << name;
        EXPECT_FALSE(dock(name)->visibleRegion().isEmpty()) << name;
    }
    const QSize needed = window.minimumSizeHint();
    EXPECT_LE(needed.width(), 1366);
    EXPECT_LE(needed.height(), 740) << "a title bar and a panel take their share";
}

TEST_F(Window, PanelsComeBackWhereTheyWere)
{
    window.addDockWidget(Qt::LeftDockWidgetArea, dock("texture"));
    dock("sugar")->hide();
    ASSERT_TRUE(window.close());

    MainWindow next(pantry, answers);
    next.show();
    EXPECT_EQ(next.dockWidgetArea(next.findChild<QDockWidget*>("texture")), Qt::LeftDockWidgetArea);
    EXPECT_TRUE(next.findChild<QDockWidget*>("sugar")->isHidden());
    next.layOutAfresh();
    EXPECT_EQ(next.dockWidgetArea(next.findChild<QDockWidget*>("texture")), Qt::RightDockWidgetArea);
    EXPECT_FALSE(next.findChild<QDockWidget*>("sugar")->isHidden());
    next.close();
}

TEST_F(Window, PanelThatIsSwitchedOnComesToTheFront)
{
    for (const char* name : {"notes", "keys"}) {
        ASSERT_TRUE(dock(name)->isHidden());
        dock(name)->toggleViewAction()->trigger();
        QApplication::processEvents();
        EXPECT_FALSE(dock(name)->visibleRegion().isEmpty()) << name;
    }
}

TEST_F(Window, RibbonsGiveWayToNamesInANarrowTable)
{
    const int usual = table.columnWidth(IngredientModel::CompositionColumn);
    window.resize(1000, 700);
    QApplication::processEvents();
    EXPECT_LT(table.columnWidth(IngredientModel::CompositionColumn), usual);
    EXPECT_GE(table.columnWidth(IngredientModel::CompositionColumn), 80);
    EXPECT_GE(table.columnWidth(IngredientModel::IngredientColumn), table.columnWidth(IngredientModel::CompositionColumn));
    window.resize(1366, 768);
    QApplication::processEvents();
    EXPECT_EQ(table.columnWidth(IngredientModel::CompositionColumn), usual);
}

TEST_F(Window, MarkerDragIsOneStepAndPartOfTheRecipe)
{
    lay("250 g water\n60 g sugar");
    auto* chart = window.findChild<FreezingChart*>();
    for (const double temperature_c : {-11.0, -10.0, -9.0})
        emit chart->servingChosen(temperature_c);
    emit chart->markerReleased();
    emit chart->freezerChosen(-22.0);
    emit chart->markerReleased();
    EXPECT_EQ(recipe().serveAt_c, -9.0);
    EXPECT_EQ(recipe().freezerAt_c, -22.0);
    EXPECT_EQ(history().count(), 2);
}

TEST_F(Window, ReadingTemperatureIsAViewOfTheSameRecipe)
{
    lay("250 g water\n60 g sugar");
    emit window.findChild<ReadingsPanel*>()->readAtChosen(30.0);
    EXPECT_EQ(window.document().analysis().readings->temperature.value, 30.0);
    EXPECT_EQ(history().count(), 0);
}

TEST_F(Window, GaugesFollowAnEdit)
{
    lay("75 g water\n25 g sucrose");
    auto* scale = window.findChild<SugarScale*>();
    EXPECT_TRUE(scale->valueText().startsWith("25.0\u202f% sugars by mass; a refractometer reads 25.0"))
        << scale->valueText().toStdString();
    changeAmount(window.document(), {0, 1}, {50, Unit::Gram});  // in 125 g
    EXPECT_TRUE(scale->valueText().startsWith("40.0\u202f% sugars by mass; a refractometer reads 40.0"))
        << scale->valueText().toStdString();
}

TEST_F(Window, ComponentsAreTabsOnceThereAreTwo)
{
    lay("250 g water");
    auto* tabs = window.findChild<QTabBar*>("components");
    EXPECT_FALSE(tabs->isVisible());
    addComponent(window.document(), "salt & cream");
    EXPECT_TRUE(tabs->isVisible());
    EXPECT_EQ(tabs->tabText(1), "salt && cream");
    tabs->setCurrentIndex(1);
    EXPECT_EQ(table.rows().rowCount(), 1);
    type("100 g cream");
    press(Qt::Key_Return);
    EXPECT_EQ(recipe().components.at(1).rows.size(), 1U);
    history().undo();
    history().undo();
    EXPECT_EQ(table.rows().component(), 0U);
    EXPECT_EQ(table.rows().rowCount(), 2);
}

TEST_F(Window, UndoBringsTheComponentThatItChangesIntoView)
{
    lay("250 g water");
    addComponent(window.document(), "cream");
    insertRows(window.document(), {1, 0}, {{"cream", {100, Unit::Gram}, {}, {}}});
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(table.rows().component(), 1U);
    EXPECT_EQ(window.findChild<QTabBar*>("components")->currentIndex(), 1);
}

TEST_F(Window, GaugesAreAboutTheComponentInView)
{
    lay("750 g water\n250 g sugar");
    addComponent(window.document(), "cream");
    insertRows(window.document(), {1, 0}, {{"heavy cream", {100, Unit::Gram}, {}, {}}});
    auto* tabs = window.findChild<QTabBar*>("components");
    tabs->setCurrentIndex(0);
    EXPECT_DOUBLE_EQ(window.document().analysis().mass.value, 1000.0);
    tabs->setCurrentIndex(1);
    EXPECT_NEAR(window.document().analysis().mass.value, 100.0, 1.0);
    EXPECT_GT(percent(window.document().analysis().shares.fat), 30.0);
    window.document().undoStack().undo();
    window.document().undoStack().undo();  // the component is gone
    EXPECT_DOUBLE_EQ(window.document().analysis().mass.value, 1000.0);
}

TEST_F(Window, TitleNamesFileAndUnsavedChanges)
{
    EXPECT_EQ(window.windowTitle(), "Untitled[*] – Firn");
    changeTitle(window.document(), "Pear [*] perry");
    EXPECT_EQ(window.windowTitle(), "Pear [*][*] perry[*] – Firn");
    EXPECT_TRUE(window.isWindowModified());
}

TEST(TypedNumbers, TemperaturesHaveEitherMarkSignAndUnit)
{
    using enum TemperatureUnit;
    EXPECT_EQ(temperatureFromText("-12", Celsius)->value, -12.0);
    EXPECT_EQ(temperatureFromText(" −8,5 °C ", Celsius)->value, -8.5);
    EXPECT_EQ(temperatureFromText("+4.5C", Fahrenheit)->value, 4.5);
    EXPECT_EQ(temperatureFromText("60", Celsius)->value, 60.0);
    EXPECT_NEAR(temperatureFromText("12 F", Celsius)->value, -100.0 / 9.0, 1e-12);
    for (const char* text : {"", "-", "cold", "--5", "12 K", "60.1", "-61", "nan", "inf", "1e400", "141 F"})
        EXPECT_FALSE(temperatureFromText(text, Celsius)) << text;
}

TEST(TypedNumbers, OverrunIsAPercentage)
{
    EXPECT_EQ(*overrunFromText("25"), 25.0);
    EXPECT_EQ(*overrunFromText("32,5 %"), 32.5);
    for (const char* text : {"", "-5", "much", "301", "5 g"})
        EXPECT_FALSE(overrunFromText(text)) << text;
}

}  // namespace
}  // namespace firn::app
