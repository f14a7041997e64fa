#include "syrup/syrup.h"

#include "solution/sucrose.h"
#include "syrup/pearson.h"
#include "syrup/solubility.h"

#include <cmath>

namespace firn {

namespace {

Figure percentFigure(MassFraction share) { return {percent(share), 1}; }

std::optional<Sentence> faultOf(Grams mass, MassFraction now)
{
    if (!(mass.value > 0.0 && std::isfinite(mass.value)))
        return phrase("The syrup has no mass. Enter more than 0 g.");
    if (!(now.value > 0.0 && now.value < 1.0))
        return phrase("{0} % sugar is not a syrup. Enter a strength between 0 and 100 %.", percentFigure(now));
    return std::nullopt;
}

std::optional<BoilingPoint> boilsAt(MassFraction strength)
{
    const SugarAndWater contents = contentsOf({1.0}, strength);
    Mix syrup;
    syrup.amounts[Constituent::Sucrose] = contents.sugar;
    syrup.amounts[Constituent::Water] = contents.water;
    const auto point = boilingPointOf(syrup);
    return point ? std::optional(*point) : std::nullopt;
}

Symbol massSymbol(Grams mass) { return {"m", "", mass.value, "g", phrase("mass of the syrup that there is")}; }
Symbol nowSymbol(MassFraction now) { return {"w", "now", percent(now), "%", phrase("its strength")}; }

void recordSyrup(Working& working, MassFraction strength, Millilitres volume, Celsius measuredAt, const SyrupRecipe& made)
{
    const Symbol w{"w", "", percent(strength), "%", phrase("strength that is wanted")};
    const Symbol at{"t", "", measuredAt.value, "°C", phrase("temperature at which the volume is measured")};
    const Symbol water = waterDensitySymbol(measuredAt);
    const Symbol share{"W", "", strength.value, "", phrase("sugar in a gram of syrup")};
    const Symbol density{"ρ", "", made.density.value, "g/mL", phrase("density of the syrup"), {}, 4};
    working.found(share, w / oneHundredPercent(), Source::Definition);
    recordWaterDensity(working, water, at);
    recordSucroseDensity(working, density, share, water, at);
    const Symbol all{"V", "", volume.value, "mL", phrase("volume to be made")};
    working.found({"m", "sugar", made.sugar.value, "g", phrase("sugar to weigh")}, all * density * share, Source::Definition);
}

}  // namespace

SugarAndWater contentsOf(Grams syrup, MassFraction strength)
{
    const Grams sugar = syrup * strength.value;
    return {sugar, syrup - sugar};
}

Result<SyrupRecipe> syrupOf(MassFraction strength, Millilitres volume, Celsius measuredAt, Working* working)
{
    if (!(strength.value >= 0.0 && strength <= strongestOfKnownDensity))
        return failure(phrase("The density of a syrup of {0} °Bx is not known. Ask for 0 to {1} °Bx.", percentFigure(strength),
            Figure{percent(strongestOfKnownDensity), 0}));
    if (!(measuredAt.value >= 0.0 && measuredAt.value <= 100.0))
        return failure(phrase("The density of a syrup at {0} is not known. Measure its volume at {1} to {2}.",
            temperatureFigure(measuredAt, 0), temperatureFigure({0.0}, 0), temperatureFigure({100.0}, 0)));
    if (!(volume.value > 0.0 && std::isfinite(volume.value)))
        return failure(phrase("Nothing would be made. Ask for more than 0 mL."));
    SyrupRecipe result;
    result.density = sucroseSolutionDensity(strength, measuredAt);
    const auto [sugar, water] = contentsOf({volume.value * result.density.value}, strength);
    result.sugar = sugar;
    result.water = water;
    if (const auto dissolved = dissolve(Constituent::Sucrose, result.sugar, result.water, measuredAt, measuredAt))
        result.warning = dissolved->warning;
    if (working)
        recordSyrup(*working, strength, volume, measuredAt, result);
    return result;
}

Result<BoiledSyrup> boiledTo(MassFraction wanted, Grams mass, MassFraction now, Working* working)
{
    if (auto fault = faultOf(mass, now))
        return failure(*fault);
    if (!(wanted <= strongestSyrup))
        return failure(
            phrase("A syrup of {0} % is candy. Ask for at most {1} %.", percentFigure(wanted), percentFigure(strongestSyrup)));
    if (!(wanted >= now))
        return failure(
            phrase("Boiling makes {0} % stronger, never {1} %. Add water instead.", percentFigure(now), percentFigure(wanted)));
    const Grams left = mass * (now / wanted);
    if (working)
        working
            ->found({"m", "left", left.value, "g", phrase("what is left when it is done")},
                massSymbol(mass)
                    * (nowSymbol(now) / Symbol{"w", "wanted", percent(wanted), "%", phrase("strength that is wanted")}),
                Source::Definition)
            .range = phrase("All the sugar stays.");
    return BoiledSyrup{left, wanted, mass - left, boilsAt(wanted)};
}

Result<BoiledSyrup> boiledTo(Grams left, Grams mass, MassFraction now, Working* working)
{
    if (auto fault = faultOf(mass, now))
        return failure(*fault);
    if (!(left <= mass))
        return failure(phrase("Boiling cannot leave {0} g of {1} g. Weigh again.", Figure{left.value, 0}, Figure{mass.value, 0}));
    const Grams least = mass * (now / strongestSyrup);
    if (!(left >= least))
        return failure(phrase("{0} g of it would be candy. Stop at {1} g or more, which is {2} %.", Figure{left.value, 0},
            Figure{std::ceil(least.value), 0}, percentFigure(strongestSyrup)));
    const MassFraction strength = now * (mass / left);
    if (working)
        working
            ->found({"w", "", percent(strength), "°Bx", phrase("strength of what is left")},
                nowSymbol(now) * (massSymbol(mass) / Symbol{"m", "left", left.value, "g", phrase("mass at which boiling stops")}),
                Source::Definition)
            .range = phrase("All the sugar stays.");
    return BoiledSyrup{left, strength, mass - left, boilsAt(strength)};
}

Result<DilutedSyrup> dilutedTo(MassFraction wanted, Grams mass, MassFraction now, Working* working)
{
    if (auto fault = faultOf(mass, now))
        return failure(*fault);
    if (!(wanted.value > 0.0 && wanted <= now))
        return failure(phrase("Water never brings {0} % to {1} %. Ask for something weaker, or boil it down.", percentFigure(now),
            percentFigure(wanted)));
    return amountToReach(wanted, mass, now, {0.0}, working).map([mass](Grams water) { return DilutedSyrup{water, mass + water}; });
}

}  // namespace firn
