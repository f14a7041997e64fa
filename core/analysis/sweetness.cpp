#include "analysis/sweetness.h"

#include "mix/symbols.h"

#include <array>

namespace firn {

namespace {

struct Sweetness {
    Constituent constituent;
    double relative;  // sucrose = 1, by mass
};

// From a technical memorandum on the texture of sorbets (TM 2042), except where marked. Other sources scatter: fructose 1.1 to 1.8, glucose
// 0.6 to 0.8, lactose 0.15 to 0.4.
constexpr std::array table{
    Sweetness{Constituent::Sucrose, 1.0},
    Sweetness{Constituent::Glucose, 0.8},
    Sweetness{Constituent::Fructose, 1.7},
    Sweetness{Constituent::Galactose, 0.3},
    Sweetness{Constituent::Lactose, 0.2},
    Sweetness{Constituent::Maltose, 0.4},           // from memory
    Sweetness{Constituent::Trehalose, 0.45},        // from memory
    Sweetness{Constituent::Oligosaccharides, 0.2},  // makes a DE 42 syrup's solids 0.3
    Sweetness{Constituent::Sorbitol, 0.5},
    Sweetness{Constituent::Xylitol, 1.0},      // from memory
    Sweetness{Constituent::Erythritol, 0.65},  // from memory
    Sweetness{Constituent::Maltitol, 0.9},
    Sweetness{Constituent::Glycerol, 0.8},
};

void record(Working& working, const Mix& mix, double sweetness_percent)
{
    std::vector<SeriesTerm> terms;
    for (const Sweetness& sweetness : table) {
        const Symbol mass = massOf(sweetness.constituent, mix, working);
        const MixPart& part = partOf(sweetness.constituent);
        if (mass.value > 0.0)
            terms.push_back({part.label,
                oneHundredPercent() * (mass / massOfMix(mix, working))
                    * Symbol{"f", part.subscript, sweetness.relative, "", phrase("sweetness of {0} against sucrose", part.label)}});
    }
    WorkingStep& step = working.found({"S", "", sweetness_percent, "%", phrase("sucrose solution that is as sweet")},
        series("i",
            oneHundredPercent() * (generalMass() / massOfMix(mix, working))
                * Symbol{"f", "i", 0.0, "", phrase("sweetness of each against sucrose")},
            std::move(terms)),
        Source::Sweetness);
    step.range = phrase("For mixes as strong as desserts are; weaker ones taste less sweet when cold.");
    step.uncertainty = phrase("A fifth of the figure either way: sources scatter, and so do tongues.");
}

}  // namespace

double sweetnessAsSucrose_percent(const Mix& mix, Working* working)
{
    double sum = 0.0;
    for (const Sweetness& sweetness : table)
        sum += percent(shareOf(mix[sweetness.constituent], mix)) * sweetness.relative;
    if (working)
        record(*working, mix, sum);
    return sum;
}

}  // namespace firn
