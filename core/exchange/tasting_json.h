// Tasting notes in a recipe's JSON, described in docs/file-format.md. Only the files of this folder include it.
#pragma once

#include "exchange/json.h"
#include "recipe/tasting.h"

#include <string>

namespace firn {

// Each reads one object. They fail, naming the field, on what is missing, of the wrong type or out of range.
Result<TastingScale> scaleFromJson(const Json& json);
Result<Tasting> tastingFromJson(const Json& json);
Result<BlindSheet> blindSheetFromJson(const Json& json);

// Each writes one object on one line.
std::string scaleToJson(const TastingScale& scale);
std::string tastingToJson(const Tasting& tasting);
std::string blindSheetToJson(const BlindSheet& sheet);

}  // namespace firn
