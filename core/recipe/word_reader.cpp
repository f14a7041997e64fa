#include "recipe/word_reader.h"

namespace firn {

namespace {

/// Whether a word may end here. Bytes beyond ASCII are letters for this, but for those that begin a dash or a quote (U+2010 to U+201F).
bool isWordEnd(std::string_view rest)
{
    if (rest.empty() || blankAt(rest) > 0 || rest.starts_with("\xE2\x80"))
        return true;
    const char next = rest.front();
    return !isAsciiLetter(next) && !isDigit(next) && static_cast<unsigned char>(next) < 0x80;
}

}  // namespace

std::size_t oneOfWordsAt(std::span<const std::string_view> words, std::string_view text)
{
    std::size_t longest = 0;
    for (const std::string_view word : words) {
        if (word.size() <= longest || lowered(text.substr(0, word.size())) != word || !isWordEnd(text.substr(word.size())))
            continue;
        longest = word.size() + (text.substr(word.size()).starts_with('.') ? 1 : 0);
    }
    return longest;
}

std::size_t wordCount(std::string_view text)
{
    std::size_t words = 0;
    for (WordReader reader(text); !reader.isAtEnd(); ++words) {
        std::size_t length = 0;
        while (length < reader.rest().size() && blankAt(reader.rest().substr(length)) == 0)
            ++length;
        reader.skip(length);
    }
    return words;
}

bool WordReader::take(std::span<const std::string_view> words)
{
    const std::size_t length = oneOfWordsAt(words, rest());
    skip(length);
    return length > 0;
}

bool WordReader::takeSign(std::string_view sign)
{
    if (!rest().starts_with(sign))
        return false;
    skip(sign.size());
    return true;
}

}  // namespace firn
