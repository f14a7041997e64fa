// One line of a form: a name, a number, how the number is meant, and under it why it cannot be so.
#pragma once

#include "syrups/syrup_job.h"

#include <QObject>

class QComboBox;
class QGridLayout;

namespace firn::app {

class InkLabel;
class NumberField;

class FieldLine : public QObject {
    Q_OBJECT

public:
    /// Puts itself at the end of the grid.
    FieldLine(const Field& field, QGridLayout& grid, QObject* parent);

    /// None while the line is empty or cannot be read; the line says so itself.
    const std::optional<Typed>& typed() const { return m_typed; }

    /// Says under the number what is wrong with it; nothing if all is well.
    void refuse(const QString& why);

    void takeFocus();
    void fitToFont(int height);

signals:
    void changed();

private:
    const Meaning& meaning() const;
    void read(std::optional<double> number);
    void changeMeaning();

    const Field m_field;
    NumberField* m_number;
    QComboBox* m_meanings = nullptr;
    InkLabel* m_fault;
    std::optional<Typed> m_typed;
};

}  // namespace firn::app
