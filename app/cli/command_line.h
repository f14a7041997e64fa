// The commands that need no window: each reads its arguments, prints, and says how it went.
#pragma once

#include "cli/arguments.h"

#include <QStringList>
#include <optional>

namespace firn::app {

/// Exit status of a command that failed, after one line on standard error.
inline constexpr int failedStatus = 2;

/// Runs the command that the arguments (the program's name first) begin with; none if they name no command and a window is meant.
std::optional<int> runCommand(const QStringList& arguments);

/// One line on standard error, whatever the text holds; returns failedStatus.
int fail(const QString& sentence);
void print(const QString& text);

/// Reads a command's arguments and prints its help if that is asked for, else its text; returns the exit status.
int answer(Arguments& arguments, const QStringList& words, Result<std::string> (*textFor)(const Arguments&));

int reportCommand(const QStringList& arguments);
int compareCommand(const QStringList& arguments);
int explainCommand(const QStringList& arguments);
int exercisesCommand(const QStringList& arguments);
int ingredientsCommand(const QStringList& arguments);
int readCommand(const QStringList& arguments);
int pictureCommand(const QStringList& arguments);

}  // namespace firn::app
