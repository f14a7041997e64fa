#include "cli/arguments.h"
#include "cli/command_line.h"
#include "cli/recipe_argument.h"
#include "cli/wishes.h"
#include "document/built_in.h"
#include "exchange/derivation.h"

namespace firn::app {

namespace {

const QString description = QStringLiteral("Explains a figure of a recipe's report, step by step. FIGURE is its key there:\n"
                                           "freezing_point_c, percent.sugars, readings.baume, rows[0].grams.\n")
                            + recipeOperandHelp;

Result<std::string> derivationIn(const Arguments& arguments)
{
    if (arguments.operands().size() != 2)
        return failure(phrase("Name a figure and one recipe. Run firn explain --help for how."));
    const auto wishes = wishesIn(arguments);
    if (!wishes)
        return failure(wishes.error());
    const auto catalogue = builtInCatalogue();
    if (!catalogue)
        return failure(catalogue.error());
    const auto recipe = recipeIn(arguments.operands().back());
    if (!recipe)
        return failure(recipe.error());
    const auto component = componentIn(*recipe, wishes->component);
    if (!component)
        return failure(component.error());
    const std::string figure = arguments.operands().front().toStdString();
    const auto derivation = explain(figure, *recipe, *catalogue, wishes->conditionsFor(*recipe, *component), *component);
    if (!derivation)
        return failure(derivation.error());
    return arguments.has(QStringLiteral("json")) ? derivationJson(*derivation) : derivationText(*derivation);
}

}  // namespace

int explainCommand(const QStringList& words)
{
    Arguments arguments(
        QStringLiteral("explain FIGURE FILE[@VERSION] [--json] [--serve-at T] [--freezer-at T] [--read-at T] [--process PROCESS] "
                       "[--component NAME]"),
        description, QList<QCommandLineOption>{{QStringLiteral("json"), QStringLiteral("Prints JSON.")}} + wishOptions());
    return answer(arguments, words, derivationIn);
}

}  // namespace firn::app
