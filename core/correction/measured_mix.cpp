#include "correction/measured_mix.h"

namespace firn {

Result<Mix> measuredMix(const Mix& recipe, MassFraction sugarsWanted, std::optional<MassFraction> alcohol)
{
    if (recipe.isEmpty())
        return failure(phrase("Nothing in this component has a weight yet. Give it rows with amounts first."));
    if (!(sugarsWanted.value >= 0.0) || (alcohol && !(alcohol->value >= 0.0)))
        return failure(phrase("Sugar and alcohol cannot be negative. Measure again."));
    const Grams mass = recipe.mass();
    const Grams before = sugars(recipe);
    const Grams after = mass * sugarsWanted.value;
    Mix result = recipe;
    for (const Constituent sugar : sugarKinds)
        result.amounts[sugar] = before.value > 0.0 ? recipe[sugar] * (after / before) : Grams{};
    if (before.value <= 0.0)
        result.amounts[Constituent::Sucrose] = after;
    if (alcohol)
        result.amounts[Constituent::Ethanol] = mass * alcohol->value;
    result.amounts[Constituent::Water] = {};
    const Grams water = mass - result.mass();
    if (!(water.value > 0.0))
        return failure(phrase(
            "{0} % sugar leaves no water beside what else is in this mix. Measure again.", Figure{percent(sugarsWanted), 1}));
    result.amounts[Constituent::Water] = water;
    return result;
}

}  // namespace firn
