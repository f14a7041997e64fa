// What stands on a page of a derivation, a lesson or a solution: every symbol is explained, no letter stands for two things, units agree, and
// nothing is counted twice.
#include "any_kitchen_recipe.h"
#include "dimension.h"
#include "exchange/files.h"
#include "explain/exercises.h"
#include "explain/lesson.h"
#include "explain/methods.h"
#include "mix/symbols.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <set>

namespace firn {
namespace {

using Steps = std::vector<WorkingStep>;

/// What a letter may stand for: its unit, and a word of its meaning where units do not tell.
struct Kind {
    std::string letter;
    std::string unit;
    std::string word = "";
};

const std::vector<Kind> kinds{
    {"A", ""},
    {"A", "kg/m³"},
    {"a", "", "water activity"},
    {"a", "", "a number"},
    {"a", "*", "amount"},
    {"b", "mol/kg"},
    {"b", "", "a number"},
    {"B", "°Bx"},
    {"ΔB", "°Bx"},
    {"Bé", "°Bé"},
    {"C", ""},
    {"c", "g/g"},
    {"c1", "", "a number"},
    {"c2", "", "a number"},
    {"c3", "", "a number"},
    {"c4", "", "a number"},
    {"c5", "", "a number"},
    {"d", "mm"},
    {"D", "kg/mol"},
    {"e", "", "exposed"},
    {"e", "", "above the surface"},
    {"E", ""},
    {"f", "", "sucrose that a gram"},
    {"f", "", "sweetness"},
    {"g", ""},
    {"h", "mm"},
    {"j", ""},
    {"k", "1/K"},
    {"l", "g"},
    {"L", ""},
    {"λ", ""},
    {"M", "g/mol"},
    {"m", "g"},
    {"Δm", "g"},
    {"n", "mol"},
    {"N", "mL"},
    {"ν", "mL/g"},
    {"nD", ""},
    {"o", "%"},
    {"p", "%", "share"},
    {"p", "%", "parts of"},
    {"π", ""},
    {"φ", "% vol"},
    {"q", "J/mol"},
    {"R", "J/(mol K)"},
    {"r", "", "share of"},
    {"r", "", "molar mass"},
    {"ρ", "g/mL"},
    {"S", "%"},
    {"s", "g"},
    {"s", "g/g"},
    {"SE", "g"},
    {"SG", ""},
    {"σ", "g|%"},
    {"σ²", "g²"},
    {"t", "°C"},
    {"T", "°C|K"},
    {"ΔT", "K"},
    {"τ", ""},
    {"θ", ""},
    {"Θ", "K"},
    {"Δ", "K"},
    {"δ", "K"},
    {"u", "g/*"},
    {"U", "√(J/mol)"},
    {"v", "mL/g"},
    {"v", "mL/*"},
    {"V", "mL|mm³"},
    {"w", "%"},
    {"W", ""},
    {"x", "%"},
    {"X", ""},
    {"y", ""},
    {"z", ""},
    {"Z", ""},
};

/// "g|%" for either, "g/*" for any that begins so.
bool isUnit(const std::string& pattern, const std::string& unit)
{
    if (const auto bar = pattern.find('|'); bar != std::string::npos)
        return unit == pattern.substr(0, bar) || unit == pattern.substr(bar + 1);
    return pattern.ends_with('*') ? unit.starts_with(pattern.substr(0, pattern.size() - 1)) : unit == pattern;
}

bool isOf(const Kind& kind, const Symbol& symbol)
{
    return kind.letter == symbol.name && isUnit(kind.unit, symbol.unit)
           && english(symbol.meaning).find(kind.word) != std::string::npos;
}

/// Everything that stands in a step: its result, the symbols of its formula and of the general terms of its sums.
std::vector<Symbol> allSymbolsOf(const WorkingStep& step)
{
    std::vector<Symbol> symbols = symbolsOf(step.formula);
    for (const Symbol& general : generalSymbolsOf(step.formula))
        symbols.push_back(general);
    symbols.push_back(step.result);
    return symbols;
}

/// Symbols of general terms that stand on the page and in no legend: what generalSymbolsOf() leaves out cannot be found by asking it.
void collectBodies(const Formula& formula, std::vector<Symbol>& symbols)
{
    if (const auto* operation = std::get_if<Operation>(&formula.node)) {
        for (const Formula& part : operation->parts)
            collectBodies(part, symbols);
    } else if (const auto* sum = std::get_if<Series>(&formula.node)) {
        for (const Symbol& symbol : symbolsOf(*sum->body)) {
            const bool isTheIndex = symbol.name == sum->index;
            if (!isTheIndex && !sum->terms.empty())
                symbols.push_back(symbol);
        }
    }
}

std::string withoutLegendOn(const Steps& page)
{
    std::string faults;
    for (const WorkingStep& step : page) {
        std::vector<Symbol> written;
        collectBodies(step.formula, written);
        const std::vector<Symbol> explainedThere = allSymbolsOf(step);
        for (const Symbol& each : written) {
            if (std::ranges::none_of(explainedThere, [&](const Symbol& known) { return isSame(known, each); }))
                faults += textOf(each) + " has no legend in " + textOf(step.formula) + "\n";
        }
    }
    return faults;
}

/// A share that becomes a percentage and one that is made of one again, in the same formula: percent is counted twice.
std::string percentTwiceOn(const Steps& page)
{
    std::string faults;
    for (const WorkingStep& step : page) {
        const std::string text = textOf(step.formula);
        if (text.find("100 % ·") != std::string::npos && text.find("/ 100 %") != std::string::npos)
            faults += "percent twice: " + text + "\n";
    }
    return faults;
}

void collectFunctions(const Formula& formula, std::vector<Operation>& functions)
{
    if (const auto* operation = std::get_if<Operation>(&formula.node)) {
        if (operation->op == Operator::Function)
            functions.push_back(*operation);
        for (const Formula& part : operation->parts)
            collectFunctions(part, functions);
    } else if (const auto* sum = std::get_if<Series>(&formula.node)) {
        for (const SeriesTerm& term : sum->terms)
            collectFunctions(term.formula, functions);
    }
}

bool isCommon(const std::string& function)
{
    return function == "ln" || function == "exp" || function == "max" || function == "min";
}

std::string undefinedOn(const Steps& page)
{
    std::string faults;
    for (const WorkingStep& step : page) {
        for (const Symbol& symbol : allSymbolsOf(step)) {
            if (symbol.meaning.pattern.empty())
                faults += textOf(symbol) + " has no meaning in " + textOf(step.formula) + "\n";
        }
        std::vector<Operation> functions;
        collectFunctions(step.formula, functions);
        for (const Operation& each : functions) {
            if (!isCommon(each.function) && each.meaning.pattern.empty())
                faults += each.function + "() has no meaning in " + textOf(step.formula) + "\n";
        }
    }
    return faults;
}

/// The same symbol with two values, or the same letter for two kinds of things.
std::string ambiguousOn(const Steps& page)
{
    std::string faults;
    std::map<std::string, double> values;
    std::map<std::string, std::pair<std::size_t, std::string>> kindOf;
    for (const WorkingStep& step : page) {
        for (const Symbol& symbol : allSymbolsOf(step)) {
            const auto kind = std::ranges::find_if(kinds, [&](const Kind& each) { return isOf(each, symbol); });
            if (kind == kinds.end()) {
                faults += "not in the table: " + symbol.name + " | " + symbol.unit + " | " + english(symbol.meaning) + "\n";
                continue;
            }
            const auto place = std::size_t(kind - kinds.begin());
            const auto& [first, meaning] = kindOf.try_emplace(symbol.name, place, english(symbol.meaning)).first->second;
            if (first != place)
                faults += symbol.name + " is \"" + meaning + "\" and \"" + english(symbol.meaning) + "\"\n";
        }
        std::vector<Symbol> valued = symbolsOf(step.formula);
        valued.push_back(step.result);
        for (const Symbol& symbol : valued) {
            const double value = values.try_emplace(textOf(symbol), symbol.value).first->second;
            // A temperature of 0 °C that stands under a fraction bar is moved by a millionth of a degree.
            const double nearZero = symbol.unit == "°C" ? 2e-6 : 1e-9;
            if (std::isfinite(value) && std::abs(value - symbol.value) > nearZero + 1e-7 * std::abs(value))
                faults += textOf(symbol) + " is " + std::to_string(value) + " and " + std::to_string(symbol.value) + " in "
                          + textOf(step.formula) + "\n";
        }
    }
    return faults;
}

std::string unitsOf(const Steps& page)
{
    std::string faults;
    for (const WorkingStep& step : page) {
        if (step.isInNumbers)
            continue;
        try {
            (void)dimensionOf(step.formula);
        } catch (const DimensionFault& fault) {
            faults += std::string(fault.what()) + " | " + textOf(withValues(step)) + "\n";
        }
    }
    return faults;
}

std::string faultsOf(const std::string& name, const Steps& page)
{
    const std::string faults = undefinedOn(page) + withoutLegendOn(page) + ambiguousOn(page) + unitsOf(page) + percentTwiceOn(page);
    return faults.empty() ? "" : name + "\n" + faults;
}

void append(Steps& steps, const Steps& more) { steps.insert(steps.end(), more.begin(), more.end()); }

std::string faultsOf(const Recipe& recipe, const Conditions& conditions, std::optional<std::size_t> component = {})
{
    const ExplainedAnalysis explained = analyseWithWorkings(recipe, shippedCatalogue(), conditions, component);
    std::string faults;
    for (const auto& [figure, working] : explained.workings.all())
        faults += faultsOf(figure, working.steps());
    for (const LessonTopic topic : lessonTopics(explained.analysis))
        faults += faultsOf(english(titleOf(topic)), lessonPage(topic, explained).steps);
    if (const auto methods = compareMethods(explained)) {
        Steps both = methods->textbook.steps;
        append(both, methods->waterActivity.steps);
        faults += faultsOf("both methods", both);
    }
    for (const std::uint64_t seed : {0u, 3u}) {
        for (const Exercise& exercise : exercisesFor(recipe, shippedCatalogue(), conditions, seed).exercises)
            faults += faultsOf(std::string(nameOf(exercise.kind)), exercise.solution);
    }
    return faults.substr(0, 6000);
}

std::vector<std::filesystem::path> samples()
{
    std::vector<std::filesystem::path> files;
    for (const auto& file : std::filesystem::directory_iterator(FIRN_SOURCE_DIR "/resources/samples"))
        files.push_back(file.path());
    std::ranges::sort(files);
    return files;
}

class NotationOfSamples : public testing::TestWithParam<std::filesystem::path> {};

TEST_P(NotationOfSamples, IsDefinedOnEachPageAndMeansOneThing)
{
    const auto recipe = recipeFromContents(*contentsOf(GetParam()), GetParam());
    ASSERT_TRUE(recipe);
    EXPECT_EQ(faultsOf(*recipe, conditionsOf(*recipe)), "");
    EXPECT_EQ(faultsOf(*recipe, conditionsOf(*recipe), 0), "");
}

INSTANTIATE_TEST_SUITE_P(Menu, NotationOfSamples, testing::ValuesIn(samples()));

RC_GTEST_PROP(Notation, OfAnyRecipeIsDefinedOnEachPageAndMeansOneThing, ())
{
    const Recipe recipe = anyRecipe();
    Conditions conditions;
    conditions.serveAt = {-*rc::gen::inRange(0, 350) / 10.0};
    conditions.readAt = {*rc::gen::inRange(0, 400) / 10.0};
    const auto component = *rc::gen::inRange<std::size_t>(0, recipe.components.size() + 1);
    const std::string faults = faultsOf(recipe, conditions, component > 0 ? std::optional(component - 1) : std::nullopt);
    RC_ASSERT(faults == "");
}

TEST(Notation, ALessonNeverUsesALetterForTwoThings)
{
    for (const auto& path : samples()) {
        const auto recipe = recipeFromContents(*contentsOf(path), path);
        ASSERT_TRUE(recipe);
        const ExplainedAnalysis explained = analyseWithWorkings(*recipe, shippedCatalogue(), conditionsOf(*recipe), std::size_t{0});
        std::map<std::string, std::pair<const Kind*, std::string>> kindOf;
        for (const LessonTopic topic : lessonTopics(explained.analysis)) {
            for (const WorkingStep& step : lessonPage(topic, explained).steps) {
                for (const Symbol& symbol : allSymbolsOf(step)) {
                    const auto kind = std::ranges::find_if(kinds, [&](const Kind& each) { return isOf(each, symbol); });
                    ASSERT_NE(kind, kinds.end()) << textOf(symbol);
                    const auto& [first, page] = kindOf.try_emplace(symbol.name, &*kind, english(titleOf(topic))).first->second;
                    EXPECT_EQ(first, &*kind) << symbol.name << " on “" << page << "” and on “" << english(titleOf(topic)) << "”";
                }
            }
        }
    }
}

/// What a page may start from: the recipe's amounts and what the mix holds, constants and tables of sources, points of the curve, which is drawn,
/// and what the person chose.
bool isStart(const Symbol& symbol)
{
    static const std::set<std::string> letters{"M", "c", "q", "r", "v", "ν", "f", "k", "λ", "π", "σ", "a"};
    static const std::set<std::string> names{"R", "ρ_w", "ρ_w,t", "ρ_air", "ρ_egg", "ρ_ethanol", "m_egg", "t_freezer", "t_end",
        "t_read", "o", "w_low", "w_high", "k_prism", "w_fat", "t"};
    const bool isHeld =
        symbol.name == "m"
        && (symbol.subscript == "mix" || symbol.subscript.starts_with("row")
            || std::ranges::any_of(mixParts(), [&](const MixPart& part) { return part.subscript == symbol.subscript; }));
    const bool isOfWhatIsHeld = symbol.name == "n" && std::ranges::any_of(mixParts(), [&](const MixPart& part) {
        return part.subscript == symbol.subscript;
    });
    return isHeld || isOfWhatIsHeld || letters.contains(symbol.name) || names.contains(textOf(symbol))
           || symbol.figure.starts_with("freezing_curve[") || symbol.figure == "percent.sugars"
           || symbol.subscript.starts_with("begins");
}

/// Values that stand on a page without having been found there, on a page before, or being what a page may start from.
TEST(Notation, ALessonFindsEveryValueThatItUses)
{
    std::vector<Recipe> recipes;
    for (const auto& path : samples())
        recipes.push_back(*recipeFromContents(*contentsOf(path), path));
    Recipe& granita = recipes.emplace_back();
    granita.components.front().rows = {{"water", {700, Unit::Gram}, {}, {}}, {"sucrose", {150, Unit::Gram}, {}, {}},
        {"glycerol", {20, Unit::Gram}, {}, {}}, {"vodka", {50, Unit::Gram}, {}, {}}, {"salt", {3, Unit::Gram}, {}, {}}};
    for (const Recipe& recipe : recipes) {
        const ExplainedAnalysis explained = analyseWithWorkings(recipe, shippedCatalogue(), conditionsOf(recipe));
        std::set<std::string> found;
        for (const LessonTopic topic : lessonTopics(explained.analysis)) {
            // Why spirit keeps it soft is shown in a picture; its figures are found on the page after it, step by step.
            if (topic == LessonTopic::Spirit)
                continue;
            for (const WorkingStep& step : lessonPage(topic, explained).steps) {
                found.insert(textOf(step.result));
                for (const Symbol& symbol : symbolsOf(step.formula))
                    EXPECT_TRUE(found.contains(textOf(symbol)) || isStart(symbol))
                        << recipe.title << ", " << english(titleOf(topic)) << ": " << textOf(symbol) << " in "
                        << textOf(step.formula);
            }
        }
    }
}

TEST(Notation, TheFirstPageFindsEverySugarThatItAddsUp)
{
    for (const auto& path : samples()) {
        const auto recipe = recipeFromContents(*contentsOf(path), path);
        const ExplainedAnalysis explained = analyseWithWorkings(*recipe, shippedCatalogue(), conditionsOf(*recipe));
        std::set<std::string> found{"m_mix"};
        for (const WorkingStep& step : lessonPage(LessonTopic::Sugars, explained).steps) {
            const bool isOfRows = step.result.name == "m" && step.result.subscript != "sugars";
            for (const Symbol& symbol : symbolsOf(step.formula)) {
                const bool isTold = isOfRows || isSame(symbol, step.result) || found.contains(textOf(symbol));
                EXPECT_TRUE(isTold) << textOf(symbol) << " in " << textOf(step.formula);
            }
            found.insert(textOf(step.result));
        }
    }
}

std::string texts(const Steps& steps)
{
    std::string all;
    for (const WorkingStep& step : steps)
        all += textOf(withValues(step)) + "\n";
    return all;
}

TEST(Notation, PercentIsCountedOnceAndTemperaturesInKelvinSaySo)
{
    Recipe recipe;
    recipe.components.front().rows = {{"water", {750, Unit::Gram}, {}, {}}, {"sucrose", {350, Unit::Gram}, {}, {}},
        {"citric-acid", {30, Unit::Gram}, {}, {}}, {"salt", {10, Unit::Gram}, {}, {}}};
    const ExplainedAnalysis explained = analyseWithWorkings(recipe, shippedCatalogue(), {});
    EXPECT_EQ(texts({explain("percent.sugars", explained.workings)->steps.back()}), "w_sugars = 100 % · 350 g / 1140 g\n");
    const std::string curve = texts(explain("freezing_point_c", explained.workings)->steps);
    EXPECT_NE(curve.find("+ 273.15 K)"), std::string::npos) << curve;
    EXPECT_NE(curve.find("b_acid = 1000 g/kg · "), std::string::npos) << curve;
    EXPECT_NE(curve.find("L_salt = −0.03428033 kg/mol"), std::string::npos) << curve;
    EXPECT_EQ(curve.find("273.15)"), std::string::npos) << curve;
}

TEST(Notation, TheDimensionsOfAFormulaAreThoseOfItsParts)
{
    const Symbol mass{"m", "", 1.0, "g", {}}, volume{"V", "", 2.0, "mL", {}}, warm{"t", "", 3.0, "°C", {}},
        share{"w", "", 4.0, "%", {}};
    const auto isConsistent = [](const Formula& formula) {
        try {
            (void)dimensionOf(formula);
            return true;
        } catch (const DimensionFault&) {
            return false;
        }
    };
    EXPECT_TRUE(isConsistent(equation(Symbol{"ρ", "", 0.5, "g/mL", {}}, mass / Formula(volume))));
    EXPECT_FALSE(isConsistent(equation(Symbol{"ρ", "", 0.5, "mL/g", {}}, mass / Formula(volume))));
    EXPECT_FALSE(isConsistent(mass + Formula(volume)));
    EXPECT_FALSE(isConsistent(mass + Formula(1.0)));
    EXPECT_TRUE(isConsistent(Formula(warm) + zeroCelsius()));
    EXPECT_FALSE(isConsistent(Formula(warm) + 273.15));
    EXPECT_FALSE(isConsistent(equation(share, 100.0 * (mass / Formula(mass)))));
    EXPECT_TRUE(isConsistent(equation(share, oneHundredPercent() * (mass / Formula(mass)))));
    EXPECT_FALSE(isConsistent(ln(mass)));
    EXPECT_TRUE(isConsistent(power(root(mass), 2.0) + mass));
    EXPECT_TRUE(isConsistent(function("max", {0.0, mass})));
    EXPECT_EQ(dimensionOfUnit("J/(mol K)"), (UnitPowers{{"J", 1.0}, {"mol", -1.0}, {"K", -1.0}}));
    EXPECT_EQ(dimensionOfUnit("√(kg³/mol³)"), (UnitPowers{{"kg", 1.5}, {"mol", -1.5}}));
}

}  // namespace
}  // namespace firn
