#include "cli/wishes.h"

namespace firn::app {

Conditions Wishes::conditionsFor(const Recipe& recipe, std::optional<std::size_t> ofComponent) const
{
    Conditions conditions = conditionsOf(recipe, ofComponent, process);
    conditions.serveAt = serveAt.value_or(conditions.serveAt);
    conditions.freezerAt = freezerAt.value_or(conditions.freezerAt);
    conditions.readAt = readAt.value_or(conditions.readAt);
    return conditions;
}

QList<QCommandLineOption> wishOptions()
{
    const QString degrees = QStringLiteral("T");
    return {
        {QStringLiteral("serve-at"),
            QStringLiteral("Served at so many degrees, -12 or 10F; default: the recipe's, else the usual one (-12, scraped -10, "
                           "folded -14; unverified)."),
            degrees},
        {QStringLiteral("freezer-at"), QStringLiteral("The freezer's temperature; the recipe's own, or -18."), degrees},
        {QStringLiteral("read-at"), QStringLiteral("The temperature at which instruments are read; 20."), degrees},
        {QStringLiteral("process"),
            QStringLiteral("still, scraped, churned, folded or unfrozen; default: the recipe's, else churned."),
            QStringLiteral("PROCESS")},
        {QStringLiteral("component"), QStringLiteral("One component of the dessert; all of it as one mix."),
            QStringLiteral("NAME")},
    };
}

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
            return failure(phrase("“{0}” is not a freezing method. Choose still, scraped, churned, folded or unfrozen.", name));
    }
    wishes.component = arguments.text(QStringLiteral("component")).toStdString();
    return wishes;
}

}  // namespace firn::app
