#include "document/edits.h"

#include "document/change_value.h"
#include "document/whole_recipe.h"

#include <QCoreApplication>
#include <algorithm>
#include <iterator>
#include <ranges>

namespace firn::app {

namespace {

// Where the values of a recipe are.

template <class T>
struct Field {
    using Value = T;
    T Recipe::*member;
    auto& in(auto& recipe) const { return recipe.*member; }
    friend bool operator==(const Field&, const Field&) = default;
};
template <class T>
Field(T Recipe::*) -> Field<T>;

template <class T>
struct RowField {
    using Value = T;
    RowPlace place;
    T Row::*member;
    auto& in(auto& recipe) const { return recipe.components.at(place.component).rows.at(place.row).*member; }
    friend bool operator==(const RowField&, const RowField&) = default;
};
template <class T>
RowField(RowPlace, T Row::*) -> RowField<T>;

template <class T>
struct ComponentField {
    using Value = T;
    std::size_t component;
    T Component::*member;
    auto& in(auto& recipe) const { return recipe.components.at(component).*member; }
    friend bool operator==(const ComponentField&, const ComponentField&) = default;
};
template <class T>
ComponentField(std::size_t, T Component::*) -> ComponentField<T>;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::Edits)
};

const std::vector<Row>& rowsOf(const Document& document, std::size_t component)
{
    return document.recipe().components.at(component).rows;
}

/// What a person calls the row: the catalogue's name, else what was typed.
QString nameOf(const Document& document, const Row& row)
{
    const Ingredient* ingredient = document.catalogue().find(row.ingredient);
    return QString::fromStdString(ingredient ? ingredient->name : row.ingredient);
}

QString nameOf(const Document& document, RowPlace place)
{
    return nameOf(document, rowsOf(document, place.component).at(place.row));
}

void changeRows(Document& document, const QString& name, std::size_t component, std::vector<Row> rows)
{
    change(document, name, ComponentField{component, &Component::rows}, std::move(rows));
}

bool hasSeveralComponents(const Document& document) { return document.recipe().components.size() > 1; }

/// An edit of the recipe, or of its only component if that has a value of its own, left from when there were more.
template <class T>
void changeOfWhole(Document& document, const QString& name, auto Component::*own, T Recipe::*whole, T value, Gesture gesture = {})
{
    if (document.recipe().components.front().*own)
        change(document, name, ComponentField{0, own}, {std::move(value)}, gesture);
    else
        change(document, name, Field{whole}, std::move(value), gesture);
}

std::optional<double> valueOf(std::optional<Celsius> temperature)
{
    return temperature ? std::optional(temperature->value) : std::nullopt;
}

}  // namespace

void changeAmount(Document& document, RowPlace place, const Amount& amount, Gesture gesture)
{
    change(document, Words::tr("Change amount of %1").arg(nameOf(document, place)), RowField{place, &Row::amount}, amount, gesture);
}

void changeReading(Document& document, RowPlace place, std::optional<double> brix)
{
    change(document, Words::tr("Change reading of %1").arg(nameOf(document, place)), RowField{place, &Row::measuredBrix}, brix);
}

void renameIngredient(Document& document, RowPlace place, const std::string& ingredient)
{
    change(document, Words::tr("Replace %1").arg(nameOf(document, place)), RowField{place, &Row::ingredient}, ingredient);
}

void replaceIngredient(Document& document, RowPlace place, const std::string& ingredient, const Amount& amount)
{
    std::vector<Row> after = rowsOf(document, place.component);
    after.at(place.row).ingredient = ingredient;
    after.at(place.row).amount = amount;
    changeRows(document, Words::tr("Replace %1").arg(nameOf(document, place)), place.component, std::move(after));
}

void insertRows(Document& document, RowPlace place, const std::vector<Row>& rows)
{
    if (rows.empty())
        return;
    std::vector<Row> after = rowsOf(document, place.component);
    after.insert(after.begin() + std::ptrdiff_t(place.row), rows.begin(), rows.end());
    const QString name = rows.size() == 1 ? Words::tr("Add %1").arg(nameOf(document, rows.front()))
                                          : Words::tr("Add %n rows", nullptr, int(rows.size()));
    changeRows(document, name, place.component, std::move(after));
}

