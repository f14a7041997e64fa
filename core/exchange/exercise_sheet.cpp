#include "exchange/exercise_sheet.h"

#include "exchange/derivation.h"
#include "exchange/derivation_json.h"
#include "exchange/plain_text.h"

#include <algorithm>
#include <fmt/format.h>

namespace firn {

namespace {

std::string answerOf(const ExpectedAnswer& answer)
{
    return english(phrase("{0} {1}", Figure{answer.value, answer.decimals}, answer.unit));
}

/// Columns under their names, each as wide as its widest cell.
std::string textOf(const GivenTable& table)
{
    std::vector<std::vector<std::string>> lines(1);
    for (const Sentence& name : table.names)
        lines.front().push_back(printable(english(name)));
    for (const auto& row : table.rows) {
        auto& line = lines.emplace_back();
        for (const Sentence& cell : row)
            line.push_back(printable(english(cell)));
    }
    std::string text;
    for (const auto& line : lines) {
        text += " ";
        for (std::size_t i = 0; i < line.size(); ++i) {
            std::size_t width = 0;
            for (const auto& other : lines)
                width = std::max(width, other[i].size());
            text += i + 1 < line.size() ? fmt::format(" {:<{}} ", line[i], width) : " " + line[i];
        }
        text += "\n";
    }
    return text;
}

Json tablesOf(const Exercise& exercise)
{
    Json tables = Json::array();
    for (const GivenTable& table : exercise.tables) {
        Json names = Json::array(), rows = Json::array();
        for (const Sentence& name : table.names)
            names.push_back(english(name));
        for (const auto& row : table.rows) {
            Json& cells = rows.emplace_back(Json::array());
            for (const Sentence& cell : row)
                cells.push_back(english(cell));
        }
        tables.push_back({{"names", std::move(names)}, {"rows", std::move(rows)}});
    }
    return tables;
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
        {"tables", tablesOf(exercise)}, {"hints", std::move(hints)}};
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
    for (const auto& component : sheet.lines) {
        for (const std::string& line : component)
            page += printable(line) + "\n";
    }
    for (std::size_t i = 0; i < sheet.exercises.size(); ++i) {
        const Exercise& exercise = sheet.exercises[i];
        page += fmt::format("\n{}. {}\n{}\n", i + 1, nameOf(exercise.kind), printable(english(exercise.question)));
        for (const Sentence& line : exercise.given)
            page += fmt::format("  {}\n", printable(english(line)));
        for (const GivenTable& table : exercise.tables)
            page += textOf(table);
        if (hasSolutions)
            page += "\n" + stepsText(exercise.solution) + fmt::format("\nAnswer: {}\n", answerOf(exercise.answer));
    }
    if (sheet.reason)
        page += "\n" + printable(english(*sheet.reason)) + "\n";
    else if (sheet.exercises.empty())
        page += "\nThere is nothing to ask about. Put water and sugar in the recipe.\n";
    return page;
}

std::string exercisesJson(const ExerciseSheet& sheet, bool hasSolutions)
{
    Json json{{"format", "firn-exercises"}, {"version", 1}, {"title", sheet.recipe.title}, {"sheet", sheet.seed}};
    json["rows"] = Json::array();
    for (const auto& component : sheet.lines) {
        for (const std::string& line : component)
            json["rows"].push_back(line);
    }
    json["exercises"] = Json::array();
    for (const Exercise& exercise : sheet.exercises)
        json["exercises"].push_back(exerciseJson(exercise, hasSolutions));
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace firn
