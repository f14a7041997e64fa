// A Comparison for the command line: as JSON of a fixed shape, and as a page of text.
#pragma once

#include "compare/comparison.h"

#include <string>

namespace firn {

/// The "firn-comparison" JSON, version 1, described in docs/file-format.md. Numbers are plain doubles, units are in the keys.
std::string comparisonJson(const Comparison& comparison);

/// The same for people, in English.
std::string comparisonText(const Comparison& comparison);

}  // namespace firn
