// Finding where a name is not written as the catalogue has it: while it is typed, with slips, and what comes nearest.
#include "ingredients/name_index.h"
#include "ingredients/slips.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace firn {

namespace {

constexpr std::size_t fewestLettersForSlips = 5;  // "pear" and "beer" are as near as "pear" and "paer"
constexpr std::size_t fewestLettersForTwoSlips = 8;
constexpr std::size_t fewestLettersToSearchWithSlips = 4;
constexpr std::size_t mostReadings = 64;  // of one name with several slips

std::size_t slipsAllowed(std::size_t letters)
{
    return letters >= fewestLettersForTwoSlips ? 2 : letters >= fewestLettersForSlips ? 1 : 0;
}

bool isLetters(std::string_view word)
{
    return std::ranges::all_of(word, [](char c) { return c >= 'a' && c <= 'z'; });
}

/// From best to worst; 0 for none.
enum Answer { NoAnswer, WholeWord, Beginning, Inside, SlipOfWord, SlipOfBeginning };

Answer answerWhileTyping(std::string_view typed, std::uint64_t typedLetters, std::string_view word, std::uint64_t letters)
{
    if (word.starts_with(typed))
        return word.size() == typed.size() ? WholeWord : Beginning;
    if (word.find(typed) != std::string_view::npos)
        return Inside;
    if (typed.size() < fewestLettersToSearchWithSlips || hasDigit(typed))
        return NoAnswer;
    const std::size_t most = std::max<std::size_t>(slipsAllowed(typed.size()), 1);
    if (!isFartherThan(most, typedLetters, letters)) {
        const std::size_t slips = slipsBetween(typed, word, most);
        if (slips == 1 || (slips == 2 && most == 2 && typed.front() == word.front()))
            return SlipOfWord;
    }
    const bool mayBegin = !isFartherThan(1, typedLetters, typedLetters & letters);
    return mayBegin && slipsToBeginning(typed, word, 1) <= 1 ? SlipOfBeginning : NoAnswer;
}

/// How far a word of an unknown name is from one of the catalogue, from 0 for nothing in common to 100 for the same.
int nearness(std::string_view typed, std::uint64_t typedLetters, std::string_view word, std::uint64_t letters)
{
    constexpr std::size_t fewestLettersInCommon = 4;
    if (typed == word)
        return 100;
    if (hasDigit(typed))
        return 0;
    const std::size_t most = typed.size() >= 6 ? 2 : typed.size() >= 3 ? 1 : 0;
    if (most > 0 && !isFartherThan(most, typedLetters, letters))
        if (const std::size_t slips = slipsBetween(typed, word, most); slips <= most)
            return slips == 1 ? 80 : 60;
    const auto [shorter, longer] = typed.size() < word.size() ? std::pair(typed, word) : std::pair(word, typed);
    if (shorter.size() < fewestLettersInCommon)
        return 0;
    return longer.starts_with(shorter) ? 55 : longer.find(shorter) != std::string_view::npos ? 40 : 0;
}

}  // namespace

