// The unit in which temperatures are shown, and in which a typed number without a unit is taken.
#pragma once

#include "units/temperature.h"

#include <QObject>

namespace firn::app {

/// The one choice for all windows. Until somebody chooses, it follows the locale: Fahrenheit where US measures are usual.
class ShownTemperatureUnit : public QObject {
    Q_OBJECT

public:
    static ShownTemperatureUnit& instance();

    TemperatureUnit unit() const;

    /// None follows the locale.
    void choose(std::optional<TemperatureUnit> unit);

signals:
    /// What is on the screen is to be written again.
    void changed();

private:
    std::optional<TemperatureUnit> m_chosen;
};

inline TemperatureUnit shownTemperatureUnit() { return ShownTemperatureUnit::instance().unit(); }

}  // namespace firn::app
