// Slips of the finger: how many lie between two words.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace firn {

/// Letters changed, left out, added, or swapped with the next that make one word of the other (optimal string alignment distance, Boytsov
/// 2011, ACM J. Exp. Algorithmics 16, section 2.1), counted up to `most`; most + 1 for anything farther. Both are folded words.
std::size_t slipsBetween(std::string_view a, std::string_view b, std::size_t most);

/// The fewest slips between `typed` and any beginning of `word`: what is still being typed may be a slip already.
std::size_t slipsToBeginning(std::string_view typed, std::string_view word, std::size_t most);

/// A bit for each letter in the word. Words with many different bits are many slips apart.
std::uint64_t lettersOf(std::string_view word);

/// Whether the letters alone show that there are more than `most` slips between two words.
bool isFartherThan(std::size_t most, std::uint64_t lettersOfA, std::uint64_t lettersOfB);

}  // namespace firn
