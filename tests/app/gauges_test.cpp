// The gauges show what an Analysis says, in the right place, to eyes, to a keyboard and to a screen reader.
#include "gauges/caution_strip.h"
#include "gauges/egg_picture.h"
#include "gauges/figures_panel.h"
#include "gauges/freezing_chart.h"
#include "gauges/label_row.h"
#include "gauges/marked_lines.h"
#include "gauges/readings_panel.h"
#include "gauges/ribbon.h"
#include "gauges/sugar_scale.h"
#include "gauges/temperature_marker.h"
#include "gauges/texture_panel.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include "locales.h"

#include <QAccessible>
#include <QApplication>
#include <QDoubleSpinBox>
#include <QMouseEvent>
#include <QPainter>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>
#include <set>

namespace firn::app {

namespace {

constexpr double onePixel = 1.0;

/// A made-up granita; round figures, so that places can be worked out in the head.
Analysis granita()
{
    Analysis analysis;
    analysis.mix.amounts[Constituent::Water].value = 740.0;
    analysis.mix.amounts[Constituent::Sucrose].value = 250.0;
    analysis.mix.amounts[Constituent::Acid].value = 10.0;
    analysis.ribbon = {MassFraction{0.74}, {0.25}, {0.0}, {0.0}, {0.0}, {0.0}, {0.01}};
    analysis.mass = {1000.0};
    analysis.water = {740.0};
    analysis.volume_20c = {905.0};
    analysis.shares.water = {0.74};
    analysis.shares.sugars = {0.25};
    analysis.shares.totalSolids = {0.26};
    analysis.sugarsUncertainty = {0.004};
    analysis.freezing.freezingPoint = FreezingPoint{{-2.0}};
    analysis.freezing.steps = {{{-2.0}, {0.0}, {0.0}}, {{-12.0}, {0.50}, {0.68}}, {{-30.0}, {0.60}, {0.81}, true}};
    analysis.texture.textureClass = TextureClass::Granita;
    analysis.texture.willFreeze = true;
    analysis.texture.servingWindow = TemperatureRange{{-8.0}, {-14.0}};
    analysis.texture.regions = {{{{0.0}, {-3.0}}, Firmness::Liquid}, {{{-3.0}, {-30.0}}, Firmness::Hard}};
    analysis.texture.reasons = {phrase("{0} % ice at {1} °C", Figure{50.0, 0}, Figure{-12.0, 0})};
    Readings readings;
    readings.temperature = {20.0};
    readings.refractometer_brix = 26.4;
    readings.specificGravity_20_20 = 1.109;
    readings.baume = 14.25;
    readings.egg = floatEgg(Egg{}, {1.107});
    analysis.readings = readings;
    const auto shows = [](double value, double sd) { return ScaleReading{OnScale::Yes, value, {{phrase("the eye"), sd}}}; };
    analysis.instruments = InstrumentReadings{{}, shows(26.4, 0.2), shows(25.6, 0.4), shows(1.109, 0.002), shows(14.25, 0.3)};
    return analysis;
}

Caution cautionAbout(const std::string& name) { return {Severity::Warning, phrase("{0} is not in the catalogue", name)}; }

QString spoken(QWidget& widget, QAccessible::Text kind)
{
    QAccessibleInterface* face = QAccessible::queryAccessibleInterface(&widget);
    return face ? face->text(kind) : QString();
}

QImage pictureOf(QWidget& widget) { return widget.grab().toImage().convertToFormat(QImage::Format_RGB32); }

int pixelsOf(const QImage& picture, const QColor& colour)
{
    int count = 0;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x)
            count += picture.pixelColor(x, y) == colour;
    return count;
}

/// Right edge of anything that is drawn.
int inkedWidth(const QImage& picture)
{
    const QRgb ground = picture.pixel(picture.width() - 1, picture.height() - 1);
    for (int x = picture.width() - 1; x >= 0; --x)
        for (int y = 0; y < picture.height(); ++y)
            if (picture.pixel(x, y) != ground)
                return x + 1;
    return 0;
}

QPalette darkPalette()
{
    QPalette palette;
    palette.setColor(QPalette::Window, QColor(0x16, 0x1C, 0x21));
    palette.setColor(QPalette::WindowText, QColor(0xE6, 0xED, 0xF1));
    return palette;
}

const QLocale english(QLocale::English, QLocale::UnitedKingdom);  // in the United States temperatures are in °F
const QLocale german(QLocale::German, QLocale::Germany);

/// The chart at a size at which the right-hand column has it.
class FreezingChartTest : public ::testing::Test {
protected:
    FreezingChartTest()
    {
        chart.resize(430, 230);
        chart.setVisible(true);
        chart.show(granita());
        serving = chart.findChild<TemperatureMarker*>(QStringLiteral("servingMarker"));
        freezer = chart.findChild<TemperatureMarker*>(QStringLiteral("freezerMarker"));
    }

