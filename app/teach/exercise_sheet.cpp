#include "teach/exercise_sheet.h"

#include "gauges/wording.h"
#include "mix/symbols.h"
#include "teach/derivation_handout.h"
#include "teach/figure_wording.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::ExerciseSheet)
};

constexpr double betweenParts_em = 0.6;
constexpr double betweenExercises_em = 1.2;
constexpr double rowIndent_em = 1.0;
constexpr double least_g = 0.05;  // less is not worth a line

QString numberOf(const ExerciseSheet& sheet) { return Words::tr("Sheet %1").arg(sheet.seed); }

QString headingOf(const Exercise& exercise, std::size_t index)
{
    return Words::tr("%1. %2", "the number of an exercise, and its name").arg(index + 1).arg(translatedName(nameOf(exercise.kind)));
}

/// Rows in two columns, since twenty of them would leave no room for the exercises.
void addRows(std::vector<Block>& blocks, const std::vector<std::string>& rows)
{
    const auto text = [&](std::size_t i) { return i < rows.size() ? rowText(rows[i]) : QString(); };
    const std::size_t half = (rows.size() + 1) / 2;
    for (std::size_t i = 0; i < half; ++i) {
        Block& block = blocks.emplace_back();
        block.content = RowBlock{{{text(i)}, {text(half + i)}}, rowIndent_em};
        block.spaceBefore_em = i == 0 ? betweenParts_em : 0.0;
    }
}

void addRecipe(std::vector<Block>& blocks, const ExerciseSheet& sheet)
{
    for (std::size_t i = 0; i < sheet.lines.size(); ++i) {
        const std::string& name = sheet.recipe.components[i].name;
        if (!name.empty() && sheet.lines.size() > 1)
            blocks.push_back({TextBlock{plain(name), TextStyle::Body}, betweenParts_em, true});
        addRows(blocks, sheet.lines[i]);
    }
    blocks.push_back(
        {TextBlock{Words::tr("In it: %1.", "what the mix holds").arg(contentsOf(sheet.mix)), TextStyle::Quiet}, betweenParts_em});
    blocks.push_back({RuleBlock{}, betweenParts_em});
}

void addHead(std::vector<Block>& blocks, const ExerciseSheet& sheet, const QString& recipe)
{
    blocks.push_back({TextBlock{recipe, TextStyle::Title}});
    blocks.push_back({WritingBlock{{Words::tr("Name"), Words::tr("Date")}}});
    addRecipe(blocks, sheet);
}

Block tableOf(const GivenTable& given)
{
    TableBlock table;
    // The first column names what stands in its row, or is looked up: it is the widest.
    constexpr double firstShare = 2.0;
    const auto cellsOf = [](const std::vector<Sentence>& sentences, TextStyle style) {
        std::vector<Cell> cells;
        for (const Sentence& sentence : sentences) {
            const bool isFirst = cells.empty();
            Cell& cell = cells.emplace_back();
            cell.content.emplace<QString>(plainInCelsius(sentence));
            cell.share = isFirst ? firstShare : 1.0;
            cell.isRight = !isFirst;
            cell.style = style;
        }
        return cells;
    };
    table.names = cellsOf(given.names, TextStyle::Quiet);
    for (const auto& row : given.rows)
        table.rows.push_back(cellsOf(row, TextStyle::Body));
    Block block;
    block.content = std::move(table);
    block.spaceBefore_em = betweenParts_em;
    block.keepsWithNext = true;
    return block;
}

/// Room to work in, more of it where the solution takes several steps, and a line for the answer.
void addRoom(std::vector<Block>& blocks, const Exercise& exercise)
{
    constexpr std::size_t fewestLines = 1, mostLines = 2;
    const std::size_t lines = std::clamp(exercise.solution.size(), fewestLines, mostLines);
    for (std::size_t i = 0; i < lines; ++i)
        blocks.push_back({WritingBlock{{i == 0 ? Words::tr("Working") : QString()}}, 0.0, true});
    blocks.push_back({WritingBlock{{QString(), Words::tr("Answer")}}, 0.0});
}

Section questionsOf(const ExerciseSheet& sheet, const QString& recipe)
{
    Section section{Words::tr("Exercises on %1", "a recipe").arg(recipe), numberOf(sheet), {}};
    addHead(section.blocks, sheet, recipe);
    for (std::size_t i = 0; i < sheet.exercises.size(); ++i) {
        const Exercise& exercise = sheet.exercises[i];
        section.blocks.push_back({TextBlock{headingOf(exercise, i), TextStyle::Heading}, betweenExercises_em, true});
        section.blocks.push_back({TextBlock{plainInCelsius(exercise.question)}, betweenParts_em, true});
        for (const Sentence& line : exercise.given)
            section.blocks.push_back({TextBlock{plainInCelsius(line)}, betweenParts_em, true});
        for (const GivenTable& table : exercise.tables)
            section.blocks.push_back(tableOf(table));
        addRoom(section.blocks, exercise);
    }
    return section;
}

