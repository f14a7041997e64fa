#include "ingredients/sought_name.h"

#include <algorithm>
#include <iterator>
#include <span>

namespace firn {

namespace {

/// Kinds and forms in any order, before the other words in theirs.
std::string anyOrderKey(const Words& words)
{
    Words kinds, others;
    for (const std::string& word : words)
        (isQualifier(word) ? kinds : others).push_back(word);
    std::ranges::sort(kinds);
    return "~" + joined(kinds) + "|" + joined(others);
}

Words turned(const SoughtName& name)
{
    Words words(name.words.begin() + std::ptrdiff_t(name.turnsAt), name.words.end());
    words.insert(words.end(), name.words.begin(), name.words.begin() + std::ptrdiff_t(name.turnsAt));
    return words;
}

SoughtName firstWords(const SoughtName& name, std::size_t count)
{
    SoughtName first{{name.words.begin(), name.words.begin() + std::ptrdiff_t(count)}, name.turnsAt};
    first.turnsAt = first.turnsAt < count ? first.turnsAt : 0;
    return first;
}

}  // namespace

std::size_t turnOf(std::string_view text)
{
    const auto isDigitAt = [text](std::size_t i) { return i < text.size() && text[i] >= '0' && text[i] <= '9'; };
    std::size_t turn = text.find_first_of(",(");
    while (turn != std::string_view::npos && text[turn] == ',' && turn > 0 && isDigitAt(turn - 1) && isDigitAt(turn + 1))
        turn = text.find_first_of(",(", turn + 1);
    return turn;
}

SoughtName soughtName(std::string_view text)
{
    const std::size_t turn = turnOf(text);
    SoughtName name{plainWords(text.substr(0, turn)), 0};
    if (turn == std::string_view::npos)
        return name;
    Words after = plainWords(text.substr(turn));
    name.turnsAt = after.empty() ? 0 : name.words.size();
    std::ranges::move(after, std::back_inserter(name.words));
    return name;
}

SoughtName bare(const SoughtName& name)
{
    const Words before(name.words.begin(), name.words.begin() + std::ptrdiff_t(name.turnsAt));
    SoughtName result{withoutFillers(name.words), withoutFillers(before).size()};
    result.turnsAt = result.turnsAt == result.words.size() ? 0 : result.turnsAt;
    return result;
}

std::vector<SoughtName> withLessBehind(const SoughtName& name)
{
    std::vector<SoughtName> forms{name};
    const auto add = [&](SoughtName form) {
        if (!form.words.empty() && form != forms.back())
            forms.push_back(std::move(form));
    };
    add(firstWords(name, wordsBeforeAnAside(name.words, name.turnsAt)));
    const SoughtName& last = forms.back();
    if (last.turnsAt > 0 && sayHowPrepared(std::span(last.words).subspan(last.turnsAt)))
        add(firstWords(last, last.turnsAt));
    return forms;
}

bool tryKeysAsIs(const SoughtName& name, const WillDo& willDo)
{
    if (name.words.empty())
        return false;
    // "Chocolate, milk" is milk chocolate, not chocolate milk.
    const Words other = name.turnsAt > 0 ? turned(name) : Words{};
    return (!other.empty() && willDo("=" + joined(other))) || willDo("=" + joined(name.words)) || willDo(anyOrderKey(name.words))
           || (!other.empty() && willDo(anyOrderKey(other))) || willDo("_" + joined(name.words, ""));
}

bool tryKeys(const SoughtName& name, const WillDo& willDo)
{
    if (tryKeysAsIs(name, willDo))
        return true;
    const SoughtName withoutThem = bare(name);
    if (withoutThem.words.size() == name.words.size() || withoutThem.words.empty())
        return false;
    // One of them may make another ingredient of it after all: a peeled apple.
    for (const std::string& word : name.words) {
        if (!isFiller(word))
            continue;
        Words words = withoutThem.words;
        words.push_back(word);
        if (willDo(anyOrderKey(words)))
            return true;
        std::ranges::rotate(words, words.end() - 1);
        if (willDo(anyOrderKey(words)))
            return true;
    }
    return tryKeysAsIs(withoutThem, willDo);
}

}  // namespace firn
