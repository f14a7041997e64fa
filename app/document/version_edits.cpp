#include "document/version_edits.h"

#include "document/change_value.h"
#include "document/whole_recipe.h"
#include "exchange/linked_recipes.h"
#include "recipe/own_ingredients.h"
#include "recipe/versions.h"

#include <QCoreApplication>
#include <QDateTime>
#include <algorithm>

namespace firn::app {

namespace {

struct VersionsOf {
    using Value = std::vector<Version>;
    auto& in(auto& recipe) const { return recipe.versions; }
    friend bool operator==(const VersionsOf&, const VersionsOf&) = default;
};

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::VersionEdits)
};

void changeVersion(Document& document, const QString& edit, const std::string& id, std::string Version::*member, std::string value)
{
    std::vector<Version> after = document.recipe().versions;
    const auto found = std::ranges::find(after, id, &Version::id);
    if (found == after.end())
        return;
    (*found).*member = std::move(value);
    change(document, edit.arg(nameOfVersion(document.recipe(), id)), VersionsOf{}, std::move(after));
}

}  // namespace

QString nameOf(const Version& version)
{
    return version.name.empty() ? Words::tr("Version %1").arg(QString::fromStdString(version.id))
                                : QString::fromStdString(version.name);
}

QString nameOfVersion(const Recipe& recipe, const std::string& id)
{
    if (id.empty())
        return Words::tr("On the bench");
    const Version* version = versionNamed(recipe, id);
    return version ? nameOf(*version) : Words::tr("Version %1, no longer there").arg(QString::fromStdString(id));
}

std::string now() { return QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-ddTHH:mm")).toStdString(); }

Recipe benchToKeep(const Document& document)
{
    return withoutUnusedLinks(withOwnIngredients(document.recipe(), document.catalogue(), document.ownIngredients()));
}

void keepVersion(Document& document, const std::string& name, const std::string& note)
{
    change(document, Words::tr("Keep version"), WholeRecipe{}, withVersionKept(benchToKeep(document), {name, note, now()}));
}

bool goBackTo(Document& document, const std::string& id)
{
    const Version* version = versionNamed(document.recipe(), id);
    if (!version)
        return false;
    const QString name = nameOf(*version);
    const std::size_t before = document.recipe().versions.size();
    const std::string note = Words::tr("Kept before going back to “%1”.").arg(name).toStdString();
    change(document, Words::tr("Go back to %1").arg(name), WholeRecipe{},
        withVersionOnBench(benchToKeep(document), id, {{}, note, now()}));
    return document.recipe().versions.size() > before;
}

void renameVersion(Document& document, const std::string& id, const std::string& name)
{
    changeVersion(document, Words::tr("Rename %1"), id, &Version::name, name);
}

void changeVersionNote(Document& document, const std::string& id, const std::string& note)
{
    changeVersion(document, Words::tr("Change note of %1"), id, &Version::note, note);
}

void changeVersionDate(Document& document, const std::string& id, QDate date)
{
    const Version* version = versionNamed(document.recipe(), id);
    if (!version || !date.isValid())
        return;
    const std::size_t time = version->date.find('T');
    const std::string day = date.toString(Qt::ISODate).toStdString();
    changeVersion(document, Words::tr("Change date of %1"), id, &Version::date,
        time == std::string::npos ? day : day + version->date.substr(time));
}

void removeVersion(Document& document, const std::string& id)
{
    const QString name = nameOfVersion(document.recipe(), id);
    change(document, Words::tr("Delete %1").arg(name), WholeRecipe{}, withoutVersion(document.recipe(), id));
}

}  // namespace firn::app
