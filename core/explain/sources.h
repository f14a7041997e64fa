// Every model and table that figures rest on: who published it, how far it holds, how well it fits, and where in the code it lives.
#pragma once

#include "derivation/source.h"
#include "units/sentence.h"

#include <span>

namespace firn {

struct SourceFacts {
    Source source;
    std::string_view name;         // "Water activity of sugars"
    std::string_view publication;  // or that it is a definition, from memory, or common practice
    std::string_view range;        // where it holds, and what happens outside
    std::string_view error;        // largest error found, or how uncertain it is
    std::string_view code;         // the file without its ending: "core/solution/sucrose"
};

std::span<const SourceFacts> allSources();
const SourceFacts& factsOf(Source source);

/// All of it as the page docs/sources.md.
std::string sourcesPage();

}  // namespace firn
