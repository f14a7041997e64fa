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
// next to nothing likewise, by a quarter of the row as odd as 3, and so on. Weighing nearly none of a row, or nearly twice as much, is the end.
constexpr double slipOddity_sd = 2.0;
constexpr double oddSlip = 0.25;
constexpr double largestSlip = 0.9;

// Water that goes unnoticed in heating and waiting; boiling down on purpose is a step. Judgement.
constexpr double mostWaterLost = 0.25;  // of the mix

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

/// Standard deviation of the sugars that a row carries; none where the table gives none, or they were measured.
std::optional<Grams> sugarsSpread(const RowInMix& row)
{
    const auto& sd_gPer100g = row.prepared.ingredient->spread.sugars_sd;
    if (row.row.measuredBrix || !sd_gPer100g || *sd_gPer100g <= 0.0)
        return std::nullopt;
    return row.mass() * (*sd_gPer100g / 100.0);
}

/// A row that carries more or less sugar than the table says.
struct OtherSugars {
    Row asItWas;
    double before_gPer100g;
    double after_gPer100g;
};

std::optional<OtherSugars> withMoreSugars(const RowInMix& row, Grams more)
{
    const Grams before = sugars(row.gram()) * 100.0;
    const Grams after = before + more * (100.0 / row.mass().value);
    const auto real = before.value > 0.0 ? withSugars(row.composition, before, after) : std::nullopt;
    if (!real)
        return std::nullopt;
    Mix sample;
    sample.add(*real, {100.0});
    const auto reading = readings(sample, {20.0});
    if (!reading || !reading->refractometer_brix)
        return std::nullopt;
    Row asItWas = row.row;
    asItWas.measuredBrix = *reading->refractometer_brix;
    return OtherSugars{std::move(asItWas), before.value, after.value};
}

std::optional<Cause> straying(const RowInMix& row, const Question& question)
{
    const auto spread = sugarsSpread(row);
    if (!spread)
        return std::nullopt;
    const double deviations = std::abs(question.missing() / *spread);
    const auto real = deviations <= rarest_sd ? withMoreSugars(row, question.missing()) : std::nullopt;
    if (!real)
        return std::nullopt;
    return Cause{CauseKind::Spread, {{row.index, real->asItWas}}, deviations,
        phrase("“{0}” with {1} % sugar instead of {2} % would explain it ({3} standard deviations off). It would read {4} °Bx.",
            nameOf(row), Figure{real->after_gPer100g, 1}, Figure{real->before_gPer100g, 1}, Figure{deviations, 1},
            Figure{*real->asItWas.measuredBrix, 1})};
}

/// Two rows that stray together. The likeliest way is that each takes the part of the missing sugars that its variance is of both
/// (independent normal distributions).
std::optional<Cause> strayingTogether(const RowInMix& one, const RowInMix& other, const Question& question)
{
    const auto ofOne = sugarsSpread(one);
    const auto ofOther = sugarsSpread(other);
    if (!ofOne || !ofOther)
        return std::nullopt;
    const double variance_g2 = ofOne->value * ofOne->value + ofOther->value * ofOther->value;
    const double deviations = std::abs(question.missing().value) / std::sqrt(variance_g2);
    if (!(deviations <= rarest_sd))
        return std::nullopt;
    const Grams more = question.missing() * (ofOne->value * ofOne->value / variance_g2);
    const auto realOne = withMoreSugars(one, more);
    const auto realOther = withMoreSugars(other, question.missing() - more);
    if (!realOne || !realOther)
        return std::nullopt;
    return Cause{CauseKind::Spread, {{one.index, realOne->asItWas}, {other.index, realOther->asItWas}}, deviations,
        phrase("“{0}” with {1} % sugar instead of {2} % and “{3}” with {4} % instead of {5} % would explain it together ({6} "
               "standard deviations off).",
            nameOf(one), Figure{realOne->after_gPer100g, 1}, Figure{realOne->before_gPer100g, 1}, nameOf(other),
            Figure{realOther->after_gPer100g, 1}, Figure{realOther->before_gPer100g, 1}, Figure{deviations, 1})};
}

/// Water that went off: the sugars stay in what is left. A row of water takes the blame in the recipe, where there is one.
std::optional<Cause> dried(const Component& component, const PreparedComponent& prepared, const Question& question)
{
    const Grams lost = question.mass - question.sugars / question.wanted.value;
    if (!(lost.value > 0.0 && lost <= question.mass * mostWaterLost && lost < prepared.weighedOut[Constituent::Water]))
        return std::nullopt;
    Cause cause{CauseKind::WaterLost, {}, slipOddity_sd + lost / question.mass / mostWaterLost,
        phrase("{0} g of water lost in heating or waiting would explain it.", Figure{lost.value, 0})};
    for (std::size_t i = 0; i < component.rows.size(); ++i) {
        const Ingredient* ingredient = prepared.rows[i].ingredient;
        const Grams mass = prepared.rows[i].analysis.mass;
        if (!ingredient || ingredient->id != "water" || mass <= lost || component.rows[i].amount.unit == Unit::PercentOfMix)
            continue;
        Row less = component.rows[i];
        less.amount.value *= 1.0 - lost / mass;
        cause.rows = {{i, std::move(less)}};
        break;
    }
    return cause;
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
        return Cause{CauseKind::LeftOut, {{row.index, std::nullopt}}, slipOddity_sd,
            phrase("“{0}” left out would explain it ({1} % sugar).", nameOf(row), Figure{percent(found), 1})};
    Row asItWas = row.row;
    asItWas.amount.value *= times;
    return Cause{CauseKind::Doubled, {{row.index, std::move(asItWas)}}, slipOddity_sd,
        phrase("“{0}” added twice would explain it ({1} % sugar).", nameOf(row), Figure{percent(found), 1})};
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
    return Cause{CauseKind::WrongAmount, {{row.index, std::move(asItWas)}},
        slipOddity_sd + (rarest_sd - slipOddity_sd) * slip / oddSlip,
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
    std::vector<RowInMix> known;
    for (std::size_t i = 0; i < prepared.rows.size(); ++i) {
        if (const auto composition = compositionOf(component.rows[i], prepared.rows[i]);
            composition && prepared.rows[i].analysis.mass.value > 0.0)
            known.push_back({i, component.rows[i], prepared.rows[i], *composition});
    }
    for (std::size_t one = 0; one < known.size(); ++one)
        for (std::size_t other = one + 1; other < known.size(); ++other)
            note(strayingTogether(known[one], known[other], question));
    // Two that had to stray are no likelier than one that could have done it alone.
    const auto couldAlone = [&](const Cause& pair) {
        return std::ranges::any_of(pair.rows, [&](const RowAsItWas& asItWas) {
            const auto row = std::ranges::find(known, asItWas.index, &RowInMix::index);
            const auto alone = straying(*row, question);
            return alone && alone->oddity <= slipOddity_sd;
        });
    };
    std::erase_if(causes, couldAlone);
    note(dried(component, prepared, question));
    for (const RowInMix& row : known) {
        note(straying(row, question));
        if (row.row.amount.unit == Unit::PercentOfMix)
            continue;
        note(miscounted(row, question, 0.0));
        note(miscounted(row, question, 2.0));
        note(misweighed(row, question));
    }
    std::ranges::stable_sort(causes, {}, &Cause::oddity);
    return causes;
}

}  // namespace firn