std::vector<NameHit> NameIndex::withinSlips(const SoughtName& name) const
{
    std::vector<SoughtName> readings{name};
    for (std::size_t i = 0; i < name.words.size(); ++i) {
        const std::string& typed = name.words[i];
        if (m_wordNumbers.contains(typed) || isFiller(typed) || hasDigit(typed))
            continue;
        const std::size_t most = slipsAllowed(typed.size());
        if (most == 0 || isNeverASlip(typed) || !isLetters(typed))
            return {};
        const std::uint64_t letters = lettersOf(typed);
        // The nearest are meant: two slips count only where there is nothing one slip away.
        std::vector<const Word*> nearest;
        std::size_t fewest = most;
        for (const Word& word : m_words) {
            const std::size_t allowed = std::min(fewest, slipsAllowed(word.text.size()));
            if (allowed == 0 || isFartherThan(allowed, letters, word.letters) || !isLetters(word.text))
                continue;
            const std::size_t slips = slipsBetween(typed, word.text, allowed);
            if (slips > allowed)
                continue;
            if (slips < fewest)
                nearest.clear();
            fewest = slips;
            nearest.push_back(&word);
        }
        std::vector<SoughtName> corrected;
        for (const Word* word : nearest)
            for (const SoughtName& reading : readings) {
                corrected.push_back(reading);
                corrected.back().words[i] = word->text;
            }
        if (corrected.empty() || corrected.size() > mostReadings)
            return {};
        readings = std::move(corrected);
    }
    std::vector<NameHit> hits;
    const auto add = [&hits](const NameHit& hit) {
        if (std::ranges::find(hits, hit.ingredient, &NameHit::ingredient) == hits.end())
            hits.push_back(hit);
    };
    for (const SoughtName& reading : readings) {
        const bool isFound = tryKeys(reading, [&](const std::string& key) {
            const auto hit = underKey(key);
            if (hit)
                add(*hit);
            return hit.has_value();
        });
        if (const auto hit = isFound ? std::nullopt : withoutWordsSaidAnyway(reading))
            add(*hit);
    }
    return hits;
}

template <class Quality>
std::vector<std::pair<std::uint32_t, int>> NameIndex::answers(const std::string& typed, const Quality& quality) const
{
    std::vector<std::pair<std::uint32_t, int>> result;
    const std::uint64_t letters = lettersOf(typed);
    for (std::uint32_t i = 0; i < m_words.size(); ++i)
        if (const int answer = quality(typed, letters, m_words[i].text, m_words[i].letters))
            result.emplace_back(i, answer);
    return result;
}

std::vector<std::size_t> NameIndex::search(const Words& query, std::size_t atMost) const
{
    enum Rank { Same, SameButFillers, NameBegins, WordBegins, Anywhere, WholeLabelWithSlips, WithSlips, None };
    const Words bareQuery = withoutFillers(query);
    const Words& asked = bareQuery.empty() ? query : bareQuery;

    std::vector<int> worst(m_labels.size(), 0), now(m_labels.size());
    std::vector<std::size_t> answered(m_labels.size(), 0);
    std::vector<bool> beginsLabel(m_labels.size(), false);
    for (std::size_t i = 0; i < asked.size(); ++i) {
        std::ranges::fill(now, int(NoAnswer));
        for (const auto& [word, answer] : answers(asked[i], answerWhileTyping))
            for (const std::uint32_t label : m_words[word].labels) {
                now[label] = now[label] == NoAnswer ? answer : std::min(now[label], answer);
                if (i == 0 && answer <= Beginning && m_labels[label].words.front() == word)
                    beginsLabel[label] = true;
            }
        for (std::size_t label = 0; label < m_labels.size(); ++label)
            if (now[label] != NoAnswer && answered[label] == i) {
                ++answered[label];
                worst[label] = std::max(worst[label], now[label]);
            }
    }

    std::vector<int> ranks(m_nameLengths.size(), None);
    for (std::size_t i = 0; i < m_labels.size(); ++i) {
        if (answered[i] != asked.size())
            continue;
        const Label& label = m_labels[i];
        Rank rank = worst[i] <= Beginning ? (label.claim == Claim::Name && beginsLabel[i] ? NameBegins : WordBegins)
                    : worst[i] == Inside  ? Anywhere
                                          : WithSlips;
        if (worst[i] == WholeWord || rank == WithSlips) {
            Words words;
            for (const std::uint32_t word : label.words)
                words.push_back(m_words[word].text);
            if (rank == WithSlips)
                rank = withoutFillers(words).size() == asked.size() ? WholeLabelWithSlips : WithSlips;
            else if (words == query)
                rank = Same;
            else if (withoutFillers(words) == asked)
                rank = SameButFillers;
        }
        ranks[label.ingredient] = std::min(ranks[label.ingredient], int(rank));
    }
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < ranks.size(); ++i)
        if (ranks[i] != None)
            found.push_back(i);
    // Of two names that match alike the shorter one is meant: "sal" is salt before salted butter.
    std::ranges::stable_sort(found, {}, [&](std::size_t i) { return std::pair(ranks[i], m_nameLengths[i]); });
    found.resize(std::min(found.size(), atMost));
    return found;
}

