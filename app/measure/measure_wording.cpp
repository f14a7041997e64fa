#include "measure/measure_wording.h"

#include "gauges/temperature_unit.h"
#include "gauges/wording.h"
#include "units/deviation.h"

#include <QCoreApplication>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::MeasureWording)
};

QString withSign(double value, int decimals)
{
    const QString text = figure(value, decimals);
    return text == figure(0.0, decimals) ? Words::tr("none", "no difference") : value > 0.0 ? u'+' + text : text;
}

int decimalsOf(Instrument instrument)
{
    return instrument == Instrument::HydrometerGravity ? 3 : instrument == Instrument::Egg ? 0 : 1;
}

QString unitOf(Instrument instrument)
{
    switch (instrument) {
    case Instrument::Refractometer:
    case Instrument::HydrometerBrix:
        return Words::tr("°Bx");
    case Instrument::HydrometerGravity:
        return {};
    case Instrument::HydrometerBaume:
        return Words::tr("°Bé");
    case Instrument::Egg:
        return Words::tr("mm");
    case Instrument::BoilingPoint:
        break;
    }
    return degreeSign();
}

/// How far apart two readings are, in the unit of the instrument.
double apart(double difference, Instrument instrument)
{
    return instrument == Instrument::BoilingPoint ? numberIn(shownTemperatureUnit(), KelvinDifference{difference}) : difference;
}

double shown(double value, Instrument instrument)
{
    return instrument == Instrument::BoilingPoint ? numberIn(shownTemperatureUnit(), Celsius{value}) : value;
}

QString band(double value, double sd, int decimals, const QString& unit)
{
    // A line must not end within it.
    const QString text =
        withUnit(withUnit(figure(value, decimals), QStringLiteral("±")), figure(shownDeviation(decimals, sd), decimals));
    return unit.isEmpty() ? text : withUnit(text, unit);
}

}  // namespace

QString sugarsText(const FoundMix& mix)
{
    return mix.isSugarFound ? percentText(mix.estimate.sugar, mix.estimate.sugar_sd)
                            : Words::tr("%1, known").arg(percentText(mix.estimate.sugar));
}

QString alcoholText(const FoundMix& mix)
{
    return mix.isAlcoholFound  ? percentText(mix.estimate.alcohol, mix.estimate.alcohol_sd)
           : mix.state.alcohol ? Words::tr("%1, known").arg(percentText(mix.estimate.alcohol))
                               : Words::tr("%1, assumed").arg(percentText(mix.estimate.alcohol));
}

QString mixText(const FoundMix& mix, QChar between)
{
    const QString sugars = Words::tr("%1 sugars").arg(sugarsText(mix));
    return mix.isAlcoholFound ? sugars + between + Words::tr("%1 alcohol").arg(alcoholText(mix)) : sugars;
}

QString rangeText(const SugarRange& range)
{
    return Words::tr("An egg says no more than between %1 and %2, likeliest %3.")
        .arg(percentText(range.least, 0), percentText(range.most, 0), percentText(range.likely, 0));
}

QString differenceText(MassFraction difference) { return withSign(percent(difference), 1); }

QString differenceText(const BesideReading& beside)
{
    return beside.difference ? withSign(apart(*beside.difference, beside.record.instrument), decimalsOf(beside.record.instrument))
                             : QString();
}

QString computedText(const BesideReading& beside)
{
    const Instrument instrument = beside.record.instrument;
    if (beside.computed && beside.computed->value)
        return band(shown(*beside.computed->value, instrument), apart(combined(beside.computed->errors), instrument),
            decimalsOf(instrument), unitOf(instrument));
    if (!beside.computed)
        return instrument == Instrument::Egg ? Words::tr("sinks") : Words::tr("cannot be read");
    return beside.computed->onScale == OnScale::Above ? Words::tr("off the scale, above") : Words::tr("off the scale, below");
}

QString instrumentText(const ReadingRecord& record)
{
    const QString name = nameOf(record.instrument);
    if (record.compensates)
        return Words::tr("%1 that corrects for temperature").arg(name);
    return record.isMadeFor60F ? Words::tr("%1 for 60 °F").arg(name) : name;
}

QString addedText(const CorrectionChoice& choice)
{
    const int decimals = choice.added.value < 9.95 ? 1 : 0;
    const QString sd = figure(choice.added_sd.value, decimals);
    return sd == figure(0.0, decimals) ? gramsText(choice.added)
                                       : band(choice.added.value, choice.added_sd.value, decimals, Words::tr("g"));
}

}  // namespace firn::app
