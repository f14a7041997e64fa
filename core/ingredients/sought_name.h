// A name as somebody wrote it, and the forms of it under which it is looked up.
#pragma once

#include "ingredients/kitchen_words.h"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace firn {

/// "butter, unsalted, softened" may be turned round at its first comma or bracket.
struct SoughtName {
    Words words;              // all, in order
    std::size_t turnsAt = 0;  // words before the comma; 0 for none
    friend bool operator==(const SoughtName&, const SoughtName&) = default;
};
SoughtName soughtName(std::string_view text);

/// The first comma or bracket of a name, npos for none. A comma between digits is a decimal comma.
std::size_t turnOf(std::string_view text);

/// The name without fillers.
SoughtName bare(const SoughtName& name);

/// The name as it stands, and then with less and less of what a cook adds behind it: "raspberries, plus extra to serve", "brown sugar, firmly
/// packed", "milk chocolate, broken into pieces". What follows a comma is left off only where each of its words says how the ingredient is
/// prepared.
std::vector<SoughtName> withLessBehind(const SoughtName& name);

/// Goes through the keys under which a name is looked up, from the least changed to the most, until one will do: its words in order, turned
/// round, in any order and run together; then the same without fillers. Whether one did.
using WillDo = std::function<bool(const std::string& key)>;
bool tryKeys(const SoughtName& name, const WillDo& willDo);

/// Of these keys those of all words.
bool tryKeysAsIs(const SoughtName& name, const WillDo& willDo);

}  // namespace firn
