// Every figure that the bench shows opens to its derivation, by mouse and by key, and the derivation ends with what the gauge says.
#include "bench.h"
#include "document/built_in.h"
#include "gauges/figure_button.h"
#include "gauges/figures_panel.h"
#include "gauges/freezing_chart.h"
#include "gauges/readings_panel.h"
#include "gauges/sugar_scale.h"
#include "gauges/temperature_marker.h"
#include "gauges/texture_panel.h"
#include "gauges/wording.h"
#include "teach/derivation_window.h"

#include <QAction>
#include <QApplication>
#include <QLabel>
#include <QMenu>
#include <QRegularExpression>
#include <QTest>
#include <QTreeWidget>

namespace firn::app {

namespace {

class Opening : public Bench {
protected:
    Opening()
    {
        window.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
        lay("500 g raspberries\n150 g sucrose\n30 g glucose\n200 g water\n40 g gin\n100 g whole milk");
    }

    DerivationWindow& derivations = *window.findChild<DerivationWindow*>();
    FreezingChart& chart = *window.findChild<FreezingChart*>();
    TemperatureMarker& serving = *chart.findChild<TemperatureMarker*>(QStringLiteral("servingMarker"));
    TemperatureMarker& freezer = *chart.findChild<TemperatureMarker*>(QStringLiteral("freezerMarker"));

