// The texture panel opens the reasons for the class; and what is not frozen has no freezing gauges.
#include "gauges/class_window.h"
#include "gauges/curve_view.h"
#include "gauges/figure_button.h"
#include "gauges/figures_panel.h"
#include "gauges/freezing_chart.h"
#include "gauges/marked_lines.h"
#include "gauges/palette.h"
#include "gauges/sugar_ice_picture.h"
#include "gauges/sugar_scale.h"
#include "gauges/temperature_marker.h"
#include "gauges/texture_panel.h"
#include "texture/serving.h"

#include "../shipped_catalogue.h"

#include <QImage>
#include <QSignalSpy>
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
    EXPECT_TRUE(picture->accessibleDescription().contains(QStringLiteral("Usual for granita: 20 to 26\u202f% (unverified)")));

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

/// Columns of the plot in which a pixel has the colour of curves.
int columnsWithCurve(const QWidget& picture)
{
    const QImage drawn = const_cast<QWidget&>(picture).grab().toImage();
    const QColor curve = coloursInWindow(picture.palette()).curve;
    int columns = 0;
    for (int x = 0; x < drawn.width(); ++x) {
        bool isCrossed = false;
        for (int y = 0; y < drawn.height() * 2 / 3; ++y) {  // brackets of the same colour lie below
            const QColor pixel = drawn.pixelColor(x, y);
            isCrossed = isCrossed
                        || (std::abs(pixel.red() - curve.red()) < 24 && std::abs(pixel.green() - curve.green()) < 24
                            && std::abs(pixel.blue() - curve.blue()) < 24);
        }
        columns += isCrossed ? 1 : 0;
    }
    return columns;
}

// It had bands and a point, but no line: a path that has only been moved to is still empty.
TEST(SugarIcePicture, DrawsItsCurveFromSideToSide)
{
    for (const QSize size : {QSize(600, 420), QSize(200, 130)}) {
        SugarIcePicture picture;
        picture.resize(size);
        picture.showCurve(sugarIceCurve(granita().texture.mix, TextureClass::Granita, usualServing(Process::Scraped)));
        EXPECT_GT(columnsWithCurve(picture), size.width() / 2) << size.width();
    }
}

SugarIcePicture* pictureOf(const TexturePanel& panel) { return panel.findChild<SugarIcePicture*>(); }

// Why 20 to 26, why 30 to 36: the picture stands in the panel itself (T9).
TEST(TexturePanel, HasThePictureOfTheBandsBesideItsLines)
{
    TexturePanel panel;
    panel.resize(panel.minimumSizeHint());
    panel.show(granita());
    panel.QWidget::show();
    const SugarIcePicture* picture = pictureOf(panel);
    ASSERT_TRUE(picture && picture->isVisible());
    const auto* lines = panel.findChild<MarkedLines*>();
    EXPECT_TRUE(panel.rect().contains(picture->geometry()));
    EXPECT_FALSE(picture->geometry().intersects(lines->geometry()));
    EXPECT_GT(picture->height(), 5 * panel.fontMetrics().height());
    EXPECT_GT(lines->width(), panel.width() / 3);
    EXPECT_GT(columnsWithCurve(*picture), picture->width() / 2);

    // Nothing to see where nothing freezes or nothing is sweet.
    for (const Analysis& without : {cream(), analysed({{"water", 1000}}, Process::Churned),
             analysed({{"water", 300}, {"sucrose", 700}}, Process::Churned), Analysis{}}) {
        panel.show(without);
        EXPECT_FALSE(picture->isVisible());
        EXPECT_EQ(lines->width(), panel.width());
    }
    panel.show(granita());
    EXPECT_TRUE(picture->isVisible()) << "it comes back";
}

TEST(TexturePanel, ThePictureOpensItsDerivationByMouseAndByKey)
{
    TexturePanel panel;
    panel.resize(panel.sizeHint());
    panel.show(granita());
    panel.QWidget::show();
    QSignalSpy chosen(&panel, &Gauge::figureChosen);
    auto* button = panel.findChild<FigureButton*>(QStringLiteral("sugarIce"));
    ASSERT_TRUE(button && button->isVisible());
    EXPECT_EQ(button->size(), pictureOf(panel)->size());
    EXPECT_TRUE(button->focusPolicy() & Qt::TabFocus);
    QTest::mouseClick(button, Qt::LeftButton);
    QTest::keyClick(button, Qt::Key_Space);
    QTest::keyClick(button, Qt::Key_Return);
    ASSERT_EQ(chosen.size(), 3);
    for (const auto& each : chosen)
        EXPECT_EQ(each.front().toString(), QStringLiteral("texture.ice_percent_at_serving"));
    for (const char* band : {"20 to 26\u202f%", "30 to 36\u202f%"})
        EXPECT_TRUE(button->accessibleDescription().contains(QString::fromUtf8(band))) << "a screen reader says what it shows";
}

TEST(TexturePanel, SaysWhereAMixLiesThatHasLeftItsBand)
{
    const auto said = [](double water, double sugar, Process process) {
        TexturePanel panel;
        panel.show(analysed({{"water", water}, {"sucrose", sugar}}, process));
        return panel.valueText();
    };
    EXPECT_TRUE(said(720, 280, Process::Churned)
                    .contains(QStringLiteral("between granita (20 to 26\u202f%) and sorbet (30 to 36\u202f%)")));
    EXPECT_TRUE(said(680, 320, Process::Scraped).contains(QStringLiteral("usual for sorbet (30 to 36\u202f%)")));
    // Of this mix first, then of its kind in general: the panel may be too low for all lines.
    const QString text = said(720, 280, Process::Churned);
    EXPECT_LT(text.indexOf(QStringLiteral("between granita")), text.indexOf(QStringLiteral("Churned:")));
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

TEST(SugarScale, SaysWhereItsBandsAreFrom)
{
    const SugarScale scale;
    for (const TradeBand& band : tradeBands()) {
        EXPECT_TRUE(scale.toolTip().contains(QString::fromUtf8(band.source.data(), qsizetype(band.source.size()))));
        EXPECT_TRUE(scale.toolTip().contains(QString::fromUtf8(nameOf(band.textureClass).data())));
    }
    EXPECT_TRUE(scale.toolTip().contains(QStringLiteral("Usual for granita: 20 to 26\u202f% (unverified)")))
        << scale.toolTip().toStdString();
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
