#include "catalogue/ingredient_wording.h"

#include "bench/typed_text.h"
#include "gauges/wording.h"
#include "solution/estimated_density.h"
#include "units/deviation.h"

#include <QCoreApplication>
#include <QStringList>
#include <cmath>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::IngredientWording)
};

template <class Key>
QString joined(const std::vector<Key>& keys)
{
    QStringList names;
    for (const Key key : keys)
        names << nameOf(key);
    return names.join(QStringLiteral(", "));
}

QString withSource(const QString& text, const std::string& source)
{
    return source.empty() ? text : QStringLiteral("%1 (%2)").arg(text, fromCore(source));
}

QString measureText(const Measure& measure)
{
    const std::string_view symbol = factsOf(measure.unit).symbol;
    const QString unit = QString::fromUtf8(symbol.data(), qsizetype(symbol.size()));
    const QString named = measure.note.empty() ? unit : QStringLiteral("%1 (%2)").arg(unit, fromCore(measure.note));
    return Words::tr("1 %1 weighs %2").arg(named, gramsText(measure.grams));
}

}  // namespace

QString fromCore(const std::string& text) { return QString::fromStdString(text); }

QString nameOf(Allergen allergen)
{
    // In the order of the enumeration.
    const std::array<QString, allergenCount> names{Words::tr("milk"), Words::tr("egg"), Words::tr("gluten"), Words::tr("nuts"),
        Words::tr("peanut"), Words::tr("soya"), Words::tr("sesame"), Words::tr("sulphites"), Words::tr("fish"),
        Words::tr("crustaceans"), Words::tr("molluscs"), Words::tr("celery"), Words::tr("mustard"), Words::tr("lupin")};
    return names.at(static_cast<std::size_t>(allergen));
}

QString nameOf(Hazard hazard)
{
    const std::array<QString, hazardCount> names{Words::tr("raw egg"), Words::tr("poisonous leaves"),
        Words::tr("kernels of stone fruit"), Words::tr("raw elderberries"), Words::tr("honey and infants"),
        Words::tr("whole nuts and hard pieces"), Words::tr("tonka bean")};
    return names.at(static_cast<std::size_t>(hazard));
}

QString namesOf(const std::vector<Allergen>& allergens) { return joined(allergens); }
QString namesOf(const std::vector<Hazard>& hazards) { return joined(hazards); }

QString spreadText(const Spread& spread)
{
    const auto band = [](double grams) { return gramsText(Grams{shownDeviation(1, grams)}); };
    QString text;
    if (spread.water_sd && spread.sugars_sd)
        text = Words::tr("water ± %1, sugars ± %2 in 100 g").arg(band(*spread.water_sd), band(*spread.sugars_sd));
    else if (spread.water_sd)
        text = Words::tr("water ± %1 in 100 g").arg(band(*spread.water_sd));
    else if (spread.sugars_sd)
        text = Words::tr("sugars ± %1 in 100 g").arg(band(*spread.sugars_sd));
    if (text.isEmpty())
        return text;
    return spread.isEstimate ? Words::tr("%1, one standard deviation, an estimate").arg(text)
                             : Words::tr("%1, one standard deviation").arg(text);
}

QString measuresText(const std::vector<Measure>& measures)
{
    QStringList lines;
    for (std::size_t i = 0; i < measures.size(); ++i) {
        lines << measureText(measures[i]);
        // A source is said once, under the measures that it has in common.
        const bool isLast = i + 1 == measures.size() || measures[i + 1].source != measures[i].source;
        if (isLast && !measures[i].source.empty())
            lines << Words::tr("(%1)", "source").arg(fromCore(measures[i].source));
    }
    return lines.join(u'\n');
}

QString densityText(const Ingredient& ingredient)
{
    constexpr int decimals = 3;
    const auto text = [](GramsPerMillilitre density) { return withUnit(figure(density.value, decimals), Words::tr("g/mL")); };
    if (ingredient.density)
        return withSource(text(*ingredient.density), ingredient.densitySource);
    const auto estimate = estimatedDensity(ingredient, Filling::MayBeHeaped);
    return estimate ? Words::tr("%1, estimated from the composition, ±2 %").arg(text(*estimate)) : QString();
}

QString energyText(const Ingredient& ingredient)
{
    if (!ingredient.energy_kcalPer100g)
        return {};
    const QString number = Words::tr("%1 in 100 g").arg(withUnit(figure(*ingredient.energy_kcalPer100g, 0), Words::tr("kcal")));
    return withSource(number, ingredient.energyNote);
}

QString partOf100g(Grams grams, int decimals) { return withUnit(figure(grams.value, decimals), Words::tr("g")); }

}  // namespace firn::app
