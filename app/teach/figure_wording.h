// Values of a derivation in the user's locale, and the figures that the bench shows as the bench shows them.
#pragma once

#include "derivation/working.h"

#include <QString>

namespace firn::app {

/// As core writes it, "22.18 g", with the locale's decimal mark.
QString valueInLocale(const Number& number);
QString valueInLocale(const Symbol& symbol);

/// The result of a figure as the gauges show it: "18.6 %", a temperature in the shown unit.
QString onBench(const QString& figure, const Symbol& result);

/// What a figure is called and how it stood where a reader asked for it.
struct FigureHead {
    QString title;
    QString whose = {};  // where it is not the bench's
    QString shown = {};  // where that is not as on the bench
};

/// The figure as it was shown, and the last line of its derivation, which says both what it is and how it was rounded.
QString shownText(const FigureHead& head, const QString& figure, const Symbol& result);
QString lastLine(const FigureHead& head, const QString& figure, const Symbol& result);

/// Text that may come from a file, without control characters.
QString plain(const std::string& text);
QString plain(const Sentence& sentence);
/// What belongs to formulas, which are in °C and K: so are its temperatures, whatever unit the view shows.
QString plainInCelsius(Sentence sentence);

}  // namespace firn::app
