// Taking words from the start of a text, whatever their case.
#pragma once

#include "units/text.h"

#include <optional>
#include <span>
#include <string_view>

namespace firn {

/// What the text starts with: one of these words or signs, as a whole word; its bytes with a dot after it, 0 if it starts with none. Of two
/// that fit, the longer one.
std::size_t oneOfWordsAt(std::span<const std::string_view> words, std::string_view text);

/// How many words a text has; what stands between blanks is a word.
std::size_t wordCount(std::string_view text);

/// A place in a text that moves on as words are taken.
class WordReader {
public:
    explicit WordReader(std::string_view text)
        : m_text(text)
    {
        skip(0);
    }

    std::string_view rest() const { return m_text.substr(m_at); }
    bool isAtEnd() const { return m_at == m_text.size(); }
    std::size_t place() const { return m_at; }
    void goBackTo(std::size_t place) { m_at = place; }

    /// What was read since this place, without blanks around it.
    std::string_view since(std::size_t place) const { return trimmed(m_text.substr(place, m_at - place)); }

    /// Goes on by so many bytes, and the blanks after them.
    void skip(std::size_t bytes)
    {
        m_at += bytes;
        m_at += blanksAt(rest());
    }

    /// Takes one of the words, if the text goes on with one.
    bool take(std::span<const std::string_view> words);
    bool take(std::string_view word) { return take(std::span(&word, 1)); }

    /// Takes a sign that need not end like a word.
    bool takeSign(std::string_view sign);

private:
    std::string_view m_text;
    std::size_t m_at = 0;
};

}  // namespace firn