    double xOf(double temperature_c) const
    {
        return chart.plotArea().left() + (temperature_c + 30.0) / 30.0 * chart.plotArea().width();
    }

    /// What a press takes hold of at this place of the chart.
    const QWidget* at(double x, double y) const { return chart.childAt(qRound(x), qRound(y)); }

    /// Where a marker can be taken hold of at the middle of its line.
    LabelSpan handleOf(const TemperatureMarker* marker) const
    {
        std::vector<int> places;
        for (int x = 0; x < chart.width(); ++x)
            if (at(x, chart.plotArea().center().y()) == marker)
                places.push_back(x);
        return places.empty() ? LabelSpan{} : LabelSpan{places.front() + 0.0, places.back() + 1.0 - places.front()};
    }

    double middleOf(const TemperatureMarker* marker) const { return handleOf(marker).left + 0.5 * handleOf(marker).width; }

    /// A mouse event at a place of the chart, sent to the marker, which moves under the mouse.
    static void mouse(QEvent::Type type, TemperatureMarker* marker, double x, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        const QPointF place = marker->mapFromParent(QPointF(x, 60.0));
        const auto button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
        QMouseEvent event(type, place, marker->mapToGlobal(place), button, Qt::LeftButton, modifiers);
        QApplication::sendEvent(marker, &event);
    }

    FreezingChart chart;
    TemperatureMarker* serving = nullptr;
    TemperatureMarker* freezer = nullptr;
};

}  // namespace

TEST(Wording, WritesNumbersByTheLocaleWithATrueMinus)
{
    const NumbersOf britain(english);
    EXPECT_EQ(degrees({-2.14}), QStringLiteral("−2.1\u202F°C"));
    EXPECT_EQ(degrees({-0.04}), QStringLiteral("0.0\u202F°C"));
    EXPECT_EQ(chosenDegrees({-12.0}), QStringLiteral("−12\u202F°C"));
    EXPECT_EQ(chosenDegrees({-12.5}), QStringLiteral("−12.5\u202F°C"));
    EXPECT_EQ(percentText({0.263}, MassFraction{0.004}), QStringLiteral("26.3 ± 0.4\u202F%"));
    EXPECT_EQ(percentText({0.263}, MassFraction{}), QStringLiteral("26.3\u202F%"));
    EXPECT_EQ(rangeInDegrees({{-9.0}, {-13.0}}).whole, QStringLiteral("−13 to −9\u202F°C"));
    EXPECT_EQ(rangeInDegrees({{-10.15}, {-18.4}}).whole, QStringLiteral("−18 to −11\u202F°C")) << "at -10 °C it would be too soft";
    EXPECT_EQ(rangeInDegrees({{-10.15}, {-11.28}}).whole, QStringLiteral("−11.2 to −10.2\u202F°C"));
    const NumbersOf germany(german);
    EXPECT_EQ(percentText({0.263}), QStringLiteral("26,3\u202F%"));
}

TEST(Wording, PutsValuesIntoASentenceOnceAndAsTheyAre)
{
    const NumbersOf britain(english);
    EXPECT_EQ(
        translated(phrase("{0} and {1}", std::string("<b>{1}</b>"), Figure{-2.06, 1})), QStringLiteral("<b>{1}</b> and −2.1"));
    EXPECT_EQ(translated(phrase("{0} % at {1} °C", Figure{5.0, 0}, std::string("1 %"))), QStringLiteral("5\u202F% at 1 %\u202F°C"));
    EXPECT_EQ(translated(phrase("braces {x} and {7} stay")), QStringLiteral("braces {x} and {7} stay"));
}

