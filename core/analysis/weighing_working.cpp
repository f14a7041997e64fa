#include "analysis/weighing_working.h"

#include "ingredients/weighing.h"
#include "mix/symbols.h"
#include "units/text.h"

#include <algorithm>
#include <fmt/format.h>

namespace firn {

namespace {

std::string sourceOf(const PreparedRow& row, const Row& written)
{
    if (!row.ingredient)
        return "its own mix";
    return written.measuredBrix ? fmt::format("{}; sugars by the measured {} °Bx", row.ingredient->source, *written.measuredBrix)
                                : row.ingredient->source;
}

Sentence lossOf(const Step& step)
{
    if (const auto* held = std::get_if<HeldBack>(&step.loss))
        return phrase(
            "A strainer held back {0} g: fibre, starch and other solids first, then liquid as it is.", Figure{held->mass.value, 1});
    if (const auto* steeped = std::get_if<Steeped>(&step.loss))
        return phrase("“{0}” was taken out with all that water does not dissolve, what was not extracted of the rest ({1} % was), "
                      "and {2} g of liquid a gram.",
            steeped->ingredient, Figure{steeped->extracted_percent, 0}, Figure{steeped->soaksUp_gPerG, 1});
    if (const auto* toMass = std::get_if<BoiledToMass>(&step.loss))
        return phrase(
            "Boiled down to {0} g: water left, and alcohol faster than water, E = E0 (W/W0)^10.", Figure{toMass->mass.value, 1});
    if (const auto* toBrix = std::get_if<BoiledToBrix>(&step.loss))
        return phrase(
            "Boiled down to {0} °Bx: water left, and alcohol faster than water, E = E0 (W/W0)^10.", Figure{toBrix->brix, 1});
    return {};
}

/// The sum over a mix's parts that there are any of.
Formula sumOfConstituents(const Mix& mix, const Working& working)
{
    std::vector<SeriesTerm> terms;
    for (const ConstituentFacts& facts : allConstituents()) {
        if (mix[facts.constituent].value != 0.0)
            terms.push_back({std::string(facts.label), massOf(facts.constituent, mix, working)});
    }
    return series("i", generalMass(), std::move(terms));
}

/// The variance of the sugars: rows stray independently, and a measured one does not.
template <class MassOfRow>
void recordSpread(Working& working, const PreparedComponent& prepared, const Component& component, MassOfRow massOfRow)
{
    std::vector<SeriesTerm> terms;
    for (std::size_t i = 0; i < prepared.rows.size(); ++i) {
        const PreparedRow& row = prepared.rows[i];
        if (!row.ingredient || !row.ingredient->spread.sugars_sd || component.rows[i].measuredBrix
            || row.analysis.mass.value <= 0.0)
            continue;
        const Symbol spread{"s", fmt::format("{}", i + 1), *row.ingredient->spread.sugars_sd / 100.0, "g/g",
            row.ingredient->spread.isEstimate ? phrase("standard deviation of the sugars in a gram of it, an estimate")
                                              : phrase("standard deviation of the sugars in a gram of it")};
        terms.push_back({row.analysis.text, power(massOfRow(i) * Formula(spread), 2.0), row.ingredient->source});
    }
    working.found({"σ²", "", prepared.sugarsVariance_g2, "g²", phrase("variance of the mass of the sugars")},
        series("i",
            power(
                generalMass() * Formula(Symbol{"s", "i", 0.0, "g/g", phrase("standard deviation of the sugars in a gram of each")}),
                2.0),
            std::move(terms)),
        Source::Spread);
}

Symbol shareOfLoss(std::string_view subscript, std::size_t step, double share, Sentence meaning)
{
    return {"r", fmt::format("{},{}", subscript, step + 1), share, "", std::move(meaning)};
}

/// What a step takes away of a constituent, from what was there before, as steps.cpp reckons it.
Formula lossOf(const Loss& loss, std::size_t step, Constituent c, const Symbol& before, const LossShares& shares)
{
    const auto clinging = [&] {
        return shareOfLoss("liquid", step, shares.liquid, phrase("share of the liquid that goes with it, by its mass"));
    };
    if (std::holds_alternative<HeldBack>(loss))
        return before
               * (isInsoluble(c)
                       ? shareOfLoss("pulp", step, shares.insoluble, phrase("share of the pulp that the strainer holds back"))
                       : clinging());
    if (std::holds_alternative<Steeped>(loss)) {
        const Symbol spent{
            "m", fmt::format("spent,{}", step + 1), shares.spent[c].value, "g", phrase("what the steeped matter keeps of its own")};
        return isInsoluble(c) ? Formula(spent) : spent + (before - Formula(spent)) * clinging();
    }
    const Symbol left =
        shareOfLoss("water", step, shares.waterLeft, phrase("share of the water that is left when boiling is done"));
    return before * (1.0 - (c == Constituent::Ethanol ? power(left, ethanolVolatility) : Formula(left)));
}

/// What a part was before a step: the same symbol with the number of the steps before it, on this page, too.
Symbol beforeStep(Working& working, std::size_t step)
{
    std::vector<WorkingStep> steps = working.steps();
    const Symbol last = steps.back().result;
    Symbol before = last;
    before.subscript += fmt::format(",{}", step);
    steps.back() = withSymbols(std::move(steps.back()), [&](Symbol& symbol) {
        if (isSame(symbol, last))
            symbol.subscript = before.subscript;
    });
    working = Working(working.keyOf(""));
    working.add(steps);
    return before;
}

/// For what is not yet what the figure of this part says.
Symbol withoutFigure(Symbol symbol)
{
    symbol.figure.clear();
    return symbol;
}

}  // namespace

std::string figureOfRow(const Recipe& recipe, std::size_t component, std::size_t row)
{
    for (std::size_t i = 0; i < component; ++i)
        row += recipe.components[i].rows.size();
    return fmt::format("rows[{}].grams", row);
}

std::string figureOfRowShare(const Recipe& recipe, std::size_t component, std::size_t row)
{
    std::string key = figureOfRow(recipe, component, row);
    return key.replace(key.find(".grams"), std::string::npos, ".share_percent");
}

std::string homeOfComponent(std::size_t component) { return fmt::format("components[{}].", component); }

void recordShare(Working& working, Grams weighed, double asked_percent, Grams total, const Amount& amount, Grams mass)
{
    const Symbol rest{"m", "weighed", weighed.value, "g", phrase("mass of the component's other rows")};
    const Symbol asked{"p", "all", asked_percent, "%", phrase("all shares of the mix that rows ask for")};
    const Symbol whole{"m", "all", total.value, "g", phrase("mass of all rows of the component")};
    const Symbol share{"p", "row", amount.value, "%", phrase("share of the mix that the row asks for")};
    working.found(whole, rest / (1.0 - asked / oneHundredPercent()), Source::Definition);
    working.found(rowMass(mass), whole * (share / oneHundredPercent()), Source::Recipe);
}

void recordWeighedOut(Workings& workings, const Recipe& recipe, std::size_t component, const PreparedComponent& prepared,
    const std::vector<const Composition*>& compositions)
{
    const std::string home = homeOfComponent(component);
    const auto massOfRow = [&](std::size_t i) {
        Symbol symbol = rowMass(prepared.rows[i].analysis.mass);
        symbol.subscript += fmt::format("{}", i + 1);
        symbol.figure = figureOfRow(recipe, component, i);
        return symbol;
    };
    for (std::size_t i = 0; i < prepared.rows.size(); ++i) {
        Working& working = workings.of(figureOfRow(recipe, component, i));
        if (working.steps().empty())
            working
                .found(rowMass(prepared.rows[i].analysis.mass), Number{prepared.rows[i].analysis.mass.value, "g", true},
                    Source::Recipe)
                .origin = prepared.rows[i].analysis.problem;
    }
    const Symbol generalRow{"m", "i", 0.0, "g", phrase("a row's mass")};
    for (const MixPart& part : mixParts()) {
        // Each sum has shares of its own, and a page may show several sums.
        const Symbol generalContent{"c", part.subscript + ",i", 0.0, "g/g", phrase("the row's share of {0}", lowered(part.label))};
        std::vector<SeriesTerm> terms;
        for (std::size_t i = 0; i < prepared.rows.size(); ++i) {
            const RowAnalysis& row = prepared.rows[i].analysis;
            const Grams content = compositions[i] ? part.of(*compositions[i]) : Grams{};
            if (content.value == 0.0 || row.mass.value <= 0.0)
                continue;
            const Symbol perGram{"c", fmt::format("{},{}", part.subscript, i + 1),
                content.value / compositions[i]->per100g.total().value, "g/g", phrase("{0} in a gram of it", lowered(part.label))};
            terms.push_back(
                {row.text, massOfRow(i) * Formula(perGram), sourceOf(prepared.rows[i], recipe.components[component].rows[i])});
        }
        Working& working = workings.of(part.figure, home);
        WorkingStep& step = working.found(withoutFigure(massOf(part, prepared.weighedOut, working)),
            series("i", generalRow * Formula(generalContent), std::move(terms)), Source::Catalogue);
        step.origin = phrase("the parts of a row are brought to its mass, to which rounded figures do not quite add up; rows that "
                             "hold none are left out");
    }
    recordSpread(workings.of(std::string(figureOfSpread), home), prepared, recipe.components[component], massOfRow);
}

void recordShares(Workings& workings, const Recipe& recipe, std::size_t component, const PreparedComponent& prepared)
{
    const Working weighed;
    std::vector<SeriesTerm> terms;
    for (const ConstituentFacts& facts : allConstituents()) {
        if (prepared.weighedOut[facts.constituent].value != 0.0)
            terms.push_back({std::string(facts.label), withoutFigure(massOf(facts.constituent, prepared.weighedOut, weighed))});
    }
    const Symbol whole{
        "m", "all", prepared.weighedOut.mass().value, "g", phrase("mass of all that is weighed out for the component")};
    for (std::size_t i = 0; i < prepared.rows.size(); ++i) {
        const RowAnalysis& row = prepared.rows[i].analysis;
        const Symbol share{"w", "row", percent(row.share), "%", phrase("share of the row in its component, by mass")};
        Working& working = workings.of(figureOfRowShare(recipe, component, i));
        if (row.share.value == 0.0) {
            working.found(share, Number{0.0, "%"}, Source::Definition).origin = row.problem;
            continue;
        }
        Symbol mass = rowMass(row.mass);
        mass.figure = figureOfRow(recipe, component, i);
        working.found(whole, series("i", generalMass(), terms), Source::Definition);
        working.found(share, oneHundredPercent() * (mass / whole), Source::Definition);
    }
}

void recordSteps(
    Workings& workings, const Recipe& recipe, std::size_t component, const PreparedComponent& prepared, std::size_t stepsDone)
{
    const std::string home = homeOfComponent(component);
    for (std::size_t i = 0; i < std::min(stepsDone, prepared.steps.size()); ++i) {
        const StepOutcome& outcome = prepared.steps[i];
        for (const MixPart& part : mixParts()) {
            Working& working = workings.of(part.figure, home);
            const double lost_g = part.of(outcome.lost).value;
            if (lost_g == 0.0)
                continue;
            const Symbol taken{"m", fmt::format("{},lost,{}", part.subscript, i + 1), lost_g, "g",
                phrase("{0} that step {1} takes away", part.label, Figure{double(i + 1), 0})};
            Symbol before = beforeStep(working, i);
            before.meaning = phrase("{0} before that step", part.label);
            if (&part < &mixParts()[constituentCount])
                working.found(taken,
                    lossOf(recipe.components[component].steps[i].loss, i, static_cast<Constituent>(part.index), before,
                        outcome.shares),
                    Source::Steps);
            working.found(withoutFigure(massOf(part, outcome.after, working)), before - Formula(taken), Source::Steps).origin =
                lossOf(recipe.components[component].steps[i]);
        }
    }
    const Mix& mix = prepared.mixAfter(stepsDone);
    Working& mass = workings.of("mass_g", home);
    mass.found(massOfMix(mix, mass), sumOfConstituents(mix, mass), Source::Definition);
}

void recordWhole(Workings& workings, const Recipe& recipe, const std::vector<std::size_t>& chosen, const Mix& mix)
{
    const auto record = [&](const std::string& figure, const Symbol& result) {
        Working& working = workings.of(figure);
        if (chosen.size() == 1) {
            working.add(workings.of(figure, homeOfComponent(chosen.front())).steps());
            return;
        }
        std::vector<SeriesTerm> terms;
        for (const std::size_t i : chosen) {
            const Working& part = workings.of(figure, homeOfComponent(i));
            Symbol mass = part.steps().back().result;
            mass.subscript += fmt::format(",{}", i + 1);
            terms.push_back({recipe.components[i].name, mass});
        }
        Symbol general = result;
        general.subscript += ",i";
        working.found(result, series("i", general, std::move(terms)), Source::Definition);
    };
    const Working dessert;
    for (const MixPart& part : mixParts())
        record(part.figure, massOf(part, mix, dessert));
    if (chosen.size() == 1) {
        record("mass_g", massOfMix(mix, dessert));
        return;
    }
    workings.of("mass_g").found(massOfMix(mix, dessert), sumOfConstituents(mix, dessert), Source::Definition);
}

}  // namespace firn
