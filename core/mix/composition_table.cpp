#include "mix/composition_table.h"

#include <algorithm>

namespace firn {

std::vector<CompositionLine> compositionLines(const Composition& composition)
{
    std::vector<CompositionLine> lines;
    const auto add = [&lines](std::string_view label, Grams grams, std::optional<RibbonPart> part, bool isPart) {
        if (grams.value > 0.0)
            lines.push_back({label, grams, part, isPart});
    };
    for (std::size_t i = 0; i < ribbonPartCount; ++i) {
        const auto part = static_cast<RibbonPart>(i);
        std::vector<CompositionLine> constituents;
        Grams sum;
        for (const ConstituentFacts& facts : allConstituents()) {
            const Grams grams = composition.per100g[facts.constituent];
            if (ribbonPartOf(facts.constituent) == part && grams.value > 0.0) {
                constituents.push_back({facts.label, grams, part, false});
                sum += grams;
            }
        }
        const bool isSummed = part == RibbonPart::Sugars && constituents.size() > 1;
        if (isSummed)
            add("Sugars", sum, part, false);
        for (const CompositionLine& line : constituents)
            add(line.label, line.grams, part, isSummed);
        if (part == RibbonPart::Fat)
            add("Milk fat", composition.milkFat, part, true);
    }
    add("Milk solids not fat", composition.milkSolidsNotFat, std::nullopt, true);
    add("Egg yolk solids", composition.yolkSolids, std::nullopt, true);
    return lines;
}

}  // namespace firn
