#include "bench/batch_wording.h"

#include "gauges/wording.h"

#include <QCoreApplication>

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

QString movedText(const RoundingEffect& effect)
{
    const auto points = [](double value) { return figure(value, 1); };
    const auto degreesOf = [](double value) { return degrees({value}, 2); };
    const QString sugars = signedText(effect.sugars_percentPoints, points(effect.sugars_percentPoints), points(0.0));
    if (!effect.freezingPoint)
        return Wording::tr("Rounding moves sugars by %1 points.").arg(sugars);
    const double freezing = effect.freezingPoint->value;
    const QString degreesMoved = signedText(freezing, degreesOf(freezing), degreesOf(0.0));
    if (sugars == points(0.0) && degreesMoved == degreesOf(0.0))
        return Wording::tr("Rounding moves neither the sugars nor the freezing point.");
    return Wording::tr("Rounding moves sugars by %1 points and the freezing point by %2.").arg(sugars, degreesMoved);
}

}  // namespace

QString batchText(const Batch& batch)
{
    return Wording::tr("%1: %2, %3", "factor, mass, volume")
        .arg(factorText(batch.factor), gramsText(batch.mass), volumeText(batch.finishedVolume));
}

QString roundingText(const RoundingEffect& effect, const Recipe& recipe, std::size_t component)
{
    const QString moved = movedText(effect);
    if (recipe.components.size() < 2)
        return moved;
    const QString name = QString::fromStdString(recipe.components.at(component).name);
    return Wording::tr("All components are scaled. In “%1”: %2", "what rounding does to one of them").arg(name, moved);
}

}  // namespace firn::app
