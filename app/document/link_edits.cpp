#include "document/link_edits.h"

#include "document/change_value.h"
#include "document/whole_recipe.h"
#include "recipe/own_ingredients.h"

#include <QCoreApplication>
#include <algorithm>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::Edits)
};

/// The name, with a number behind it if another link has it already.
std::string nameBeside(const std::vector<LinkedRecipe>& others, const std::string& name)
{
    const auto isTaken = [&others](const std::string& wanted) {
        return std::ranges::any_of(others, [&wanted](const LinkedRecipe& other) { return folded(other.name) == folded(wanted); });
    };
    std::string free = name;
    for (int number = 2; isTaken(free); ++number)
        free = name + " " + std::to_string(number);
    return free;
}

}  // namespace

void linkRecipe(Document& document, std::size_t component, LinkedRecipe linked)
{
    Recipe after = document.recipe();
    const auto same = std::ranges::find(after.linked, linked.file, &LinkedRecipe::file);
    if (same != after.linked.end()) {
        same->recipe = std::move(linked.recipe);
        linked.name = same->name;
    } else {
        linked.name = nameBeside(after.linked, linked.name);
        after.linked.push_back(linked);
    }
    after.components.at(component).rows.push_back({linked.name, {0.0, Unit::Gram}, {}, {}});
    const QString name = Words::tr("Add recipe %1").arg(QString::fromStdString(linked.name));
    change(document, name, WholeRecipe{}, std::move(after));
}

void takeNewRecipe(Document& document, std::size_t linked, Recipe now)
{
    Recipe after = document.recipe();
    LinkedRecipe& link = after.linked.at(linked);
    link.recipe = std::move(now);
    const QString name = Words::tr("Update %1").arg(QString::fromStdString(link.name));
    change(document, name, WholeRecipe{}, std::move(after));
}

void takeNewIngredient(Document& document, const Ingredient& now)
{
    Recipe after = document.recipe();
    std::ranges::replace_if(
        after.ingredients, [&now](const Ingredient& old) { return old.id == now.id; }, now);
    change(
        document, Words::tr("Use catalogue entry for %1").arg(QString::fromStdString(now.name)), WholeRecipe{}, std::move(after));
}

void storeOwnIngredients(Document& document)
{
    change(document, Words::tr("Store own ingredients"), WholeRecipe{},
        withOwnIngredients(document.recipe(), document.catalogue(), document.ownIngredients()));
}

}  // namespace firn::app
