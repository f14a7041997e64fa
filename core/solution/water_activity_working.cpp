#include "solution/water_activity_working.h"

#include "derivation/formula_text.h"
#include "mix/symbols.h"
#include "solution/solute_activity.h"

#include <algorithm>

namespace firn {

namespace {

/// q g under the root: g is a polynomial of the strength, the same for all solutes of a kind, and 1 in Norrish's form.
Formula bent(
    const Symbol& q, const SugarActivity& sugar, double z, const Symbol& strength, std::vector<std::pair<Symbol, Formula>>& bends)
{
    if (sugar.a == 0.0)
        return q;
    const bool isLikeSucrose = sugar.b != 0.0;
    const Symbol bend{"g", isLikeSucrose ? "sucrose" : "glycerol", std::max(0.0, 1.0 + z * (sugar.a + z * sugar.b)), "",
        isLikeSucrose ? phrase("how that changes with the strength, for sucrose and what acts like it")
                      : phrase("how that changes with the strength, for glycerol")};
    if (std::ranges::none_of(bends, [&](const auto& known) { return isSame(known.first, bend); }))
        bends.emplace_back(bend, function("max", {0.0, polynomial({1.0, sugar.a, sugar.b}, strength)}));
    return q * Formula(bend);
}

}  // namespace

void recordFreeWater(Working& working, const Mix& mix, Grams freeWater)
{
    const Symbol water = massOf(Constituent::Water, mix, working);
    const Symbol held{"m", "held", unfreezableWater(mix).value, "g", phrase("water that protein and gums keep from freezing")};
    if (held.value > 0.0) {
        WorkingStep& step = working.found(held,
            function("min", {0.3 * Formula(massOf(Constituent::Protein, mix, working))
                                    + 0.5 * Formula(massOf(Constituent::Hydrocolloid, mix, working)),
                                water}),
            Source::UnfreezableWater);
        step.uncertainty = phrase("Published values for proteins range from 0.2 to 0.5 g a gram.");
        working.found(freeWaterSymbol(freeWater), Formula(water) - held, Source::Definition);
    } else {
        working.found(freeWaterSymbol(freeWater), water, Source::Definition);
    }
}

void addAtEdge(Working& working, const Working& withEdge)
{
    // The liquid as strong as its sugars are trusted to be is another one than that of the mix: so are its symbols.
    const std::size_t known = working.steps().size();
    for (std::size_t i = known; i < withEdge.steps().size(); ++i)
        working.add({withSymbols(withEdge.steps()[i], [](Symbol& symbol) {
            const std::string name = textOf(symbol);
            if (name == "m_free" || name == "n_w" || name == "n" || name == "Z" || name == "U" || symbol.name == "g"
                || name == "A_sugars" || name == "Θ")
                symbol.subscript += symbol.subscript.empty() ? "edge" : ",edge";
        })});
}

void recordBeyondTrust(
    Working& working, const LnActivity& edge, const LnActivity& weaker, double beyond, const LnActivity& activity)
{
    const Symbol distance{
        "j", "", beyond, "", phrase("how far beyond a strength of 80 %, in steps of that to the weaker solution")};
    const auto extend = [&](Symbol result, double atEdge, double atWeaker) {
        const std::string mark = result.subscript.empty() ? "" : ",";
        const Symbol last{
            result.name, result.subscript + mark + "edge", atEdge, result.unit, phrase("the same at a strength of 80 %")};
        const Symbol before{
            result.name, result.subscript + mark + "weaker", atWeaker, result.unit, phrase("the same a little weaker than that")};
        const Formula right = Formula(last) + (Formula(last) - before) * distance;
        working.found(std::move(result), right, Source::WaterActivity).range =
            phrase("The sugars are stronger than 80 %: their terms go on along the tangent, and are a guess.");
    };
    extend(sugarsConstantSymbol(activity), edge.constant, weaker.constant);
    extend(perKelvinSymbol(activity), edge.perKelvin, weaker.perKelvin);
}

/// Activities of the groups multiply: their logarithms add up.
void recordProduct(Working& working, const LnActivity& ofSugars, const std::vector<Symbol>& others, const LnActivity& activity)
{
    Formula sum = sugarsConstantSymbol(ofSugars);
    for (const Symbol& other : others)
        sum = std::move(sum) + other;
    WorkingStep& step = working.found(constantSymbol(activity), std::move(sum), Source::WaterActivity);
    if (!others.empty())
        step.uncertainty = phrase("That activities of groups multiply (Ross) was not checked against measured mixtures.");
}

void recordMolality(Working& working, Constituent c, Grams mass, double molarMass_g_mol, Grams freeWater, double m)
{
    const Symbol symbol = molalitySymbol(c, m);
    const MixPart& part = partOf(c);
    const Symbol solute{"m", part.subscript, mass.value, "g", phrase("{0} in the mix", part.label), working.keyOf(part.figure)};
    const Symbol molar{"M", part.subscript, molarMass_g_mol, "g/mol", phrase("molar mass of {0}", part.label)};
    working.found(
        symbol, Formula(Number{1000.0, "g/kg"}) * (Formula(solute) / molar) / freeWaterSymbol(freeWater), Source::Definition);
}

Symbol freeWaterSymbol(Grams freeWater)
{
    return {"m", "free", freeWater.value, "g", phrase("liquid water that is free to freeze and to dissolve")};
}

Symbol constantSymbol(const LnActivity& activity)
{
    return {"A", "", activity.constant, "",
        phrase("effect of the solutes on water activity, whatever the temperature (part of ln a_w)"), {}, 6};
}

Symbol perKelvinSymbol(const LnActivity& activity)
{
    return {"Θ", "", activity.perKelvin, "K",
        phrase("their further effect, which grows in the cold (part of ln a_w, times the temperature in kelvin)")};
}

Formula lnActivityAt(const LnActivity& activity, const Symbol& temperature)
{
    return constantSymbol(activity) + perKelvinSymbol(activity) / (Formula(temperature) + zeroCelsius());
}

Symbol sugarsConstantSymbol(const LnActivity& activity)
{
    return {"A", "sugars", activity.constant, "",
        phrase("effect of sugars, polyols and minerals on water activity (part of ln a_w)"), {}, 6};
}

void Liquid::recordSugars(
    Working& working, double liquidWater_g, const LnActivity& activity, double sugarMoles, double z, double sum) const
{
    const double water_mol = liquidWater_g / water_g_mol;
    const Symbol water{"n", "w", water_mol, "mol", phrase("amount of the free water")};
    const Symbol solutes{"n", "s", sugarMoles, "mol", phrase("amount of sugars, polyols and minerals")};
    const Symbol all{"n", "", water_mol + sugarMoles, "mol", phrase("water and dissolved particles together")};
    const Symbol strength{"Z", "", z, "", phrase("their mole fraction, chains of glucose syrups counted by their mass"), {}, 5};
    std::vector<SeriesTerm> amounts;
    std::vector<SeriesTerm> weighted;
    std::vector<SeriesTerm> products;
    std::vector<std::pair<Symbol, Formula>> bends;
    for (const Solute& solute : m_sugars) {
        const SugarActivity& sugar = sugarActivities()[solute.kind];
        const MixPart& part = partOf(sugar.constituent);
        const std::string& name = part.subscript;
        const Symbol mass{"m", name, solute.mass.value, "g", phrase("{0} in the mix", part.label), working.keyOf(part.figure)};
        const Symbol molar{"M", name, sugar.molarMass_g_mol, "g/mol", phrase("molar mass of {0}", part.label)};
        const Symbol amount{"n", name, solute.moles, "mol", phrase("amount of {0}", part.label)};
        const Symbol q{
            "q", name, -sugar.q_J_mol, "J/mol", phrase("how strongly {0} holds water: -Q of Norrish's form", part.label)};
        Formula counted = amount;
        if (sugar.massRatio != 1.0)
            counted =
                amount * Symbol{"r", name, sugar.massRatio, "", phrase("molar mass of {0} against that of sucrose", part.label)};
        amounts.push_back({part.label, mass / molar});
        weighted.push_back({part.label, counted});
        products.push_back({part.label, counted / all * root(bent(q, sugar, z, strength, bends))});
    }
    const auto general = [](const char* name, const char* unit, Sentence meaning) {
        return Symbol{name, "i", 0.0, unit, std::move(meaning)};
    };
    const Symbol molarOfEach = general("M", "g/mol", phrase("molar mass of each"));
    const Symbol amountOfEach = general("n", "mol", phrase("amount of each: its mass over its molar mass"));
    const Symbol ratioOfEach =
        general("r", "", phrase("molar mass of each against that of sucrose, for chains of glucose; else 1"));
    const Symbol pullOfEach = general("q", "J/mol", phrase("how strongly each holds water: -Q of Norrish's form"));
    const Symbol bendOfEach = general("g", "", phrase("how that changes with the strength"));
    const Symbol molarOfWater{"M", "w", water_g_mol, "g/mol", phrase("molar mass of water")};
    working.found(water, freeWaterSymbol({liquidWater_g}) / molarOfWater, Source::Definition);
    working.found(solutes, series("i", generalMass() / molarOfEach, std::move(amounts)), Source::WaterActivity);
    working.found(all, water + Formula(solutes), Source::Definition);
    working.found(strength, series("i", amountOfEach * Formula(ratioOfEach), std::move(weighted)) / all, Source::WaterActivity)
        .range = phrase("r is 1 for all but chains of glucose syrups.");
    for (auto& [bend, formula] : bends)
        working.found(bend, std::move(formula), Source::WaterActivity);
    const Symbol pull{"U", "", sum, "√(J/mol)", phrase("how strongly they hold the water together, by Norrish's rule")};
    working
        .found(pull,
            series("i", amountOfEach * Formula(ratioOfEach) / all * root(pullOfEach * Formula(bendOfEach)), std::move(products)),
            Source::WaterActivity)
        .range = phrase("g is 1 in Norrish's form, and a polynomial of Z for sucrose and its like and for glycerol.");
    working.found(sugarsConstantSymbol(activity), ln(1.0 - solutes / Formula(all)), Source::WaterActivity);
    const Symbol gas{"R", "", gasConstant_J_molK, "J/(mol K)", phrase("gas constant")};
    WorkingStep& last = working.found(perKelvinSymbol(activity), -(power(pull, 2.0) / gas), Source::WaterActivity);
    last.range = phrase("Sucrose is measured to 42 %, maltose to 40 %, glucose to 30 %, fructose to 28 %; stronger is "
                        "extrapolated, beyond 80 % along the "
                        "tangent.");
    last.uncertainty =
        phrase("0.05 K in the freezing point of one sugar within that range, 0.08 K for maltose; mixed sugars were not measured.");
}

}  // namespace firn
