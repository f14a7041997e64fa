#include "analysis/analysis.h"
#include "cli/arguments.h"
#include "cli/command_line.h"
#include "cli/recipe_argument.h"
#include "document/built_in.h"
#include "exchange/report.h"

namespace firn::app {

namespace {

const QString description =
    QStringLiteral("Prints what each recipe amounts to: composition, freezing, texture, readings and cautions.\n"
                   "FILE is a recipe (.firn), text with one ingredient a line (.txt), a table (.csv), or - for\n"
                   "text on standard input. With several files and --json, one JSON object follows another.");

/// What the command line asks for instead of the recipe's own conditions and the usual ones.
struct Wishes {
    std::optional<Celsius> serveAt;
    std::optional<Celsius> freezerAt;
    std::optional<Celsius> readAt;
    std::optional<Process> process;
    std::string component;  // empty for the whole dessert
};

Result<Wishes> wishesIn(const Arguments& arguments)
{
    Wishes wishes;
    const std::initializer_list<std::pair<QString, std::optional<Celsius>*>> temperatures{
        {QStringLiteral("serve-at"), &wishes.serveAt},
        {QStringLiteral("freezer-at"), &wishes.freezerAt},
        {QStringLiteral("read-at"), &wishes.readAt},
    };
    for (const auto& [option, wish] : temperatures) {
        const auto temperature = arguments.temperature(option);
        if (!temperature)
            return failure(temperature.error());
        *wish = *temperature;
    }
    if (arguments.has(QStringLiteral("process"))) {
        const std::string name = arguments.text(QStringLiteral("process")).toStdString();
        wishes.process = processNamed(name);
        if (!wishes.process)
            return failure(phrase("\"{0}\" is no way to freeze. Choose still, scraped, churned or folded.", name));
    }
    wishes.component = arguments.text(QStringLiteral("component")).toStdString();
    return wishes;
}

Analysis analysisOf(const Recipe& recipe, const Catalogue& catalogue, const Wishes& wishes, std::optional<std::size_t> component)
{
    Conditions conditions = conditionsOf(recipe);
    conditions.serveAt = wishes.serveAt.value_or(conditions.serveAt);
    conditions.freezerAt = wishes.freezerAt.value_or(conditions.freezerAt);
    conditions.readAt = wishes.readAt.value_or(conditions.readAt);
    conditions.process = wishes.process;
    return analyse(recipe, catalogue, conditions, component);
}

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
        const Analysis analysis = analysisOf(*recipe, *catalogue, *wishes, *component);
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
    const QString degrees = QStringLiteral("C");
    Arguments arguments(QStringLiteral("report FILE... [--json] [--serve-at C] [--freezer-at C] [--read-at C] [--process PROCESS] "
                                       "[--component NAME]"),
        description,
        {
            {QStringLiteral("json"), QStringLiteral("Prints JSON.")},
            {QStringLiteral("serve-at"), QStringLiteral("Served at so many degrees Celsius; the recipe's own, or -12."), degrees},
            {QStringLiteral("freezer-at"), QStringLiteral("The freezer's temperature; the recipe's own, or -18."), degrees},
            {QStringLiteral("read-at"), QStringLiteral("The temperature at which instruments are read; 20."), degrees},
            {QStringLiteral("process"), QStringLiteral("still, scraped, churned or folded; the recipe's own, or churned."),
                QStringLiteral("PROCESS")},
            {QStringLiteral("component"), QStringLiteral("One component of the dessert; all of it as one mix."),
                QStringLiteral("NAME")},
        });
    if (const auto isRead = arguments.read(words); !isRead)
        return fail(QString::fromStdString(english(isRead.error())));
    if (arguments.wantsHelp()) {
        print(arguments.help());
        return 0;
    }
    const auto text = reports(arguments);
    if (!text)
        return fail(QString::fromStdString(english(text.error())));
    print(QString::fromStdString(*text));
    return 0;
}

}  // namespace firn::app
