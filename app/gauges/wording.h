// Core's sentences and quantities as text in the user's language and locale: the one place where a number becomes letters.
#pragma once

#include "analysis/analysis.h"

#include <QString>

namespace firn::app {

/// A sentence of core, translated, its numbers written by the locale. What came from a file stays as it is.
QString translated(const Sentence& sentence);

/// A word of core ("granita", "scoopable"), translated.
QString translatedName(std::string_view name);

/// With a capital at its start, for a word that stands alone.
QString capitalised(QString text);

/// "25 Nov 2026, 17:20", by the user's locale.
QString dateText(const std::string& date);

/// The number by the locale, with a true minus sign and no negative zero. Thousands are not parted: what is shown can be copied and typed
/// again, and either mark is read as that of the decimals.
QString figure(double value, int decimals);

/// A figure of core; a temperature or a difference of two in the shown unit, and with it.
QString figure(const Figure& figure);

/// The number of an amount with the locale's decimal mark, as core writes it and reads it back: "1 1/2", "420,5".
QString amountNumberText(const Amount& amount);

/// A figure, a narrow no-break space, and its unit.
QString withUnit(const QString& figure, const QString& unit);

/// A temperature in the shown unit: "-2.1 °C", "28.2 °F".
QString degrees(Celsius temperature, int decimals = 1);
/// "°C" or "°F", as is shown.
QString degreeSign();
/// A difference of temperatures in the shown unit.
QString degreesApart(KelvinDifference difference, int decimals = 1);
/// A temperature that somebody chose, with the decimals that it takes to read it back, two at most: "-12 °C", "-12.5 °C", "10.4 °F".
QString chosenDegrees(Celsius temperature);
/// A range as it is advised: rounded inward, so that both ends keep what the range promises.
struct RangeInDegrees {
    QString coldest, warmest;
    QString whole;  // "-13 to -9 °C", the colder first; "9 to 16 °F"
};

/// In whole degrees of the shown unit, or in tenths where it is too narrow for them.
RangeInDegrees rangeInDegrees(const TemperatureRange& range);

/// Where the axis of a curve is marked, and how: whole degrees of the shown unit from `coldest` to 0 °C, the unit with the warmest. About
/// every 5 °C, or every 10 where there is less room.
struct DegreeMark {
    Celsius temperature;
    QString text;
};
std::vector<DegreeMark> degreeMarks(Celsius coldest, bool areWide);

QString percentText(MassFraction share, int decimals = 1);
/// "26.3 ± 0.4 %", or without the band where there is none.
QString percentText(MassFraction share, MassFraction standardDeviation);
/// One decimal below 10 g, none above.
QString gramsText(Grams mass);
QString millilitresText(Millilitres volume);
QString millimetresText(Millimetres length);
QString brixText(double brix);
QString baumeText(double baume);
QString specificGravityText(double specificGravity);
QString lactoseText(double grams_per100gWater);

QString nameOf(RibbonPart part);

/// "refractometer"
QString nameOf(Instrument instrument);

/// A number in this instrument's unit: "19.0 °Bx", "1.078", "25 mm".
QString valueOn(Instrument instrument, double value);

/// What was read, and how warm it was: "19.0 °Bx at 31 °C".
QString readingText(const ReadingRecord& record);

}  // namespace firn::app