void removeRows(Document& document, std::size_t component, const std::vector<std::size_t>& rows)
{
    if (rows.empty())
        return;
    std::vector<Row> after;
    const auto& before = rowsOf(document, component);
    for (std::size_t i = 0; i < before.size(); ++i)
        if (std::ranges::find(rows, i) == rows.end())
            after.push_back(before[i]);
    const QString name = rows.size() == 1 ? Words::tr("Delete %1").arg(nameOf(document, RowPlace{component, rows.front()}))
                                          : Words::tr("Delete %n rows", nullptr, int(rows.size()));
    changeRows(document, name, component, std::move(after));
}

void moveRow(Document& document, RowPlace from, std::size_t to)
{
    std::vector<Row> after = rowsOf(document, from.component);
    const auto first = after.begin() + std::ptrdiff_t(std::min(from.row, to));
    const auto last = after.begin() + std::ptrdiff_t(std::max(from.row, to)) + 1;
    std::rotate(first, from.row < to ? first + 1 : last - 1, last);
    changeRows(document, Words::tr("Move %1").arg(nameOf(document, from)), from.component, std::move(after));
}

void duplicateRows(Document& document, std::size_t component, const std::vector<std::size_t>& rows)
{
    if (rows.empty())
        return;
    std::vector<Row> after = rowsOf(document, component);
    std::vector<Row> copies;
    std::ranges::transform(rows, std::back_inserter(copies), [&](std::size_t row) { return after.at(row); });
    after.insert(after.begin() + std::ptrdiff_t(std::ranges::max(rows)) + 1, copies.begin(), copies.end());
    const QString name = rows.size() == 1 ? Words::tr("Duplicate %1").arg(nameOf(document, RowPlace{component, rows.front()}))
                                          : Words::tr("Duplicate %n rows", nullptr, int(rows.size()));
    changeRows(document, name, component, std::move(after));
}

void changeTitle(Document& document, const std::string& title, Gesture gesture)
{
    change(document, Words::tr("Change title"), Field{&Recipe::title}, title, gesture);
}

void changeProcess(Document& document, std::size_t component, Process process)
{
    const QString name = Words::tr("Change how it is frozen");
    if (hasSeveralComponents(document))
        change(document, name, ComponentField{component, &Component::process}, std::optional(process));
    else
        changeOfWhole(document, name, &Component::process, &Recipe::process, std::optional(process));
}

void changeOverrun(Document& document, std::size_t component, double overrun_percent, Gesture gesture)
{
    const QString name = Words::tr("Change overrun");
    if (hasSeveralComponents(document))
        change(document, name, ComponentField{component, &Component::overrun_percent}, std::optional(overrun_percent), gesture);
    else
        changeOfWhole(document, name, &Component::overrun_percent, &Recipe::overrun_percent, overrun_percent, gesture);
}

void changeNotes(Document& document, const std::string& notes, Gesture gesture)
{
    change(document, Words::tr("Change notes"), Field{&Recipe::notes}, notes, gesture);
}

void changeServingTemperature(Document& document, std::optional<Celsius> temperature, Gesture gesture)
{
    change(document, Words::tr("Change serving temperature"), Field{&Recipe::serveAt_c}, valueOf(temperature), gesture);
}

void changeFreezerTemperature(Document& document, std::optional<Celsius> temperature, Gesture gesture)
{
    change(document, Words::tr("Change freezer temperature"), Field{&Recipe::freezerAt_c}, valueOf(temperature), gesture);
}

void addComponent(Document& document, const std::string& name)
{
    std::vector<Component> after = document.recipe().components;
    after.emplace_back().name = name;
    change(document, Words::tr("Add component"), Field{&Recipe::components}, std::move(after));
}

void renameComponent(Document& document, std::size_t component, const std::string& name, Gesture gesture)
{
    Recipe after = document.recipe();
    std::string& own = after.components.at(component).name;
    // An empty name also stands for the whole dessert, whose readings stay its own.
    for (ReadingRecord& reading : after.readings) {
        if (!own.empty() && reading.component == own)
            reading.component = name;
    }
    for (BatchCorrection& correction : after.batchCorrections) {
        if (!own.empty() && correction.component == own)
            correction.component = name;
    }
    own = name;
    change(document, Words::tr("Rename component"), WholeRecipe{}, std::move(after), gesture);
}

void removeComponent(Document& document, std::size_t component)
{
    std::vector<Component> after = document.recipe().components;
    if (after.size() < 2)
        return;
    after.erase(after.begin() + std::ptrdiff_t(component));
    change(document, Words::tr("Delete component"), Field{&Recipe::components}, std::move(after));
}

}  // namespace firn::app
