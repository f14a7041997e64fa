#include "document/tasting_edits.h"

#include "document/change_value.h"
#include "document/version_edits.h"
#include "document/whole_recipe.h"
#include "recipe/blind_sheet.h"
#include "recipe/versions.h"
#include "tasting/scales.h"

#include <QCoreApplication>
#include <QDate>
#include <algorithm>

namespace firn::app {

namespace {

template <class T>
struct ListOf {
    using Value = std::vector<T>;
    std::vector<T> Recipe::*member;
    auto& in(auto& recipe) const { return recipe.*member; }
    friend bool operator==(const ListOf&, const ListOf&) = default;
};
template <class T>
ListOf(std::vector<T> Recipe::*) -> ListOf<T>;

struct TastingAt {
    using Value = Tasting;
    std::size_t place;
    auto& in(auto& recipe) const { return recipe.tastings.at(place); }
    friend bool operator==(const TastingAt&, const TastingAt&) = default;
};

template <class T>
struct TastingField {
    using Value = T;
    std::size_t place;
    T Tasting::*member;
    auto& in(auto& recipe) const { return recipe.tastings.at(place).*member; }
    friend bool operator==(const TastingField&, const TastingField&) = default;
};
template <class T>
TastingField(std::size_t, T Tasting::*) -> TastingField<T>;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::TastingEdits)
};

QString named(const QString& edit, const std::string& scale) { return edit.arg(QString::fromStdString(scale)); }

}  // namespace

void addTasting(Document& document)
{
    Tasting tasting;
    tasting.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
    tasting.version = versionOfBench(document.recipe());
    tasting.servedAt_c = document.recipe().serveAt_c;
    std::vector<Tasting> after = document.recipe().tastings;
    after.push_back(std::move(tasting));
    change(document, Words::tr("Add tasting"), ListOf{&Recipe::tastings}, std::move(after));
}

void removeTasting(Document& document, std::size_t place)
{
    std::vector<Tasting> after = document.recipe().tastings;
    if (place >= after.size())
        return;
    after.erase(after.begin() + std::ptrdiff_t(place));
    change(document, Words::tr("Delete tasting"), ListOf{&Recipe::tastings}, std::move(after));
}

void changeTastingText(
    Document& document, std::size_t place, std::string Tasting::*member, const std::string& text, Gesture gesture)
{
    change(document, Words::tr("Change tasting"), TastingField{place, member}, text, gesture);
}

void changeTastingNumber(
    Document& document, std::size_t place, std::optional<double> Tasting::*member, std::optional<double> number, Gesture gesture)
{
    change(document, Words::tr("Change tasting"), TastingField{place, member}, number, gesture);
}

void changeTasted(Document& document, std::size_t place, const std::string& version, const std::string& code)
{
    Tasting after = document.recipe().tastings.at(place);
    after.version = version;
    after.code = code;
    change(document, Words::tr("Change what was tasted"), TastingAt{place}, std::move(after));
}

void changeScore(Document& document, std::size_t place, const std::string& scale, std::optional<double> value, Gesture gesture)
{
    std::vector<Score> after = document.recipe().tastings.at(place).scores;
    const auto found = std::ranges::find(after, scale, &Score::scale);
    if (value && found != after.end())
        found->value = *value;
    else if (value)
        after.push_back({scale, *value});
    else if (found != after.end())
        after.erase(found);
    change(
        document, named(Words::tr("Change score of %1"), scale), TastingField{place, &Tasting::scores}, std::move(after), gesture);
}

void addScale(Document& document, const TastingScale& scale)
{
    std::vector<TastingScale> after = document.recipe().scales;
    after.push_back(scale);
    change(document, named(Words::tr("Add scale %1"), scale.name), ListOf{&Recipe::scales}, std::move(after));
}

void changeScale(Document& document, std::size_t place, const TastingScale& scale)
{
    change(document, named(Words::tr("Change scale %1"), document.recipe().scales.at(place).name), WholeRecipe{},
        withScale(document.recipe(), place, scale));
}

void removeScale(Document& document, std::size_t place)
{
    change(document, named(Words::tr("Delete scale %1"), document.recipe().scales.at(place).name), WholeRecipe{},
        withoutScale(document.recipe(), place));
}

void addBlindSheet(Document& document, std::vector<std::string> versions, std::uint64_t seed)
{
    Recipe after = document.recipe();
    if (const auto bench = std::ranges::find(versions, std::string()); bench != versions.end()) {
        if (!isAsKept(after))
            after = withVersionKept(benchToKeep(document), {{}, Words::tr("Kept for tasting blind.").toStdString(), now()});
        *bench = after.basedOn;
    }
    BlindSheet sheet = blindSheet(versions, seed, codesOf(after));
    sheet.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
    after.blindSheets.push_back(std::move(sheet));
    change(document, Words::tr("Make blind sheet"), WholeRecipe{}, std::move(after));
}

void revealBlindSheet(Document& document, std::size_t place)
{
    std::vector<BlindSheet> after = document.recipe().blindSheets;
    after.at(place).isRevealed = true;
    change(document, Words::tr("Reveal blind sheet"), ListOf{&Recipe::blindSheets}, std::move(after));
}

}  // namespace firn::app
