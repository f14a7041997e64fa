#include "bench/other_meanings.h"

#include "document/document.h"
#include "ingredients/matching.h"
#include "ingredients/own_ingredient.h"

#include <QCoreApplication>
#include <QMenu>
#include <algorithm>
#include <iterator>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::OtherMeanings)
};

}  // namespace

std::vector<OtherMeaning> otherMeanings(const Document& document, RowPlace place, std::size_t atMost)
{
    const auto& analysed = document.analysis().components;
    if (place.component >= analysed.size() || place.row >= analysed[place.component].size())
        return {};
    const RowAnalysis& row = analysed[place.component][place.row];
    if (!row.takenAs && row.unknownName.empty())
        return {};
    std::vector<OtherMeaning> meanings;
    const std::string& typed = document.recipe().components.at(place.component).rows.at(place.row).ingredient;
    for (const Ingredient* other : matchName(document.catalogue(), typed, atMost).others)
        if (auto name = callName(*other, document.catalogue()))
            meanings.push_back({QString::fromStdString(other->name), std::move(*name)});
    return meanings;
}

std::vector<std::string> mixesLike(const Document& document, const std::string& typed)
{
    std::vector<std::string> names;
    const Recipe& recipe = document.recipe();
    for (std::size_t i = 0; i < recipe.components.size(); ++i)
        if (i != document.component())
            names.push_back(recipe.components[i].name);
    std::ranges::transform(recipe.linked, std::back_inserter(names), &LinkedRecipe::name);
    for (const Ingredient& own : recipe.ingredients)
        if (!document.catalogue().find(own.id))
            names.push_back(own.name);
    std::erase_if(names,
        [text = folded(typed)](const std::string& name) { return name.empty() || folded(name).find(text) == std::string::npos; });
    return names;
}

bool meansSomething(const Document& document, const std::string& name)
{
    const Recognition how = document.catalogue().recognise(name).how;
    if (how == Recognition::AsWritten || how == Recognition::ByDefault)
        return true;
    return std::ranges::any_of(
        mixesLike(document, name), [text = folded(name)](const std::string& mix) { return folded(mix) == text; });
}

void addOtherMeanings(QMenu& menu, Document& document, RowPlace place)
{
    constexpr std::size_t mostLines = 12;
    const auto meanings = otherMeanings(document, place, mostLines);
    if (!meanings.empty())
        menu.addSection(Words::tr("Choose another"));
    for (const OtherMeaning& meaning : meanings)
        menu.addAction(QString(meaning.shown).replace(QLatin1Char('&'), QLatin1String("&&")), &document,
            [&document, place, name = meaning.name] { renameIngredient(document, place, name); });
}

}  // namespace firn::app
