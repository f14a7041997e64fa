// The texture panel opens the reasons for the class; and what is not frozen has no freezing gauges.
#include "gauges/class_window.h"
#include "gauges/curve_view.h"
#include "gauges/figure_button.h"
#include "gauges/figures_panel.h"
#include "gauges/freezing_chart.h"
#include "gauges/marked_lines.h"
#include "gauges/sugar_ice_picture.h"
#include "gauges/sugar_scale.h"
#include "gauges/temperature_marker.h"
#include "gauges/texture_panel.h"
#include "texture/serving.h"

#include "../shipped_catalogue.h"

#include <QImage>
#include <QTest>
#include <gtest/gtest.h>

namespace firn::app {

namespace {

Analysis analysed(std::vector<std::pair<std::string, double>> rows, Process process)
{
    Recipe recipe;
    recipe.process = process;
    for (const auto& [ingredient, grams] : rows)
        recipe.components.front().rows.push_back({ingredient, {grams, Unit::Gram}, {}, {}});
    return analyse(recipe, shippedCatalogue(), conditionsOf(recipe), 0);
}

Analysis granita() { return analysed({{"water", 760}, {"sucrose", 240}}, Process::Scraped); }
Analysis cream() { return analysed({{"heavy cream", 300}, {"sucrose", 20}}, Process::Unfrozen); }

ClassWindow* classWindowOf(const TexturePanel& panel) { return panel.window()->findChild<ClassWindow*>(); }

TEST(TexturePanel, ItsClassOpensTheReasonsForIt)
{
    TexturePanel panel;
    panel.resize(420, 160);
    panel.show(granita());
    panel.QWidget::show();
    auto* why = panel.findChild<FigureButton*>(QStringLiteral("why"));
    ASSERT_TRUE(why && why->isVisible());
    EXPECT_EQ(why->accessibleName(), QStringLiteral("Granita"));
    QTest::mouseClick(why, Qt::LeftButton);
    ClassWindow* window = classWindowOf(panel);
    ASSERT_TRUE(window && window->isVisible());
    EXPECT_TRUE(window->windowTitle().contains(QStringLiteral("granita")));
    const auto lines = window->findChildren<MarkedLines*>();
    ASSERT_FALSE(lines.isEmpty());
    EXPECT_TRUE(lines.front()->spokenText().contains(QStringLiteral("Scraped as it freezes")));
    const auto* picture = window->findChild<SugarIcePicture*>();
    EXPECT_TRUE(picture->isVisible());
    EXPECT_TRUE(picture->accessibleDescription().contains(QStringLiteral("granita of common practice")));

    // It follows the recipe while it is open.
    panel.show(analysed({{"water", 640}, {"sucrose", 360}}, Process::Churned));
    EXPECT_TRUE(window->windowTitle().contains(QStringLiteral("sorbet")));
    QTest::keyClick(window, Qt::Key_Escape);
    EXPECT_FALSE(window->isVisible());
}

TEST(TexturePanel, ThePictureDrawsTheBandsAndTheMix)
{
    SugarIcePicture picture;
    picture.resize(600, 420);
    picture.showCurve(sugarIceCurve(granita().texture.mix, TextureClass::Granita, usualServing(Process::Scraped)));
    const QImage drawn = picture.grab().toImage();
    SugarIcePicture empty;
    empty.resize(600, 420);
    const QImage blank = empty.grab().toImage();
    EXPECT_NE(drawn, blank);
    picture.showCurve(sugarIceCurve(granita().texture.mix, TextureClass::Granita, {-16.0}));
    EXPECT_NE(picture.grab().toImage(), drawn) << "another serving temperature is another curve";
}

TEST(NotFrozen, HasNoFreezingGauges)
{
    TexturePanel panel;
    panel.show(cream());
    EXPECT_EQ(panel.valueText().trimmed(), QStringLiteral("Not frozen"));
    EXPECT_FALSE(panel.findChild<FigureButton*>(QStringLiteral("why"))->isVisibleTo(&panel));

    FreezingChart chart;
    chart.resize(400, 260);
    chart.show(cream());
    EXPECT_EQ(chart.valueText(), QStringLiteral("Not frozen"));
    for (const TemperatureMarker* marker : chart.findChildren<TemperatureMarker*>())
        EXPECT_FALSE(marker->isVisibleTo(&chart));
    EXPECT_FALSE(chart.buttonOf(QStringLiteral("freezing_point_c")));
    chart.show(granita());
    EXPECT_TRUE(chart.valueText().contains(QStringLiteral("Begins to freeze")));
    for (const TemperatureMarker* marker : chart.findChildren<TemperatureMarker*>())
        EXPECT_TRUE(marker->isVisibleTo(&chart)) << "they come back";

    FiguresPanel figures;
    figures.show(cream());
    EXPECT_FALSE(figures.valueText().contains(QStringLiteral("freezing point")));
    EXPECT_TRUE(figures.valueText().contains(QStringLiteral("sugars")));
}

TEST(SugarScale, MarksWhatTheBandCounts)
{
    SugarScale scale;
    scale.resize(460, 100);
    const Analysis iceCream =
        analysed({{"whole milk", 550}, {"heavy cream", 220}, {"skim milk powder", 40}, {"sucrose", 170}}, Process::Churned);
    ASSERT_EQ(iceCream.texture.textureClass, TextureClass::IceCream);
    scale.show(iceCream);
    const QImage withMilk = scale.grab().toImage();
    Analysis plain = iceCream;
    plain.texture.mix.milkSolidsNotFat = {0.0};
    scale.show(plain);
    EXPECT_NE(scale.grab().toImage(), withMilk) << "the added sugars have a mark of their own";
}

}  // namespace

}  // namespace firn::app
