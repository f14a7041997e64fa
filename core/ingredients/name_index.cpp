#include "ingredients/name_index.h"

#include "ingredients/catalogue.h"
#include "ingredients/slips.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
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

SoughtName bare(const SoughtName& name)
{
    const Words before(name.words.begin(), name.words.begin() + std::ptrdiff_t(name.turnsAt));
    SoughtName result{withoutFillers(name.words), withoutFillers(before).size()};
    result.turnsAt = result.turnsAt == result.words.size() ? 0 : result.turnsAt;
    return result;
}

bool tryKeysAsIs(const SoughtName& name, const std::function<bool(const std::string&)>& willDo)
{
    if (name.words.empty())
        return false;
    if (willDo("=" + joined(name.words)))
        return true;
    const Words other = name.turnsAt > 0 ? turned(name) : Words{};
    return (!other.empty() && willDo("=" + joined(other))) || willDo(anyOrderKey(name.words))
           || (!other.empty() && willDo(anyOrderKey(other))) || willDo("_" + joined(name.words, ""));
}

constexpr auto sugars = std::to_array<Constituent>({Constituent::Sucrose, Constituent::Glucose, Constituent::Fructose,
    Constituent::Galactose, Constituent::Lactose, Constituent::Maltose, Constituent::Trehalose});

