// A sheet of exercises for the command line: as text, and as JSON of a fixed shape.
#pragma once

#include "explain/exercises.h"

#include <string>

namespace firn {

/// The recipe's rows, the questions, and with their solutions the answers and the steps to them; in English.
std::string exercisesText(const ExerciseSheet& sheet, bool hasSolutions);

/// The "firn-exercises" JSON, version 1, described in docs/file-format.md. Questions, hints and answers, and with their solutions the steps.
std::string exercisesJson(const ExerciseSheet& sheet, bool hasSolutions);

}  // namespace firn
