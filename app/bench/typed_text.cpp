#include "bench/typed_text.h"

#include "gauges/wording.h"
#include "units/amount.h"

#include <QLocale>
#include <cmath>

namespace firn::app {

namespace {

/// Whether this text would be read in two ways.
bool isAskedAbout(const QString& number, const QString& unit)
{
    // Of "g/mL" and the like nobody asks.
    const auto amount =
        !unitNamed(unit.toStdString()) ? std::nullopt : std::optional(parseAmount((number + u' ' + unit).toStdString()));
    return amount && !*amount && amount->error().readings;
}

}  // namespace

QString typedNumber(double number, const QString& unit, int mostDecimals)
{
    constexpr double sameNumber = 1e-6;
    int decimals = 0;
    for (double scaled = number; decimals < mostDecimals && std::abs(scaled - std::round(scaled)) > sameNumber; ++decimals)
        scaled *= 10.0;
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    QString written = locale.toString(number, 'f', decimals);
    if (isAskedAbout(written, unit))
        written += locale.zeroDigit();
    return written;
}

QString typedText(double number, const QString& unit, int mostDecimals)
{
    const QString written = typedNumber(number, unit, mostDecimals);
    return unit.isEmpty() ? written : withUnit(written, unit);
}

}  // namespace firn::app
