#include "explain/lesson_pages.h"
#include "explain/lesson_steps.h"
#include "mix/symbols.h"
#include "syrup/pearson.h"
#include "texture/trade_bands.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

/// What is added, as the far corner of a Pearson square.
struct Addition {
    std::string name;
    MassFraction sugars;
};

void fillSquare(LessonPage& page, const Analysis& analysis, const Addition& addition, const Symbol& wanted, Grams added)
{
    const Symbol mass = massOfMix(analysis.mix, Working());
    const Symbol now{"w", "sugars", percent(analysis.shares.sugars), "%", phrase("sugars in the mix now"), "percent.sugars"};
    const double strength_percent = percent(addition.sugars);
    const bool isStronger = strength_percent > wanted.value;
    const Formula strength = Number{strength_percent, "%"};
    const auto apart = [](const Formula& high, const Formula& low) { return high - low; };

    const Symbol partsOfMix{"p", "mix", std::abs(strength_percent - wanted.value), "%",
        phrase("parts of the mix: from {0} to what is wanted", addition.name)};
    const Symbol partsAdded{"p", addition.name, std::abs(wanted.value - now.value), "%",
        phrase("parts of {0}: from the mix to what is wanted", addition.name)};
    const Symbol amount{"m", addition.name, added.value, "g", phrase("{0} to add", addition.name)};
    const Symbol whole{"m", "new", mass.value + added.value, "g", phrase("mass with it")};
    const Symbol reached{"w", "new", wanted.value, "%", phrase("sugars with it")};

    Working working;
    working.found(partsOfMix, isStronger ? apart(strength, wanted) : Formula(wanted), Source::Definition);
    working.found(partsAdded, isStronger ? apart(wanted, now) : apart(now, wanted), Source::Definition);
    working.found(amount, mass * (partsAdded / Formula(partsOfMix)), Source::Definition);
    working.found(whole, mass + Formula(amount), Source::Definition);
    const Formula sugarsInMix = mass * (now / oneHundredPercent());
    working.found(reached, oneHundredPercent() * ((isStronger ? sugarsInMix + Formula(amount) : sugarsInMix) / Formula(whole)),
        Source::Definition);
    page.steps.insert(page.steps.end(), working.steps().begin(), working.steps().end());
    page.conclusions.push_back(phrase("To reach {0} % sugars: add {1} g of {2}. Now it has {3} %.", Figure{wanted.value, 1},
        Figure{added.value, 0}, addition.name, Figure{now.value, 1}));
}

/// The band, where it counts the sugars that a Pearson square counts: all of them, and no alcohol beside.
const TradeBand* squareBandOf(const Analysis& analysis)
{
    const TradeBand* band = tradeBandOf(analysis.texture.textureClass);
    if (!band)
        return nullptr;
    const CountedSugars counted = countedSugars(analysis.texture.mix, band->counts);
    return counted.milkSugar.value > 0.0 || counted.asSoftAsSugar.value > 0.0 ? nullptr : band;
}

constexpr MassFraction strongestExample{0.60};  // more does not dissolve in the cold

/// A full percent, one to two points above.
MassFraction exampleAbove(MassFraction sugars) { return fromPercent(std::floor(percent(sugars)) + 2.0); }

/// What is to be reached, with the step to it on the page.
Symbol addWanted(LessonPage& page, const Analysis& analysis)
{
    const TextureClass textureClass = analysis.texture.textureClass;
    const std::string kind(nameOf(textureClass));
    Working working;
    if (const TradeBand* band = squareBandOf(analysis)) {
        const Symbol low{"w", "low", percent(band->low), "%", phrase("the least sugars that the trade gives to {0}", kind)};
        const Symbol high{"w", "high", percent(band->high), "%", phrase("the most")};
        Symbol wanted{"w", "wanted", 50.0 * (band->low.value + band->high.value), "%",
            phrase("sugars to reach: the middle of the band of the trade")};
        working.found(wanted, (low + Formula(high)) / 2.0, Source::DessertKinds).origin =
            phrase("for this band: {0}", std::string(band->source));
        append(page.steps, working.steps());
        return wanted;
    }
    const double example_percent = percent(exampleAbove(analysis.shares.sugars));
    Symbol wanted{"w", "wanted", example_percent, "%", phrase("sugars to reach: a little more, as an example")};
    working.found(wanted, Number{example_percent, "%", true}, Source::Definition);
    append(page.steps, working.steps());
    return wanted;
}

}  // namespace

void addVerdicts(LessonPage& page, const std::vector<Sentence>& sentences)
{
    for (const Sentence& each : sentences)
        page.conclusions.push_back(verdict(each));
}

bool canBeCorrected(const Analysis& analysis)
{
    return squareBandOf(analysis) || (sugars(analysis.mix).value > 0.0 && exampleAbove(analysis.shares.sugars) < strongestExample);
}

void fillCorrection(LessonPage& page, const ExplainedAnalysis& explained)
{
    const Analysis& analysis = explained.analysis;
    const Symbol wanted = addWanted(page, analysis);
    const MassFraction target = fromPercent(wanted.value);
    const bool isTooWeak = analysis.shares.sugars < target;
    const Addition addition = isTooWeak ? Addition{"sucrose", {1.0}} : Addition{"water", {0.0}};
    const auto added = amountToReach(target, analysis.mass, analysis.shares.sugars, addition.sugars);
    constexpr double tooLittleToWeigh_g = 0.5;
    if (added && added->value >= tooLittleToWeigh_g)
        fillSquare(page, analysis, addition, wanted, *added);
    else
        page.conclusions.push_back(verdict(phrase("To reach {0} % sugars: the mix is there already, it has {1} %.",
            Figure{wanted.value, 1}, Figure{percent(analysis.shares.sugars), 1})));
    for (const Advice& advice : analysis.texture.advice) {
        if (advice.promise == Advice::Promise::SetsInFreezer)
            page.conclusions.emplace_back(advice.sentence);
    }
}

}  // namespace firn