/// Words that a cook adds to a name that says so already: "ricotta cheese", "amaretto liqueur", "fructose powder".
std::vector<std::string> wordsOfTheClass(const Ingredient& ingredient)
{
    constexpr double dryWater_g = 12.0, leanFat_g = 15.0, pureSugar_g = 90.0, spirit_g = 10.0, sweet_g = 10.0;  // in 100 g
    const Amounts& g = ingredient.composition.per100g;
    double sugars_g = 0.0;
    for (const Constituent sugar : sugars)
        sugars_g += g[sugar].value;
    std::vector<std::string> words;
    // Baked things and sweets of several parts have allergens, and their powder is something else.
    const bool isDry =
        g[Constituent::Water].value <= dryWater_g && g[Constituent::Fat].value <= leanFat_g && ingredient.allergens.empty();
    if (isDry)
        words.insert(words.end(), {"powder", "crystal", "granule"});
    if (isDry && sugars_g >= pureSugar_g)
        words.emplace_back("sugar");
    if (g[Constituent::Ethanol].value >= spirit_g && sugars_g >= sweet_g)
        words.emplace_back("liqueur");
    if (ingredient.group == "Cheese")
        words.emplace_back("cheese");
    return words;
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

SoughtName soughtName(std::string_view text)
{
    // A comma between digits is a decimal comma.
    const auto isDigitAt = [text](std::size_t i) { return i < text.size() && text[i] >= '0' && text[i] <= '9'; };
    std::size_t turn = text.find_first_of(",(");
    while (turn != std::string_view::npos && turn > 0 && isDigitAt(turn - 1) && isDigitAt(turn + 1))
        turn = text.find_first_of(",(", turn + 1);
    SoughtName name{plainWords(text.substr(0, turn)), 0};
    if (turn == std::string_view::npos)
        return name;
    Words after = plainWords(text.substr(turn));
    name.turnsAt = after.empty() ? 0 : name.words.size();
    std::ranges::move(after, std::back_inserter(name.words));
    return name;
}

void tryKeys(const SoughtName& name, const std::function<bool(const std::string&)>& willDo)
{
    if (tryKeysAsIs(name, willDo))
        return;
    const SoughtName withoutThem = bare(name);
    if (withoutThem.words.size() == name.words.size() || withoutThem.words.empty())
        return;
    // One of them may make another ingredient of it after all: a peeled apple.
    for (const std::string& word : name.words) {
        if (!isFiller(word))
            continue;
        Words words = withoutThem.words;
        words.push_back(word);
        if (willDo(anyOrderKey(words)))
            return;
        std::ranges::rotate(words, words.end() - 1);
        if (willDo(anyOrderKey(words)))
            return;
    }
    tryKeysAsIs(withoutThem, willDo);
}

NameIndex::NameIndex(std::span<const Ingredient> ingredients)
{
    for (std::size_t i = 0; i < ingredients.size(); ++i) {
        m_nameLengths.push_back(ingredients[i].name.size());
        add(ingredients[i].id, i, Claim::Id);
        add(ingredients[i].name, i, Claim::Name);
    }
    for (std::size_t i = 0; i < ingredients.size(); ++i)
        for (const std::string& word : ingredients[i].defaultFor)
            add(word, i, Claim::General);
    for (std::size_t i = 0; i < ingredients.size(); ++i)
        for (const std::string& synonym : ingredients[i].synonyms)
            add(synonym, i, Claim::Synonym);
    for (std::size_t i = 0; i < ingredients.size(); ++i)
        for (const std::string& word : wordsOfTheClass(ingredients[i])) {
            addWithClass(ingredients[i].id, i, word);
            addWithClass(ingredients[i].name, i, word);
            for (const std::string& synonym : ingredients[i].synonyms)
                addWithClass(synonym, i, word);
        }
}

/// A name with a word behind it that its ingredient is anyway; it yields to every name that is written so.
void NameIndex::addWithClass(std::string_view text, std::size_t ingredient, const std::string& word)
{
    SoughtName name = soughtName(text);
    const auto claimed = m_keys.find("=" + joined(name.words));
    if (claimed == m_keys.end() || claimed->second.hit.ingredient != ingredient || std::ranges::count(name.words, word) > 0)
        return;
    const NameHit hit = claimed->second.hit;
    name.words.insert(name.words.begin() + std::ptrdiff_t(name.turnsAt > 0 ? name.turnsAt : name.words.size()), word);
    name.turnsAt += name.turnsAt > 0 ? 1 : 0;
    tryKeysAsIs(bare(name), [&](const std::string& key) {
        if (key.starts_with('~'))
            addKey(key, {hit, false});
        return false;
    });
}

void NameIndex::add(std::string_view text, std::size_t ingredient, Claim claim)
{
    const SoughtName name = soughtName(text);
    const bool isGeneral = claim == Claim::General;
    const auto [claimed, isNew] = m_keys.try_emplace("=" + joined(name.words), Entry{{ingredient, isGeneral}});
    const bool isOurs = claimed->second.hit.ingredient == ingredient;
    if (isOurs && isGeneral)
        claimed->second.hit.isByDefault = true;
    if (isOurs) {
        for (std::string spelling : {std::string(text), folded(text)})
            m_written.insert_or_assign(std::move(spelling), claimed->second.hit);
    }

    // A word that is an id too is general all the same: "coffee".
    Label label{ingredient, claim, {}, isOurs && claimed->second.hit.isByDefault};
    for (const std::string& word : name.words)
        label.words.push_back(wordNumber(word));
    const std::size_t segment = name.turnsAt > 0 ? name.turnsAt : name.words.size();
    for (std::size_t i = 0; i < segment; ++i)
        if (!hasDigit(name.words[i]) && withoutFillers({name.words[i], "1"}).size() == 2)
            label.head = i;
    const auto number = std::uint32_t(m_labels.size());
    for (const std::uint32_t word : label.words)
        if (m_words[word].labels.empty() || m_words[word].labels.back() != number)
            m_words[word].labels.push_back(number);
    m_labels.push_back(std::move(label));

    if (!isOurs)
        return;
    // Only a claim of the words in order is settled by who comes first; elsewhere two names that become alike name neither.
    const auto addOtherKeys = [&, hit = claimed->second.hit](const SoughtName& form, bool isWhole) {
        tryKeysAsIs(form, [&](const std::string& key) {
            if (!key.starts_with('='))
                addKey(key, {hit, isWhole});
            return false;
        });
    };
    addOtherKeys(name, true);
    if (const SoughtName withoutThem = bare(name); withoutThem.words.size() != name.words.size())
        addOtherKeys(withoutThem, false);
}

void NameIndex::addKey(const std::string& key, Entry entry)
{
    const auto [found, isNew] = m_keys.try_emplace(key, entry);
    Entry& before = found->second;
    if (isNew)
        return;
    if (before.hit.ingredient == entry.hit.ingredient) {
        before.hit.isByDefault = before.hit.isByDefault && entry.hit.isByDefault;
        before.isWhole |= entry.isWhole;
    } else if (entry.isWhole && !before.isWhole) {
        before = entry;
    } else if (entry.isWhole == before.isWhole) {
        before.isAmbiguous = true;
    }
}

std::uint32_t NameIndex::wordNumber(const std::string& text)
{
    const auto [found, isNew] = m_wordNumbers.try_emplace(text, std::uint32_t(m_words.size()));
    if (isNew)
        m_words.push_back({text, lettersOf(text), {}});
    return found->second;
}

std::optional<NameHit> NameIndex::written(std::string_view text) const
{
    const auto found = m_written.find(text);
    return found == m_written.end() ? std::nullopt : std::optional(found->second);
}

std::optional<NameHit> NameIndex::underKey(const std::string& key) const
{
    const auto found = m_keys.find(key);
    return found == m_keys.end() || found->second.isAmbiguous ? std::nullopt : std::optional(found->second.hit);
}

std::optional<NameHit> NameIndex::underSeveralLabels(const SoughtName& name) const
{
    const Words words = withoutFillers(name.words);
    std::vector<std::uint32_t> asked;
    for (const std::string& word : words) {
        const auto number = m_wordNumbers.find(word);
        if (number == m_wordNumbers.end())
            return std::nullopt;
        asked.push_back(number->second);
    }
    std::map<std::size_t, std::size_t> answered;  // how many of the words each ingredient has, without a gap
    for (std::size_t i = 0; i < asked.size(); ++i)
        for (const std::uint32_t label : m_words[asked[i]].labels)
            if (std::size_t& count = answered[m_labels[label].ingredient]; count == i)
                ++count;
    std::optional<NameHit> hit;
    for (const auto& [ingredient, count] : answered) {
        if (count != asked.size())
            continue;
        bool isCalledSo = false, isGeneral = true;
        for (const std::uint32_t number : labelsOf(asked, ingredient)) {
            const auto isAsked = [&](std::uint32_t word) { return std::ranges::find(asked, word) != asked.end(); };
            if (!std::ranges::all_of(m_labels[number].words, isAsked))
                continue;
            // All the words in one label, but in another order, are another food: "butter almond".
            if (m_labels[number].words.size() == asked.size())
                return std::nullopt;
            isCalledSo = true;
            isGeneral &= m_labels[number].isGeneral;
        }
        if (isCalledSo && hit)
            return std::nullopt;
        if (isCalledSo)
            hit = {ingredient, isGeneral};
    }
    return hit;
}

/// Labels of an ingredient that have one of the words at least.
std::vector<std::uint32_t> NameIndex::labelsOf(const std::vector<std::uint32_t>& words, std::size_t ingredient) const
{
    std::vector<std::uint32_t> labels;
    for (const std::uint32_t word : words)
        for (const std::uint32_t label : m_words[word].labels)
            if (m_labels[label].ingredient == ingredient)
                labels.push_back(label);
    return labels;
}

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
    for (const SoughtName& reading : readings)
        tryKeys(reading, [&](const std::string& key) {
            const auto hit = underKey(key);
            if (hit && std::ranges::find(hits, hit->ingredient, &NameHit::ingredient) == hits.end())
                hits.push_back(*hit);
            return hit.has_value();
        });
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
        for (const auto& [number, answer] : answers(word, nearness))
            for (const std::uint32_t label : m_words[number].labels)
                now[label] = std::max(now[label], weight(m_words[number]) * answer / 100.0);
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
        if (words.empty() || !std::ranges::all_of(words, has))
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
