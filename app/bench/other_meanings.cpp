#include "bench/other_meanings.h"

#include "document/document.h"
#include "ingredients/matching.h"
#include "ingredients/own_ingredient.h"

#include <QCoreApplication>
#include <QMenu>

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
