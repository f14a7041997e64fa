#include "ingredients/measure_note.h"

#include "ingredients/catalogue.h"

#include <algorithm>
#include <array>
#include <string>

namespace firn {

namespace {

using Words = std::vector<std::string>;

/// One form for "slice", "slices" and "sliced". It need not be a word.
std::string stem(std::string word)
{
    constexpr std::array<std::string_view, 4> endings = {"ed", "es", "s", "e"};
    constexpr std::size_t shortestStem = 3;
    for (const std::string_view ending : endings) {
        if (word.ends_with(ending) && word.size() >= ending.size() + shortestStem) {
            word.resize(word.size() - ending.size());
            break;
        }
    }
    return word;
}

Words stemsOf(std::string_view text)
{
    const std::string words = folded(text);
    Words stems;
    for (std::size_t begin = 0; begin < words.size();) {
        const std::size_t end = std::min(words.find(' ', begin), words.size());
        stems.push_back(stem(words.substr(begin, end - begin)));
        begin = end + 1;
    }
    return stems;
}

std::vector<Words> partsOf(std::string_view text, std::string_view separator)
{
    std::vector<Words> parts;
    for (std::size_t begin = 0; begin <= text.size();) {
        const std::size_t end = std::min(text.find(separator, begin), text.size());
        parts.push_back(stemsOf(text.substr(begin, end - begin)));
        begin = end + separator.size();
    }
    return parts;
}

bool hasAll(const Words& words, const Words& wanted)
{
    return std::ranges::all_of(wanted, [&](const std::string& word) { return std::ranges::find(words, word) != words.end(); });
}

bool beginsWith(const Words& words, const Words& wanted)
{
    return words.size() >= wanted.size() && std::equal(wanted.begin(), wanted.end(), words.begin());
}

}  // namespace

std::size_t wordsThatName(const Measure& measure, std::string_view note)
{
    const std::string_view name = std::string_view(measure.note).substr(0, measure.note.find(','));
    const std::vector<Words> noteParts = partsOf(note, ",");
    const Words noteWords = stemsOf(note);
    std::size_t most = 0;
    for (const Words& wanted : partsOf(name, " or ")) {
        const bool isNamed = measure.unit == Unit::Piece
                                 ? std::ranges::any_of(noteParts, [&](const Words& part) { return beginsWith(part, wanted); })
                                 : hasAll(noteWords, wanted);
        if (isNamed)
            most = std::max(most, wanted.size());
    }
    return most;
}

}  // namespace firn
