// A derivation for the command line: as JSON of a fixed shape, and as a page of text.
#pragma once

#include "explain/explain.h"

#include <string>

namespace firn {

/// The "firn-derivation" JSON, version 1, described in docs/file-format.md. Numbers are plain doubles; `value` is the report's to the last bit.
std::string derivationJson(const Derivation& derivation);

/// The same for people, in English. `whose` is whose figure it is, where that has to be said.
std::string derivationText(const Derivation& derivation, const std::string& whose = {});

/// Its steps alone, numbered from 1.
std::string stepsText(const std::vector<WorkingStep>& steps);

}  // namespace firn
