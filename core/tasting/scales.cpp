#include "tasting/scales.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

/// As many decimals as the number is written with, two at most.
Figure plain(double value)
{
    int decimals = 0;
    for (double scaled = value; decimals < 2 && scaled != static_cast<double>(static_cast<long long>(scaled)); ++decimals)
        scaled *= 10.0;
    return {value, decimals};
}

}  // namespace

const std::vector<TastingScale>& suggestedScales()
{
    // Common practice, no source.
    static const std::vector<TastingScale> scales{
        {"sweetness", 0.0, 10.0, "not sweet", "cloying"},
        {"acid", 0.0, 10.0, "flat", "puckering"},
        {"flavour", 0.0, 10.0, "faint", "strong"},
        {"iciness", 0.0, 10.0, "no crystals", "crushed ice"},
        {"hardness", 0.0, 10.0, "spoon falls in", "spoon bends"},
        {"smoothness", 0.0, 10.0, "sandy", "like silk"},
        {"melt", 0.0, 10.0, "stands for long", "runs at once"},
    };
    return scales;
}

const TastingScale* scaleNamed(const Recipe& recipe, std::string_view name)
{
    const auto found = std::ranges::find(recipe.scales, name, &TastingScale::name);
    return found == recipe.scales.end() ? nullptr : &*found;
}

std::optional<double> scoreOn(const Tasting& tasting, std::string_view scale)
{
    const auto found = std::ranges::find(tasting.scores, scale, &Score::scale);
    return found == tasting.scores.end() ? std::nullopt : std::optional(found->value);
}

std::optional<Sentence> faultOfScore(const TastingScale& scale, double value)
{
    if (value >= scale.from && value <= scale.to)
        return std::nullopt;
    return phrase("{0} is outside the scale of {1}, which goes from {2} to {3}.", plain(value), scale.name, plain(scale.from),
        plain(scale.to));
}

std::optional<Sentence> faultOfScale(const Recipe& recipe, std::size_t place, const TastingScale& scale)
{
    if (scale.name.empty())
        return phrase("A scale needs a name, such as sweetness.");
    for (std::size_t i = 0; i < recipe.scales.size(); ++i)
        if (i != place && recipe.scales[i].name == scale.name)
            return phrase("There is a scale {0} already. Choose another name.", scale.name);
    if (!(std::abs(scale.from) <= largestScore && std::abs(scale.to) <= largestScore))
        return phrase("The scale of {0} goes too far: its ends may be at most {1} from zero.", scale.name, plain(largestScore));
    if (!(scale.from < scale.to))
        return phrase("The scale of {0} must end above {1}, where it begins.", scale.name, plain(scale.from));
    return std::nullopt;
}

Recipe withScale(Recipe recipe, std::size_t place, const TastingScale& scale)
{
    const std::string before = recipe.scales.at(place).name;
    for (Tasting& tasting : recipe.tastings)
        for (Score& score : tasting.scores)
            if (score.scale == before)
                score.scale = scale.name;
    recipe.scales[place] = scale;
    return recipe;
}

Recipe withoutScale(Recipe recipe, std::size_t place)
{
    const std::string gone = recipe.scales.at(place).name;
    for (Tasting& tasting : recipe.tastings)
        std::erase_if(tasting.scores, [&gone](const Score& score) { return score.scale == gone; });
    recipe.scales.erase(recipe.scales.begin() + std::ptrdiff_t(place));
    return recipe;
}

}  // namespace firn
