// Values of a derivation in the user's locale, and the figures that the bench shows as the bench shows them.
#pragma once

#include "derivation/working.h"

#include <QString>

namespace firn::app {

/// As core writes it, "22.18 g", with the locale's decimal mark.
QString valueInLocale(const Number& number);
QString valueInLocale(const Symbol& symbol);

/// The result of a figure as the gauges round it: "18.6 %".
QString onBench(const QString& figure, const Symbol& result);

/// "18.553 %, shown as 18.6 %": with as many digits as round to what is shown.
QString exactAndShown(const Symbol& result, const QString& shown);

/// Text that may come from a file, without control characters.
QString plain(const std::string& text);
QString plain(const Sentence& sentence);

}  // namespace firn::app
