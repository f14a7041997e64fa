// A recipe named on the command line.
#pragma once

#include "compare/candidate.h"

#include <QString>
#include <optional>

namespace firn::app {

/// What every command says of the operands that it reads recipes from.
inline const QString recipeOperandHelp =
    QStringLiteral("FILE is a recipe (.firn), text with one ingredient a line (.txt), a table (.csv), or - for\n"
                   "text on standard input. FILE@VERSION is a version kept in it, by its number or its name.");

/// The recipe in a file of any kind, FILE, or a version kept in one, FILE@VERSION; for "-" the text on standard input. A file may have an @ in its
/// name, too: one that is there under the whole name is meant.
Result<Recipe> recipeIn(const QString& operand);

/// The same with a name and what was measured and tasted of it, for comparing.
Result<Candidate> candidateIn(const QString& operand);

/// The component of this name, whatever its case; none, for the whole dessert, where the name is empty. Fails if there is no such component.
Result<std::optional<std::size_t>> componentIn(const Recipe& recipe, const std::string& name);

}  // namespace firn::app
