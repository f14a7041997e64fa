// JSON read defensively. Only the files of this folder include it.
#pragma once

#include "units/sentence.h"

#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

namespace firn {

/// Keeps the order in which a file has its keys.
using Json = nlohmann::ordered_json;

/// No file of ours is nested deeper; a deeper one would exhaust the stack of whoever copies it.
inline constexpr int deepestJson = 64;

/// Parses UTF-8 JSON. Fails on a syntax error (with line and column), on nesting deeper than deepestJson, on a key that is repeated in
/// one object, on a number too large for a double, and on text that is not UTF-8.
Result<Json> jsonFromText(std::string_view text);

/// A text as JSON writes it, in quotes. Bytes that are not UTF-8 become U+FFFD.
std::string jsonString(std::string_view text);

}  // namespace firn
