// Reading a recipe from a file of whatever kind.
#pragma once

#include "recipe/recipe.h"
#include "units/sentence.h"

#include <cstdint>
#include <filesystem>
#include <iosfwd>
#include <optional>
#include <string>

namespace firn {

/// No recipe is this long; a larger file is something else and is refused before it is read.
inline constexpr std::size_t largestFile_bytes = std::size_t{16} * 1024 * 1024;

/// Why this path is not a file to read: it is missing, a folder, larger than the limit, or a pipe, socket or device, on which a reader could wait
/// for ever. Nothing where it can be opened. Looks at the file's entry only, never into it.
std::optional<Sentence> faultOfFile(const std::filesystem::path& file, std::uintmax_t limit_bytes = largestFile_bytes);

/// The bytes of a file. Fails as faultOfFile says, and on a file that may not be read.
Result<std::string> contentsOf(const std::filesystem::path& file);

/// All of a stream, such as standard input, with the same limit.
Result<std::string> contentsOf(std::istream& stream);

/// A recipe from text of the kind that the ending names: .firn or .json, .jsonld, .csv, anything else one ingredient a line. Text that
/// begins with a brace is JSON whatever the ending. `name` is the file's name, for its ending, for the title of a recipe that has none,
/// and for the sentence if it cannot be read; "-" is standard input.
Result<Recipe> recipeFromContents(const std::string& contents, const std::filesystem::path& name);

}  // namespace firn
