#include "bench/batch_wording.h"

#include "gauges/wording.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

namespace firn::app {

namespace {

struct Wording {
    Q_DECLARE_TR_FUNCTIONS(BatchWording)
};

QString factorText(double factor) { return QStringLiteral("× ") + figure(factor, factor < 0.9995 ? 3 : 2); }

QString volumeText(Millilitres volume)
{
    const UnitFacts& litre = factsOf(Unit::Litre);
    if (volume.value < litre.size)
        return millilitresText(volume);
    return withUnit(figure(volume.value / litre.size, 2), Wording::tr("L"));
}

/// With its sign, whichever it is; a text that shows zero has none.
QString signedText(double value, const QString& text, const QString& zero)
{
    return value > 0.0 && text != zero ? u'+' + text : text;
}

QString changedText(const RoundingEffect& effect)
{
    const auto points = [](double value) { return figure(value, 1); };
    const auto degreesOf = [](double value) { return degreesApart({value}, 2); };
    const QString sugars = signedText(effect.sugars_percentPoints, points(effect.sugars_percentPoints), points(0.0));
    if (!effect.freezingPoint)
        return Wording::tr("Rounding changes sugars by %1 percentage points.").arg(sugars);
    const double freezing = effect.freezingPoint->value;
    const QString changed = signedText(freezing, degreesOf(freezing), degreesOf(0.0));
    if (sugars == points(0.0) && changed == degreesOf(0.0))
        return Wording::tr("Rounding changes neither sugars nor freezing point.");
    return Wording::tr("Rounding changes sugars by %1 percentage points and the freezing point by %2.").arg(sugars, changed);
}

/// As the bench names a component without a name.
QString componentText(const Recipe& recipe, std::size_t component)
{
    const QString name = QString::fromStdString(recipe.components.at(component).name);
    return name.isEmpty() ? Wording::tr("Component %1").arg(component + 1) : name;
}

}  // namespace

QString batchText(const Batch& batch)
{
    return Wording::tr("%1: %2, %3", "factor, mass, volume")
        .arg(factorText(batch.factor), gramsText(batch.mass), volumeText(batch.finishedVolume));
}

QString roundingText(const Batch& batch, const Recipe& recipe, std::size_t component)
{
    QString text = changedText(batch.rounding);
    if (recipe.components.size() > 1)
        text = Wording::tr("All components are scaled. In “%1”: %2", "what rounding does to one of them")
                   .arg(componentText(recipe, component), text);
    const auto off = std::ranges::count_if(batch.rows, [](const BatchRow& row) { return row.after.isOff(); });
    if (off == 0)
        return text;
    const QString rows = off == 1 ? Wording::tr("One row is off by more than %1 %.").arg(figure(mostRounding_percent, 0))
                                  : Wording::tr("%1 rows are off by more than %2 %.").arg(off).arg(figure(mostRounding_percent, 0));
    return Wording::tr("%1 %2", "two sentences").arg(text, rows);
}

QString nameText(const BatchRow& row, const Recipe& recipe)
{
    const QString ingredient = QString::fromStdString(row.ingredient);
    if (recipe.components.size() < 2)
        return ingredient;
    return Wording::tr("%1: %2", "component, ingredient").arg(componentText(recipe, row.component), ingredient);
}

QString writtenAmount(const Amount& amount)
{
    return QString::fromStdString(amountText(amount)).replace(QLatin1Char('.'), QLocale().decimalPoint());
}

QString deviationText(const RoundedAmount& amount)
{
    constexpr int decimals = 1;
    const QString zero = figure(0.0, decimals), off = figure(amount.deviation_percent, decimals);
    if (off == zero && !amount.isOff())
        return Wording::tr("exact", "not rounded");
    const QString text = withUnit(signedText(amount.deviation_percent, off, zero), QStringLiteral("%"));
    return amount.isOff() ? Wording::tr("%1: off by more than %2 %").arg(text, figure(mostRounding_percent, 0)) : text;
}

}  // namespace firn::app
