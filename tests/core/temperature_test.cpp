#include "units/temperature.h"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

constexpr TemperatureUnit inCelsius = TemperatureUnit::Celsius;
constexpr TemperatureUnit inFahrenheit = TemperatureUnit::Fahrenheit;

TEST(TemperatureFrom, TakesSignMarkAndEitherUnit)
{
    struct TypedTemperature {
        std::string_view text;
        double celsius;
    };
    const TypedTemperature cases[] = {{"-12", -12}, {"−12,5", -12.5}, {"–3", -3}, {"+4 °C", 4}, {"-10 C", -10}, {"- 10 c", -10},
        {"-12°", -12}, {"14F", -10}, {"14 °F", -10}, {"14 ° F", -10}, {"-4f", -20}, {"-22 fahrenheit", -30},
        {"160 Fahrenheit", 640 / 9.0}, {"28.4\u202f°F", -2}, {"21 Celsius", 21}, {" 0 ", 0}, {"27 º F", -25 / 9.0}};
    for (const auto& [text, celsius] : cases) {
        const auto read = temperatureFrom(text, inCelsius);
        ASSERT_TRUE(read) << text << ": " << english(read.error());
        EXPECT_NEAR(read->value, celsius, 1e-12) << text;
    }
}

TEST(TemperatureFrom, ANumberAloneIsInTheUnitOfTheReader)
{
    EXPECT_DOUBLE_EQ(temperatureFrom("14", inFahrenheit)->value, -10.0);
    EXPECT_DOUBLE_EQ(temperatureFrom("14°", inFahrenheit)->value, -10.0);
    EXPECT_DOUBLE_EQ(temperatureFrom("-10 C", inFahrenheit)->value, -10.0);
}

TEST(TemperatureFrom, RefusesWhatIsNoTemperatureWithAWayOut)
{
    for (const std::string_view text : {"", "-", "F", "14 K", "14 figs", "14 FF", "1/0", "--4", "14 F 2", "cold", "2-3 F"})
        EXPECT_FALSE(temperatureFrom(text, inCelsius)) << text;
    EXPECT_EQ(english(temperatureFrom("cold", inCelsius).error()),
        "“cold” is not a temperature. Enter for example -12, -12 °C or 10 °F.");
}

TEST(LeadingTemperatureUnit, IsNoWordThatBeginsWithItsLetter)
{
    EXPECT_EQ(leadingTemperatureUnit(" F and more")->length, 2U);
    EXPECT_EQ(leadingTemperatureUnit("°F")->unit, inFahrenheit);
    EXPECT_EQ(leadingTemperatureUnit("° sugar")->unit, std::nullopt);
    for (const std::string_view text : {"fig", "cream", "", "%", "Bx"})
        EXPECT_FALSE(leadingTemperatureUnit(text)) << text;
}

// Differences have no zero of their own to be moved.
TEST(TemperatureUnits, PointsMoveByThirtyTwoAndDifferencesDoNot)
{
    EXPECT_DOUBLE_EQ(numberIn(inFahrenheit, Celsius{-10.0}), 14.0);
    EXPECT_DOUBLE_EQ(numberIn(inFahrenheit, Celsius{100.0}), 212.0);
    EXPECT_DOUBLE_EQ(numberIn(inFahrenheit, Celsius{-40.0}), -40.0);
    EXPECT_DOUBLE_EQ(numberIn(inFahrenheit, KelvinDifference{-10.0}), -18.0);
    EXPECT_DOUBLE_EQ(numberIn(inCelsius, KelvinDifference{2.5}), 2.5);
}

RC_GTEST_PROP(TemperatureUnits, ThereAndBackIsTheSame, ())
{
    const double celsius = *rc::gen::inRange(-60000, 60000) / 1000.0;
    const double back = temperatureFrom(inFahrenheit, numberIn(inFahrenheit, Celsius{celsius})).value;
    RC_ASSERT(std::abs(back - celsius) < 1e-12);
}

}  // namespace
}  // namespace firn
