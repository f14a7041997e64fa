// What the instruments show: which ones, their readings, how warm the sample is, and what is known beforehand.
#pragma once

#include "mix/mix.h"
#include "readings/measurement.h"
#include "recipe/reading_record.h"

#include <QWidget>
#include <array>
#include <vector>

class QComboBox;

namespace firn::app {

class FieldGrid;

class HydrometerRows;
class InstrumentRows;
class NumberField;

class InstrumentForm : public QWidget {
    Q_OBJECT

public:
    explicit InstrumentForm(QWidget* parent = nullptr);

    /// As they are set, with what they show where that is typed.
    std::vector<ReadingRecord> instruments() const;

    /// Whether every one of them has a reading.
    bool isRead() const;

    Beforehand known() const;

    /// Why one of the texts cannot be read; empty if all can.
    QString problem() const;

    /// How much of this mix the jar takes, where there is one.
    void showFillingWith(const Mix& mix);

    /// The mix is another by now: what was read of it no longer holds.
    void forgetReadings();

    /// The same, and what belonged to one sample: how warm it was, and what was known of it.
    void startAgain();

    void focusReading();

signals:
    void changed();

private:
    void build();
    void choose();
    void announce();
    std::vector<InstrumentRows*> chosen() const;

    FieldGrid* m_form;
    QComboBox* m_choice;
    std::array<InstrumentRows*, 4> m_rows{};
    HydrometerRows* m_hydrometer = nullptr;
    NumberField* m_temperature;
    QComboBox* m_knownKind;
    NumberField* m_known;
    QWidget* m_knownRow = nullptr;
};

}  // namespace firn::app
