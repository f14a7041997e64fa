#include "ingredients/name_index.h"

#include "ingredients/catalogue.h"
#include "ingredients/said_anyway.h"
#include "ingredients/slips.h"

#include <algorithm>
#include <array>
#include <bit>
#include <map>

namespace firn {

NameIndex::NameIndex(std::span<const Ingredient> ingredients)
{
    for (std::size_t i = 0; i < ingredients.size(); ++i) {
        m_nameLengths.push_back(ingredients[i].name.size());
        m_saidAnyway.push_back(saidAnyway(ingredients[i]));
        add(ingredients[i].id, i, Claim::Id);
        add(ingredients[i].name, i, Claim::Name);
    }
    for (std::size_t i = 0; i < ingredients.size(); ++i)
        for (const std::string& word : ingredients[i].defaultFor)
            add(word, i, Claim::General);
    for (std::size_t i = 0; i < ingredients.size(); ++i)
        for (const std::string& synonym : ingredients[i].synonyms)
            add(synonym, i, Claim::Synonym);
}

void NameIndex::add(std::string_view text, std::size_t ingredient, Claim claim)
{
    const SoughtName name = soughtName(text);
    const bool isGeneral = claim == Claim::General;
    const auto [claimed, isNew] = m_keys.try_emplace("=" + joined(name.words), Entry{{ingredient, isGeneral}});
    const bool isOurs = claimed->second.hit.ingredient == ingredient;
    if (isOurs && isGeneral)
        claimed->second.hit.isByDefault = true;
    // An id or a name as it stands is exact, though its word may be a general one too; "dessert wine" is not the id "dessert-wine".
    if (isOurs) {
        m_written.try_emplace(std::string(text), NameHit{ingredient, isGeneral});
        if (claim != Claim::Id)
            m_written.try_emplace(folded(text), NameHit{ingredient, isGeneral});
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
    // "Cherries in kirsch", "milk and honey" are two foods.
    constexpr auto between = std::to_array<std::string_view>({"and", "in", "or", "with"});
    if (std::ranges::find_first_of(name.words, between) != name.words.end())
        return std::nullopt;
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

std::optional<NameHit> NameIndex::withoutWordsSaidAnyway(const SoughtName& name) const
{
    constexpr std::size_t mostWords = 4;
    const SoughtName asked = bare(name);
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < asked.words.size(); ++i)
        if (isSaidAnywayOfSome(asked.words[i]))
            places.push_back(i);
    places.resize(std::min(places.size(), mostWords));
    // As few as will do, those in front first: "frozen strawberry purée" is a purée.
    std::vector<unsigned> choices;
    for (unsigned choice = 1; choice < 1U << places.size(); ++choice)
        choices.push_back(choice);
    std::ranges::stable_sort(choices, {}, [](unsigned choice) { return std::popcount(choice); });
    for (const unsigned choice : choices) {
        SoughtName rest{{}, asked.turnsAt};
        Words leftOut;
        for (std::size_t i = 0; i < asked.words.size(); ++i) {
            const auto at = std::size_t(std::ranges::find(places, i) - places.begin());
            const bool isLeftOut = at < places.size() && (choice >> at & 1U) != 0;
            (isLeftOut ? leftOut : rest.words).push_back(asked.words[i]);
            rest.turnsAt -= isLeftOut && i < asked.turnsAt ? 1 : 0;
        }
        if (rest.turnsAt == rest.words.size())
            rest.turnsAt = 0;
        std::optional<NameHit> found;
        tryKeys(rest, [&](const std::string& key) {
            const auto hit = underKey(key);
            const auto isSaid = [&](const std::string& word) {
                return std::ranges::find(m_saidAnyway[hit->ingredient], word) != m_saidAnyway[hit->ingredient].end();
            };
            if (hit && std::ranges::all_of(leftOut, isSaid))
                found = hit;
            return found.has_value();
        });
        if (found)
            return found;
    }
    return std::nullopt;
}

}  // namespace firn
