// Steps in a recipe's JSON, described in docs/file-format.md. Only the files of this folder include it.
#pragma once

#include "exchange/json.h"
#include "recipe/step.h"

#include <string>

namespace firn {

/// Reads one step. Fails, naming the field, on an unknown kind of step, on a number out of range, and on two losses in one step.
Result<Step> stepFromJson(const Json& json);

/// Writes it on one line.
std::string stepToJson(const Step& step);

}  // namespace firn