    QString value() const
    {
        const auto* label = derivations.findChild<QLabel*>(QStringLiteral("value"));
        return label ? label->text() : QString();
    }
    /// A place on the marker's foot, in its own pixels.
    static QPoint footOf(const TemperatureMarker& marker)
    {
        QRect widest;
        for (const QRect& rect : marker.mask().intersected(QRect(0, marker.height() - 4, marker.width(), 1)))
            widest = rect.width() > widest.width() ? rect : widest;
        return widest.center();
    }
    const Analysis& analysis() { return window.document().analysis(); }
};

/// "26.1" is said by "26.1 ± 0.4 % sugars" and not by "126.12".
bool says(const QString& text, const QString& value)
{
    const QString number = value.section(QChar(0x202F), 0, 0);
    const QRegularExpression whole(QStringLiteral("(?<![\\d.])%1(?![\\d.]*\\d)").arg(QRegularExpression::escape(number)));
    return text.contains(whole);
}

}  // namespace

TEST_F(Opening, EveryFigureOfEveryGaugeOpensAndEndsWithWhatTheGaugeSays)
{
    std::size_t opened = 0;
    for (const Recipe& sample : builtInSamples()) {
        window.document().startWith(sample);
        for (const Gauge* gauge : window.findChildren<Gauge*>()) {
            if (derivations.isAncestorOf(gauge))
                continue;
            for (FigureButton* button : gauge->findChildren<FigureButton*>()) {
                if (button->isHidden() || button->objectName() == "why")  // the class, which opens its reasons
                    continue;
                const QString figure = button->figure(), said = button->accessibleName();
                QTest::mouseClick(button, Qt::LeftButton);
                ASSERT_EQ(derivations.figure(), figure);
                EXPECT_FALSE(value().isEmpty()) << figure.toStdString();
                EXPECT_TRUE(says(said, value()) || said.contains("sinks"))
                    << figure.toStdString() << ": " << said.toStdString() << " / " << value().toStdString();
                EXPECT_EQ(button->toolTip(), "Explain this number");
                EXPECT_EQ(button->cursor().shape(), Qt::PointingHandCursor);
                EXPECT_GE(std::min(button->width(), button->height()), 24) << figure.toStdString();
                ++opened;
            }
        }
    }
    EXPECT_GT(opened, 18 * builtInSamples().size());
}

TEST_F(Opening, EveryGaugeHasItsFigures)
{
    const auto has = [this](
                         const auto* gauge, const char* figure) { return gauge->buttonOf(QString::fromLatin1(figure)) != nullptr; };
    EXPECT_TRUE(has(&chart, "freezing_point_c"));
    const auto* texture = window.findChild<TexturePanel*>();
    for (const char* figure : {"texture.serving_window_c.warmest", "texture.serving_window_c.coldest"})
        EXPECT_TRUE(has(texture, figure)) << figure;
    EXPECT_TRUE(texture->findChild<FigureButton*>("why")->isVisibleTo(texture)) << "the class opens its reasons";
    const auto* readings = window.findChild<ReadingsPanel*>();
    for (const char* figure : {"instruments.refractometer_brix", "instruments.hydrometer_gravity", "instruments.hydrometer_brix",
             "instruments.hydrometer_baume", "readings.egg.exposed_width_mm"})
        EXPECT_TRUE(has(readings, figure)) << figure;
    QStringList inTexture;
    for (const FigureButton* button : texture->findChildren<FigureButton*>())
        inTexture << button->figure();
    EXPECT_TRUE(inTexture.contains("texture.ice_percent_at_serving"));
    window.document().startWith(Recipe{});
    for (const Gauge* gauge : window.findChildren<Gauge*>())
        EXPECT_FALSE(gauge->buttonOf("percent.sugars"));
}

TEST_F(Opening, ByKeyToo)
{
    auto* figures = window.findChild<FiguresPanel*>();
    FigureButton* mass = figures->buttonOf("mass_g");
    ASSERT_TRUE(mass);
    EXPECT_EQ(mass->focusPolicy(), Qt::TabFocus);
    EXPECT_EQ(figures->buttonOf("percent.sugars")->focusPolicy(), Qt::NoFocus) << "one stop for all";
    mass->setFocus(Qt::TabFocusReason);
    press(Qt::Key_Right);
    EXPECT_EQ(QApplication::focusWidget(), figures->buttonOf("volume_ml_20c"));
    press(Qt::Key_Space);
    EXPECT_EQ(derivations.figure(), "volume_ml_20c");
    derivations.close();
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    figures->buttonOf("volume_ml_20c")->setFocus();
    press(Qt::Key_Left);
    press(Qt::Key_E, Qt::ControlModifier);
    EXPECT_EQ(derivations.figure(), "mass_g");
}

TEST_F(Opening, ALabelOfAMarkerOpensWithoutAMoveAndIsDraggedWithOne)
{
    const double before_c = serving.temperature_c();
    QTest::mouseClick(&serving, Qt::LeftButton, {}, footOf(serving));
    EXPECT_EQ(derivations.figure(), "texture.ice_percent_at_serving");
    EXPECT_EQ(value(), percentText(analysis().texture.iceAtServing, 0));
    QTest::mouseClick(&freezer, Qt::LeftButton, {}, footOf(freezer));
    EXPECT_EQ(derivations.figure(), "texture.ice_percent_in_freezer");
    EXPECT_EQ(value(), percentText(analysis().texture.iceInFreezer, 0));
    EXPECT_EQ(serving.temperature_c(), before_c);
    derivations.close();

    const QPoint foot = footOf(serving);
    QTest::mousePress(&serving, Qt::LeftButton, {}, foot);
    QTest::mouseMove(&serving, foot + QPoint(40, 0));
    QTest::mouseMove(&serving, foot + QPoint(60, 0));
    QTest::mouseRelease(&serving, Qt::LeftButton, {}, foot + QPoint(60, 0));
    EXPECT_GT(serving.temperature_c(), before_c);
    EXPECT_EQ(analysis().conditions.serveAt.value, serving.temperature_c());
    EXPECT_FALSE(derivations.isVisible());
}

TEST_F(Opening, AMarkerOpensByKey)
{
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    freezer.setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(derivations.figure(), "texture.ice_percent_in_freezer");
    EXPECT_EQ(value(), percentText(analysis().texture.iceInFreezer, 0));
}

TEST_F(Opening, APointOfTheCurveOpensItsIce)
{
    const QRectF plot = chart.plotArea();
    const auto& steps = analysis().freezing.steps;
    std::size_t opened = 0;
    for (std::size_t i = 5; i < steps.size(); i += 6) {
        const QPoint at(qRound(plot.right() + steps[i].temperature.value * plot.width() / 30.0),
            qRound(plot.bottom() - steps[i].waterFrozen.value * plot.height()));
        if (qobject_cast<TemperatureMarker*>(chart.childAt(at)))
            continue;
        QTest::mouseClick(&chart, Qt::LeftButton, {}, at);
        EXPECT_EQ(derivations.figure(), QString("freezing_curve[%1].water_frozen_percent").arg(i));
        EXPECT_EQ(value(), percentText(steps[i].waterFrozen, 0));
        ++opened;
    }
    EXPECT_GT(opened, 4u);
    derivations.close();
    QTest::mouseClick(&chart, Qt::LeftButton, {}, QPoint(int(plot.right()) - 3, int(plot.top()) + 3));
    EXPECT_FALSE(derivations.isVisible());
}

TEST_F(Opening, ARowOpensItsGramsAndItsShare)
{
    for (const auto& [column, figure] :
        {std::pair(IngredientModel::GramsColumn, "rows[1].grams"), std::pair(IngredientModel::ShareColumn, "rows[1].share_percent"),
            std::pair(IngredientModel::IngredientColumn, "rows[1].grams")}) {
        window.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
        table.setFocus();
        goTo(1, column);
        press(Qt::Key_E, Qt::ControlModifier);
        EXPECT_EQ(derivations.figure(), figure);
        if (column != IngredientModel::IngredientColumn) {
            EXPECT_EQ(value(), textAt(1, column));
        }
        derivations.close();
    }
    QContextMenuEvent asked(QContextMenuEvent::Mouse, table.visualRect(cell(2, IngredientModel::ShareColumn)).center(),
        table.viewport()->mapToGlobal(table.visualRect(cell(2, IngredientModel::ShareColumn)).center()));
    QApplication::sendEvent(table.viewport(), &asked);
    auto* menu = table.findChild<QMenu*>();
    ASSERT_TRUE(menu);
    menu->actions().front()->trigger();
    menu->close();
    EXPECT_EQ(derivations.figure(), "rows[2].share_percent");
    EXPECT_EQ(value(), textAt(2, IngredientModel::ShareColumn));
}

TEST_F(Opening, OnTheBlankRowTheKeyOpensTheList)
{
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    table.setFocus();
    table.goToBlankRow();
    press(Qt::Key_E, Qt::ControlModifier);
    EXPECT_TRUE(derivations.isVisible());
    EXPECT_EQ(derivations.figure(), "percent.sugars");
}

TEST_F(Opening, NoTwoListedFiguresHaveOneTitle)
{
    for (const Recipe& sample : builtInSamples()) {
        window.document().startWith(sample);
        derivations.openList();
        const auto* list = derivations.findChild<QTreeWidget*>(QStringLiteral("allFigures"));
        std::map<QString, QString> keys;
        for (int i = 0; i < list->topLevelItemCount(); ++i) {
            const QString key = list->topLevelItem(i)->data(0, Qt::UserRole).toString(), title = list->topLevelItem(i)->text(0);
            EXPECT_TRUE(keys.emplace(title, key).second || key.startsWith("rows["))
                << title.toStdString() << ": " << key.toStdString() << " and " << keys[title].toStdString();
            EXPECT_FALSE(title.contains(QLatin1String("a_w")) || title.contains(QLatin1String("that much"))) << title.toStdString();
        }
        derivations.close();
    }
}

}  // namespace firn::app
