// A number that somebody typed, shown again.
#pragma once

#include <QString>

namespace firn::app {

/// The number with the decimals that it was typed with, `mostDecimals` at most, and its unit if it has one: "80 g", "12.5 g". Thousands are
/// not parted, since the text will be read again and either mark is a decimal mark then.
QString typedText(double number, const QString& unit, int mostDecimals = 3);

}  // namespace firn::app
