#include "measure/instrument_rows.h"

#include "bench/field_grid.h"
#include "bench/fields.h"
#include "document/instruments.h"
#include "gauges/wording.h"
#include "readings/egg_kinds.h"
#include "readings/hydrometer.h"
#include "readings/refractometer.h"
#include "solution/boiling_point.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QSignalBlocker>
#include <algorithm>
#include <array>

namespace firn::app {

namespace {

/// Sugar burns before (common practice, no source).
constexpr Celsius hottestBoil{250.0};

constexpr std::array hydrometers{Instrument::HydrometerBrix, Instrument::HydrometerGravity, Instrument::HydrometerBaume};

// From a high mountain to any weather at the sea, as in a file; water boils at no other that is typed half way.
constexpr Bounds airPressures{100.0, 1200.0};

// No jar is narrower than a hydrometer's stem or wider than a bucket.
constexpr Bounds jarWidths{10.0, 400.0};
constexpr Bounds jarDepths{20.0, 1000.0};

std::optional<double> otherThan(Millimetres usual, Millimetres chosen)
{
    return chosen == usual ? std::nullopt : std::optional(chosen.value);
}

QString textOf(std::string_view label) { return translatedName(label); }

}  // namespace

void InstrumentRows::add(const QString& label, QWidget* row)
{
    m_form.addRow(label, row);
    m_rows.append(row);
}

void InstrumentRows::follow(NumberField* field)
{
    m_numbers.append(field);
    connect(field, &QLineEdit::textChanged, this, &InstrumentRows::changed);
}

void InstrumentRows::follow(QComboBox* choice) { connect(choice, &QComboBox::currentIndexChanged, this, &InstrumentRows::changed); }

QString InstrumentRows::problem() const
{
    for (const NumberField* field : m_numbers)
        if (field->isVisibleTo(m_form.parentWidget()) && !field->problem().isEmpty())
            return field->problem();
    return {};
}

void InstrumentRows::setVisible(bool isVisible)
{
    for (QWidget* row : std::as_const(m_rows))
        m_form.setRowVisible(row, isVisible);
}

RefractometerRows::RefractometerRows(FieldGrid& form)
    : InstrumentRows(form)
    , m_scale(choiceOf(QStringLiteral("refractometerScale"), tr("Scale of the refractometer"), {}))
    , m_compensates(new QCheckBox(tr("corrects for temperature")))
{
    const ReadingRecord remembered = rememberedInstrument(Instrument::Refractometer);
    m_reading = fieldFor(QStringLiteral("refractometerReading"), tr("What the refractometer shows"), tr("°Bx"));
    m_compensates->setObjectName(QStringLiteral("compensates"));
    m_compensates->setToolTip(tr("It is sold as one with automatic temperature compensation, ATC"));
    m_compensates->setChecked(remembered.compensates);
    const auto scales = commonRefractometers();
    for (const Refractometer& scale : scales)
        m_scale->addItem(tr("%1 to %2", "a scale").arg(figure(scale.from_brix, 0), withUnit(figure(scale.to_brix, 0), tr("°Bx"))));
    const auto chosen = std::ranges::find_if(
        scales, [&](const Refractometer& scale) { return scale.from_brix == remembered.from && scale.to_brix == remembered.to; });
    m_scale->setCurrentIndex(chosen == scales.end() ? m_scale->count() - 1 : int(chosen - scales.begin()));
    add(tr("Refractometer"), inOneRow({m_reading, m_scale}));
    add(QString(), m_compensates);
    follow(m_reading);
    follow(m_scale);
    connect(m_compensates, &QCheckBox::toggled, this, &InstrumentRows::changed);
}

ReadingRecord RefractometerRows::record() const
{
    const Refractometer& scale = commonRefractometers()[std::size_t(m_scale->currentIndex())];
    ReadingRecord record;
    record.value = m_reading->number().value_or(0.0);
    record.compensates = m_compensates->isChecked();
    record.from = scale.from_brix;
    record.to = scale.to_brix;
    record.division = scale.division_brix;
    return record;
}

HydrometerRows::HydrometerRows(FieldGrid& form)
    : InstrumentRows(form)
    , m_scale(choiceOf(
          QStringLiteral("hydrometerScale"), tr("Scale of the hydrometer"), {tr("°Bx"), tr("specific gravity"), tr("°Bé")}))
    , m_madeFor(choiceOf(QStringLiteral("madeFor"), tr("Temperature that the hydrometer is made for"), {tr("20 °C"), tr("60 °F")}))
    , m_filling(plainLabel(QStringLiteral("filling")))
{
    const ReadingRecord remembered = rememberedInstrument(Instrument::HydrometerBrix);
    m_reading = fieldFor(QStringLiteral("hydrometerReading"), tr("What the hydrometer shows"), QString());
    m_diameter =
        fieldFor(QStringLiteral("jarDiameter"), tr("Inner width of the jar"), tr("mm"), Jar{}.innerDiameter.value, jarWidths);
    m_depth = fieldFor(QStringLiteral("jarDepth"), tr("Depth of the jar"), tr("mm"), Jar{}.depth.value, jarDepths);
    const Jar jar = rememberedJar();
    m_diameter->showNumber(otherThan(Jar{}.innerDiameter, jar.innerDiameter), Jar{}.innerDiameter.value);
    m_depth->showNumber(otherThan(Jar{}.depth, jar.depth), Jar{}.depth.value);
    for (NumberField* field : {m_diameter, m_depth})
        field->setFixedWidth(field->fontMetrics().horizontalAdvance(QStringLiteral("000.0 mm0")));
    m_scale->setCurrentIndex(int(std::ranges::find(hydrometers, remembered.instrument) - hydrometers.begin()));
    m_madeFor->setCurrentIndex(remembered.isMadeFor60F ? 1 : 0);
    add(tr("Hydrometer"), inOneRow({m_reading, m_scale}));
    add(tr("Made for"), inOneRow({m_madeFor}));
    add(tr("Jar, inside"), inOneRow({m_diameter, new QLabel(QStringLiteral("×")), m_depth}));
    add(QString(), m_filling);
    follow(m_reading);
    follow(m_diameter);
    follow(m_depth);
    follow(m_madeFor);
    connect(m_scale, &QComboBox::currentIndexChanged, this, &HydrometerRows::chooseScale);
}

void HydrometerRows::chooseScale()
{
    // A number on one scale is none on another.
    const QSignalBlocker quietly(m_reading);
    m_reading->forget();
    emit changed();
}

ReadingRecord HydrometerRows::record() const
{
    ReadingRecord record;
    record.instrument = hydrometers.at(std::size_t(m_scale->currentIndex()));
    record.value = m_reading->number().value_or(0.0);
    record.isMadeFor60F = m_madeFor->currentIndex() == 1;
    return record;
}

Jar HydrometerRows::jar() const
{
    return {{m_diameter->number().value_or(Jar{}.innerDiameter.value)}, {m_depth->number().value_or(Jar{}.depth.value)}};
}

void HydrometerRows::showFilling(const std::optional<Result<JarFilling>>& filling)
{
    const bool isFilled = filling && *filling;
    m_filling->setText(!filling   ? QString()
                       : isFilled ? tr("needs %1 of the mix").arg(millilitresText((*filling)->liquid))
                                  : translated(filling->error()));
    m_filling->setInk(isFilled ? InkLabel::Quiet : InkLabel::Caution);
}

EggRows::EggRows(FieldGrid& form)
    : InstrumentRows(form)
    , m_size(choiceOf(QStringLiteral("eggSize"), tr("Size class of the egg"), {tr("weighed")}))
    , m_age(choiceOf(QStringLiteral("eggAge"), tr("Age of the egg"), {}))
{
    const ReadingRecord remembered = rememberedInstrument(Instrument::Egg);
    m_reading = fieldFor(QStringLiteral("eggReading"), tr("Width of the patch that shows"), tr("mm"));
    m_mass = fieldFor(QStringLiteral("eggMass"), tr("Mass of the egg in its shell"), tr("g"), Egg{}.mass.value);
    if (remembered.eggMass)
        m_mass->showNumber(remembered.eggMass->value, Egg{}.mass.value);
    fillSizes();
    const auto ages = eggAges();
    for (const EggAge& age : ages)
        m_age->addItem(textOf(age.label));
    const auto age = std::ranges::find_if(
        ages, [usual = remembered.eggDensity.value_or(Egg{}.density)](const EggAge& one) { return one.density == usual; });
    m_age->setCurrentIndex(age == ages.end() ? m_age->count() - 1 : int(age - ages.begin()));
    add(tr("Patch, across"), inOneRow({m_reading}));
    add(tr("Egg, in shell"), inOneRow({m_mass, m_size}));
    add(QString(), m_age);
    follow(m_reading);
    follow(m_mass);
    follow(m_age);
}

void EggRows::fillSizes()
{
    const auto addSizes = [this](std::span<const EggSize> sizes, const QString& place) {
        for (std::size_t i = 0; i < sizes.size(); ++i)
            m_size->addItem(
                tr("%1 %2", "a country and its size class").arg(place, textOf(sizes[i].label)), usualMass(i, sizes).value);
    };
    addSizes(euEggSizes(), tr("EU"));
    addSizes(usEggSizes(), tr("US"));
    connect(m_size, &QComboBox::activated, this, [this](int index) {
        if (index > 0)
            m_mass->showNumber(m_size->itemData(index).toDouble(), Egg{}.mass.value);
    });
    // An egg that is weighed need not be of any class.
    connect(m_mass, &NumberField::numberTyped, m_size, [this] { m_size->setCurrentIndex(0); });
}

ReadingRecord EggRows::record() const
{
    ReadingRecord record;
    record.instrument = Instrument::Egg;
    record.value = m_reading->number().value_or(0.0);
    record.eggMass = Grams{m_mass->number().value_or(Egg{}.mass.value)};
    record.eggDensity = eggAges()[std::size_t(m_age->currentIndex())].density;
    return record;
}

BoilingRows::BoilingRows(FieldGrid& form)
    : InstrumentRows(form)
    , m_by(choiceOf(
          QStringLiteral("pressureBy"), tr("How the pressure of the air is known"), {tr("above the sea"), tr("air pressure")}))
{
    const ReadingRecord remembered = rememberedInstrument(Instrument::BoilingPoint);
    m_reading = degreesFieldFor(QStringLiteral("boilingReading"), tr("Temperature at which the mix boils"), {}, hottestBoil);
    m_altitude = fieldFor(QStringLiteral("altitude"), tr("Height above the sea"), tr("m"), 0.0,
        {-500.0, 5000.0});  // pressureAtAltitude() goes no farther
    m_pressure = fieldFor(QStringLiteral("pressure"), tr("Pressure of the air"), tr("hPa"), standardPressure.value, airPressures);
    if (remembered.pressure) {
        m_by->setCurrentIndex(1);
        m_pressure->showNumber(remembered.pressure->value, standardPressure.value);
    }
    add(tr("Boils at"), inOneRow({m_reading}));
    add(tr("Kitchen"), inOneRow({m_altitude, m_pressure, m_by}));
    follow(m_reading);
    follow(m_altitude);
    follow(m_pressure);
    connect(m_by, &QComboBox::currentIndexChanged, this, &BoilingRows::choosePlace);
    choosePlace();
}

void BoilingRows::choosePlace()
{
    m_altitude->setVisible(m_by->currentIndex() == 0);
    m_pressure->setVisible(m_by->currentIndex() == 1);
    emit changed();
}

ReadingRecord BoilingRows::record() const
{
    ReadingRecord record;
    record.instrument = Instrument::BoilingPoint;
    record.value = m_reading->number().value_or(0.0);
    record.pressure = m_by->currentIndex() == 0 ? pressureAtAltitude(m_altitude->number().value_or(0.0))
                                                : Hectopascals{m_pressure->number().value_or(standardPressure.value)};
    return record;
}

}  // namespace firn::app
