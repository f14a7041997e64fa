#include "analysis/batch_size.h"

#include "analysis/analysis.h"
#include "analysis/preparation.h"
#include "analysis/row_weight.h"
#include "recipe/scaling.h"

namespace firn {

namespace {

Analysis analysed(const Recipe& recipe, const Catalogue& catalogue, std::optional<std::size_t> component)
{
    return analyse(recipe, catalogue, conditionsOf(recipe, component), component);
}

Analysis wholeOf(const Recipe& recipe, const Catalogue& catalogue) { return analysed(recipe, catalogue, {}); }

/// The factor that each kind of size asks for; zero where one of its figures is zero or less.
struct FactorOf {
    const Analysis& whole;

    Result<double> operator()(const ByFactor& by) const { return by.factor; }
    Result<double> operator()(const ByMass& by) const { return by.mass / whole.mass; }
    Result<double> operator()(const ByVolume& by) const { return by.volume / whole.finishedVolume; }

    Result<double> operator()(const ByPortions& by) const
    {
        if (by.count <= 0.0)
            return 0.0;
        if (const auto* mass = std::get_if<Grams>(&by.each))
            return (*this)(ByMass{by.count * *mass});
        return (*this)(ByVolume{by.count * std::get<Millilitres>(by.each)});
    }

    Result<double> operator()(const ByPan& by) const
    {
        constexpr double mm3PerMillilitre = 1000.0;
        if (by.length.value <= 0.0 || by.width.value <= 0.0 || by.depth.value <= 0.0)
            return 0.0;
        return (*this)(ByVolume{{by.length.value * by.width.value * by.depth.value / mm3PerMillilitre}});
    }

    Result<double> operator()(const ByIngredient& by) const
    {
        if (by.component >= whole.components.size() || by.row >= whole.components[by.component].size())
            return failure(phrase("The recipe has no such row any more. Choose another ingredient."));
        const RowAnalysis& row = whole.components[by.component][by.row];
        if (row.mass.value <= 0.0)
            return failure(
                phrase("“{0}” has no weight. Give it an amount that can be weighed, or choose another ingredient.", row.text));
        return by.available / row.mass;
    }
};

Result<double> factorFor(const BatchSize& size, const Recipe& recipe, const Analysis& whole)
{
    if (whole.mix.isEmpty())
        return failure(phrase("Nothing in the recipe has a weight yet. Give it rows with amounts first."));
    const Result<double> factor = std::visit(FactorOf{whole}, size);
    if (!factor)
        return factor;
    if (!(*factor > 0.0))
        return failure(phrase("Enter an amount greater than zero."));
    if (*factor > largestBatchFactor)
        return failure(phrase("That is more than {0} times the recipe. Ask for less.", Figure{largestBatchFactor, 0}));
    for (const Component& component : recipe.components) {
        for (const Row& row : component.rows) {
            if (row.amount.value * *factor > largestAmount)
                return failure(phrase("An amount cannot be larger than {0}, as that of “{1}” would be. Ask for less.",
                    Figure{largestAmount, 0}, row.ingredient));
        }
    }
    return factor;
}

/// What amounts of a row's ingredient weigh; a mix has only the density that the row itself shows.
MassOf massOfRow(const Row& row, const PreparedRow& prepared)
{
    return [&row, &prepared](const Amount& amount) -> std::optional<Grams> {
        if (const auto mass = weighWithoutIngredient(amount))
            return mass->mass;
        if (prepared.ingredient) {
            const auto mass = weightOf(amount, row, *prepared.ingredient);
            return mass ? std::optional(mass->mass) : std::nullopt;
        }
        const UnitFacts &unit = factsOf(amount.unit), &written = factsOf(row.amount.unit);
        if (unit.dimension != written.dimension || prepared.analysis.mass.value <= 0.0)
            return std::nullopt;
        return prepared.analysis.mass * (amount.value * unit.size / (row.amount.value * written.size));
    };
}

/// All rows of the exact batch rounded, so that each has the factor times its mass in the recipe.
std::vector<BatchRow> roundedRows(const Recipe& recipe, const Recipe& exact, double factor, const Rounding& rounding,
    const std::vector<PreparedComponent>& prepared)
{
    std::vector<BatchRow> result;
    for (std::size_t component = 0; component < recipe.components.size(); ++component) {
        for (std::size_t i = 0; i < recipe.components[component].rows.size(); ++i) {
            const Row& row = recipe.components[component].rows[i];
            const PreparedRow& weighed = prepared[component].rows[i];
            const Grams mass = weighed.analysis.mass * factor;
            const bool isId = row.ingredient == weighed.analysis.ingredientId;
            result.push_back({component, i, isId ? weighed.analysis.ingredientName : row.ingredient, row.amount,
                rounded(exact.components[component].rows[i].amount, rounding, mass.value > 0.0 ? std::optional(mass) : std::nullopt,
                    massOfRow(row, weighed))});
        }
    }
    return result;
}

RoundingEffect roundingEffect(const Analysis& exact, const Analysis& rounded)
{
    RoundingEffect effect;
    if (exact.freezing.freezingPoint && rounded.freezing.freezingPoint)
        effect.freezingPoint = rounded.freezing.freezingPoint->temperature - exact.freezing.freezingPoint->temperature;
    effect.sugars_percentPoints = percent(rounded.shares.sugars - exact.shares.sugars);
    effect.mass = rounded.mass - exact.mass;
    return effect;
}

}  // namespace

Result<double> factorFor(const BatchSize& size, const Recipe& recipe, const Catalogue& catalogue)
{
    return factorFor(size, recipe, wholeOf(recipe, catalogue));
}

RoundingEffect roundingEffect(
    const Recipe& exact, const Recipe& rounded, const Catalogue& catalogue, std::optional<std::size_t> component)
{
    return roundingEffect(analysed(exact, catalogue, component), analysed(rounded, catalogue, component));
}

Result<Batch> batchOf(const BatchSize& size, const Rounding& rounding, const Recipe& recipe, const Catalogue& catalogue,
    std::optional<std::size_t> component)
{
    const auto factor = factorFor(size, recipe, catalogue);
    if (!factor)
        return failure(factor.error());
    const Recipe exact = scaled(recipe, *factor);
    Batch batch;
    batch.factor = *factor;
    batch.recipe = exact;
    batch.rows = roundedRows(recipe, exact, *factor, rounding, prepared(recipe, catalogue).components);
    for (const BatchRow& row : batch.rows)
        batch.recipe.components[row.component].rows[row.row].amount = row.after.amount;
    const Analysis made = wholeOf(batch.recipe, catalogue);
    batch.mass = made.mass;
    batch.finishedVolume = made.finishedVolume;
    batch.rounding = roundingEffect(exact, batch.recipe, catalogue, component);
    return batch;
}

}  // namespace firn
