// A number that somebody typed, shown again.
#pragma once

#include <QString>

namespace firn::app {

/// The number with the decimals that it was typed with, `mostDecimals` at most, and its unit if it has one: "80 g", "12.5 g", "1.0150 g".
/// Read again it is the same: thousands are not parted, and three decimals that could be thousands get a fourth.
QString typedText(double number, const QString& unit, int mostDecimals = 3);

/// The same where the unit stands elsewhere: "1.0150" of grams.
QString typedNumber(double number, const QString& unit, int mostDecimals = 3);

}  // namespace firn::app
