// What a command line asks about a recipe: which part of it, and under which conditions.
#pragma once

#include "analysis/analysis.h"
#include "cli/arguments.h"

namespace firn::app {

/// What the command line asks for instead of the recipe's own conditions and the usual ones.
struct Wishes {
    std::optional<Celsius> serveAt;
    std::optional<Celsius> freezerAt;
    std::optional<Celsius> readAt;
    std::optional<Process> process;
    std::string component;  // empty for the whole dessert

    Conditions conditionsFor(const Recipe& recipe, std::optional<std::size_t> ofComponent) const;
};

/// The options that wishesIn reads, for a command's list of its own.
QList<QCommandLineOption> wishOptions();
Result<Wishes> wishesIn(const Arguments& arguments);

}  // namespace firn::app