TEST(Palette, RegionsGetDarkerFromLiquidToBlock)
{
    for (const QPalette& palette : {QPalette(Qt::white), darkPalette()}) {
        const GaugeColours colours = gaugeColours(palette);
        for (auto firmness = Firmness::Slush; firmness <= Firmness::Block;
             firmness = static_cast<Firmness>(static_cast<int>(firmness) + 1)) {
            const auto softer = static_cast<Firmness>(static_cast<int>(firmness) - 1);
            EXPECT_LT(regionColour(firmness, colours).lightnessF(), regionColour(softer, colours).lightnessF());
        }
    }
}

TEST(Palette, DarkWindowsGetTheDarkSet)
{
    EXPECT_EQ(colourOf(RibbonPart::Water, QPalette(Qt::white)), QColor(0xBF, 0xDC, 0xE6));
    EXPECT_EQ(colourOf(RibbonPart::Water, darkPalette()), QColor(0x2F, 0x6F, 0x8F));
}

TEST(Ribbon, PartsAreAsWideAsTheirShareAndNoneIsLost)
{
    const QPalette palette(Qt::white);
    QImage picture(200, 10, QImage::Format_RGB32);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    paintRibbon(painter, picture.rect(), {MassFraction{0.699}, {0.298}, {0.0}, {0.0}, {0.0}, {0.003}, {0.0}}, palette);
    painter.end();
    const int rows = picture.height() - 2;  // without the hairline around it
    EXPECT_NEAR(pixelsOf(picture, colourOf(RibbonPart::Sugars, palette)) / rows, 0.298 * 200, onePixel);
    EXPECT_EQ(pixelsOf(picture, colourOf(RibbonPart::Fat, palette)), 0);

    picture.fill(Qt::white);
    painter.begin(&picture);
    paintRibbon(painter, picture.rect(), {MassFraction{0.7}, {0.298}, {0.0}, {0.0}, {0.001}, {0.0}, {0.001}}, palette);
    painter.end();
    EXPECT_GE(pixelsOf(picture, colourOf(RibbonPart::FibreAndOther, palette)), rows);
}

TEST(Ribbon, NamesOnlyWhatIsThere)
{
    const NumbersOf britain(english);
    EXPECT_EQ(ribbonText(granita().ribbon), QStringLiteral("water 74.0\u202F%, sugars 25.0\u202F%, salt and acid 1.0\u202F%"));
    EXPECT_EQ(ribbonText(Ribbon{}), QString());
}

TEST(LabelRow, LabelsNeitherTouchNorLeaveTheRow)
{
    std::vector<LabelSpan> labels{{-20.0, 60.0}, {30.0, 60.0}, {31.0, 60.0}, {270.0, 60.0}};
    spreadApart(labels, 0.0, 300.0, 4.0);
    EXPECT_GE(labels.front().left, 0.0);
    EXPECT_LE(labels.back().right(), 300.0);
    for (std::size_t i = 1; i < labels.size(); ++i)
        EXPECT_GE(labels[i].left, labels[i - 1].right() + 4.0 - 1e-9);
}

TEST(SugarScale, NeedleStandsAtTheShareOfSugars)
{
    SugarScale scale;
    scale.resize(430, 96);
    scale.show(granita());
    EXPECT_NEAR(scale.needleTip().x(), scale.scale().center().x(), 0.01);  // 25 of 0 to 50 %
    const QImage picture = pictureOf(scale);
    const QPoint inNeedle(qRound(scale.needleTip().x()), qRound(scale.needleTip().y()) - 4);
    EXPECT_EQ(picture.pixelColor(inNeedle), gaugeColours(scale.palette()).ink);
}

