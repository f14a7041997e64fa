// A temperature between two bounds that can be stepped through or typed, shown in the unit that the person chose.
#pragma once

#include "units/quantity.h"

#include <QDoubleSpinBox>
#include <optional>

namespace firn::app {

/// Its value is in °C; text with either unit is taken.
class DegreesSpin : public QDoubleSpinBox {
    Q_OBJECT

public:
    explicit DegreesSpin(QWidget* parent = nullptr);

    QString textFromValue(double temperature_c) const override;
    double valueFromText(const QString& text) const override;
    QValidator::State validate(QString& text, int& position) const override;
    /// By whole degrees of the shown unit.
    void stepBy(int steps) override;

private:
    std::optional<Celsius> typed(QString text) const;
};

}  // namespace firn::app
