#include "bench/typed_text.h"

#include "gauges/wording.h"

#include <QLocale>
#include <cmath>

namespace firn::app {

QString typedText(double number, const QString& unit, int mostDecimals)
{
    constexpr double sameNumber = 1e-6;
    int decimals = 0;
    for (double scaled = number; decimals < mostDecimals && std::abs(scaled - std::round(scaled)) > sameNumber; ++decimals)
        scaled *= 10.0;
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    const QString written = locale.toString(number, 'f', decimals);
    return unit.isEmpty() ? written : withUnit(written, unit);
}

}  // namespace firn::app
