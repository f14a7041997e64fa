#include "cli/arguments.h"
#include "cli/command_line.h"
#include "cli/recipe_argument.h"
#include "document/built_in.h"
#include "exchange/exercise_sheet.h"

namespace firn::app {

namespace {

const QString description =
    QStringLiteral("Prints a sheet of exercises on a recipe. Each number has a sheet with amounts of its own; 0 is the recipe\n"
                   "as it is.\n")
    + recipeOperandHelp;

Result<std::uint64_t> seedIn(const Arguments& arguments)
{
    if (!arguments.has(QStringLiteral("seed")))
        return 0;
    bool isNumber = false;
    const QString typed = arguments.text(QStringLiteral("seed"));
    const std::uint64_t seed = typed.toULongLong(&isNumber);
    if (!isNumber)
        return failure(phrase("“{0}” is not a sheet number. Enter a whole number, such as --seed 7.", typed.toStdString()));
    return seed;
}

Result<std::string> sheetIn(const Arguments& arguments)
{
    if (arguments.operands().size() != 1)
        return failure(phrase("Name one recipe. Run firn exercises --help for how."));
    const auto seed = seedIn(arguments);
    if (!seed)
        return failure(seed.error());
    const auto catalogue = builtInCatalogue();
    if (!catalogue)
        return failure(catalogue.error());
    const auto recipe = recipeIn(arguments.operands().front());
    if (!recipe)
        return failure(recipe.error());
    const ExerciseSheet sheet = exercisesFor(*recipe, *catalogue, conditionsOf(*recipe), *seed);
    if (sheet.reason)
        return failure(*sheet.reason);
    const bool hasSolutions = arguments.has(QStringLiteral("solutions"));
    return arguments.has(QStringLiteral("json")) ? exercisesJson(sheet, hasSolutions) : exercisesText(sheet, hasSolutions);
}

}  // namespace

int exercisesCommand(const QStringList& words)
{
    Arguments arguments(QStringLiteral("exercises FILE[@VERSION] [--seed N] [--solutions] [--json]"), description,
        {{QStringLiteral("seed"), QStringLiteral("The number of the sheet; 0."), QStringLiteral("N")},
            {QStringLiteral("solutions"), QStringLiteral("With the answers and the steps to them.")},
            {QStringLiteral("json"), QStringLiteral("Prints JSON.")}});
    return answer(arguments, words, sheetIn);
}

}  // namespace firn::app
