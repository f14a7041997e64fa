// Corrections of batches in a recipe's JSON, described in docs/file-format.md. Only the files of this folder include it.
#pragma once

#include "exchange/json.h"
#include "recipe/batch_correction.h"

namespace firn {

/// Reads one correction. Fails, naming the field, where nothing was added, on a number out of range, and on a date that is none.
Result<BatchCorrection> batchCorrectionFromJson(const Json& json);

/// Writes it on one line.
std::string batchCorrectionToJson(const BatchCorrection& correction);

}  // namespace firn