std::vector<std::size_t> NameIndex::nearest(const SoughtName& name, std::size_t atMost) const
{
    const Words bareWords = withoutFillers(name.words);
    const Words& typed = bareWords.empty() ? name.words : bareWords;
    // A rare word says more than "sugar" or "cream" (inverse document frequency, Spärck Jones 1972, J. Documentation 28, 11).
    const auto weight = [this](const Word& word) { return std::log2(1.0 + double(m_labels.size()) / double(word.labels.size())); };
    constexpr double costOfAWordTooMany = 0.6;  // chosen by trying
    std::vector<double> scores(m_labels.size(), 0.0), now(m_labels.size());
    std::vector<std::size_t> answered(m_labels.size(), 0);
    for (const std::string& word : typed) {
        std::ranges::fill(now, 0.0);
        // A word that is known is not likely a slip for a rarer one: "pear" before "pearl".
        const auto known = m_wordNumbers.find(word);
        const double most = known == m_wordNumbers.end() ? HUGE_VAL : weight(m_words[known->second]);
        for (const auto& [number, answer] : answers(word, nearness))
            for (const std::uint32_t label : m_words[number].labels)
                now[label] = std::max(now[label], std::min(most, weight(m_words[number])) * answer / 100.0);
        for (std::size_t label = 0; label < m_labels.size(); ++label)
            if (now[label] > 0.0) {
                scores[label] += now[label];
                ++answered[label];
            }
    }
    std::vector<double> best(m_nameLengths.size(), 0.0);
    for (std::size_t i = 0; i < m_labels.size(); ++i) {
        if (answered[i] == 0)
            continue;
        const double tooMany = double(m_labels[i].words.size()) - double(std::min(answered[i], m_labels[i].words.size()));
        constexpr double least = 0.01;          // what has anything in common stays in the list
        constexpr double costOfASynonym = 0.3;  // chosen by trying, too: of two as near the one that is called so
        const double cost = costOfAWordTooMany * tooMany + (m_labels[i].claim == Claim::Synonym ? costOfASynonym : 0.0);
        best[m_labels[i].ingredient] = std::max({best[m_labels[i].ingredient], least, scores[i] - cost});
    }
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < best.size(); ++i)
        if (best[i] > 0.0)
            found.push_back(i);
    std::ranges::stable_sort(found, {}, [&](std::size_t i) { return std::pair(-best[i], m_nameLengths[i]); });
    found.resize(std::min(found.size(), atMost));
    return found;
}

std::vector<std::size_t> NameIndex::sharing(const Words& words) const
{
    constexpr int called = 0, calledByASynonym = 1, elsewhere = 2;
    std::map<std::size_t, int> ranks;  // by ingredient, in the catalogue's order
    for (const Label& label : m_labels) {
        const auto has = [&](const std::string& word) {
            const auto number = m_wordNumbers.find(word);
            return number != m_wordNumbers.end() && std::ranges::find(label.words, number->second) != label.words.end();
        };
        if (words.empty() || label.claim == Claim::General || !std::ranges::all_of(words, has))
            continue;
        const bool isHead = m_words[label.words[label.head]].text == words.back();
        const int rank = !isHead ? elsewhere : label.claim == Claim::Synonym ? calledByASynonym : called;
        const auto [found, isNew] = ranks.try_emplace(label.ingredient, rank);
        found->second = std::min(found->second, rank);
    }
    std::vector<std::size_t> found;
    for (const int wanted : {called, calledByASynonym, elsewhere})
        for (const auto& [ingredient, rank] : ranks)
            if (rank == wanted)
                found.push_back(ingredient);
    return found;
}

}  // namespace firn
