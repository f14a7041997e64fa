#include "ingredients/catalogue.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <optional>
#include <utility>

namespace firn {

namespace {

using Code = std::uint32_t;

// U+00C0 to U+00FF and U+0100 to U+017F without accents and in lower case; a blank for a sign, a star for two letters (below).
constexpr std::string_view latin1 = "aaaaaa*ceeeeiiiidnooooo ouuuuy**aaaaaa*ceeeeiiiidnooooo ouuuuy*y";
constexpr std::string_view latinExtendedA = "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiii**jjkkkllllllllll"
                                            "nnnnnnnnnoooooo**rrrrrrsssssssstttttt"
                                            "uuuuuuuuuuuuwwyyyzzzzzzs";
static_assert(latin1.size() == 0x100 - 0xC0 && latinExtendedA.size() == 0x180 - 0x100);

constexpr std::array<std::pair<Code, std::string_view>, 9> twoLetters{{{0xC6, "ae"}, {0xE6, "ae"}, {0xDE, "th"}, {0xFE, "th"},
    {0xDF, "ss"}, {0x132, "ij"}, {0x133, "ij"}, {0x152, "oe"}, {0x153, "oe"}}};

/// One character of UTF-8: its code and how many bytes it has, or nothing if the bytes are not UTF-8.
struct Character {
    Code code;
    std::size_t length;
};

std::optional<Character> firstCharacter(std::string_view text)
{
    const auto lead = static_cast<unsigned char>(text[0]);
    const std::size_t length = lead < 0x80 ? 1 : lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : lead >= 0xC0 ? 2 : 0;
    if (length == 0 || length > text.size()) {
        return std::nullopt;
    }
    Code code = length == 1 ? lead : lead & (0x7Fu >> length);
    for (std::size_t i = 1; i < length; ++i) {
        const auto next = static_cast<unsigned char>(text[i]);
        if ((next & 0xC0u) != 0x80u) {
            return std::nullopt;
        }
        code = code << 6 | (next & 0x3Fu);
    }
    return Character{code, length};
}

bool isCombiningAccent(Code code) { return code >= 0x300 && code < 0x370; }

bool isSignBeyondLatin(Code code)
{
    return (code >= 0x2000 && code < 0x2C00) || (code >= 0x3000 && code < 0x3040) || code >= 0xFE00;
}

/// The letters or digits that a character folds to; empty for anything else. Letters of other scripts stay as they are.
std::string_view foldedLetters(const Character& character, std::string_view bytes)
{
    static constexpr std::string_view ascii = "0123456789abcdefghijklmnopqrstuvwxyz";
    const Code code = character.code;
    if (code < 0x80) {
        const auto lower = static_cast<char>(code >= 'A' && code <= 'Z' ? code + ('a' - 'A') : code);
        const auto at = ascii.find(lower);
        return at == std::string_view::npos ? std::string_view{} : ascii.substr(at, 1);
    }
    if (code < 0xC0 || isSignBeyondLatin(code)) {
        return {};
    }
    if (code >= 0x180) {
        return bytes;
    }
    const auto letter = code < 0x100 ? latin1.substr(code - 0xC0, 1) : latinExtendedA.substr(code - 0x100, 1);
    if (letter == "*") {
        return std::ranges::find(twoLetters, code, &std::pair<Code, std::string_view>::first)->second;
    }
    return letter == " " ? std::string_view{} : letter;
}

}  // namespace

std::string folded(std::string_view text)
{
    std::string result;
    result.reserve(text.size());
    bool isWordOver = false;
    while (!text.empty()) {
        const auto character = firstCharacter(text);
        const std::size_t length = character ? character->length : 1;
        if (!character || !isCombiningAccent(character->code)) {
            const auto letters = character ? foldedLetters(*character, text.substr(0, length)) : std::string_view{};
            if (letters.empty()) {
                isWordOver = true;
            } else {
                if (isWordOver && !result.empty()) {
                    result += ' ';
                }
                isWordOver = false;
                result += letters;
            }
        }
        text.remove_prefix(length);
    }
    return result;
}

}  // namespace firn
