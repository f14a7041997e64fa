// An Analysis for the command line: as JSON of a fixed shape, and as a page of text.
#pragma once

#include "analysis/analysis.h"

#include <string>

namespace firn {

/// The "firn-report" JSON, version 1, described in docs/file-format.md. Numbers are plain doubles, units are in the keys.
std::string reportJson(const Recipe& recipe, const Analysis& analysis);

/// The same for people, in English.
std::string reportText(const Recipe& recipe, const Analysis& analysis);

}  // namespace firn
