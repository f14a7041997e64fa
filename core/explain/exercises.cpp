#include "explain/exercises.h"

#include "explain/dice.h"
#include "explain/exercise_questions.h"
#include "explain/giving_away.h"
#include "recipe/rounding.h"
#include "units/text.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>

namespace firn {

namespace {

/// As a scale shows it: whole grams, below 10 g tenths. Other units as a jug, a spoon or a scale measures them.
Amount measurable(const Amount& amount)
{
    if (amount.value <= 0.0)
        return amount;
    if (amount.unit != Unit::Gram)
        return rounded(amount, {}).amount;
    constexpr double tenthsBelow_g = 10.0, leastOnScale_g = 0.1;
    const double step = amount.value >= tenthsBelow_g ? 1.0 : leastOnScale_g;
    return {std::max(std::round(amount.value / step) * step, std::min(amount.value, step)), Unit::Gram};
}

Recipe varied(Recipe recipe, std::uint64_t seed, Dice& dice)
{
    if (seed == 0)
        return recipe;
    constexpr int most_percent = 15;
    for (Component& component : recipe.components) {
        for (Row& row : component.rows) {
            const double factor = 1.0 + dice.between(-most_percent, most_percent) / 100.0;
            if (factsOf(row.amount.unit).dimension != Dimension::Count)
                row.amount = measurable({row.amount.value * factor, row.amount.unit});
        }
    }
    return recipe;
}

/// What the name has not said already: of "dried; off the heat" beside "hibiscus flower, dried" the second part.
std::string noteBeside(const std::string& name, std::string_view note)
{
    const std::string said = lowered(name) + ",";
    std::string left;
    while (!note.empty()) {
        const std::size_t end = std::min(note.find(';'), note.size());
        const std::string_view part = trimmed(note.substr(0, end));
        if (!part.empty() && said.find(", " + lowered(part) + ",") == std::string::npos)
            left += (left.empty() ? "" : "; ") + std::string(part);
        note.remove_prefix(std::min(end + 1, note.size()));
    }
    return left;
}

/// "0.4 g salt, a pinch": a name that is only the catalogue's key is written as the catalogue calls it.
std::string lineOf(const Row& row, const RowAnalysis& analysis)
{
    std::string name = row.ingredient;
    if (!analysis.ingredientId.empty() && name == analysis.ingredientId) {
        name = analysis.ingredientName;
        if (name.size() > 1 && std::islower(static_cast<unsigned char>(name[1])))
            name.front() = static_cast<char>(std::tolower(static_cast<unsigned char>(name.front())));
    }
    const std::string note = noteBeside(name, row.note);
    const std::string amount = row.amount == Amount{}           ? std::string()
                               : row.amount.unit == Unit::Piece ? amountNumber(row.amount)
                                                                : amountText(row.amount);
    return amount + (amount.empty() || name.empty() ? "" : " ") + name + (note.empty() ? "" : ", " + note);
}

std::vector<std::vector<std::string>> linesOf(const Recipe& recipe, const Analysis& analysis)
{
    std::vector<std::vector<std::string>> lines(recipe.components.size());
    for (std::size_t i = 0; i < recipe.components.size(); ++i) {
        const std::vector<Row>& rows = recipe.components[i].rows;
        for (std::size_t row = 0; row < rows.size(); ++row)
            lines[i].push_back(lineOf(rows[row], analysis.components[i][row]));
    }
    return lines;
}

bool fits(const Exercise& exercise, const std::vector<Exercise>& others)
{
    const std::string text = textOf(exercise);
    return std::ranges::none_of(
        others, [&](const Exercise& other) { return givesAway(text, other.answer) || givesAway(textOf(other), exercise.answer); });
}

void addIfItFits(std::vector<Exercise>& exercises, AskedExercise asked)
{
    // Two points of the curve may become one as they are printed: then nothing lies between them.
    if (!asked || !std::isfinite(asked->answer.value) || !fits(*asked, exercises))
        return;
    // Nobody divides by water or sugars that the mix does not have.
    std::erase_if(asked->answer.slips, [](const Slip& slip) { return !std::isfinite(slip.value); });
    exercises.push_back(std::move(*asked));
}

/// How much to add can be asked for in many strengths: one that no other exercise tells, nor is told by.
void addSucroseToReach(std::vector<Exercise>& exercises, const ExplainedAnalysis& explained, Dice& dice)
{
    constexpr int least = 2, most = 8;
    const int first = dice.between(least, most - 2);
    for (int i = 0; i <= most - least; ++i) {
        auto asked = sucroseToReach(explained, least + (first - least + i) % (most - least + 1));
        if (asked && fits(*asked, exercises)) {
            exercises.push_back(std::move(*asked));
            return;
        }
    }
}

}  // namespace

std::string_view nameOf(ExerciseKind kind)
{
    switch (kind) {
    case ExerciseKind::SugarsByMass:
        return "Sugars by mass";
    case ExerciseKind::SucroseToReach:
        return "Sucrose to add";
    case ExerciseKind::FreezingPoint:
        return "Freezing point";
    case ExerciseKind::Refractometer:
        return "What a refractometer shows";
    case ExerciseKind::Baume:
        return "Degrees Baumé";
    case ExerciseKind::IceWhenServed:
        return "Ice when served";
    case ExerciseKind::AlcoholByVolume:
        return "Alcohol by volume";
    case ExerciseKind::SugarsByRefractometer:
        return "From a reading to sugars";
    }
    return {};
}

ExerciseSheet exercisesFor(const Recipe& recipe, const Catalogue& catalogue, const Conditions& conditions, std::uint64_t seed)
{
    Dice dice(seed);
    ExerciseSheet sheet{seed, varied(recipe, seed, dice), {}};
    const ExplainedAnalysis explained = analyseWithWorkings(sheet.recipe, catalogue, conditions);
    sheet.mix = explained.analysis.mix;
    sheet.lines = linesOf(sheet.recipe, explained.analysis);
    sheet.reason = reasonNotToTeach(explained.analysis);
    if (sheet.reason)
        return sheet;
    std::vector<Exercise>& exercises = sheet.exercises;
    for (auto* ask : std::array{sugarsByMass, freezingPoint, refractometer, baume, iceWhenServed, alcoholByVolume})
        addIfItFits(exercises, ask(explained));
    addIfItFits(exercises, sugarsByRefractometer(sheet.mix, seed, dice));
    addSucroseToReach(exercises, explained, dice);
    std::ranges::stable_sort(exercises, {}, &Exercise::kind);
    return sheet;
}

}  // namespace firn
