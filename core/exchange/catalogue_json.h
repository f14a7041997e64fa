// A catalogue's file: resources/catalogue.json, and a person's own ingredients.
#pragma once

#include "ingredients/catalogue.h"
#include "units/sentence.h"

#include <span>
#include <string>
#include <string_view>

namespace firn {

/// Reads a catalogue. Fails on bad JSON, an unknown field or key, a repeated id, or a composition that does not close to 100 g within
/// 1 g; the sentence names the ingredient.
Result<Catalogue> catalogueFromJson(std::string_view text);

/// Writes a catalogue with one ingredient a line, so that files compare well.
std::string catalogueToJson(std::span<const Ingredient> ingredients);

}  // namespace firn
