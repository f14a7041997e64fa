#include "gauges/temperature_unit.h"

#include <QLocale>

namespace firn::app {

ShownTemperatureUnit& ShownTemperatureUnit::instance()
{
    static ShownTemperatureUnit one;
    return one;
}

TemperatureUnit ShownTemperatureUnit::unit() const
{
    const bool isUs = QLocale().measurementSystem() == QLocale::ImperialUSSystem;
    return m_chosen.value_or(isUs ? TemperatureUnit::Fahrenheit : TemperatureUnit::Celsius);
}

void ShownTemperatureUnit::choose(std::optional<TemperatureUnit> unit)
{
    const TemperatureUnit before = this->unit();
    m_chosen = unit;
    if (this->unit() != before)
        emit changed();
}

}  // namespace firn::app
