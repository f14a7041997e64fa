#include "correction/causes.h"

#include "analysis/measured_brix.h"
#include "readings/readings.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

// Up to here a deviation passes for chance: 3 standard deviations are one in 370, by the normal distribution.
constexpr double rarest_sd = 3.0;

// How odd a slip is, on the scale of standard deviations: judgement. Leaving a row out or taking it twice is as odd as 2; weighing wrongly by
// next to nothing likewise, by the largest slip as odd as 3.
constexpr double slipOddity_sd = 2.0;
constexpr double largestSlip = 0.25;  // of the row's amount: judgement

/// One row in the mix as it was weighed out, and what the mix would have to be.
struct Question {
    Grams mass;
    Grams sugars;
    MassFraction wanted;  // the share of sugars, before any losses, that explains the reading
    MassFraction tolerance;

    Grams missing() const { return mass * wanted.value - sugars; }
};

struct RowInMix {
    std::size_t index;
    const Row& row;
    const PreparedRow& prepared;
    Composition composition;

    Grams mass() const { return prepared.analysis.mass; }
    Mix gram() const
    {
        Mix one;
        one.add(composition, {1.0});
        return one;
    }
};

std::string nameOf(const RowInMix& row) { return row.prepared.analysis.ingredientName; }

/// The composition with this share of sugars, in their own proportions, in place of water; none where that leaves no water.
std::optional<Composition> withSugars(const Composition& composition, Grams before, Grams after)
{
    Composition result = composition;
    for (const Constituent sugar : sugarKinds)
        result.per100g[sugar] = composition.per100g[sugar] * (after / before);
    // Its figures are those of the source, which need not add up to 100 g.
    result.per100g[Constituent::Water] += (before - after) * (composition.per100g.total().value / 100.0);
    if (after.value < 0.0 || result.per100g[Constituent::Water].value <= 0.0)
        return std::nullopt;
    return result;
}

std::optional<Cause> straying(const RowInMix& row, const Question& question)
{
    if (row.row.measuredBrix || !row.prepared.ingredient->spread.sugars_sd)
        return std::nullopt;
    const double sd_gPer100g = *row.prepared.ingredient->spread.sugars_sd;
    const Grams before = sugars(row.gram()) * 100.0;
    const Grams after = before + question.missing() * (100.0 / row.mass().value);
    const double deviations = std::abs((after - before).value) / sd_gPer100g;
    if (!(deviations <= rarest_sd) || before.value <= 0.0)
        return std::nullopt;
    const auto real = withSugars(row.composition, before, after);
    if (!real)
        return std::nullopt;
    Mix sample;
    sample.add(*real, {100.0});
    const auto reading = readings(sample, {20.0});
    if (!reading || !reading->refractometer_brix)
        return std::nullopt;
    Row asItWas = row.row;
    asItWas.measuredBrix = *reading->refractometer_brix;
    return Cause{CauseKind::Spread, row.index, asItWas, deviations,
        phrase("“{0}” with {1} % sugar instead of {2} % explains it, at {3} standard deviations: it would read {4} °Bx.",
            nameOf(row), Figure{after.value, 1}, Figure{before.value, 1}, Figure{deviations, 1},
            Figure{*reading->refractometer_brix, 1})};
}

/// The row taken this many times instead of once.
std::optional<Cause> miscounted(const RowInMix& row, const Question& question, double times)
{
    const Grams more = row.mass() * (times - 1.0);
    const Mix gram = row.gram();
    const Grams mass = question.mass + more * gram.mass().value;
    if (mass.value <= 0.0)
        return std::nullopt;
    const MassFraction found{(question.sugars + more * sugars(gram).value) / mass};
    // A row that hardly moves the mix explains nothing, however near it happens to come.
    const double moved = found.value - question.sugars / question.mass;
    const double toMove = question.wanted.value - question.sugars / question.mass;
    if (std::abs((found - question.wanted).value) > question.tolerance.value || moved / toMove < 0.5)
        return std::nullopt;
    if (times == 0.0)
        return Cause{CauseKind::LeftOut, row.index, std::nullopt, slipOddity_sd,
            phrase("“{0}” left out explains it: the mix would then hold {1} % sugar.", nameOf(row), Figure{percent(found), 1})};
    Row asItWas = row.row;
    asItWas.amount.value *= times;
    return Cause{CauseKind::Doubled, row.index, asItWas, slipOddity_sd,
        phrase("“{0}” taken twice explains it: the mix would then hold {1} % sugar.", nameOf(row), Figure{percent(found), 1})};
}

std::optional<Cause> misweighed(const RowInMix& row, const Question& question)
{
    const Mix gram = row.gram();
    const Grams more = question.missing() / (sugars(gram).value - question.wanted.value * gram.mass().value);
    const double slip = std::abs(more / row.mass());
    if (!(slip <= largestSlip))
        return std::nullopt;
    Row asItWas = row.row;
    asItWas.amount.value *= 1.0 + more / row.mass();
    const Figure off{std::abs(more.value), 0};
    return Cause{CauseKind::WrongAmount, row.index, asItWas, slipOddity_sd + (rarest_sd - slipOddity_sd) * slip / largestSlip,
        more.value > 0.0 ? phrase("{0} g too much “{1}” would explain it.", off, nameOf(row))
                         : phrase("{0} g too little “{1}” would explain it.", off, nameOf(row))};
}

}  // namespace

std::optional<Composition> compositionOf(const Row& row, const PreparedRow& prepared)
{
    if (!prepared.ingredient)
        return std::nullopt;
    if (row.measuredBrix) {
        if (const auto measured = measuredComposition(prepared.ingredient->composition, *row.measuredBrix))
            return *measured;
    }
    return prepared.ingredient->composition;
}

MassFraction readingTolerance(const MeasuredState& measured)
{
    constexpr MassFraction division{0.002};
    return std::max(measured.sugars_sd * 2.0, division);
}

std::vector<Cause> causesOf(const Component& component, const PreparedComponent& prepared, const MeasuredState& measured)
{
    const Mix& mix = prepared.mix();
    const MassFraction tolerance = readingTolerance(measured);
    if (!measured.sugars || std::abs((*measured.sugars - shareOf(sugars(mix), mix)).value) <= tolerance.value)
        return {};
    const Grams weighedOut = sugars(prepared.weighedOut);
    const double kept = weighedOut.value > 0.0 ? sugars(mix) / weighedOut : 1.0;
    if (kept <= 0.0)
        return {};
    const Grams missing = (mix.mass() * measured.sugars->value - sugars(mix)) / kept;
    const Question question{
        prepared.weighedOut.mass(), weighedOut, MassFraction{(weighedOut + missing) / prepared.weighedOut.mass()}, tolerance};

    std::vector<Cause> causes;
    const auto note = [&causes](std::optional<Cause> cause) {
        if (cause)
            causes.push_back(std::move(*cause));
    };
    for (std::size_t i = 0; i < prepared.rows.size(); ++i) {
        const auto composition = compositionOf(component.rows[i], prepared.rows[i]);
        if (!composition || prepared.rows[i].analysis.mass.value <= 0.0)
            continue;
        const RowInMix row{i, component.rows[i], prepared.rows[i], *composition};
        note(straying(row, question));
        if (component.rows[i].amount.unit == Unit::PercentOfMix)
            continue;
        note(miscounted(row, question, 0.0));
        note(miscounted(row, question, 2.0));
        note(misweighed(row, question));
    }
    std::ranges::stable_sort(causes, {}, &Cause::oddity);
    return causes;
}

}  // namespace firn
