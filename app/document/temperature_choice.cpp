#include "document/temperature_choice.h"

#include "document/places.h"
#include "gauges/temperature_unit.h"

namespace firn::app {

namespace {

const QString unitKey = QStringLiteral("temperatureUnit");
const QString celsius = QStringLiteral("celsius");
const QString fahrenheit = QStringLiteral("fahrenheit");

}  // namespace

void showTemperaturesAsChosen()
{
    const QString name = settings().value(unitKey).toString();
    ShownTemperatureUnit::instance().choose(name == celsius      ? std::optional(TemperatureUnit::Celsius)
                                            : name == fahrenheit ? std::optional(TemperatureUnit::Fahrenheit)
                                                                 : std::nullopt);
}

void chooseTemperatureUnit(TemperatureUnit unit)
{
    settings().setValue(unitKey, unit == TemperatureUnit::Celsius ? celsius : fahrenheit);
    ShownTemperatureUnit::instance().choose(unit);
}

}  // namespace firn::app
