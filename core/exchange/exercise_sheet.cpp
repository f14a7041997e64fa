#include "exchange/exercise_sheet.h"

#include "exchange/derivation.h"
#include "exchange/derivation_json.h"
#include "exchange/plain_text.h"
#include "exchange/recipe_text.h"

#include <fmt/format.h>

namespace firn {

namespace {

std::string answerOf(const ExpectedAnswer& answer)
{
    return english(phrase("{0} {1}", Figure{answer.value, answer.decimals}, answer.unit));
}

std::string lineOf(const Row& row)
{
    std::string line = rowsToText({row});
    while (line.ends_with('\n'))
        line.pop_back();
    return printable(std::move(line));
}

Json exerciseJson(const Exercise& exercise, bool hasSolutions)
{
    Json hints = Json::array();
    for (const Sentence& hint : exercise.hints)
        hints.push_back(english(hint));
    Json given = Json::array();
    for (const Sentence& line : exercise.given)
        given.push_back(english(line));
    Json json{{"name", nameOf(exercise.kind)}, {"question", english(exercise.question)}, {"given", std::move(given)},
        {"hints", std::move(hints)}};
    if (!hasSolutions)
        return json;
    json["answer"] = exercise.answer.value;
    json["tolerance"] = exercise.answer.tolerance;
    json["unit"] = exercise.answer.unit;
    json["steps"] = stepsJson(exercise.solution);
    return json;
}

}  // namespace

std::string exercisesText(const ExerciseSheet& sheet, bool hasSolutions)
{
    std::string page =
        fmt::format("{}\nSheet {}\n\n", printable(sheet.recipe.title.empty() ? "Untitled" : sheet.recipe.title), sheet.seed);
    for (const Component& component : sheet.recipe.components) {
        for (const Row& row : component.rows)
            page += lineOf(row) + "\n";
    }
    for (std::size_t i = 0; i < sheet.exercises.size(); ++i) {
        const Exercise& exercise = sheet.exercises[i];
        page += fmt::format("\n{}. {}\n{}\n", i + 1, nameOf(exercise.kind), printable(english(exercise.question)));
        for (const Sentence& line : exercise.given)
            page += fmt::format("  {}\n", printable(english(line)));
        if (hasSolutions)
            page += "\n" + stepsText(exercise.solution) + fmt::format("\nAnswer: {}\n", answerOf(exercise.answer));
    }
    if (sheet.reason)
        page += "\n" + printable(english(*sheet.reason)) + "\n";
    else if (sheet.exercises.empty())
        page += "\nThere is nothing to ask about: put water and sugar in the recipe.\n";
    return page;
}

std::string exercisesJson(const ExerciseSheet& sheet, bool hasSolutions)
{
    Json json{{"format", "firn-exercises"}, {"version", 1}, {"title", sheet.recipe.title}, {"sheet", sheet.seed}};
    json["rows"] = Json::array();
    for (const Component& component : sheet.recipe.components) {
        for (const Row& row : component.rows)
            json["rows"].push_back(lineOf(row));
    }
    json["exercises"] = Json::array();
    for (const Exercise& exercise : sheet.exercises)
        json["exercises"].push_back(exerciseJson(exercise, hasSolutions));
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace firn