TEST(SugarScale, MoreSugarThanTheScaleHasLeavesTheNeedleAtItsEnd)
{
    const NumbersOf britain(english);
    SugarScale scale;
    scale.resize(430, 96);
    Analysis syrup = granita();
    syrup.shares.sugars = {0.67};
    scale.show(syrup);
    EXPECT_NEAR(scale.needleTip().x(), scale.scale().right(), 0.01);
    EXPECT_TRUE(scale.valueText().contains(QStringLiteral("67.0")));
}

TEST(SugarScale, OnlyTheBandOfTheMixsOwnKindStandsOut)
{
    SugarScale scale;
    scale.resize(430, 96);
    Analysis analysis = granita();
    analysis.instruments.reset();  // whose tick has the same colour
    const QColor colour = gaugeColours(scale.palette()).curve;
    const auto lit = [&](TextureClass textureClass, double sugars) {
        analysis.texture.textureClass = textureClass;
        analysis.shares.sugars = {sugars};
        scale.show(analysis);
        return pixelsOf(pictureOf(scale), colour);
    };
    EXPECT_EQ(lit(TextureClass::StillFrozenIce, 0.18), 0);  // within the bands of ice cream and semifreddo
    EXPECT_GT(lit(TextureClass::Granita, 0.18), 0);
    EXPECT_GT(lit(TextureClass::Granita, 0.22), 0);
}

TEST_F(FreezingChartTest, MarkersStandAtTheirTemperaturesAndAreLargeEnoughToGrab)
{
    EXPECT_NEAR(middleOf(serving), xOf(-12.0), onePixel);
    EXPECT_NEAR(middleOf(freezer), xOf(-18.0), onePixel);
    EXPECT_GE(handleOf(serving).width, 24.0);
}

TEST_F(FreezingChartTest, PressingALabelTakesHoldOfItsMarker)
{
    Analysis close = granita();
    close.conditions.freezerAt = {-18.0};
    close.conditions.serveAt = {-17.0};
    chart.show(close);
    const double between = xOf(-17.5), foot = chart.height() - 8.0, head = 1.5 * QFontMetrics(chart.font()).height();
    // The labels stand aside of each other, farther than the lines are apart, and cover a part of the other's line.
    for (const double y : {foot, head}) {
        EXPECT_EQ(at(between - 40.0, y), freezer);
        EXPECT_EQ(at(between - 8.0, y), freezer);
        EXPECT_EQ(at(between + 8.0, y), serving);
        EXPECT_EQ(at(between + 40.0, y), serving);
    }
}

TEST_F(FreezingChartTest, DraggingAMarkerTellsTheTemperatureUnderTheMouse)
{
    QSignalSpy chosen(&chart, &FreezingChart::servingChosen), released(&chart, &FreezingChart::markerReleased);
    mouse(QEvent::MouseButtonPress, serving, xOf(-12.0) + 5.0);  // where one grabs it must not matter
    mouse(QEvent::MouseMove, serving, xOf(-9.1) + 5.0);
    ASSERT_EQ(chosen.size(), 1);
    EXPECT_DOUBLE_EQ(chosen.last().first().toDouble(), -9.0);
    mouse(QEvent::MouseMove, serving, xOf(-7.3) + 5.0, Qt::ShiftModifier);
    EXPECT_NEAR(chosen.last().first().toDouble(), -7.3, 1e-9);
    mouse(QEvent::MouseMove, serving, xOf(9.0));
    EXPECT_DOUBLE_EQ(chosen.last().first().toDouble(), 0.0);
    EXPECT_EQ(released.size(), 0);
    mouse(QEvent::MouseButtonRelease, serving, xOf(9.0));
    EXPECT_EQ(released.size(), 1);
    EXPECT_NEAR(middleOf(serving), xOf(0.0), onePixel);
}

TEST_F(FreezingChartTest, EscapePutsADraggedMarkerBack)
{
    QSignalSpy chosen(&chart, &FreezingChart::freezerChosen), released(&chart, &FreezingChart::markerReleased);
    mouse(QEvent::MouseButtonPress, freezer, xOf(-18.0));
    mouse(QEvent::MouseMove, freezer, xOf(-25.0));
    QTest::keyClick(freezer, Qt::Key_Escape);
    EXPECT_DOUBLE_EQ(chosen.last().first().toDouble(), -18.0);
    EXPECT_EQ(released.size(), 1);
    mouse(QEvent::MouseMove, freezer, xOf(-25.0));
    EXPECT_DOUBLE_EQ(freezer->temperature_c(), -18.0);
}

