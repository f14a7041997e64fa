// What is printed of a working can be worked out again with a calculator, and a number has one form on a page.
#include "any_kitchen_recipe.h"
#include "derivation/formula_text.h"
#include "exchange/files.h"
#include "explain/exercises.h"
#include "explain/giving_away.h"
#include "explain/lesson.h"
#include "explain/methods.h"
#include "units/number.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <map>
#include <rapidcheck/gtest.h>
#include <set>

namespace firn {
namespace {

using Steps = std::vector<WorkingStep>;

/// A number as it is printed: its value, and what its last digit is worth.
struct Printed {
    double value;
    double lastDigit;
};

/// Reads "−0.0123 g" and "3.4·10⁻⁶ 1/K" again, from the text alone.
Printed printed(const Number& number)
{
    std::string text = valueText({number.value, {}, number.isValue, number.decimals});
    double sign = 1.0, factor = 1.0;
    if (text.starts_with("−")) {
        sign = -1.0;
        text.erase(0, std::string("−").size());
    }
    if (const auto ten = text.find("·10"); ten != std::string::npos) {
        std::string exponent;
        static const std::vector<std::string> raised{"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"};
        for (std::string rest = text.substr(ten + 4); !rest.empty();) {
            const std::string before = rest;
            if (rest.starts_with("⁻")) {
                exponent = "-";
                rest.erase(0, std::string("⁻").size());
            }
            for (std::size_t i = 0; i < raised.size(); ++i) {
                if (rest.starts_with(raised[i])) {
                    exponent += std::to_string(i);
                    rest.erase(0, raised[i].size());
                    break;
                }
            }
            if (rest == before)
                break;
        }
        factor = std::pow(10.0, std::stoi(exponent));
        text.erase(ten);
    }
    const auto mark = text.find('.');
    const double lastDigit = mark == std::string::npos ? 1.0 : std::pow(10.0, -double(text.size() - mark - 1));
    return {sign * std::stod(text) * factor, lastDigit * factor};
}

Formula asPrinted(Formula formula)
{
    if (auto* number = std::get_if<Number>(&formula.node)) {
        if (number->isValue && std::isfinite(number->value))
            number->value = printed(*number).value;
    } else if (auto* operation = std::get_if<Operation>(&formula.node)) {
        for (Formula& part : operation->parts)
            part = asPrinted(part);
    } else if (auto* sum = std::get_if<Series>(&formula.node)) {
        for (SeriesTerm& term : sum->terms)
            term.formula = asPrinted(term.formula);
    }
    return formula;
}

/// Steps whose printed numbers do not come to their printed result, give or take so many of its last digits.
std::string wrongSums(const Steps& steps, double lastDigits)
{
    std::string faults;
    for (const WorkingStep& step : steps) {
        const Formula values = withValues(step);
        const auto* sides = std::get_if<Operation>(&values.node);
        const auto* left = sides && sides->op == Operator::Equals ? std::get_if<Symbol>(&sides->parts.front().node) : nullptr;
        if (!left || !isSame(*left, step.result) || !std::isfinite(step.result.value))
            continue;
        const auto found = valueOf(asPrinted(sides->parts.back()));
        const Number result{step.result.value, step.result.unit, true, step.result.decimals};
        if (found
            && !(std::abs(*found - printed(result).value) <= lastDigits * printed(result).lastDigit + 1e-9 * std::abs(*found)))
            faults += textOf(values) + " = " + valueText(result) + ", not " + std::to_string(*found) + "\n";
    }
    return faults;
}

void collect(const Formula& formula, const Formula& values, std::map<std::string, std::set<std::string>>& forms)
{
    if (const auto* symbol = std::get_if<Symbol>(&formula.node)) {
        if (const auto* number = std::get_if<Number>(&values.node))
            forms[textOf(*symbol)].insert(valueText({number->value, {}, true, number->decimals}));
    } else if (const auto* operation = std::get_if<Operation>(&formula.node)) {
        for (std::size_t i = 0; i < operation->parts.size(); ++i)
            collect(operation->parts[i], std::get<Operation>(values.node).parts[i], forms);
    } else if (const auto* sum = std::get_if<Series>(&formula.node)) {
        for (std::size_t i = 0; i < sum->terms.size(); ++i)
            collect(sum->terms[i].formula, std::get<Series>(values.node).terms[i].formula, forms);
    }
}

/// Symbols that are written in more than one way on the page.
std::string twoForms(const Steps& steps)
{
    std::map<std::string, std::set<std::string>> forms;
    for (const WorkingStep& step : steps) {
        collect(step.formula, withValues(step), forms);
        if (std::isfinite(step.result.value))
            forms[textOf(step.result)].insert(valueText({step.result.value, {}, true, step.result.decimals}));
    }
    std::string faults;
    for (const auto& [symbol, texts] : forms) {
        if (texts.size() > 1)
            faults += symbol + " is " + *texts.begin() + " and " + *texts.rbegin() + "\n";
    }
    return faults;
}

/// What a solution starts from, digit by digit as it is printed there, stands in the exercise.
std::string notGiven(const Exercise& exercise)
{
    std::string faults;
    std::set<std::string> found;
    const std::string text = textOf(exercise);
    for (const WorkingStep& step : exercise.solution) {
        found.insert(textOf(step.result));
        for (const Symbol& symbol : symbolsOf(step.formula)) {
            const std::string number = valueText({std::abs(symbol.value), {}, true, symbol.decimals});
            if (!found.contains(textOf(symbol)) && symbol.value != 0.0 && text.find(number) == std::string::npos)
                faults += textOf(symbol) + " = " + number + " is not given\n";
        }
    }
    return faults;
}

std::string faultsOf(const ExerciseSheet& sheet)
{
    constexpr double half = 0.5 + 1e-6;
    std::string faults;
    for (const Exercise& exercise : sheet.exercises) {
        const std::string each = wrongSums(exercise.solution, half) + twoForms(exercise.solution) + notGiven(exercise);
        if (!each.empty())
            faults += std::string(nameOf(exercise.kind)) + "\n" + each + textOf(exercise);
        // The last step and the line with the answer say the same.
        const Symbol& result = exercise.solution.back().result;
        if (result.decimals != exercise.answer.decimals || result.value != exercise.answer.value)
            faults += std::string(nameOf(exercise.kind)) + ": the answer has another form than its step\n";
    }
    return faults;
}

std::vector<Recipe> samples()
{
    std::vector<std::filesystem::path> files;
    for (const auto& file : std::filesystem::directory_iterator(FIRN_SOURCE_DIR "/resources/samples"))
        files.push_back(file.path());
    std::ranges::sort(files);
    std::vector<Recipe> recipes;
    for (const auto& path : files)
        recipes.push_back(*recipeFromContents(*contentsOf(path), path));
    return recipes;
}

/// On a page digits are added until it computes, where that is possible.
std::string faultsOf(const ExplainedAnalysis& explained, double lastDigits)
{
    std::string faults;
    const auto add = [&](const std::string& name, const Steps& steps) {
        const std::string each = wrongSums(steps, lastDigits) + twoForms(steps);
        faults += each.empty() ? "" : name + "\n" + each;
    };
    for (const LessonTopic topic : lessonTopics(explained.analysis))
        add(english(titleOf(topic)), lessonPage(topic, explained).steps);
    if (const auto methods = compareMethods(explained)) {
        Steps both = methods->textbook.steps;
        both.insert(both.end(), methods->waterActivity.steps.begin(), methods->waterActivity.steps.end());
        add("both methods", both);
    }
    return faults;
}

TEST(PrintedNumbers, ASolutionComputesFromWhatItsExerciseGives)
{
    for (const Recipe& recipe : samples()) {
        for (std::uint64_t seed = 0; seed < 8; ++seed)
            EXPECT_EQ(faultsOf(exercisesFor(recipe, shippedCatalogue(), conditionsOf(recipe), seed)), "")
                << recipe.title << " " << seed;
    }
}

RC_GTEST_PROP(PrintedNumbers, ASolutionOfAnyRecipeComputesFromWhatItsExerciseGives, ())
{
    const Recipe recipe = anyRecipe();
    Conditions conditions;
    conditions.serveAt = {-*rc::gen::inRange(0, 3500) / 100.0};
    const ExerciseSheet sheet = exercisesFor(recipe, shippedCatalogue(), conditions, *rc::gen::inRange<std::uint64_t>(0, 1000));
    RC_PRE(sheet.mix.mass().value <= largestAmount);  // no number that can be typed
    const std::string faults = faultsOf(sheet);
    RC_LOG() << faults;
    RC_ASSERT(faults.empty());
}

TEST(PrintedNumbers, APageOfASampleComputesAndWritesEachNumberInOneWay)
{
    for (const Recipe& recipe : samples()) {
        const ExplainedAnalysis explained = analyseWithWorkings(recipe, shippedCatalogue(), conditionsOf(recipe));
        EXPECT_EQ(faultsOf(explained, 1.0 + 1e-6), "") << recipe.title;
        for (const auto& [figure, working] : explained.workings.all())
            EXPECT_EQ(twoForms(explain(figure, explained.workings)->steps), "") << figure;
    }
}

TEST(PrintedNumbers, WhatTheTestsFind)
{
    const Symbol whole{"m", "mix", 977.04, "g", phrase("mass")}, sugars{"m", "sugars", 301.163, "g", phrase("sugars")};
    const auto stepOf = [&](double result) {
        Working working;
        working.found({"w", "", result, "%", phrase("share")}, oneHundredPercent() * (sugars / Formula(whole)), Source::Definition);
        return working.steps();
    };
    EXPECT_EQ(wrongSums(stepOf(30.82), 1.0), "");
    EXPECT_NE(wrongSums(stepOf(30.88), 1.0), "");
    EXPECT_NE(twoForms({stepOf(30.8).front(), {{"w", "", 30.8, "%", phrase("share"), {}, 3}, whole, Source::Definition}}), "");
    EXPECT_DOUBLE_EQ(printed({-3.4e-6, "1/K", true}).value, -3.4e-6);
    EXPECT_DOUBLE_EQ(printed({-0.01124, "", true}).lastDigit, 1e-5);
}

}  // namespace
}  // namespace firn
