// °F beside °C: chosen by the locale or in View, taken in every field with its letter, and shown in every gauge.
#include "bench.h"

#include "bench/number_field.h"
#include "document/places.h"
#include "document/temperature_choice.h"
#include "gauges/degrees_spin.h"
#include "gauges/freezing_chart.h"
#include "gauges/temperature_marker.h"
#include "gauges/texture_panel.h"
#include "gauges/wording.h"
#include "locales.h"
#include "teach/figure_wording.h"
#include "teach/projected_text.h"

#include <QAction>
#include <QMenu>
#include <QMenuBar>
#include <QRegularExpression>
#include <QTest>

namespace firn::app {
namespace {

class TemperatureUnits : public Bench {
protected:
    ~TemperatureUnits() override
    {
        settings().clear();
        showTemperaturesAsChosen();
    }

    QAction& action(const QString& name)
    {
        for (QMenu* menu : window.menuBar()->findChildren<QMenu*>())
            for (QAction* each : menu->actions())
                if (each->text().remove(u'&') == name)
                    return *each;
        throw std::runtime_error(name.toStdString());
    }
    NumberField& field(const char* name) { return *window.findChild<NumberField*>(QString::fromLatin1(name)); }
    void write(const char* name, const QString& text)
    {
        field(name).setFocus();
        field(name).selectAll();
        QTest::keyClicks(&field(name), text);
        QTest::keyClick(&field(name), Qt::Key_Return);
    }
};

TEST(TemperatureUnit, FollowsTheLocaleUntilSomebodyChooses)
{
    for (const QLocale& locale : readersLocales()) {
        const NumbersOf numbers(locale);
        EXPECT_EQ(shownTemperatureUnit() == TemperatureUnit::Fahrenheit, locale.name() == "en_US") << locale.name().toStdString();
    }
    const NumbersOf numbers(QLocale("en_US"));
    const TemperaturesIn celsius(TemperatureUnit::Celsius);
    EXPECT_EQ(degrees({-2.1}), "\u22122.1\u202f°C");
}

TEST(TemperatureUnit, SentencesAreWrittenInIt)
{
    const Sentence sentence = phrase("{0} and {1}", temperatureFigure({-10.0}, 0), temperatureDifferenceFigure({2.0}, 1));
    EXPECT_EQ(translated(sentence), "\u221210\u202f°C and 2.0\u202fK");
    const TemperaturesIn fahrenheit(TemperatureUnit::Fahrenheit);
    EXPECT_EQ(translated(sentence), "14\u202f°F and 3.6\u202f°F") << "a difference has no zero to be moved";
    EXPECT_EQ(english(sentence), "-10 °C and 2.0 K") << "what is written to files and pipes stays the same";
}

// Many sentences of core have the unit in their pattern.
TEST(TemperatureUnit, NumbersBeforeDegreesInAPatternAreTemperatures)
{
    const Sentence sentence =
        phrase("{2} % at {0} °C: serve it at {0} to {1} °C.", Figure{-20.0, 0}, Figure{-10.0, 0}, Figure{5.0, 0});
    EXPECT_EQ(translated(sentence), "5\u202f% at \u221220\u202f°C: serve it at \u221220 to \u221210\u202f°C.");
    const TemperaturesIn fahrenheit(TemperatureUnit::Fahrenheit);
    EXPECT_EQ(translated(sentence), "5\u202f% at \u22124\u202f°F: serve it at \u22124 to 14\u202f°F.");
    EXPECT_EQ(translated(phrase("a scale made for 20 °C")), "a scale made for 20\u202f°C");
}

TEST(TemperatureUnit, SentencesOfALessonAreInItAndWhatBelongsToFormulasIsNot)
{
    const Sentence sentence = phrase("{1} % at {0} °C: serve it at {0} to {2} °C, {3} apart; made for 20 °C.", Figure{-20.0, 0},
        Figure{51.0, 0}, Figure{-10.0, 0}, temperatureDifferenceFigure({10.0}, 1));
    const auto projected = [&] { return projectedText(sentence, true).remove(QRegularExpression("[\uE000\uE001]")); };
    const QString inCelsius =
        "51\u202f% at \u221220\u202f°C: serve it at \u221220 to \u221210\u202f°C, 10.0\u202fK apart; made for 20\u202f°C.";
    {
        const TemperaturesIn celsius(TemperatureUnit::Celsius);
        EXPECT_EQ(projected(), inCelsius);
        EXPECT_EQ(plainInCelsius(sentence), inCelsius);
    }
    const TemperaturesIn fahrenheit(TemperatureUnit::Fahrenheit);
    EXPECT_EQ(
        projected(), "51\u202f% at \u22124\u202f°F: serve it at \u22124 to 14\u202f°F, 18.0\u202f°F apart; made for 20\u202f°C.");
    EXPECT_EQ(plainInCelsius(sentence), inCelsius);
}

TEST(TemperatureUnit, AxesAreMarkedInItsOwnRoundNumbers)
{
    const auto texts = [](bool areWide) {
        QStringList marks;
        for (const DegreeMark& mark : degreeMarks({-30.0}, areWide))
            marks << mark.text;
        return marks.join(u' ');
    };
    EXPECT_EQ(texts(true), "0\u202f°C \u221210 \u221220 \u221230");
    const TemperaturesIn fahrenheit(TemperatureUnit::Fahrenheit);
    EXPECT_EQ(texts(false), "30\u202f°F 20 10 0 \u221210 \u221220");
    for (const DegreeMark& mark : degreeMarks({-30.0}, false)) {
        EXPECT_LE(mark.temperature.value, 0.0);
        EXPECT_GE(mark.temperature.value, -30.0);
    }
}

TEST_F(TemperatureUnits, AreChosenInViewAndRemembered)
{
    lay("750 g water\n250 g sucrose");
    auto& chart = *window.findChild<FreezingChart*>();
    EXPECT_TRUE(chart.valueText().contains("°C"));
    EXPECT_TRUE(action("Temperatures in °C").isChecked());
    action("Temperatures in °F").trigger();
    EXPECT_TRUE(action("Temperatures in °F").isChecked());
    EXPECT_FALSE(action("Temperatures in °C").isChecked());
    for (const Gauge* gauge : std::initializer_list<const Gauge*>{&chart, window.findChild<TexturePanel*>()}) {
        EXPECT_TRUE(gauge->valueText().contains("°F")) << gauge->valueText().toStdString();
        EXPECT_FALSE(gauge->valueText().contains("°C")) << gauge->valueText().toStdString();
    }
    EXPECT_TRUE(field("serving").placeholderText().endsWith("°F"));
    ShownTemperatureUnit::instance().choose(std::nullopt);
    showTemperaturesAsChosen();
    EXPECT_EQ(shownTemperatureUnit(), TemperatureUnit::Fahrenheit);
    action("Temperatures in °C").trigger();
    EXPECT_FALSE(chart.valueText().contains("°F")) << chart.valueText().toStdString();
}

TEST_F(TemperatureUnits, EitherIsTakenInEveryField)
{
    lay("750 g water\n250 g sucrose");
    write("serving", "14F");
    EXPECT_NEAR(recipe().serveAt_c.value_or(0.0), -10.0, 1e-9);
    EXPECT_EQ(field("serving").text(), "\u221210\u202f°C");
    write("freezer", "-4 °F");
    EXPECT_NEAR(recipe().freezerAt_c.value_or(0.0), -20.0, 1e-9);

    chooseTemperatureUnit(TemperatureUnit::Fahrenheit);
    EXPECT_EQ(field("serving").text(), "14\u202f°F");
    write("serving", "10");
    EXPECT_NEAR(recipe().serveAt_c.value_or(0.0), -110.0 / 9.0, 1e-9) << "a number alone is in the unit that is shown";
    write("serving", "-10 C");
    EXPECT_EQ(recipe().serveAt_c, -10.0);

    auto& readAt = *window.findChild<DegreesSpin*>();
    EXPECT_TRUE(readAt.text().endsWith("68\u202f°F")) << readAt.text().toStdString();
    readAt.selectAll();
    QTest::keyClicks(&readAt, "30 C");
    EXPECT_EQ(window.document().analysis().conditions.readAt.value, 30.0);
    readAt.setValue(20.0);
    readAt.stepUp();
    EXPECT_NEAR(window.document().analysis().conditions.readAt.value, 20.56, 0.005) << "69 °F";
}

TEST_F(TemperatureUnits, MarkersMoveByWholeDegreesOfIt)
{
    lay("750 g water\n250 g sucrose");
    chooseTemperatureUnit(TemperatureUnit::Fahrenheit);
    write("serving", "14.5");
    auto* marker = window.findChild<TemperatureMarker*>("servingMarker");
    QTest::keyClick(marker, Qt::Key_Right);
    EXPECT_EQ(marker->valueText(), "16\u202f°F");
    QTest::keyClick(marker, Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_EQ(marker->valueText(), "15.9\u202f°F");
}

}  // namespace
}  // namespace firn::app
