#include "measure/instrument_form.h"

#include "bench/field_grid.h"
#include "bench/fields.h"
#include "correction/measuring.h"
#include "document/instruments.h"
#include "document/places.h"
#include "gauges/type_and_space.h"
#include "measure/instrument_rows.h"

#include <QComboBox>
#include <algorithm>

namespace firn::app {

namespace {

/// In the order of the combo box.
enum Choice { RefractometerAlone, HydrometerAlone, BothOfThem, EggAlone, BoilingAlone, choiceCount };

const QString choiceKey = QStringLiteral("instruments/chosen");
constexpr double usualTemperature_c = 20.0;

}  // namespace

InstrumentForm::InstrumentForm(QWidget* parent)
    : QWidget(parent)
    , m_form(new FieldGrid(this))
    , m_choice(choiceOf(QStringLiteral("instrument"), tr("Instrument"),
          {tr("refractometer"), tr("hydrometer"), tr("refractometer and hydrometer"), tr("egg that floats"),
              tr("thermometer at the boil")}))
    , m_temperature(degreesFieldFor(QStringLiteral("sampleTemperature"), tr("Temperature of the sample"), usualTemperature_c))
    , m_knownKind(
          choiceOf(QStringLiteral("knownKind"), tr("What is known without measuring"), {tr("Alcohol known"), tr("Sugars known")}))
    , m_known(fieldFor(QStringLiteral("known"), tr("Known share by mass"), QStringLiteral("%")))
{
    build();
    // As wide as the widest of its rows, so that nothing moves when another instrument is chosen.
    setMinimumWidth(sizeHint().width());
    const int remembered = settings().value(choiceKey, 0).toInt();
    m_choice->setCurrentIndex(std::clamp(remembered, 0, choiceCount - 1));
    connect(m_choice, &QComboBox::currentIndexChanged, this, &InstrumentForm::choose);
    connect(m_knownKind, &QComboBox::currentIndexChanged, this, &InstrumentForm::choose);
    for (InstrumentRows* rows : m_rows)
        connect(rows, &InstrumentRows::changed, this, &InstrumentForm::announce);
    for (NumberField* field : {m_temperature, m_known})
        connect(field, &QLineEdit::textChanged, this, &InstrumentForm::changed);
    choose();
}

void InstrumentForm::build()
{
    m_form->setHorizontalSpacing(closeSpace);
    m_form->setVerticalSpacing(gridStep);
    m_form->addRow(tr("Read with"), m_choice);
    auto* refractometer = new RefractometerRows(*m_form);
    m_hydrometer = new HydrometerRows(*m_form);
    auto* egg = new EggRows(*m_form);
    m_rows = {refractometer, m_hydrometer, egg, new BoilingRows(*m_form)};
    for (InstrumentRows* rows : m_rows)
        rows->setParent(this);
    m_form->addRow(tr("Sample at"), m_temperature);
    m_knownRow = inOneRow({m_known});
    m_form->addRow(m_knownKind, m_knownRow);
    m_form->setRowStretch(m_form->rowCount(), 1);
    m_known->setFixedWidth(m_known->fontMetrics().horizontalAdvance(tr("as in the recipe") + QStringLiteral("00")));
}

std::vector<InstrumentRows*> InstrumentForm::chosen() const
{
    const auto& [refractometer, hydrometer, egg, boiling] = m_rows;
    switch (m_choice->currentIndex()) {
    case HydrometerAlone:
        return {hydrometer};
    case BothOfThem:
        return {refractometer, hydrometer};
    case EggAlone:
        return {egg};
    case BoilingAlone:
        return {boiling};
    default:
        return {refractometer};
    }
}

void InstrumentForm::choose()
{
    const int choice = m_choice->currentIndex();
    settings().setValue(choiceKey, choice);
    const auto used = chosen();
    for (InstrumentRows* rows : m_rows)
        rows->setVisible(std::ranges::find(used, rows) != used.end());
    m_form->setRowVisible(m_temperature, choice != BoilingAlone);
    m_form->setRowVisible(m_knownRow, choice != BoilingAlone);
    // An egg is too coarse to find alcohol from.
    if (choice == EggAlone)
        m_knownKind->setCurrentIndex(0);
    m_knownKind->setEnabled(choice != EggAlone);
    m_known->setPlaceholderText(choice == BothOfThem               ? tr("to be found")
                                : m_knownKind->currentIndex() == 0 ? tr("as in the recipe")
                                                                   : QStringLiteral("%"));
    emit changed();
}

void InstrumentForm::announce()
{
    if (problem().isEmpty()) {
        for (const InstrumentRows* rows : chosen())
            rememberInstrument(rows->record());
        rememberJar(m_hydrometer->jar());
    }
    emit changed();
}

std::vector<ReadingRecord> InstrumentForm::instruments() const
{
    std::vector<ReadingRecord> records;
    for (const InstrumentRows* rows : chosen()) {
        records.push_back(rows->record());
        if (records.back().instrument != Instrument::BoilingPoint)
            records.back().temperature_c = m_temperature->number().value_or(usualTemperature_c);
    }
    return records;
}

bool InstrumentForm::isRead() const
{
    return std::ranges::all_of(chosen(), [](const InstrumentRows* rows) { return rows->reading()->number().has_value(); });
}

Beforehand InstrumentForm::known() const
{
    Beforehand known;
    if (!m_known->number() || m_choice->currentIndex() == BoilingAlone)
        return known;
    (m_knownKind->currentIndex() == 0 ? known.alcohol : known.sugar) = fromPercent(*m_known->number());
    return known;
}

QString InstrumentForm::problem() const
{
    for (const InstrumentRows* rows : chosen())
        if (const QString problem = rows->problem(); !problem.isEmpty())
            return problem;
    return m_choice->currentIndex() == BoilingAlone ? QString()
           : !m_temperature->problem().isEmpty()    ? m_temperature->problem()
                                                    : m_known->problem();
}

void InstrumentForm::showFillingWith(const Mix& mix)
{
    const auto used = chosen();
    if (std::ranges::find(used, m_hydrometer) == used.end())
        m_hydrometer->showFilling({});
    else
        m_hydrometer->showFilling(fillingFor(m_hydrometer->jar(), mix, {m_temperature->number().value_or(usualTemperature_c)}));
}

void InstrumentForm::forgetReadings()
{
    for (const InstrumentRows* rows : m_rows)
        rows->reading()->forget();
    emit changed();
}

void InstrumentForm::startAgain()
{
    m_temperature->forget();
    m_known->forget();
    forgetReadings();
}

void InstrumentForm::focusReading() { chosen().front()->reading()->setFocus(); }

}  // namespace firn::app
