#include "gauges/degrees_spin.h"

#include "gauges/temperature_unit.h"
#include "gauges/wording.h"

#include <cmath>

namespace firn::app {

DegreesSpin::DegreesSpin(QWidget* parent)
    : QDoubleSpinBox(parent)
{
    constexpr int hundredths = 2;  // a whole degree of one unit is none of the other
    setDecimals(hundredths);
    connect(&ShownTemperatureUnit::instance(), &ShownTemperatureUnit::changed, this, [this] { setValue(value()); });
}

QString DegreesSpin::textFromValue(double temperature_c) const { return chosenDegrees({temperature_c}); }

std::optional<Celsius> DegreesSpin::typed(QString text) const
{
    if (text.startsWith(prefix()))
        text.remove(0, prefix().size());
    const auto read = temperatureFrom(text.simplified().toStdString(), shownTemperatureUnit());
    return read ? std::optional(*read) : std::nullopt;
}

double DegreesSpin::valueFromText(const QString& text) const
{
    const auto temperature = typed(text);
    return temperature ? temperature->value : value();
}

QValidator::State DegreesSpin::validate(QString& text, int& /*position*/) const
{
    const auto temperature = typed(text);
    const bool isWithin = temperature && temperature->value >= minimum() && temperature->value <= maximum();
    return isWithin ? QValidator::Acceptable : QValidator::Intermediate;
}

void DegreesSpin::stepBy(int steps)
{
    const TemperatureUnit unit = shownTemperatureUnit();
    setValue(temperatureFrom(unit, std::round(numberIn(unit, Celsius{value()})) + steps).value);
    selectAll();
}

}  // namespace firn::app
