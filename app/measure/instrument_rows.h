// The rows of a form that are about one instrument: what it shows, and what it is like.
#pragma once

#include "bench/number_field.h"
#include "readings/jar.h"
#include "recipe/reading_record.h"

#include <QObject>

class QCheckBox;
class QComboBox;
class QLabel;

namespace firn::app {

class InkLabel;

class FieldGrid;

class InstrumentRows : public QObject {
    Q_OBJECT

public:
    /// As it is set, with its reading if there is one.
    virtual ReadingRecord record() const = 0;

    NumberField* reading() const { return m_reading; }

    /// Why one of the texts cannot be read; empty if all can.
    QString problem() const;

    void setVisible(bool isVisible);

signals:
    void changed();

protected:
    explicit InstrumentRows(FieldGrid& form)
        : m_form(form)
    {
    }

    void add(const QString& label, QWidget* row);
    void follow(NumberField* field);
    void follow(QComboBox* choice);

    FieldGrid& m_form;
    NumberField* m_reading = nullptr;

private:
    QList<QWidget*> m_rows;
    QList<NumberField*> m_numbers;
};

class RefractometerRows : public InstrumentRows {
public:
    explicit RefractometerRows(FieldGrid& form);
    ReadingRecord record() const override;

private:
    QComboBox* m_scale;
    QCheckBox* m_compensates;
};

class HydrometerRows : public InstrumentRows {
    Q_OBJECT

public:
    explicit HydrometerRows(FieldGrid& form);
    ReadingRecord record() const override;
    Jar jar() const;
    void showFilling(const std::optional<Result<JarFilling>>& filling);

private:
    void chooseScale();

    QComboBox* m_scale;
    QComboBox* m_madeFor;
    NumberField* m_diameter;
    NumberField* m_depth;
    InkLabel* m_filling;
};

class EggRows : public InstrumentRows {
public:
    explicit EggRows(FieldGrid& form);
    ReadingRecord record() const override;

private:
    void fillSizes();

    NumberField* m_mass;
    QComboBox* m_size;
    QComboBox* m_age;
};

class BoilingRows : public InstrumentRows {
public:
    explicit BoilingRows(FieldGrid& form);
    ReadingRecord record() const override;

private:
    void choosePlace();

    NumberField* m_altitude;
    NumberField* m_pressure;
    QComboBox* m_by;
};

}  // namespace firn::app
