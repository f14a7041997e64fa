#include "tasting/taster_cautions.h"

#include "analysis/cautions.h"
#include "analysis/preparation.h"
#include "recipe/versions.h"

#include <algorithm>

namespace firn {

namespace {

/// Takes over what is the strongest of several: a number for each would say which is which.
void takeStrongest(Analysis& all, const Analysis& one)
{
    all.alcohol_percentByVolume = std::max(all.alcohol_percentByVolume, one.alcohol_percentByVolume);
    all.shares.alcohol = std::max(all.shares.alcohol, one.shares.alcohol);
    if (one.mix[Constituent::Glycerol] > all.mix[Constituent::Glycerol])
        all.mix = one.mix;
}

/// With the dangers of eating it, without those of making it.
Ingredient asEaten(Ingredient ingredient)
{
    std::erase_if(ingredient.hazards, [](Hazard hazard) {
        return hazard == Hazard::ToxicLeaves || hazard == Hazard::FruitKernels || hazard == Hazard::Elderberry;
    });
    return ingredient;
}

}  // namespace

Sentence beforeTasting()
{
    return phrase("Tell everybody what is in it before they taste, and ask about allergies: a code hides the version, never that.");
}

std::vector<Sentence> tasterCautions(const Recipe& recipe, const Catalogue& catalogue, const std::vector<std::string>& versions)
{
    Analysis strongest;
    Recipe rows;  // that are there at all
    std::vector<Ingredient> eaten;
    for (const std::string& id : versions) {
        const Version* version = versionNamed(recipe, id);
        if (!version && !id.empty())
            continue;
        const Recipe& tasted = version ? version->recipe : recipe;
        takeStrongest(strongest, analyse(tasted, catalogue, conditionsOf(tasted)));
        const Preparation preparation = prepared(tasted, catalogue);
        for (const Ingredient* ingredient : preparation.ingredients)
            eaten.push_back(asEaten(*ingredient));
        rows.components.insert(rows.components.end(), tasted.components.begin(), tasted.components.end());
    }
    std::vector<Sentence> told;
    if (eaten.empty())
        return told;
    std::vector<const Ingredient*> ingredients;
    for (const Ingredient& ingredient : eaten)
        ingredients.push_back(&ingredient);
    for (Caution& caution : cautionsFor(rows, strongest, ingredients))
        told.push_back(std::move(caution.sentence));
    return told;
}

}  // namespace firn
