#include "cli/arguments.h"
#include "cli/command_line.h"
#include "document/built_in.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace firn::app {

namespace {

QString fromView(std::string_view text) { return QString::fromUtf8(text.data(), qsizetype(text.size())); }

QString fromString(const std::string& text) { return QString::fromStdString(text); }

QJsonValue orNull(std::optional<double> value) { return value ? QJsonValue(*value) : QJsonValue(); }

QJsonObject compositionJson(const Composition& composition)
{
    QJsonObject json;
    for (const ConstituentFacts& facts : allConstituents())
        if (const double grams = composition.per100g[facts.constituent].value; grams > 0.0)
            json.insert(fromView(facts.key), grams);
    return json;
}

QJsonObject json(const Ingredient& ingredient)
{
    QJsonArray measures;
    for (const Measure& measure : ingredient.measures)
        measures.append(QJsonObject{{QStringLiteral("unit"), fromView(factsOf(measure.unit).symbol)},
            {QStringLiteral("grams"), measure.grams.value}, {QStringLiteral("note"), fromString(measure.note)},
            {QStringLiteral("source"), fromString(measure.source)}});
    QJsonArray synonyms;
    for (const std::string& synonym : ingredient.synonyms)
        synonyms.append(fromString(synonym));
    QJsonArray defaultFor;
    for (const std::string& word : ingredient.defaultFor)
        defaultFor.append(fromString(word));
    const auto density = ingredient.density ? std::optional(ingredient.density->value) : std::nullopt;
    return {{QStringLiteral("id"), fromString(ingredient.id)}, {QStringLiteral("name"), fromString(ingredient.name)},
        {QStringLiteral("synonyms"), synonyms}, {QStringLiteral("default_for"), defaultFor},
        {QStringLiteral("group"), fromString(ingredient.group)},
        {QStringLiteral("per_100g"), compositionJson(ingredient.composition)}, {QStringLiteral("density_g_ml"), orNull(density)},
        {QStringLiteral("measures"), measures}, {QStringLiteral("source"), fromString(ingredient.source)},
        {QStringLiteral("spread"), QJsonObject{{QStringLiteral("water_sd"), orNull(ingredient.spread.water_sd)},
                                       {QStringLiteral("sugars_sd"), orNull(ingredient.spread.sugars_sd)},
                                       {QStringLiteral("is_estimate"), ingredient.spread.isEstimate}}},
        {QStringLiteral("energy_kcal"), orNull(ingredient.energy_kcalPer100g)},
        {QStringLiteral("energy_note"), fromString(ingredient.energyNote)}};
}

/// One ingredient as a few lines for people.
QString lines(const Ingredient& ingredient)
{
    QStringList parts;
    for (const ConstituentFacts& facts : allConstituents())
        if (const double grams = ingredient.composition.per100g[facts.constituent].value; grams > 0.0)
            parts.append(QStringLiteral("%1 %2").arg(fromView(facts.label)).arg(grams));
    QString text =
        QStringLiteral("%1: %2 (%3)\n").arg(fromString(ingredient.id), fromString(ingredient.name), fromString(ingredient.group));
    text += QStringLiteral("  in 100 g: %1\n").arg(parts.join(QStringLiteral(", ")));
    if (ingredient.density)
        text += QStringLiteral("  density: %1 g/ml\n").arg(ingredient.density->value);
    for (const Measure& measure : ingredient.measures) {
        const QString note = measure.note.empty() ? QString() : QStringLiteral(", %1").arg(fromString(measure.note));
        text += QStringLiteral("  1 %1%2: %3 g (%4)\n")
                    .arg(fromView(factsOf(measure.unit).symbol), note)
                    .arg(measure.grams.value)
                    .arg(fromString(measure.source));
    }
    const auto spread = [](const QString& what, std::optional<double> sd, bool isEstimate) {
        return sd ? QStringLiteral("  spread of %1: %2 g, one standard deviation%3\n")
                        .arg(what)
                        .arg(*sd)
                        .arg(isEstimate ? QStringLiteral(", estimated") : QString())
                  : QString();
    };
    text += spread(QStringLiteral("water"), ingredient.spread.water_sd, ingredient.spread.isEstimate);
    text += spread(QStringLiteral("sugars"), ingredient.spread.sugars_sd, ingredient.spread.isEstimate);
    if (ingredient.energy_kcalPer100g) {
        const QString note =
            ingredient.energyNote.empty() ? QString() : QStringLiteral(" (%1)").arg(fromString(ingredient.energyNote));
        text += QStringLiteral("  energy: %1 kcal in 100 g%2\n").arg(*ingredient.energy_kcalPer100g).arg(note);
    }
    return text + QStringLiteral("  source: %1\n").arg(fromString(ingredient.source));
}

std::vector<const Ingredient*> found(const Catalogue& catalogue, const QString& search)
{
    if (!search.isEmpty())
        return catalogue.search(search.toStdString(), catalogue.all().size());
    std::vector<const Ingredient*> all;
    for (const Ingredient& ingredient : catalogue.all())
        all.push_back(&ingredient);
    return all;
}

Result<std::string> listing(const Arguments& arguments)
{
    const auto catalogue = builtInCatalogue();
    if (!catalogue)
        return failure(catalogue.error());
    QJsonArray list;
    QString text;
    const QString search = arguments.operands().join(QLatin1Char(' '));
    for (const Ingredient* ingredient : found(*catalogue, search)) {
        list.append(json(*ingredient));
        text += lines(*ingredient);
    }
    if (list.isEmpty())
        text = QStringLiteral("No ingredient matches “%1”.\n").arg(search);
    if (arguments.has(QStringLiteral("json")))
        text = QString::fromUtf8(QJsonDocument(
            QJsonObject{{QStringLiteral("format"), QStringLiteral("firn-ingredients")}, {QStringLiteral("version"), 1},
                {QStringLiteral("ingredients"),
                    list}}).toJson());
    return text.toStdString();
}

}  // namespace

int ingredientsCommand(const QStringList& words)
{
    Arguments arguments(QStringLiteral("ingredients [SEARCH] [--json]"),
        QStringLiteral("Lists the catalogue, or what of it a search finds: composition per 100 g, density, measures,\n"
                       "spread, energy and source of each ingredient."),
        {{QStringLiteral("json"), QStringLiteral("Prints JSON.")}});
    return answer(arguments, words, listing);
}

}  // namespace firn::app
