// Reading a recipe from a file of whatever kind.
#pragma once

#include "recipe/recipe.h"
#include "units/sentence.h"

#include <filesystem>
#include <iosfwd>
#include <string>

namespace firn {

/// No recipe is this long; a larger file is something else and is refused before it is read.
inline constexpr std::size_t largestFile_bytes = std::size_t{16} * 1024 * 1024;

/// The bytes of a file. Fails with a sentence on a folder, a missing or unreadable file, and one over largestFile_bytes.
Result<std::string> contentsOf(const std::filesystem::path& file);

/// All of a stream, such as standard input, with the same limit.
Result<std::string> contentsOf(std::istream& stream);

/// A recipe from text of the kind that the ending names: .firn or .json, .jsonld, .csv, anything else one ingredient a line. Text that
/// begins with a brace is JSON whatever the ending. `name` is the file's name, for its ending, for the title of a recipe that has none,
/// and for the sentence if it cannot be read; "-" is standard input.
Result<Recipe> recipeFromContents(const std::string& contents, const std::filesystem::path& name);

}  // namespace firn
