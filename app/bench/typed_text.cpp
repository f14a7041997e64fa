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
    const auto amount = unit.isEmpty() ? std::nullopt : std::optional(parseAmount((number + u' ' + unit).toStdString()));
    return amount && !*amount && amount->error().readings;
}

}  // namespace

QString typedText(double number, const QString& unit, int mostDecimals)
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
    return unit.isEmpty() ? written : withUnit(written, unit);
}

}  // namespace firn::app
