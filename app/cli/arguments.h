// Reading the arguments of a command, with refusals of one line each.
#pragma once

#include "units/quantity.h"
#include "units/sentence.h"

#include <QCommandLineParser>

namespace firn::app {

/// The options of one command. `--help` is among them.
class Arguments {
public:
    /// `synopsis` is what stands behind the name of the program in its help: "report FILE... [--json]".
    Arguments(const QString& synopsis, const QString& description, const QList<QCommandLineOption>& options);

    /// Reads the arguments, the command's name first. Fails on an option that there is not, or that lacks its value.
    Result<void> read(const QStringList& arguments);

    bool wantsHelp() const;
    QString help() const;

    bool has(const QString& option) const { return m_parser.isSet(option); }
    QString text(const QString& option) const { return m_parser.value(option); }
    QStringList operands() const { return m_parser.positionalArguments(); }

    /// A temperature option, in °C unless it says °F ("14F"); none if it is not given. Fails outside -60 to +60 °C.
    Result<std::optional<Celsius>> temperature(const QString& option) const;

private:
    QString m_synopsis;
    QString m_description;
    QList<QCommandLineOption> m_options;
    QCommandLineParser m_parser;
};

}  // namespace firn::app