TEST_F(FreezingChartTest, ArrowKeysMoveAMarkerByHalvesAndTenths)
{
    QSignalSpy chosen(&chart, &FreezingChart::servingChosen), released(&chart, &FreezingChart::markerReleased);
    QTest::keyClick(serving, Qt::Key_Left);
    EXPECT_NEAR(chosen.last().first().toDouble(), -12.5, 1e-9);
    QTest::keyClick(serving, Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_NEAR(chosen.last().first().toDouble(), -12.4, 1e-9);
    EXPECT_EQ(released.size(), 2);
    EXPECT_TRUE(serving->focusPolicy() & Qt::TabFocus);
}

TEST_F(FreezingChartTest, ShowingAnAnalysisMovesMarkersWithoutChoosing)
{
    const NumbersOf britain(english);
    QSignalSpy chosen(&chart, &FreezingChart::servingChosen);
    Analysis warmer = granita();
    warmer.conditions.serveAt = {-6.0};
    chart.show(warmer);
    EXPECT_NEAR(middleOf(serving), xOf(-6.0), onePixel);
    EXPECT_EQ(chosen.size(), 0);
    EXPECT_TRUE(chart.valueText().contains(QStringLiteral("−2.0\u202F°C"))) << chart.valueText().toStdString();
}

TEST_F(FreezingChartTest, ADarkPaletteDarkensTheWholeChart)
{
    const QImage light = pictureOf(chart);
    chart.setPalette(darkPalette());
    const QImage dark = pictureOf(chart);
    const QPoint corner(1, chart.height() - 2), inLiquid(qRound(xOf(-0.5)), qRound(chart.plotArea().top()) + 10);
    EXPECT_EQ(dark.pixelColor(corner), darkPalette().color(QPalette::Window));
    EXPECT_EQ(dark.pixelColor(inLiquid), regionColour(Firmness::Liquid, gaugeColours(darkPalette())));
    EXPECT_GT(light.pixelColor(corner).lightness(), 128);
    EXPECT_GT(pixelsOf(dark, gaugeColours(darkPalette()).curve), 100);
}

TEST(EggPicture, PatchIsToScaleAndLiesOnTheOutline)
{
    const QApplication* const app = qApp;
    for (const double density : {1.09, 1.12, 1.18, 1.32}) {
        const EggFloat egg = floatEgg(Egg{}, {density});
        ASSERT_TRUE(egg.floats);
        for (const QRectF& place : {QRectF(0, 0, 143, 96), QRectF(0, 0, 260, 240)}) {
            const EggPicture picture = eggPicture(egg, place, QFontMetrics(app->font()));
            const double scale = picture.pixelsPerMillimetre;
            EXPECT_NEAR(picture.patch.length() / scale, egg.exposedWidth.value, 1e-6);
            EXPECT_NEAR(picture.scaleBar.length() / scale, 20.0, 1e-6);
            EXPECT_NEAR(picture.egg.boundingRect().width() / scale, egg.breadth.value, 0.05);
            EXPECT_NEAR(picture.egg.boundingRect().height() / scale, egg.length.value, 0.05);
            // 0.4 px: a path is made of curves that are not quite ellipses.
            EXPECT_TRUE(picture.egg.contains(picture.patch.p1() + QPointF(0.4, 0)));
            EXPECT_FALSE(picture.egg.contains(picture.patch.p1() - QPointF(0.4, 0)));
            EXPECT_TRUE(place.contains(picture.egg.boundingRect()));
            EXPECT_LT(picture.egg.boundingRect().bottom(), picture.glass.bottom());
        }
    }
}

TEST(EggPicture, AnEggThatSinksLiesOnTheBottomUnderTheSurface)
{
    const EggFloat egg = floatEgg(Egg{}, {1.02});
    const EggPicture picture = eggPicture(egg, QRectF(0, 0, 143, 96), QFontMetrics(qApp->font()));
    EXPECT_NEAR(picture.egg.boundingRect().bottom(), picture.glass.bottom(), 0.01);
    EXPECT_GT(picture.egg.boundingRect().top(), picture.surface);
    EXPECT_GT(picture.egg.boundingRect().width(), picture.egg.boundingRect().height());
    EXPECT_EQ(picture.patch.length(), 0.0);
}

TEST(ReadingsPanel, TellsATemperatureOnlyWhenAPersonChoosesIt)
{
    ReadingsPanel panel;
    QSignalSpy chosen(&panel, &ReadingsPanel::readAtChosen);
    Analysis cold = granita();
    cold.conditions.readAt = {4.0};
    panel.show(cold);
    auto* spin = panel.findChild<QDoubleSpinBox*>();
    EXPECT_EQ(spin->value(), 4);
    EXPECT_EQ(chosen.size(), 0);
    spin->setValue(25);
    ASSERT_EQ(chosen.size(), 1);
    EXPECT_DOUBLE_EQ(chosen.first().first().toDouble(), 25.0);
}

TEST(ReadingsPanel, SaysWhatEachInstrumentShows)
{
    const NumbersOf britain(english);
    ReadingsPanel panel;
    panel.show(granita());
    const QString eggWidth = millimetresText(granita().readings->egg.exposedWidth);
    const auto band = [](const char* figures, const QString& unit) { return withUnit(QString::fromUtf8(figures), unit); };
    for (const QString& part : {band("26.4 ± 0.2", QStringLiteral("°Bx")), QStringLiteral("1.109 ± 0.002"),
             band("25.6 ± 0.4", QStringLiteral("°Bx")), band("14.3 ± 0.3", QStringLiteral("°Bé")), eggWidth})
        EXPECT_TRUE(panel.valueText().contains(part)) << part.toStdString();
    Analysis dark = granita();
    dark.instruments->brix = {OnScale::Above, {}, {}};
    panel.show(dark);
    EXPECT_TRUE(panel.valueText().contains(QStringLiteral("off the scale")));
}

TEST(ReadingsPanel, PicturesMakeRoomForWhatDisturbsTheReadings)
{
    ReadingsPanel panel;
    panel.resize(420, 15 * QFontMetrics(panel.font()).height());
    Analysis analysis = granita();
    analysis.readings->disturbances = {phrase("Alcohol: it bends light like sugar and lightens the mix. Without it the "
                                              "refractometer would show less, and the hydrometer reads too little sugar.")};
    panel.show(analysis);
    const auto* lines = panel.findChild<MarkedLines*>();
    EXPECT_GE(lines->height(), lines->topsFor(lines->width()).back() - gridStep);
}

TEST(CautionStrip, NamesFromAFileAreNeverMarkup)
{
    CautionStrip strip;
    strip.resize(600, 60);
    Analysis analysis = granita();
    analysis.cautions = {cautionAbout("x")};
    strip.show(analysis);
    const int plainWidth = inkedWidth(pictureOf(strip));
    analysis.cautions = {cautionAbout("<b>x</b>")};
    strip.show(analysis);
    EXPECT_TRUE(strip.valueText().contains(QStringLiteral("<b>x</b> is not")));
    // As markup the tags would take no room.
    EXPECT_GT(
        inkedWidth(pictureOf(strip)), plainWidth + QFontMetrics(strip.font()).horizontalAdvance(QStringLiteral("<b></b>")) - 4);
}

TEST(CautionStrip, SaysSeriousnessInWordsAndInShapes)
{
    CautionStrip strip;
    strip.resize(600, 30);
    std::set<QString> words;
    std::set<int> inkedPixels;
    for (const Severity severity : {Severity::Danger, Severity::Warning, Severity::Note}) {
        Analysis analysis = granita();
        analysis.cautions = {{severity, phrase("-")}};
        strip.show(analysis);
        words.insert(strip.valueText());
        const QImage picture = pictureOf(strip);
        inkedPixels.insert(picture.width() * picture.height() - pixelsOf(picture, strip.palette().color(QPalette::Window)));
    }
    EXPECT_EQ(words.size(), 3U);
    EXPECT_EQ(inkedPixels.size(), 3U);
}

TEST(TexturePanel, SaysTheKindTheWindowAndTheFaults)
{
    const NumbersOf britain(english);
    TexturePanel panel;
    Analysis analysis = granita();
    analysis.texture.faults = {phrase("Too soft: less sugar")};
    panel.show(analysis);
    EXPECT_TRUE(panel.valueText().startsWith(QStringLiteral("Granita\nserve at −14 to −8\u202F°C\n50\u202F% ice at −12\u202F°C")));
    EXPECT_TRUE(panel.valueText().contains(QStringLiteral("Warning: Too soft: less sugar")));
}

TEST(FiguresPanel, ShowsLactoseOnlyWhereThereIsMilk)
{
    const NumbersOf britain(english);
    FiguresPanel panel;
    Analysis analysis = granita();
    panel.show(analysis);
    EXPECT_TRUE(panel.valueText().contains(QStringLiteral("mass: 1000\u202Fg")));
    EXPECT_FALSE(panel.valueText().contains(QStringLiteral("lactose")));
    analysis.lactose_gPer100gWater = 0.04;  // of a trace in bread or margarine, say
    panel.show(analysis);
    EXPECT_FALSE(panel.valueText().contains(QStringLiteral("lactose")));
    analysis.lactose_gPer100gWater = 8.4;
    panel.show(analysis);
    EXPECT_TRUE(panel.valueText().contains(QStringLiteral("lactose in 100 g water: 8.4\u202Fg")));
}

TEST(FiguresPanel, GrowingAmountsDoNotMoveTheTable)
{
    FiguresPanel panel;
    Analysis analysis = granita();
    analysis.mass = {9.0};
    panel.show(analysis);
    const int before = panel.heightForWidth(700);
    analysis.mass = {1050.0};
    panel.show(analysis);
    EXPECT_EQ(panel.heightForWidth(700), before);
    EXPECT_LT(panel.heightForWidth(1200), panel.heightForWidth(250));
}

TEST(Gauges, SpeakTheirNameAndValueAndAHintWhileThereIsNoMix)
{
    SugarScale sugarScale;
    FreezingChart freezingChart;
    TexturePanel texturePanel;
    ReadingsPanel readingsPanel;
    FiguresPanel figuresPanel;
    RibbonBar ribbonBar;
    const auto showAll = [&](const Analysis& analysis) {
        sugarScale.show(analysis);
        freezingChart.show(analysis);
        texturePanel.show(analysis);
        readingsPanel.show(analysis);
        figuresPanel.show(analysis);
        ribbonBar.show(analysis.ribbon);
    };
    static const QRegularExpression digit(QStringLiteral("[0-9]"));
    for (Gauge* gauge :
        std::initializer_list<Gauge*>{&sugarScale, &freezingChart, &texturePanel, &readingsPanel, &figuresPanel, &ribbonBar}) {
        showAll(granita());
        EXPECT_FALSE(spoken(*gauge, QAccessible::Name).isEmpty());
        const QString value = spoken(*gauge, QAccessible::Value);
        EXPECT_TRUE(value.contains(digit)) << value.toStdString();
        showAll(Analysis{});
        const QString hint = spoken(*gauge, QAccessible::Value);
        EXPECT_FALSE(hint.isEmpty());
        EXPECT_FALSE(hint.contains(digit)) << hint.toStdString();
    }
}

TEST(Gauges, AMarkerIsASliderToAScreenReader)
{
    FreezingChart chart;
    chart.show(granita());
    auto* marker = chart.findChild<TemperatureMarker*>(QStringLiteral("servingMarker"));
    QAccessibleInterface* face = QAccessible::queryAccessibleInterface(marker);
    ASSERT_TRUE(face && face->valueInterface());
    EXPECT_EQ(face->role(), QAccessible::Slider);
    QSignalSpy chosen(&chart, &FreezingChart::servingChosen);
    face->valueInterface()->setCurrentValue(-9.5);
    ASSERT_EQ(chosen.size(), 1);
    EXPECT_DOUBLE_EQ(chosen.first().first().toDouble(), -9.5);
}

}  // namespace firn::app
