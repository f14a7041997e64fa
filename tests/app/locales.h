// The locales that numbers are shown and typed in.
#pragma once

#include "document/temperature_choice.h"
#include "gauges/temperature_unit.h"

#include <QLocale>
#include <vector>

namespace firn::app {

inline std::vector<QLocale> readersLocales()
{
    return {QLocale("en_US"), QLocale("en_GB"), QLocale("de_DE"), QLocale("de_CH"), QLocale("fr_FR"), QLocale("it_IT"),
        QLocale("es_ES")};
}

/// Numbers are those of a locale while this lives.
class NumbersOf {
public:
    explicit NumbersOf(const QLocale& locale) { QLocale::setDefault(locale); }
    NumbersOf(const NumbersOf&) = delete;
    NumbersOf& operator=(const NumbersOf&) = delete;
    ~NumbersOf() { QLocale::setDefault(m_before); }

private:
    QLocale m_before;
};

/// Temperatures are shown in a unit while this lives.
class TemperaturesIn {
public:
    explicit TemperaturesIn(TemperatureUnit unit) { ShownTemperatureUnit::instance().choose(unit); }
    TemperaturesIn(const TemperaturesIn&) = delete;
    TemperaturesIn& operator=(const TemperaturesIn&) = delete;
    ~TemperaturesIn() { ShownTemperatureUnit::instance().choose(std::nullopt); }
};

}  // namespace firn::app
