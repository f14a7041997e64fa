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

/// What is to be reached.
struct Aim {
    Symbol wanted;
    bool isNeeded;  // else the mix is right as it is, or has no band: an example
};

Sentence saidOf(const Aim& aim, double now_percent, bool isInBand, const Addition& addition, Grams added)
{
    constexpr double tenthsBelow_g = 10.0;
    const Figure wanted{aim.wanted.value, 1}, grams{added.value, added.value < tenthsBelow_g ? 1 : 0}, now{now_percent, 1};
    if (aim.isNeeded)
        return phrase("To reach {0} % sugars: add {1} g of {2}. Now it has {3} %.", wanted, grams, addition.name, now);
    return isInBand ? phrase("With {3} % sugars it is inside its band. Suppose {0} % is wanted: add {1} g of {2}.", wanted, grams,
               addition.name, now)
                    : phrase("It has {3} % sugars. Suppose {0} % is wanted: add {1} g of {2}.", wanted, grams, addition.name, now);
}

void fillSquare(LessonPage& page, const Analysis& analysis, const Addition& addition, const Aim& aim, Grams added)
{
    const Symbol& wanted = aim.wanted;
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
    const Formula sugarsInMix = mass * Formula(now);
    working.found(
        reached, (isStronger ? sugarsInMix + oneHundredPercent() * amount : sugarsInMix) / Formula(whole), Source::Definition);
    append(page.steps, working.steps());
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

Symbol wantedSymbol(double percent, Sentence meaning) { return {"w", "wanted", percent, "%", std::move(meaning)}; }

Aim aimAtMiddle(LessonPage& page, const TradeBand& band, bool isNeeded)
{
    const Symbol low{"w", "low", percent(band.low), "%",
        phrase("the least sugars that the trade gives to {0}", std::string(nameOf(band.textureClass)))};
    const Symbol high{"w", "high", percent(band.high), "%", phrase("the most")};
    const Symbol wanted = wantedSymbol(50.0 * (band.low.value + band.high.value),
        isNeeded ? phrase("sugars to reach: the middle of the band of the trade")
                 : phrase("sugars to reach: the middle of the band of the trade, as an example"));
    Working working;
    working.found(wanted, (low + Formula(high)) / 2.0, Source::DessertKinds).origin =
        phrase("for this band: {0}", std::string(band.source));
    append(page.steps, working.steps());
    return {wanted, isNeeded};
}

/// With the step to it on the page. A mix outside its band is brought to the middle of it; one inside is right, and takes an example, which is the
/// middle too where that is not what it has already.
Aim addAim(LessonPage& page, const Analysis& analysis)
{
    constexpr double worthShowing_percent = 1.0;
    if (const TradeBand* band = squareBandOf(analysis)) {
        const bool isInside = isIn(*band, analysis.texture.mix);
        const double middle_percent = 50.0 * (band->low.value + band->high.value);
        if (!isInside || std::abs(percent(analysis.shares.sugars) - middle_percent) >= worthShowing_percent)
            return aimAtMiddle(page, *band, !isInside);
    }
    const double example_percent = percent(exampleAbove(analysis.shares.sugars));
    const Symbol wanted = wantedSymbol(example_percent, phrase("sugars to reach: a little more, as an example"));
    Working working;
    working.found(wanted, Number{example_percent, "%", true}, Source::Definition);
    append(page.steps, working.steps());
    return {wanted, false};
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
    const Aim aim = addAim(page, analysis);
    const MassFraction target = fromPercent(aim.wanted.value);
    const bool isTooWeak = analysis.shares.sugars < target;
    const Addition addition = isTooWeak ? Addition{"sucrose", {1.0}} : Addition{"water", {0.0}};
    if (const auto added = amountToReach(target, analysis.mass, analysis.shares.sugars, addition.sugars)) {
        fillSquare(page, analysis, addition, aim, *added);
        page.conclusions.push_back(
            saidOf(aim, percent(analysis.shares.sugars), squareBandOf(analysis) != nullptr, addition, *added));
    }
    for (const Advice& advice : analysis.texture.advice) {
        if (advice.promise == Advice::Promise::SetsInFreezer)
            page.conclusions.emplace_back(advice.sentence);
    }
}

}  // namespace firn
