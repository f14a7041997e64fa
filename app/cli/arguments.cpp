#include "cli/arguments.h"

#include "document/typed_numbers.h"

namespace firn::app {

Arguments::Arguments(const QString& synopsis, const QString& description, const QList<QCommandLineOption>& options)
    : m_synopsis(synopsis)
    , m_description(description)
    , m_options(options)
{
    m_options.append(QCommandLineOption({QStringLiteral("h"), QStringLiteral("help")}, QStringLiteral("Prints this help.")));
    m_parser.addOptions(m_options);
}

Result<void> Arguments::read(const QStringList& arguments)
{
    if (m_parser.parse(arguments))
        return {};
    const QString command = arguments.value(0);
    return failure(phrase("{0} Run “firn {1} --help” for usage.", m_parser.errorText().toStdString(), command.toStdString()));
}

bool Arguments::wantsHelp() const { return m_parser.isSet(QStringLiteral("help")); }

QString Arguments::help() const
{
    constexpr int widestOption = 22;
    QString text = QStringLiteral("firn %1\n\n%2\n\n").arg(m_synopsis, m_description);
    for (const QCommandLineOption& option : m_options) {
        QString name = QStringLiteral("--") + option.names().back();
        if (!option.valueName().isEmpty())
            name += QLatin1Char(' ') + option.valueName();
        text += QStringLiteral("  %1%2\n").arg(name.leftJustified(widestOption), option.description());
    }
    return text;
}

Result<std::optional<Celsius>> Arguments::temperature(const QString& option) const
{
    if (!has(option))
        return std::nullopt;
    return temperatureFromText(text(option).toStdString(), TemperatureUnit::Celsius).map([](Celsius temperature) {
        return std::optional(temperature);
    });
}

}  // namespace firn::app
