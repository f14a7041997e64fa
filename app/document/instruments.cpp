#include "document/instruments.h"

#include "analysis/recorded_reading.h"
#include "document/places.h"

namespace firn::app {

namespace {

const QString jarDiameterKey = QStringLiteral("instruments/jarDiameter_mm");
const QString jarDepthKey = QStringLiteral("instruments/jarDepth_mm");

QString textOf(std::string_view text) { return QString::fromUtf8(text.data(), qsizetype(text.size())); }

bool isHydrometer(Instrument kind)
{
    return kind == Instrument::HydrometerBrix || kind == Instrument::HydrometerGravity || kind == Instrument::HydrometerBaume;
}

QString groupOf(Instrument kind)
{
    return QStringLiteral("instruments/") + (isHydrometer(kind) ? QStringLiteral("hydrometer") : textOf(keyOf(kind)));
}

/// Calls `each` with a name and a place for every number that an instrument may have.
void forNumbersOf(auto& record, const auto& each)
{
    each(QStringLiteral("from"), record.from);
    each(QStringLiteral("to"), record.to);
    each(QStringLiteral("division"), record.division);
    each(QStringLiteral("egg_g"), record.eggMass);
    each(QStringLiteral("egg_density_g_ml"), record.eggDensity);
    each(QStringLiteral("pressure_hpa"), record.pressure);
}

double numberOf(double number) { return number; }
template <class Unit>
double numberOf(Quantity<Unit> quantity)
{
    return quantity.value;
}

const QString instrumentKey = QStringLiteral("instrument");
const QString compensatesKey = QStringLiteral("compensates");
const QString madeFor60FKey = QStringLiteral("made_for_60_f");

}  // namespace

ReadingRecord rememberedInstrument(Instrument kind)
{
    QSettings remembered = settings();
    remembered.beginGroup(groupOf(kind));
    ReadingRecord record;
    const auto named = instrumentNamed(remembered.value(instrumentKey).toString().toStdString());
    record.instrument = named && groupOf(*named) == groupOf(kind) ? *named : kind;
    record.compensates = remembered.value(compensatesKey).toBool();
    record.isMadeFor60F = remembered.value(madeFor60FKey).toBool();
    forNumbersOf(record, [&](const QString& key, auto& place) {
        bool isNumber = false;
        const double number = remembered.value(key).toDouble(&isNumber);
        if (isNumber)
            place.emplace() = {number};
    });
    return record;
}

void rememberInstrument(const ReadingRecord& instrument)
{
    QSettings remembered = settings();
    remembered.beginGroup(groupOf(instrument.instrument));
    remembered.setValue(instrumentKey, textOf(keyOf(instrument.instrument)));
    remembered.setValue(compensatesKey, instrument.compensates);
    remembered.setValue(madeFor60FKey, instrument.isMadeFor60F);
    forNumbersOf(instrument, [&](const QString& key, const auto& place) {
        if (place)
            remembered.setValue(key, numberOf(*place));
        else
            remembered.remove(key);
    });
}

Jar rememberedJar()
{
    const Jar usual;
    const auto remembered = [](const QString& key, Millimetres otherwise) {
        return Millimetres{settings().value(key, otherwise.value).toDouble()};
    };
    return {remembered(jarDiameterKey, usual.innerDiameter), remembered(jarDepthKey, usual.depth)};
}

void rememberJar(const Jar& jar)
{
    settings().setValue(jarDiameterKey, jar.innerDiameter.value);
    settings().setValue(jarDepthKey, jar.depth.value);
}

Instruments rememberedInstruments()
{
    const ReadingRecord egg = rememberedInstrument(Instrument::Egg);
    return {refractometerOf(rememberedInstrument(Instrument::Refractometer)),
        hydrometerOf(rememberedInstrument(Instrument::HydrometerBrix)).calibration,
        {egg.eggMass.value_or(Egg{}.mass), egg.eggDensity.value_or(Egg{}.density)}};
}

}  // namespace firn::app
