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

Symbol amountSymbol(const Amount& amount)
{
    return {"a", "", amount.value, std::string(factsOf(amount.unit).symbol), phrase("amount that the row asks for")};
}

Symbol volumeSymbol(const Amount& amount)
{
    return {"V", "row", millilitres(amount), "mL", phrase("volume that the row asks for")};
}

Symbol measureSymbol(const Measure& measure)
{
    return {"u", "1", measure.grams.value, "g/" + std::string(factsOf(measure.unit).symbol), phrase("weight of one such measure")};
}

void recordVolume(Working& working, const Amount& amount)
{
    const UnitFacts& unit = factsOf(amount.unit);
    const Symbol size{"v", "unit", unit.size, "mL/" + std::string(unit.symbol), phrase("volume of the unit")};
    if (unit.size != 1.0)
        working.found(volumeSymbol(amount), amountSymbol(amount) * size, Source::KitchenUnits).origin =
            phrase("{0}", std::string(unit.source));
}

Weighing byDensity(const Amount& amount, GramsPerMillilitre density, const std::string& source, Working* working)
{
    Weighing result{{millilitres(amount) * density.value},
        phrase("density {0} g/mL, {1}", Figure{density.value, decimalsOf(density.value)}, source)};
    if (working) {
        recordVolume(*working, amount);
        const Symbol rho{"ρ", "", density.value, "g/mL", phrase("density")};
        working->found(rowMass(result.mass), volumeSymbol(amount) * rho, Source::Catalogue).origin = result.how;
    }
    return result;
}

Weighing byMeasure(const Amount& amount, const Measure& measure, Sentence how, Working* working)
{
    Weighing result{measure.grams * amount.value, std::move(how)};
    if (working)
        working->found(rowMass(result.mass), amountSymbol(amount) * measureSymbol(measure), Source::Catalogue).origin = result.how;
    return result;
}

Weighing byNearestMeasure(const Amount& amount, const Measure& measure, Working* working)
{
    const double size_ml = factsOf(measure.unit).size;
    Weighing result{measure.grams * (millilitres(amount) / size_ml), scaledFrom(measure)};
    if (working) {
        recordVolume(*working, amount);
        const Symbol size{"V", "1", size_ml, "mL", phrase("volume of the measure that was weighed")};
        const Symbol weight{"m", "1", measure.grams.value, "g", phrase("weight of that measure")};
        working->found(rowMass(result.mass), weight * volumeSymbol(amount) / size, Source::Catalogue).origin = result.how;
    }
    return result;
}

Result<Weighing> weighVolume(const Amount& amount, const Ingredient& ingredient, std::string_view note, Working* working)
{
    const bool isMetric = amount.unit == Unit::Millilitre || amount.unit == Unit::Litre;
    if (isMetric && ingredient.density) {
        return byDensity(amount, *ingredient.density, ingredient.densitySource, working);
    }
    if (const auto* own = measureOf(ingredient, amount.unit, note)) {
        return byMeasure(amount, *own, weighedBy(*own), working);
    }
    if (const auto* nearest = nearestMeasure(ingredient, millilitres(amount), note)) {
        return byNearestMeasure(amount, *nearest, working);
    }
    if (ingredient.density) {
        return byDensity(amount, *ingredient.density, ingredient.densitySource, working);
    }
    return failure(phrase("{0} has no known density or cup weight. Give it in grams.", ingredient.name));
}

Result<Weighing> weighPieces(const Amount& amount, const Ingredient& ingredient, std::string_view note, Working* working)
{
    const auto* piece = measureOf(ingredient, Unit::Piece, note);
    if (piece == nullptr) {
        return failure(phrase("The weight of one piece of {0} is not known. Give it in grams.", ingredient.name));
    }
    return byMeasure(amount, *piece,
        piece->note.empty() ? phrase("piece weight, {0}", piece->source)
                            : phrase("piece weight ({0}), {1}", piece->note, piece->source),
        working);
}

}  // namespace

Result<Weighing> weigh(const Amount& amount, const Ingredient& ingredient, std::string_view note, Working* working)
{
    switch (factsOf(amount.unit).dimension) {
    case Dimension::Volume:
        return weighVolume(amount, ingredient, note, working);
    case Dimension::Count:
        return weighPieces(amount, ingredient, note, working);
    case Dimension::Share:
        return failure(
            phrase("A share of the mix can only be weighed together with the other rows. Give {0} in grams.", ingredient.name));
    case Dimension::Mass:
        break;
    }
    return *weighWithoutIngredient(amount, working);
}

std::optional<Weighing> weighWithoutIngredient(const Amount& amount, Working* working)
{
    const auto& facts = factsOf(amount.unit);
    if (facts.dimension != Dimension::Mass)
        return std::nullopt;
    Weighing result{{amount.value * facts.size}, phrase("weighed")};
    if (working) {
        const Symbol unit{"u", "", facts.size, "g/" + std::string(facts.symbol), phrase("grams in one unit")};
        if (facts.size == 1.0)
            working->found(rowMass(result.mass), Number{result.mass.value, "g", true}, Source::Recipe).origin =
                phrase("weighed, as written");
        else
            working->found(rowMass(result.mass), amountSymbol(amount) * Formula(unit), Source::KitchenUnits).origin = result.how;
    }
    return result;
}

Symbol rowMass(Grams mass) { return {"m", "row", mass.value, "g", phrase("mass of the row")}; }

}  // namespace firn
