#include "recipe/written_name.h"

#include "recipe/measure_words.h"
#include "recipe/word_reader.h"
#include "units/number.h"

#include <algorithm>

namespace firn {

namespace {

constexpr auto footnoteMarks =
    std::to_array<std::string_view>({"*", "\u2020", "\u2021", "\u00b9", "\u00b2", "\u00b3", "\u2074", "\u2217"});

/// What tells when or how much, and is no part of the name.
constexpr auto asides = std::to_array<std::string_view>(
    {"to taste", "or to taste", "as needed", "as required", "if needed", "to serve", "to garnish", "to finish", "to decorate",
        "for serving", "for garnish", "for garnishing", "for drizzling", "for dusting", "for sprinkling", "for decoration",
        "for decorating", "for rolling", "plus extra", "plus more", "and extra", "optional", "or more", "or so", "or thereabouts"});

/// What makes brackets an aside.
constexpr auto bracketAsides = std::to_array<std::string_view>({"see", "optional", "to taste", "or", "from", "for", "plus", "e.g",
    "eg", "such as", "note", "about", "approx", "if", "to serve"});

struct PartWord {
    std::string_view word;
    std::string_view part;
};
constexpr PartWord partWords[] = {
    {"juice", "juice"},
    {"juiced", "juice"},
    {"juice only", "juice"},
    {"squeezed", "juice"},
    {"zest", "zest"},
    {"zested", "zest"},
    {"zest only", "zest"},
    {"grated zest", "zest"},
    {"finely grated zest", "zest"},
    {"rind", "zest"},
    {"grated rind", "zest"},
    {"peel", "zest"},
    {"yolk", "yolk"},
    {"yolks", "yolk"},
    {"yolk only", "yolk"},
    {"yolks only", "yolk"},
    {"white", "white"},
    {"whites", "white"},
    {"white only", "white"},
    {"whites only", "white"},
};

constexpr auto ofWords = std::to_array<std::string_view>({"of", "from"});
constexpr auto andWords = std::to_array<std::string_view>({"and", "&", "plus"});
constexpr auto manners = std::to_array<std::string_view>(
    {"the", "finely", "freshly", "coarsely", "grated", "squeezed", "strained", "pared", "fresh", "some"});
constexpr auto kinds = std::to_array<std::string_view>({"large", "big", "small", "medium", "medium-sized", "unwaxed", "organic",
    "ripe", "fresh", "juicy", "extra large", "whole", "the"});

Sentence twoIngredients() { return phrase("This is two ingredients. Type one row for each, such as “juice of 1 lemon”."); }

/// Takes "juice", "yolks only"; the longest that fits.
std::optional<std::string_view> takePartWord(WordReader& reader)
{
    const PartWord* longest = nullptr;
    for (const PartWord& word : partWords)
        if (oneOfWordsAt(std::span(&word.word, 1), reader.rest()) > 0 && (!longest || word.word.size() > longest->word.size()))
            longest = &word;
    if (!longest)
        return std::nullopt;
    reader.take(longest->word);
    return longest->part;
}

/// "the finely grated zest of 2 lemons"
Result<std::optional<WrittenPart>> partFirst(std::string_view text)
{
    WordReader reader(text);
    while (reader.take(manners)) {
    }
    const auto part = takePartWord(reader);
    if (!part)
        return std::nullopt;
    while (reader.take(andWords))
        if (reader.take(manners), takePartWord(reader) && reader.take(ofWords))
            return failure(twoIngredients());
    if (!reader.take(ofWords))
        return std::nullopt;
    reader.take("the");
    return std::optional(WrittenPart{*part, reader.rest()});
}

/// Whether all of it names a part, as in "juice of" or "juice only".
Result<std::optional<std::string_view>> onlyPart(std::string_view text)
{
    WordReader reader(text);
    const auto part = takePartWord(reader);
    if (part && reader.take(andWords) && takePartWord(reader) && reader.isAtEnd())
        return failure(twoIngredients());
    return reader.isAtEnd() ? part : std::nullopt;
}

/// "1 lemon, juiced", "1 lemon (zest only)", "lemon, juice of 1"
Result<std::optional<WrittenPart>> partLast(std::string_view text)
{
    const std::size_t comma = text.rfind(',');
    const std::size_t bracket = text.ends_with(')') ? text.rfind('(') : text.npos;
    if (comma == text.npos && bracket == text.npos)
        return std::nullopt;
    const std::size_t end = bracket != text.npos ? bracket : comma;
    const std::string_view said = trimmed(text.substr(end + 1, bracket != text.npos ? text.size() - end - 2 : text.npos));
    const auto part = onlyPart(said);
    if (!part)
        return failure(part.error());
    if (!*part)
        return std::nullopt;
    return std::optional(WrittenPart{**part, trimmed(text.substr(0, end))});
}

std::string singularOf(std::string_view word)
{
    const auto without = [word](std::size_t letters) { return std::string(word.substr(0, word.size() - letters)); };
    if (word.size() <= 3 || word.ends_with("ss"))
        return std::string(word);
    if (word.ends_with("ies"))
        return without(3) + "y";
    for (const std::string_view end : {"ches", "shes", "xes", "oes"})
        if (word.ends_with(end))
            return without(2);
    return word.ends_with('s') ? without(1) : std::string(word);
}

std::string_view withoutMarksAtEnd(std::string_view name)
{
    for (bool isDone = false; !isDone;) {
        isDone = true;
        for (const std::string_view mark : footnoteMarks) {
            if (name.ends_with(mark)) {
                name = trimmed(name.substr(0, name.size() - mark.size()));
                isDone = false;
            }
        }
        if (!name.empty() && std::string_view(",;.").find(name.back()) != std::string_view::npos) {
            name = trimmed(name.substr(0, name.size() - 1));
            isDone = false;
        }
    }
    return name;
}

/// Where an aside begins; the end if there is none.
std::size_t asideAt(std::string_view text)
{
    for (std::size_t i = 0; i < text.size(); ++i) {
        const std::size_t blank = blankAt(text.substr(i));
        const std::size_t gap = blank > 0 ? blank : i == 0 ? 0 : text.substr(i).starts_with(',') ? 1 : text.npos;
        if (gap == text.npos)
            continue;
        const std::string_view rest = trimmed(text.substr(i + gap));
        if (oneOfWordsAt(asides, rest) > 0)
            return i;
        WordReader brackets(rest);
        if (brackets.takeSign("(") && brackets.take(bracketAsides) && !startsWithNumber(brackets.rest()))
            return i;
    }
    return text.size();
}

}  // namespace

WrittenName nameFrom(std::string_view text)
{
    const std::size_t aside = asideAt(text);
    const std::string_view name = withoutMarksAtEnd(trimmed(text.substr(0, aside)));
    if (name.empty())
        return {std::string(text), ""};
    std::string_view note = trimmed(text.substr(aside));
    while (note.starts_with(','))
        note = trimmed(note.substr(1));
    note = withoutMarksAtEnd(note);
    if (note.starts_with('(') && note.find(')') == note.size() - 1)
        note = trimmed(note.substr(1, note.size() - 2));
    WrittenName result{std::string(name), std::string(note)};
    const std::size_t bracket = name.ends_with(')') ? name.rfind('(') : name.npos;
    if (bracket == name.npos || bracket == 0)
        return result;
    const std::string_view content = trimmed(name.substr(bracket + 1, name.size() - bracket - 2));
    if (startsWithNumber(content) || oneOfWordsAt(words::rough, content) > 0 || content.starts_with('~'))
        result.brackets = content;
    return result;
}

Result<std::optional<WrittenPart>> partFrom(std::string_view text)
{
    auto part = partFirst(text);
    return !part || *part ? part : partLast(text);
}

std::string nameOfPart(std::string_view part, std::string_view name)
{
    const std::size_t comma = std::min(name.find(','), name.size());
    WordReader reader(name.substr(0, comma));
    while (reader.take(kinds)) {
    }
    return singularOf(trimmed(reader.rest())) + " " + std::string(part) + std::string(name.substr(comma));
}

}  // namespace firn
