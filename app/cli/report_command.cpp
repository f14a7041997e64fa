#include "cli/arguments.h"
#include "cli/command_line.h"
#include "cli/recipe_argument.h"
#include "cli/wishes.h"
#include "document/built_in.h"
#include "exchange/report.h"

namespace firn::app {

namespace {

const QString description =
    QStringLiteral("Prints what each recipe amounts to: composition, freezing, texture, readings and cautions.\n"
                   "With several files and --json, one JSON object follows another.\n")
    + recipeOperandHelp;

/// All reports, or the reason why there is none: nothing is printed by halves.
Result<std::string> reports(const Arguments& arguments)
{
    if (arguments.operands().isEmpty())
        return failure(phrase("Name a recipe to report on. Run firn report --help for how."));
    const auto wishes = wishesIn(arguments);
    if (!wishes)
        return failure(wishes.error());
    const auto catalogue = builtInCatalogue();
    if (!catalogue)
        return failure(catalogue.error());
    const bool isJson = arguments.has(QStringLiteral("json"));
    std::string text;
    for (const QString& file : arguments.operands()) {
        const auto recipe = recipeIn(file);
        if (!recipe)
            return failure(recipe.error());
        const auto component = componentIn(*recipe, wishes->component);
        if (!component)
            return failure(component.error());
        const Analysis analysis = analyse(*recipe, *catalogue, wishes->conditionsFor(*recipe, *component), *component);
        if (!text.empty() && !isJson)
            text += '\n';
        text += isJson ? reportJson(*recipe, analysis) : reportText(*recipe, analysis);
        if (!text.ends_with('\n'))
            text += '\n';
    }
    return text;
}

}  // namespace

int reportCommand(const QStringList& words)
{
    Arguments arguments(
        QStringLiteral("report FILE[@VERSION]... [--json] [--serve-at T] [--freezer-at T] [--read-at T] [--process PROCESS] "
                       "[--component NAME]"),
        description, QList<QCommandLineOption>{{QStringLiteral("json"), QStringLiteral("Prints JSON.")}} + wishOptions());
    return answer(arguments, words, reports);
}

}  // namespace firn::app
