#include "ingredients/weighing.h"

#include "ingredients/measure_note.h"

#include <cmath>

namespace firn {

namespace {

double millilitres(const Amount& amount) { return amount.value * factsOf(amount.unit).size; }

/// The measure of this unit that the note names best, or else the first.
const Measure* measureOf(const Ingredient& ingredient, Unit unit, std::string_view note)
{
    const Measure* chosen = nullptr;
    std::size_t mostWords = 0;
    for (const auto& measure : ingredient.measures) {
        if (measure.unit != unit) {
            continue;
        }
        const std::size_t words = wordsThatName(measure, note);
        if (chosen == nullptr || words > mostWords) {
            chosen = &measure;
            mostWords = words;
        }
    }
    return chosen;
}

/// The weighed measure whose volume is nearest to this one: a heap of many spoons packs more like a cup than like a spoon.
const Measure* nearestMeasure(const Ingredient& ingredient, double volume_ml, std::string_view note)
{
    const Measure* nearest = nullptr;
    double least = HUGE_VAL;
    for (const auto& measure : ingredient.measures) {
        const auto& facts = factsOf(measure.unit);
        const double distance = std::abs(std::log(volume_ml / facts.size));
        if (facts.dimension == Dimension::Volume && distance < least) {
            nearest = &measure;
            least = distance;
        }
    }
    return nearest == nullptr ? nullptr : measureOf(ingredient, nearest->unit, note);
}

/// "sliced; USDA SR28, NDB 09316"
std::string provenance(const Measure& measure)
{
    return measure.note.empty() ? measure.source : measure.note + "; " + measure.source;
}

bool isCup(Unit unit) { return unit == Unit::Cup || unit == Unit::MetricCup || unit == Unit::ImperialCup; }

Sentence weighedBy(const Measure& measure)
{
    return isCup(measure.unit) ? phrase("cup weight, {0}", provenance(measure))
                               : phrase("weight of one {0}, {1}", std::string(factsOf(measure.unit).symbol), provenance(measure));
}

Sentence scaledFrom(const Measure& measure)
{
    return isCup(measure.unit)
               ? phrase("cup weight, {0}, scaled by volume", provenance(measure))
               : phrase("weight of one {0}, {1}, scaled by volume", std::string(factsOf(measure.unit).symbol), provenance(measure));
}

/// As many decimals as the catalogue gives, at most four.
int decimalsOf(double value)
{
    int decimals = 0;
    for (double scaled = value; decimals < 4 && std::abs(scaled - std::round(scaled)) > 1e-6; ++decimals) {
        scaled *= 10.0;
    }
    return decimals;
}

Weighing byDensity(const Amount& amount, GramsPerMillilitre density, const std::string& source)
{
    return {{millilitres(amount) * density.value},
        phrase("density {0} g/mL, {1}", Figure{density.value, decimalsOf(density.value)}, source)};
}

Result<Weighing> weighVolume(const Amount& amount, const Ingredient& ingredient, std::string_view note)
{
    const bool isMetric = amount.unit == Unit::Millilitre || amount.unit == Unit::Litre;
    if (isMetric && ingredient.density) {
        return byDensity(amount, *ingredient.density, ingredient.densitySource);
    }
    if (const auto* own = measureOf(ingredient, amount.unit, note)) {
        return Weighing{own->grams * amount.value, weighedBy(*own)};
    }
    if (const auto* nearest = nearestMeasure(ingredient, millilitres(amount), note)) {
        return Weighing{nearest->grams * (millilitres(amount) / factsOf(nearest->unit).size), scaledFrom(*nearest)};
    }
    if (ingredient.density) {
        return byDensity(amount, *ingredient.density, ingredient.densitySource);
    }
    return failure(phrase("{0} has no known density or cup weight: give it in grams.", ingredient.name));
}

Result<Weighing> weighPieces(const Amount& amount, const Ingredient& ingredient, std::string_view note)
{
    const auto* piece = measureOf(ingredient, Unit::Piece, note);
    if (piece == nullptr) {
        return failure(phrase("The weight of one piece of {0} is not known: give it in grams.", ingredient.name));
    }
    const Grams mass = piece->grams * amount.value;
    return piece->note.empty() ? Weighing{mass, phrase("piece weight, {0}", piece->source)}
                               : Weighing{mass, phrase("piece weight ({0}), {1}", piece->note, piece->source)};
}

}  // namespace

Result<Weighing> weigh(const Amount& amount, const Ingredient& ingredient, std::string_view note)
{
    switch (factsOf(amount.unit).dimension) {
    case Dimension::Volume:
        return weighVolume(amount, ingredient, note);
    case Dimension::Count:
        return weighPieces(amount, ingredient, note);
    case Dimension::Share:
        return failure(
            phrase("A share of the mix can only be weighed together with the other rows: give {0} in grams.", ingredient.name));
    case Dimension::Mass:
        break;
    }
    return *weighWithoutIngredient(amount);
}

std::optional<Weighing> weighWithoutIngredient(const Amount& amount)
{
    const auto& facts = factsOf(amount.unit);
    return facts.dimension == Dimension::Mass ? std::optional(Weighing{{amount.value * facts.size}, phrase("weighed")})
                                              : std::nullopt;
}

}  // namespace firn
