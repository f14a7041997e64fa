// Arbitrary recipes for properties.
#pragma once

#include "recipe/recipe.h"

#include <rapidcheck.h>
#include <string>
#include <vector>

namespace firn {

/// Characters that readers trip over, between plain ones.
inline std::string anyText(const std::vector<std::string>& characters)
{
    std::string text;
    for (const std::string& character : *rc::gen::container<std::vector<std::string>>(rc::gen::elementOf(characters)))
        text += character;
    return text;
}

inline const std::vector<std::string>& printableCharacters()
{
    static const std::vector<std::string> characters = {"a", "b", "g", "T", "o", "f", "c", "u", "p", "e", "z", " ", " ", "0", "1",
        "2", "5", "/", ".", ",", ";", ":", "-", "+", "=", "@", "%", "#", "*", "'", "\"", "\\", "{", "}", "[", "(", ")", "½", "é",
        "–", "•", "\u00a0", "漢", "🍐"};
    return characters;
}

inline const std::vector<std::string>& allCharacters()
{
    static const std::vector<std::string> characters = [] {
        std::vector<std::string> all = printableCharacters();
        all.insert(all.end(), {"\n", "\r", "\t", "\x1b", "\x7f"});
        return all;
    }();
    return characters;
}

inline Amount anyAmount()
{
    const double numerator = *rc::gen::inRange(0, 1000000000);
    const double denominator = *rc::gen::elementOf(std::vector<double>{1.0, 2.0, 3.0, 7.0, 8.0, 1000.0, 1e12, 1e300});
    return {numerator / denominator, allUnits()[*rc::gen::inRange<std::size_t>(0, allUnits().size())].unit};
}

}  // namespace firn