void addAnswer(std::vector<Block>& blocks, const Exercise& exercise, std::size_t index, bool keepsWithNext)
{
    blocks.push_back({RowBlock{{{headingOf(exercise, index), 5.0}, {answerText(exercise.answer), 2.0, true},
                          {plainInCelsius(toleranceOf(exercise.answer)), 2.0, false, TextStyle::Quiet}}},
        betweenParts_em, keepsWithNext});
}

Section solutionsOf(const ExerciseSheet& sheet, const QString& recipe)
{
    Section section{Words::tr("Solutions for %1", "a recipe").arg(recipe), numberOf(sheet), {}};
    section.blocks.push_back({TextBlock{Words::tr("Solutions, sheet %1").arg(sheet.seed), TextStyle::Title}});
    for (std::size_t i = 0; i < sheet.exercises.size(); ++i) {
        const Exercise& exercise = sheet.exercises[i];
        section.blocks.push_back({RuleBlock{}, betweenExercises_em, true});
        section.blocks.push_back({TextBlock{headingOf(exercise, i), TextStyle::Heading}, betweenParts_em, true});
        section.blocks.push_back({TextBlock{plainInCelsius(exercise.question)}, betweenParts_em, true});
        std::ranges::move(blocksOf(exercise.solution), std::back_inserter(section.blocks));
        section.blocks.push_back(
            {TextBlock{Words::tr("Answer: %1").arg(answerText(exercise.answer)), TextStyle::Heading}, betweenExercises_em});
    }
    return section;
}

/// All sheets on the same pages, for whoever marks them.
Section answersOf(const std::vector<ExerciseSheet>& sheets, const QString& recipe)
{
    Section section{Words::tr("Answers for %1", "a recipe").arg(recipe), {}, {}};
    section.blocks.push_back({TextBlock{Words::tr("Answers"), TextStyle::Title}});
    for (const ExerciseSheet& sheet : sheets) {
        section.blocks.push_back({TextBlock{numberOf(sheet), TextStyle::Heading}, betweenExercises_em, true});
        for (std::size_t i = 0; i < sheet.exercises.size(); ++i)
            addAnswer(section.blocks, sheet.exercises[i], i, i + 1 < sheet.exercises.size());
    }
    return section;
}

}  // namespace

QString rowText(const std::string& line)
{
    QString text = plain(line);
    qsizetype end = 0;
    while (end < text.size() && (text[end].isDigit() || text[end] == u'.'))
        ++end;
    return text.left(end).replace(u'.', QLocale().decimalPoint()) + text.mid(end);
}

Handout handoutOf(const std::vector<ExerciseSheet>& sheets, const QString& recipe, Solutions solutions)
{
    Handout handout{Words::tr("Exercises on %1", "a recipe").arg(recipe), {}};
    for (const ExerciseSheet& sheet : sheets)
        handout.sections.push_back(questionsOf(sheet, recipe));
    if (solutions == Solutions::Answers)
        handout.sections.push_back(answersOf(sheets, recipe));
    if (solutions == Solutions::WorkedOut) {
        for (const ExerciseSheet& sheet : sheets)
            handout.sections.push_back(solutionsOf(sheet, recipe));
    }
    return handout;
}

QString contentsOf(const Mix& mix)
{
    const std::vector<MixPart>& parts = mixParts();
    const auto listed = [&](std::size_t from, std::size_t to) {
        QStringList texts;
        for (std::size_t i = from; i < to; ++i) {
            if (const Grams mass = parts[i].of(mix); mass.value >= least_g)
                texts << QStringLiteral("%1 %2").arg(translatedName(parts[i].label).toLower(), gramsText(mass));
        }
        return texts.join(Words::tr(", ", "between what a mix holds"));
    };
    const QString all = listed(0, constituentCount), among = listed(constituentCount, parts.size());
    return among.isEmpty() ? all : Words::tr("%1; among these %2", "what a mix holds").arg(all, among);
}

QString answerText(const ExpectedAnswer& answer)
{
    return withUnit(figure(answer.value, answer.decimals), QString::fromStdString(answer.unit));
}

}  // namespace firn::app
