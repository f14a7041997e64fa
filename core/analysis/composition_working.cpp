#include "analysis/composition_working.h"

#include "analysis/weighing_working.h"
#include "mix/symbols.h"
#include "solution/ethanol.h"
#include "solution/volume.h"

#include <cmath>

namespace firn {

namespace {

const Working dessert;

void recordVolume(Workings& workings, const Recipe& recipe, const std::vector<std::size_t>& chosen, const Analysis& found)
{
    Working& working = workings.of("volume_ml_20c");
    if (chosen.size() == 1) {
        working.add(workings.of("volume_ml_20c", homeOfComponent(chosen.front())).steps());
        return;
    }
    std::vector<SeriesTerm> terms;
    for (const std::size_t i : chosen) {
        const Working& part = workings.of("volume_ml_20c", homeOfComponent(i));
        Symbol volume = part.steps().back().result;
        volume.subscript = std::to_string(i + 1);
        volume.figure = part.keyOf("volume_ml_20c");
        terms.push_back({recipe.components[i].name, volume});
    }
    working.found(volumeSymbol(found.volume_20c, "mix", {20.0}),
        series("i", Symbol{"V", "i", 0.0, "mL", phrase("volume of each component")}, std::move(terms)), Source::Definition);
}

void recordFinishedVolume(Workings& workings, const Recipe& recipe, const std::vector<std::size_t>& chosen, const Analysis& found)
{
    std::vector<SeriesTerm> terms;
    for (const std::size_t i : chosen) {
        const Working& part = workings.of("volume_ml_20c", homeOfComponent(i));
        Symbol volume = part.steps().back().result;
        volume.subscript = std::to_string(i + 1);
        volume.figure = part.keyOf("volume_ml_20c");
        const Symbol air{"o", std::to_string(i + 1), overrunOf(recipe, i), "%", phrase("air beaten in, of the mix's volume")};
        terms.push_back({recipe.components[i].name, volume * (Formula(air) / oneHundredPercent())});
    }
    Symbol volume = volumeSymbol(found.volume_20c, "mix", {20.0});
    volume.figure = "volume_ml_20c";
    workings.of("finished_volume_ml_20c")
        .found({"V", "finished", found.finishedVolume.value, "mL", phrase("volume at 20 °C with its air")},
            volume
                + series("i",
                    Symbol{"V", "i", 0.0, "mL", phrase("volume of each component")}
                        * (Symbol{"o", "i", 0.0, "%", phrase("air beaten into each")} / oneHundredPercent()),
                    std::move(terms)),
            Source::Definition);
}

Symbol shareSymbol(std::string subscript, MassFraction share, std::string meaning)
{
    return {"w", std::move(subscript), percent(share), "%", phrase("{0}, of the mass of the mix", std::move(meaning))};
}

/// part / whole in percent, or nothing of nothing.
WorkingStep& recordShare(Working& working, Symbol share, const Symbol& part, const Mix& mix)
{
    if (mix.isEmpty()) {
        WorkingStep& step = working.found(std::move(share), Number{0.0, "%"}, Source::Definition);
        step.range = phrase("There is nothing in the mix.");
        return step;
    }
    return working.found(std::move(share), oneHundredPercent() * (part / massOfMix(mix, dessert)), Source::Definition);
}

void recordSums(Workings& workings, const Mix& mix, const Shares& shares)
{
    Working& ofSugars = workings.of("percent.sugars");
    std::vector<SeriesTerm> terms;
    for (const ConstituentFacts& facts : allConstituents()) {
        const bool isSugar = facts.constituent >= Constituent::Sucrose && facts.constituent <= Constituent::Trehalose;
        if (isSugar && mix[facts.constituent].value > 0.0)
            terms.push_back({std::string(facts.label), massOf(facts.constituent, mix, dessert)});
    }
    const Symbol allSugars{"m", "sugars", sugars(mix).value, "g", phrase("mono- and disaccharides, lactose included")};
    ofSugars.found(allSugars, series("i", generalMass(), std::move(terms)), Source::Definition);
    recordShare(ofSugars, shareSymbol("sugars", shares.sugars, "sugars"), allSugars, mix);

    Working& ofSolids = workings.of("percent.total_solids");
    const Symbol solids{"m", "solids", totalSolids(mix).value, "g", phrase("everything but water and alcohol")};
    ofSolids.found(solids,
        massOfMix(mix, dessert) - massOf(Constituent::Water, mix, dessert) - massOf(Constituent::Ethanol, mix, dessert),
        Source::Definition);
    recordShare(ofSolids, shareSymbol("solids", shares.totalSolids, "total solids"), solids, mix);
}

void recordShares(Workings& workings, const Mix& mix, const Shares& shares)
{
    const auto record = [&](const char* figure, const MixPart& part, MassFraction share) {
        recordShare(workings.of(figure), shareSymbol(part.subscript, share, part.label), massOf(part, mix, dessert), mix);
    };
    record("percent.water", partOf(Constituent::Water), shares.water);
    record("percent.fat", partOf(Constituent::Fat), shares.fat);
    record("percent.milk_fat", milkFatPart(), shares.milkFat);
    record("percent.protein", partOf(Constituent::Protein), shares.protein);
    record("percent.alcohol", partOf(Constituent::Ethanol), shares.alcohol);
    record("percent.milk_solids_not_fat", milkSolidsNotFatPart(), shares.milkSolidsNotFat);
    recordSums(workings, mix, shares);
}

void recordAlcoholByVolume(Workings& workings, const Analysis& found)
{
    Working& working = workings.of("percent.alcohol_by_volume");
    const Symbol result{"φ", "", found.alcohol_percentByVolume, "% vol", phrase("alcohol, of the volume at 20 °C before air")};
    if (found.mix.isEmpty()) {
        working.found(result, Number{0.0, "% vol"}, Source::Definition);
        return;
    }
    const Symbol rho{"ρ", "ethanol", ethanolDensity_20c.value, "g/mL", phrase("density of pure alcohol at 20 °C"), {}, 5};
    Symbol volume = volumeSymbol(found.volume_20c, "mix", {20.0});
    volume.figure = "volume_ml_20c";
    working.found(result, Formula(Number{100.0, "% vol"}) * (massOf(Constituent::Ethanol, found.mix, dessert) / rho) / volume,
        Source::EthanolDensity);
}

void recordUncertainty(Workings& workings, const std::vector<std::size_t>& chosen, const Analysis& found, double sugarsVariance_g2)
{
    Working& working = workings.of("percent.sugars_uncertainty");
    std::vector<SeriesTerm> terms;
    for (const std::size_t i : chosen) {
        const WorkingStep& step = workings.of(std::string(figureOfSpread), homeOfComponent(i)).steps().back();
        const auto& rows = *termsOf(step.formula);
        terms.insert(terms.end(), rows.begin(), rows.end());
    }
    const Symbol variance{"σ²", "", sugarsVariance_g2, "g²", phrase("variance of the mass of the sugars")};
    const Symbol deviation{"σ", "", std::sqrt(sugarsVariance_g2), "g", phrase("standard deviation of the mass of the sugars")};
    working
        .found(variance,
            series("i",
                power(generalMass()
                          * Formula(Symbol{"s", "i", 0.0, "g/g", phrase("standard deviation of the sugars in a gram of each")}),
                    2.0),
                std::move(terms)),
            Source::Spread)
        .range = phrase("Rows stray independently; one with a measured °Bx does not stray.");
    working.found(deviation, root(variance), Source::Definition);
    recordShare(working, {"σ", "w", percent(found.sugarsUncertainty), "%", phrase("standard deviation of the share of sugars")},
        deviation, found.mix);
}

}  // namespace

void recordComposition(Workings& workings, const Recipe& recipe, const std::vector<std::size_t>& chosen, const Analysis& found,
    double sugarsVariance_g2)
{
    const Mix& mix = found.mix;
    recordWhole(workings, recipe, chosen, mix);
    recordVolume(workings, recipe, chosen, found);
    recordFinishedVolume(workings, recipe, chosen, found);
    recordShares(workings, mix, found.shares);
    recordAlcoholByVolume(workings, found);
    recordUncertainty(workings, chosen, found, sugarsVariance_g2);
    Working& ofLactose = workings.of("lactose_g_per_100_g_water");
    const Symbol lactose{"l", "", found.lactose_gPer100gWater, "g", phrase("lactose in 100 g water")};
    if (found.water.value > 0.0)
        ofLactose.found(lactose,
            Formula(Number{100.0, "g"}) * (massOf(Constituent::Lactose, mix, dessert) / massOf(Constituent::Water, mix, dessert)),
            Source::Definition);
    else
        ofLactose.found(lactose, Number{0.0, "g"}, Source::Definition).range = phrase("There is no water.");
}

}  // namespace firn
