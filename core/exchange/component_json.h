// The components of a recipe's JSON with their rows and steps. Only the files of this folder include it.
#pragma once

#include "exchange/recipe_fields.h"

namespace firn {

inline constexpr double largestOverrun_percent = 1000.0;

Fault readProcess(const std::string& key, const Json& value, std::optional<Process>& process);

/// Reads one component; `number`, counted from 1, names it in sentences.
Result<Component> componentFromJson(const Json& json, std::size_t number);

}  // namespace firn
