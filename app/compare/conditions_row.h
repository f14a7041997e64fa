// The line in which a person says under which conditions the sides are compared.
#pragma once

#include "compare/comparison.h"

#include <QWidget>

class QComboBox;

namespace firn::app {

class NumberField;

class ConditionsRow : public QWidget {
    Q_OBJECT

public:
    explicit ConditionsRow(QWidget* parent = nullptr);

    /// What the masses are of.
    Basis basis() const;

    /// None where each is served as it says itself.
    std::optional<Celsius> serveAt() const;

signals:
    void changed();

private:
    QComboBox* m_basis;
    NumberField* m_portion;
    NumberField* m_serving;
};

}  // namespace firn::app
