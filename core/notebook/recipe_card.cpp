#include "notebook/recipe_card.h"

#include "units/text.h"

#include <algorithm>
#include <filesystem>

namespace firn {

namespace {

/// The blanks at both ends let a search find whole words and their beginnings by plain comparison; the line end keeps a phrase inside one text.
void addSearched(std::string& searched, std::string_view text)
{
    if (const std::string words = folded(text); !words.empty())
        searched.append(" ").append(words).append(" \n");
}

void noteBeginnings(RecipeCard& card)
{
    card.beginnings.add(card.searched);
    card.beginnings.add(card.searchedTags);
}

bool holds(const std::vector<std::string>& texts, std::string_view text)
{
    return std::ranges::any_of(texts, [wanted = folded(text)](const std::string& other) { return folded(other) == wanted; });
}

}  // namespace

std::size_t WordBeginnings::markOf(std::string_view word)
{
    constexpr unsigned letters = 37;  // more than there are, with the digits, so that most pairs have a mark of their own
    return (letters * static_cast<unsigned char>(word[1]) + static_cast<unsigned char>(word[2])) % markCount;
}

void WordBeginnings::add(std::string_view searched)
{
    for (std::size_t blank = searched.find(' '); blank != searched.npos && blank + 2 < searched.size();
         blank = searched.find(' ', blank + 1))
        m_marks.set(markOf(searched.substr(blank)));
}

RecipeCard cardOf(const Recipe& recipe, std::string file, std::int64_t changed_s)
{
    RecipeCard card{std::move(file), changed_s, recipe.title};
    if (trimmed(card.title).empty())
        card.title = std::filesystem::path(card.file).stem().string();
    card.isFavourite = recipe.isFavourite;
    card.isArchived = recipe.isArchived;
    card.versions = recipe.versions.size();
    card.tastings = recipe.tastings.size();
    setTags(card, recipe.tags);

    addSearched(card.searched, card.title);
    for (const Component& component : recipe.components) {
        addSearched(card.searched, component.name);
        for (const Row& row : component.rows) {
            if (!holds(card.ingredients, row.ingredient)) {
                card.ingredients.push_back(row.ingredient);
                addSearched(card.searched, row.ingredient);
            }
            addSearched(card.searched, row.note);
        }
    }
    addSearched(card.searched, recipe.notes);
    noteBeginnings(card);
    return card;
}

RecipeCard withFigures(RecipeCard card, const Analysis& analysis)
{
    card.figures = {analysis.texture.textureClass, analysis.texture.process, analysis.ribbon, analysis.shares.sugars,
        analysis.shares.fat, analysis.texture.iceAtServing, analysis.alcohol_percentByVolume, analysis.sweetness_percentSucrose,
        {}};
    if (analysis.freezing.freezingPoint && analysis.texture.process != Process::Unfrozen)
        card.figures->freezingPoint = analysis.freezing.freezingPoint->temperature;

    std::vector<std::string> added;
    for (const auto& component : analysis.components) {
        for (const RowAnalysis& row : component) {
            if (!row.ingredientName.empty() && !holds(card.ingredients, row.ingredientName) && !holds(added, row.ingredientName))
                added.push_back(row.ingredientName);
        }
    }
    for (const std::string& name : added)
        addSearched(card.searched, name);
    addSearched(card.searched, nameOf(card.figures->textureClass));
    addSearched(card.searched, keyOf(card.figures->process));
    noteBeginnings(card);
    return card;
}

RecipeCard unreadableCard(std::string file, std::int64_t changed_s, Sentence why)
{
    RecipeCard card{std::move(file), changed_s, {}};
    card.title = std::filesystem::path(card.file).filename().string();
    card.fault = std::move(why);
    addSearched(card.searched, card.title);
    noteBeginnings(card);
    return card;
}

void setTags(RecipeCard& card, std::vector<std::string> tags)
{
    card.tags = std::move(tags);
    card.searchedTags = "\n";  // so that each tag stands between line ends
    for (const std::string& tag : card.tags)
        addSearched(card.searchedTags, tag);
    noteBeginnings(card);
}

std::vector<std::string> tagsFrom(std::string_view typed)
{
    std::vector<std::string> tags;
    while (!typed.empty()) {
        const std::size_t end = std::min(typed.find(','), typed.size());
        const std::string_view tag = trimmed(typed.substr(0, end));
        if (!tag.empty() && !holds(tags, tag))
            tags.emplace_back(tag);
        typed.remove_prefix(std::min(end + 1, typed.size()));
    }
    return tags;
}

}  // namespace firn
