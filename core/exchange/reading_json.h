// Readings in a recipe's JSON, described in docs/file-format.md. Only the files of this folder include it.
#pragma once

#include "exchange/json.h"
#include "recipe/reading_record.h"

#include <string>

namespace firn {

/// Reads one reading. Fails, naming the field, on an unknown instrument, on a number out of range, and on a date that is none.
Result<ReadingRecord> readingFromJson(const Json& json);

/// Writes it on one line.
std::string readingToJson(const ReadingRecord& reading);

}  // namespace firn
