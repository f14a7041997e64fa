#include "analysis/steps.h"

#include "readings/readings.h"

#include <algorithm>
#include <array>
#include <boost/math/tools/roots.hpp>
#include <cmath>

namespace firn {

namespace {

/// What no water dissolves.
constexpr std::array insoluble{Constituent::Fibre, Constituent::Starch, Constituent::Other};

/// Takes `taken` out of a mix. The parts that are told apart (milk fat and the like) go in proportion to what they are part of.
StepOutcome parted(const Mix& mix, const Amounts& taken, const LossShares& shares)
{
    StepOutcome result;
    result.shares = shares;
    result.lost.amounts = taken;
    for (std::size_t i = 0; i < constituentCount; ++i) {
        const auto c = static_cast<Constituent>(i);
        result.after.amounts[c] = mix[c] - taken[c];
    }
    const auto share = [&](Constituent c) { return mix[c].value > 0.0 ? taken[c] / mix[c] : 0.0; };
    const auto split = [](Grams whole, double lostShare, Grams& after, Grams& lost) {
        lost = whole * lostShare;
        after = whole - lost;
    };
    split(mix.milkFat, share(Constituent::Fat), result.after.milkFat, result.lost.milkFat);
    split(mix.milkSolidsNotFat, share(Constituent::Lactose), result.after.milkSolidsNotFat, result.lost.milkSolidsNotFat);
    split(mix.yolkSolids, share(Constituent::Protein), result.after.yolkSolids, result.lost.yolkSolids);
    return result;
}

StepOutcome unchanged(const Mix& mix, Sentence problem) { return {mix, {}, std::move(problem), {}}; }

StepOutcome taken(const Mix& mix, const HeldBack& held)
{
    if (held.mass > mix.mass())
        return unchanged(mix, phrase("The strainer cannot hold back {0} g of a mix of {1} g.", Figure{held.mass.value, 0},
                                  Figure{mix.mass().value, 0}));
    Amounts pulp;
    Grams pulpMass;
    for (const Constituent c : insoluble)
        pulpMass += mix[c];
    const double pulpShare = pulpMass.value > 0.0 ? std::min(1.0, held.mass / pulpMass) : 0.0;
    for (const Constituent c : insoluble)
        pulp[c] = mix[c] * pulpShare;

    const Grams liquid = mix.mass() - pulpMass;
    const Grams clinging = held.mass - pulpMass * pulpShare;
    const double clingingShare = liquid.value > 0.0 && clinging.value > 0.0 ? clinging / liquid : 0.0;
    for (std::size_t i = 0; i < constituentCount; ++i) {
        if (const auto c = static_cast<Constituent>(i); !isInsoluble(c))
            pulp[c] = mix[c] * clingingShare;
    }
    return parted(mix, pulp, {.insoluble = pulpShare, .liquid = clingingShare});
}

StepOutcome taken(const Mix& mix, const Steeped& steeped, const std::vector<WeighedRow>& rows)
{
    const auto row = std::find_if(rows.begin(), rows.end(), [&](const WeighedRow& r) { return r.text == steeped.ingredient; });
    if (row == rows.end() || !row->composition)
        return unchanged(
            mix, phrase("Steeping: there is no row “{0}” to take out. Choose one of the component's rows.", steeped.ingredient));

    Mix gramOfRow;
    gramOfRow.add(*row->composition, {1.0});
    // Spent matter: solids that were not extracted. Its water and alcohol have become liquid like the rest.
    Amounts spent;
    const double stays = std::clamp(steeped.extracted_percent / 100.0, 0.0, 1.0);
    for (std::size_t i = 0; i < constituentCount; ++i) {
        const auto c = static_cast<Constituent>(i);
        if (c == Constituent::Water || c == Constituent::Ethanol)
            continue;
        const Grams brought = gramOfRow[c] * row->mass.value;
        spent[c] = std::min(mix[c], isInsoluble(c) ? brought : brought * (1.0 - stays));
    }
    Amounts liquid;
    for (std::size_t i = 0; i < constituentCount; ++i) {
        const auto c = static_cast<Constituent>(i);
        if (!isInsoluble(c))
            liquid[c] = mix[c] - spent[c];
    }
    const Grams soaked = row->mass * steeped.soaksUp_gPerG;
    if (soaked > liquid.total())
        return unchanged(mix, phrase("“{0}” would soak up more liquid than there is: {1} g of {2} g.", steeped.ingredient,
                                  Figure{soaked.value, 0}, Figure{liquid.total().value, 0}));
    LossShares shares{.liquid = soaked.value > 0.0 ? soaked / liquid.total() : 0.0, .spent = spent};
    if (soaked.value > 0.0)
        spent.add(liquid, shares.liquid);
    return parted(mix, spent, shares);
}

double shareLeft(const Mix& mix, double waterLeft_g) { return std::clamp(waterLeft_g / mix[Constituent::Water].value, 0.0, 1.0); }

/// What has boiled off when this much water is left.
Amounts boiledOff(const Mix& mix, double waterLeft_g)
{
    Amounts vapour;
    const double left = shareLeft(mix, waterLeft_g);
    vapour[Constituent::Water] = mix[Constituent::Water] * (1.0 - left);
    vapour[Constituent::Ethanol] = mix[Constituent::Ethanol] * (1.0 - std::pow(left, ethanolVolatility));
    return vapour;
}

StepOutcome boiledTo(const Mix& mix, double waterLeft_g)
{
    return parted(mix, boiledOff(mix, waterLeft_g), {.waterLeft = shareLeft(mix, waterLeft_g)});
}

/// The water left at which `difference`, which grows with it, is zero; the bracket must hold it.
template <class Difference>
double waterWhere(Difference difference, double most_g)
{
    std::uintmax_t steps = 100;
    const auto [low, high] =
        boost::math::tools::toms748_solve(difference, 0.0, most_g, boost::math::tools::eps_tolerance<double>(50), steps);
    return (low + high) / 2.0;
}

StepOutcome taken(const Mix& mix, const BoiledToMass& boiled)
{
    const double water_g = mix[Constituent::Water].value;
    const Grams dry = mix.mass() - mix[Constituent::Water] - mix[Constituent::Ethanol];
    if (boiled.mass > mix.mass())
        return unchanged(mix,
            phrase("Boiling cannot leave {0} g of {1} g. Weigh again.", Figure{boiled.mass.value, 0}, Figure{mix.mass().value, 0}));
    if (boiled.mass <= dry)
        return unchanged(mix, phrase("{0} g is less than the mix holds without any water, {1} g.", Figure{boiled.mass.value, 0},
                                  Figure{dry.value, 0}));
    const double lost_g = (mix.mass() - boiled.mass).value;
    if (lost_g <= 0.0)
        return {mix, {}, {}, {}};
    if (water_g <= 0.0)
        return unchanged(mix, phrase("There is no water to boil down. Take this step out, or add water before it."));
    return boiledTo(mix, waterWhere([&](double left_g) { return lost_g - boiledOff(mix, left_g).total().value; }, water_g));
}

StepOutcome taken(const Mix& mix, const BoiledToBrix& boiled)
{
    const double water_g = mix[Constituent::Water].value;
    const auto tooWeak = [&](double left_g) {
        constexpr double offTheScale_brix = 100.0;
        const auto found = readings(boiledTo(mix, left_g).after, {20.0});
        return boiled.brix - (found ? found->refractometer_brix.value_or(offTheScale_brix) : offTheScale_brix);
    };
    if (water_g <= 0.0 || tooWeak(water_g) <= 0.0)
        return unchanged(
            mix, phrase("The mix reads more than {0} °Bx already: boiling makes it stronger only.", Figure{boiled.brix, 1}));
    if (tooWeak(0.0) >= 0.0)
        return unchanged(mix, phrase("Boiling does not bring this mix to {0} °Bx.", Figure{boiled.brix, 1}));
    return boiledTo(mix, waterWhere(tooWeak, water_g));
}

}  // namespace

bool isInsoluble(Constituent constituent) { return std::find(insoluble.begin(), insoluble.end(), constituent) != insoluble.end(); }

std::optional<std::size_t> likelySteepedRow(const Component& component, const Catalogue& catalogue)
{
    std::optional<std::size_t> likely;
    Grams most;
    for (std::size_t i = 0; i < component.rows.size(); ++i) {
        const Ingredient* ingredient = catalogue.find(component.rows[i].ingredient);
        if (!ingredient)
            continue;
        const Amounts& amounts = ingredient->composition.per100g;
        const Grams undissolved = amounts[Constituent::Fibre] + amounts[Constituent::Starch] + amounts[Constituent::Other];
        if (undissolved > most) {
            most = undissolved;
            likely = i;
        }
    }
    return likely;
}

std::vector<StepOutcome> outcomesOf(const std::vector<Step>& steps, const Mix& start, const std::vector<WeighedRow>& rows)
{
    std::vector<StepOutcome> outcomes;
    outcomes.reserve(steps.size());
    Mix mix = start;
    for (const Step& step : steps) {
        if (const auto* steeped = std::get_if<Steeped>(&step.loss))
            outcomes.push_back(taken(mix, *steeped, rows));
        else if (const auto* held = std::get_if<HeldBack>(&step.loss))
            outcomes.push_back(taken(mix, *held));
        else if (const auto* toMass = std::get_if<BoiledToMass>(&step.loss))
            outcomes.push_back(taken(mix, *toMass));
        else if (const auto* toBrix = std::get_if<BoiledToBrix>(&step.loss))
            outcomes.push_back(taken(mix, *toBrix));
        else
            outcomes.push_back({mix, {}, {}, {}});
        mix = outcomes.back().after;
    }
    return outcomes;
}

}  // namespace firn
