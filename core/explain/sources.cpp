#include "explain/sources.h"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <iterator>

namespace firn {

namespace {

// In the order of Source.
const std::array sources{
    SourceFacts{Source::Definition, "Definitions", "By definition; nothing to look up", "always", "none", "core/mix/mix"},
    SourceFacts{Source::Recipe, "The recipe itself", "What the cook has written", "always", "as exact as it was weighed",
        "core/recipe/recipe"},
    SourceFacts{Source::Catalogue, "Composition and measures of ingredients",
        "Named with each ingredient; most are USDA National Nutrient Database SR28",
        "the ingredient as the source describes it; fruit and milk stray from it",
        "named with each ingredient where the source gives a standard deviation", "core/ingredients/catalogue"},
    SourceFacts{Source::KitchenUnits, "Units of the kitchen", "Definitions of the units; named with each unit", "always", "none",
        "core/units/unit"},
    SourceFacts{Source::Steps, "Losses of steps",
        "Assumptions; boiling after Rayleigh with a relative volatility of 10 for ethanol in much water, from memory",
        "what is weighed is exact, what it carried is assumed",
        "none in the mass: what goes into a step comes out of it, or is said to be lost", "core/analysis/steps"},
    SourceFacts{Source::SugarDensity, "Density of water and of sucrose solutions",
        "ICUMSA SPS-4, in Z. Bubnik, P. Kadlec, D. Urban and M. Bruhns, Sugar Technologists Manual (Bartens 1995), p. 164",
        "0 to 100 °C, 0 to 75 % sucrose; strengths beyond 84 % count as 84 %", "0.0002 g/mL against the CRC Handbook",
        "core/solution/sucrose"},
    SourceFacts{Source::EthanolDensity, "Density of ethanol solutions",
        "OIML R 22, International Alcoholometric Tables (1973), general formula", "-20 to 40 °C, 0 to 100 %",
        "0.0003 g/mL against the CRC Handbook", "core/solution/ethanol"},
    SourceFacts{Source::SoluteVolumes, "Volume of dissolved solids",
        "Apparent specific volumes fitted to densities at 20 °C of the CRC Handbook of Chemistry and Physics, 102nd ed. (2021); "
        "protein "
        "0.735 mL/g from memory",
        "to the strongest solution of each that was measured, constant beyond; other temperatures expand as sucrose does",
        "0.0009 g/mL; sugar and alcohol together are simply added, which no measurement was available to check",
        "core/solution/solute_optics"},
    SourceFacts{Source::FoodVolumes, "Volume of fat, starch and fibre",
        "Y. Choi and M. R. Okos, in Food Engineering and Process Applications 1 (1986) 93", "-40 to 150 °C",
        "whole milk comes out at 1.0285 g/mL, where USDA SR28 weighs 1.031", "core/solution/volume"},
    SourceFacts{Source::Refraction, "Refractive index",
        "Lorentz-Lorenz with specific refractions fitted to the CRC Handbook of Chemistry and Physics, 102nd ed. (2021), and for "
        "sucrose "
        "to OIV-MA-AS2-02 Table II, and away from 20 °C to its Table I; protein and water away from 20 °C from memory",
        "0 to 60 °C; no table above 20 °C could be checked",
        "0.0001 at 20 °C for sugars, salt and citric acid, 0.0003 for ethanol and for lactose", "core/solution/refraction"},
    SourceFacts{Source::Prism, "Expansion of a refractometer's prism",
        "Fitted to OIV-MA-AS2-02 Table I: a glass of index 1.7 whose index grows by 6e-6 a kelvin",
        "5 to 17 °C, 10 to 75 °Bx; above, the same physics, which no table could check",
        "0.034 °Bx against the table; taken as 0.02 °Bx at 20 °C, 0.06 at 30 °C, 0.10 at 40 °C", "core/readings/refractometer"},
    SourceFacts{Source::SugarScale, "The scale of a refractometer", "OIV-MA-AS2-02 Table II",
        "0 to 95 °Bx at 20 °C; 0 below the index of water, nothing above", "0.00006 in the index from 0 to 84 °Bx",
        "core/solution/refraction"},
    SourceFacts{Source::SpecificGravity, "Specific gravity 20/20",
        "As NBS Circular 440 and the USDA print it: weighed in air of 1.2 mg/mL", "a strained mix without bubbles",
        "against NBS Circular 440 0.00003 to 8 °Bx, 0.00012 to 40 °Bx, 0.0003 to 65 °Bx", "core/readings/hydrometer"},
    SourceFacts{Source::Baume, "Degrees Baumé",
        "NBS Circular 440: modulus 145, and the ratio of true densities at 20 °C, not of those in air",
        "liquids heavier than water", "0.05 °Bé against Mohos 2010, 10 to 65 °Bx", "core/readings/hydrometer"},
    SourceFacts{Source::Egg, "The floating egg",
        "Geometry of a spheroid of 57 g, 1.08 g/mL and a length of 1.30 times the breadth; usual figures of a hen's egg, from "
        "memory",
        "an egg about a week old", "real eggs range from 1.03 to 1.09 g/mL, and 0.01 g/mL is worth 2 °Bx", "core/readings/egg"},
    SourceFacts{Source::IceEquilibrium, "Equilibrium of ice and liquid",
        "D. M. Murphy and T. Koop, Q. J. R. Meteorol. Soc. 131 (2005) 1539, equations 7 and 10, shifted by "
        "0.0001 in the logarithm so that water freezes at 0 °C exactly",
        "0 to -60 °C; colder counts as -60 °C", "0.0004 in activity down to -40 °C against IAPWS R14-08(2011)",
        "core/solution/ice_equilibrium"},
    SourceFacts{Source::WaterActivity, "Water activity of sugars, polyols and minerals",
        "R. S. Norrish, J. Food Technol. 1 (1966) 25, with terms of M. Starzak and S. D. Peacock, Zuckerindustrie 122 (1997) 380; "
        "constants "
        "fitted to the CRC Handbook of Chemistry and Physics, 102nd ed. (2021), or taken from published tables; groups "
        "multiply "
        "after K. D. Ross, Food Technol. 29(3) (1975) 26",
        "sucrose to 42 %, maltose 40 %, glucose 30 %, fructose 28 %; extrapolated beyond, along the tangent beyond 80 %",
        "0.05 K for sugars, 0.08 K for maltose, 0.7 K for glycerol; mixtures were not measured", "core/solution/solute_activity"},
    SourceFacts{Source::SaltActivity, "Water activity of salt and acid",
        "Fitted to the CRC Handbook of Chemistry and Physics, 102nd ed. (2021)",
        "salt to 23 %, citric acid to 30 %, the tangent beyond", "0.007 K for salt, 0.013 K for citric acid",
        "core/solution/solute_activity"},
    SourceFacts{Source::EthanolActivity, "Water activity of ethanol",
        "CRC Handbook of Chemistry and Physics, 102nd ed. (2021): the table of freezing points itself, monotone cubic between its "
        "rows",
        "4 to 68 %, the tangent beyond", "0.01 K at the rows", "core/solution/ethanol_activity"},
    SourceFacts{Source::VapourPressure, "Vapour pressure of water",
        "W. Wagner and A. Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783, equation 1, coefficients from memory", "0 to 370 °C",
        "100 °C gives 1014.2 hPa", "core/solution/boiling_point"},
    SourceFacts{Source::BoilingPoint, "Boiling point of syrups",
        "Midway between C. A. Browne, Handbook of Sugar Analysis (1912), and the water activity above; below 20 % the activity "
        "alone",
        "0 to 80 % of dissolved solids, no alcohol", "half of the gap between the two: 0.2 K to 50 %, 1.3 K at 80 %",
        "core/solution/boiling_point"},
    SourceFacts{Source::Solubility, "Solubility of sugars and salt",
        "Sucrose: Z. Bubnik and P. Kadlec, in M. Mathlouthi and P. Reiser, Sucrose (1995); lactose: C. S. Hudson, J. Am. Chem. "
        "Soc. 30 "
        "(1908) 1767; glucose, fructose and salt from memory",
        "sucrose and salt 0 to 100 °C, lactose 0 to 89 °C, glucose 20 to 90 °C, fructose 20 to 50 °C",
        "0.2 to 2.5 % either way; each is calculated alone in its water", "core/syrup/solubility"},
    SourceFacts{Source::UnfreezableWater, "Water that does not freeze",
        "0.3 g per gram of protein, 0.5 g per gram of gum, from memory", "protein and gums; never more than the water there is",
        "published values for proteins range from 0.2 to 0.5", "core/solution/water_activity"},
    SourceFacts{Source::GlassLimit, "Glass limit", "Y. Roos, Carbohydr. Res. 238 (1993) 39, from memory; mean by mass",
        "sugars, polyols, glycerol and ethanol", "other schools differ by up to 10 K", "core/freezing/glass"},
    SourceFacts{Source::FreezingCurve, "Freezing curve",
        "The water activity above, with water taken away as ice step by step; monotone cubic (PCHIP) between the steps, a straight "
        "line in one over the temperature between two temperatures of the curve",
        "the freezing point to -30 °C; no more ice below the glass limit",
        "0.005 % of the mix against a root finder at each temperature", "core/freezing/freezing_curve"},
    SourceFacts{Source::Textbook, "Sucrose equivalents",
        "H. D. Goff and R. W. Hartel, Ice Cream, 7th ed. (Springer 2013), chapter 6, Table 6.1; after A. Leighton, J. Dairy Sci. "
        "10 (1927) "
        "300",
        "0 to 180 g sucrose equivalents in 100 g water; the last step goes on to 200 g", "0.01 K at each printed step",
        "core/freezing/textbook"},
    SourceFacts{Source::TextbookFactors, "Factors of sucrose equivalents",
        "H. D. Goff and R. W. Hartel, Ice Cream, 7th ed. (Springer 2013), chapter 6; 342.3/M for what the book does not treat, for "
        "salt 2 x 342.3/M, since it splits into 2 ions",
        "sugars and milk; alcohol, acid and small polyols by their molar mass alone, salt by that of its 2 ions",
        "not known beyond sugars and milk", "core/freezing/textbook"},
    SourceFacts{Source::Sweetness, "Sweetness against sucrose",
        "A technical memorandum on the texture of sorbets (TM 2042); maltose, trehalose, xylitol and erythritol from memory",
        "above 0.5 mol/L, where cold no longer dulls sweetness (Bartoshuk and others, Physiol. Behav. 28 (1982) 905)",
        "a fifth of the figure either way", "core/analysis/sweetness"},
    SourceFacts{Source::Spread, "Spread of ingredients", "Standard deviations of the catalogue's sources, or estimates that say so",
        "rows stray independently; a measured °Bx takes the spread away", "as good as the estimates", "core/analysis/preparation"},
    SourceFacts{Source::ServingWindow, "Firmness and serving window",
        "Scoopable at 38 to 46 % ice in the mix, from 65 to 70 % of the water frozen: M. Mullan, teaching article on freezing "
        "curves, for mixes of 35 to 40 % solids; loose crystals: packing of wet grains (Onoda and Liniger 1990, Newitt and "
        "Conway-Jones "
        "1958, from memory); the other edges are judgement",
        "desserts that freeze", "3 percentage points of ice, 5 of loose crystals", "core/texture/firmness"},
    SourceFacts{Source::DessertKinds, "Kinds of dessert and their sugar",
        "21 CFR 135.110 and 135.140, a UK trade code, McGee, On Food and Cooking, Escoffier, baking texts, and common practice "
        "without a source",
        "names the kind; whether it may be sold under that name is for local law", "bands, not limits",
        "core/texture/texture_class"},
    SourceFacts{Source::CrystalSizes, "Sizes of ice crystals",
        "Churned: Cook and Hartel 2010; still and scraped: common practice, no source", "freshly frozen", "half of the size",
        "core/texture/texture"},
    SourceFacts{Source::Sandiness, "Lactose that turns sandy", "Hyde and Rothwell 1973", "stored for days",
        "9 to 10 g lactose in 100 g water", "core/texture/texture"},
    SourceFacts{Source::MeasuredBrix, "Fruit with a measured °Bx",
        "An assumption: its sugars, in their own proportions, and its water change until its juice reads so; all else stays",
        "fruit and juice up to 85 °Bx", "as good as the reading", "core/analysis/measured_brix"},
    SourceFacts{Source::TriangleTest, "Triangle test", "Exact binomial with p = 1/3, as ISO 4120, from memory",
        "three cups to a taster, two of them alike, each taster once; up to 1000 tasters",
        "the printed least numbers of right answers, from 6 to 30 tasters", "core/tasting/triangle_test"},
    SourceFacts{Source::Attribution, "What did it",
        "L. S. Shapley, A value for n-person games, in Contributions to the Theory of Games II (1953) 307: the mean over the "
        "orders "
        "in which changes can be made one at a time",
        "all orders of up to 6 changes, beyond that a sample of them", "parts add up to the whole difference in every order",
        "core/compare/attribution"},
};

}  // namespace

std::span<const SourceFacts> allSources() { return sources; }

const SourceFacts& factsOf(Source source) { return *std::ranges::find(sources, source, &SourceFacts::source); }

std::string sourcesPage()
{
    std::string page = "# Sources\n\n"
                       "Every model and table that a figure rests on. The program shows the same under each step of a derivation; "
                       "docs/models.md says more\nabout the models.\n\n"
                       "| What | Published | Holds for | Error | In the code |\n| --- | --- | --- | --- | --- |\n";
    for (const SourceFacts& facts : sources)
        fmt::format_to(std::back_inserter(page), "| {} | {} | {} | {} | `{}` |\n", facts.name, facts.publication, facts.range,
            facts.error, facts.code);
    return page;
}

}  // namespace firn
