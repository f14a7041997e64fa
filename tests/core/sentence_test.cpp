#include "units/sentence.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

TEST(Sentence, PutsValuesInTheirPlaces)
{
    EXPECT_EQ(english(phrase("{1} before {0}", std::string("a"), std::string("b"))), "b before a");
    EXPECT_EQ(english(phrase("No places.")), "No places.");
}

TEST(Sentence, WritesFiguresWithTheirDecimals)
{
    EXPECT_EQ(english(phrase("{0} g", Figure{12.345, 1})), "12.3 g");
    EXPECT_EQ(english(phrase("{0} g", Figure{1e9, 0})), "1000000000 g");
}

TEST(Sentence, MinusZeroIsZero)
{
    EXPECT_EQ(english(phrase("{0}", Figure{-0.04, 1})), "0.0");
    EXPECT_EQ(english(phrase("{0}", Figure{-0.06, 1})), "-0.1");
}

TEST(Sentence, TemperaturesBringTheirUnit)
{
    EXPECT_EQ(english(phrase("No ice at {0}.", temperatureFigure({-12.0}, 0))), "No ice at -12 °C.");
    EXPECT_EQ(english(phrase("{0} colder", temperatureDifferenceFigure({2.04}, 1))), "2.0 K colder");
    EXPECT_EQ(english(phrase("{0}", temperatureFigure({-0.04}, 1))), "0.0 °C");
}

TEST(Sentence, TextOfAValueIsNotReadAsAPattern)
{
    EXPECT_EQ(english(phrase("{0} {1}", std::string("{1}"), std::string("x"))), "{1} x");
}

TEST(Sentence, PlacesWithoutAValueAndOtherBracesStay)
{
    EXPECT_EQ(english(phrase("{1} { {} {0", std::string("a"))), "{1} { {} {0");
}

}  // namespace
}  // namespace firn
