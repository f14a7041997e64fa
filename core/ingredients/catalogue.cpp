#include "ingredients/catalogue.h"

#include "ingredients/name_index.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace firn {

namespace {

constexpr std::size_t longestName_bytes = 500;  // more is a page, not a name

}  // namespace

Catalogue::Catalogue()
    : Catalogue(std::vector<Ingredient>{})
{
}

Catalogue::Catalogue(std::vector<Ingredient> ingredients)
    : m_ingredients(std::move(ingredients))
    , m_names(std::make_shared<NameIndex>(m_ingredients))
{
}

Recognised Catalogue::recogniseIn(std::initializer_list<const Catalogue*> catalogues, std::string_view text)
{
    const auto recognised = [](const Catalogue& catalogue, const NameHit& hit) {
        return Recognised{
            &catalogue.m_ingredients[hit.ingredient], hit.isByDefault ? Recognition::ByDefault : Recognition::AsWritten};
    };
    std::vector<const Catalogue*> filled;
    std::ranges::copy_if(
        catalogues, std::back_inserter(filled), [](const Catalogue* each) { return !each->m_ingredients.empty(); });
    if (filled.empty())
        return {};
    if (const auto hit = filled.front()->m_names->written(text))
        return recognised(*filled.front(), *hit);
    if (text.size() > longestName_bytes)
        return {};
    const std::vector<SoughtName> forms = withLessBehind(soughtName(text));
    for (const SoughtName& form : forms) {
        Recognised asWritten;
        tryKeys(form, [&](const std::string& key) {
            for (const Catalogue* catalogue : filled)
                if (const auto hit = asWritten.ingredient ? std::nullopt : catalogue->m_names->underKey(key))
                    asWritten = recognised(*catalogue, *hit);
            return asWritten.ingredient != nullptr;
        });
        if (asWritten.ingredient)
            return asWritten;
    }
    for (const SoughtName& form : forms)
        for (const Catalogue* catalogue : filled)
            if (const auto hit = catalogue->m_names->underSeveralLabels(form))
                return recognised(*catalogue, *hit);
    // "ascorbic acid (vitamin C)" says the same twice.
    if (const std::size_t turn = turnOf(text); turn != std::string_view::npos) {
        const Recognised before = recogniseIn(catalogues, text.substr(0, turn));
        if (before.how == Recognition::AsWritten && before.ingredient == recogniseIn(catalogues, text.substr(turn + 1)).ingredient)
            return before;
    }
    for (const SoughtName& form : forms)
        for (const Catalogue* catalogue : filled)
            if (const auto hit = catalogue->m_names->withoutWordsSaidAnyway(form))
                return recognised(*catalogue, *hit);
    for (const SoughtName& form : forms) {
        Recognised corrected;
        for (const Catalogue* catalogue : filled)
            for (const NameHit& hit : catalogue->m_names->withinSlips(form)) {
                const Recognised found = recognised(*catalogue, hit);
                if (corrected.ingredient && corrected.ingredient->id != found.ingredient->id)
                    return {};
                if (!corrected.ingredient)
                    corrected = found;
            }
        if (corrected.how == Recognition::AsWritten)
            corrected.how = Recognition::Corrected;
        if (corrected.ingredient)
            return corrected;
    }
    return {};
}

std::vector<const Ingredient*> Catalogue::search(std::string_view text, std::size_t atMost) const
{
    return at(m_names->search(plainWords(text), atMost));
}

std::vector<const Ingredient*> Catalogue::nearest(std::string_view text, std::size_t atMost) const
{
    return at(m_names->nearest(soughtName(text.substr(0, longestName_bytes)), atMost));
}

std::vector<const Ingredient*> Catalogue::sharing(std::string_view text) const
{
    return at(m_names->sharing(withoutFillers(plainWords(text))));
}

std::vector<const Ingredient*> Catalogue::at(const std::vector<std::size_t>& places) const
{
    std::vector<const Ingredient*> ingredients;
    for (const std::size_t place : places)
        ingredients.push_back(&m_ingredients[place]);
    return ingredients;
}

}  // namespace firn
