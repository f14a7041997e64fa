#include "exchange/ingredient_columns.h"

#include "exchange/plain_text.h"
#include "ingredients/catalogue.h"
#include "solution/alcohol_by_volume.h"
#include "units/text.h"

#include <algorithm>
#include <array>

namespace firn {

namespace {

using Meaning = decltype(IngredientColumn::meaning);

struct ColumnName {
    std::string_view name;  // folded
    Meaning meaning;
};

// Besides the keys of the constituents: words of nutrition tables and labels (common practice, no source).
const std::array names = std::to_array<ColumnName>({
    {"id", TextColumn::Id},
    {"name", TextColumn::Name},
    {"ingredient", TextColumn::Name},
    {"food", TextColumn::Name},
    {"description", TextColumn::Name},
    {"synonyms", TextColumn::Synonyms},
    {"group", TextColumn::Group},
    {"category", TextColumn::Group},
    {"allergens", TextColumn::Allergens},
    {"source", TextColumn::Source},
    {"density source", TextColumn::DensitySource},
    {"energy note", TextColumn::EnergyNote},
    {"moisture", Constituent::Water},
    {"total fat", Constituent::Fat},
    {"fat total", Constituent::Fat},
    {"proteins", Constituent::Protein},
    {"fiber", Constituent::Fibre},
    {"dietary fibre", Constituent::Fibre},
    {"dietary fiber", Constituent::Fibre},
    {"total dietary fibre", Constituent::Fibre},
    {"total dietary fiber", Constituent::Fibre},
    {"alcohol", Constituent::Ethanol},
    {"abv", NumberColumn::AlcoholByVolume},
    {"alcohol by volume", NumberColumn::AlcoholByVolume},
    {"alcohol vol", NumberColumn::AlcoholByVolume},
    {"ethanol vol", NumberColumn::AlcoholByVolume},
    {"alcohol abv", NumberColumn::AlcoholByVolume},
    {"sugar", NumberColumn::Sugars},
    {"sugars", NumberColumn::Sugars},
    {"total sugars", NumberColumn::Sugars},
    {"sugars total", NumberColumn::Sugars},
    {"of which sugars", NumberColumn::Sugars},
    {"carbohydrate", NumberColumn::Carbohydrate},
    {"carbohydrates", NumberColumn::Carbohydrate},
    {"total carbohydrate", NumberColumn::CarbohydrateWithFibre},
    {"carbohydrate by difference", NumberColumn::CarbohydrateWithFibre},
    {"ash", NumberColumn::Ash},
    {"sodium", NumberColumn::Sodium},
    {"milk fat", NumberColumn::MilkFat},
    {"milk solids not fat", NumberColumn::MilkSolidsNotFat},
    {"yolk solids", NumberColumn::YolkSolids},
    {"energy", NumberColumn::Energy},
    {"calories", NumberColumn::Energy},
    {"density", NumberColumn::Density},
});

struct UnitName {
    std::string_view name;  // folded
    double factor;
};
constexpr std::array massUnits = std::to_array<UnitName>({{"g", 1.0}, {"g 100 g", 1.0}, {"g 100g", 1.0}, {"g per 100 g", 1.0},
    {"mg", 0.001}, {"mg 100 g", 0.001}, {"mg 100g", 0.001}, {"mg per 100 g", 0.001}});
constexpr double kilocaloriesPerKilojoule = 1.0 / 4.184;  // the thermochemical calorie, by definition
constexpr std::array energyUnits = std::to_array<UnitName>({{"kcal", 1.0}, {"kj", kilocaloriesPerKilojoule}});
constexpr std::array densityUnits = std::to_array<UnitName>({{"g ml", 1.0}});
constexpr double milligramsPerGram = 1000.0;

struct ColumnUnit {
    std::string name;  // folded; empty if the header gives none
    std::string asWritten;
};

/// The unit in brackets at the end of a header, or after its name as in "energy_kcal"; takes it off the name.
ColumnUnit takeUnit(std::string& name)
{
    if (const std::size_t bracket = name.find_first_of("(["); bracket != name.npos) {
        const std::string unit = name.substr(bracket + 1, name.find_first_of(")]", bracket) - bracket - 1);
        name = folded(name.substr(0, bracket));
        return {folded(unit), unit};
    }
    name = folded(name);
    for (const std::string_view unit : {"g ml", "kcal", "kj", "mg", "g"}) {
        if (name.ends_with(" " + std::string(unit))) {
            name.resize(name.size() - unit.size() - 1);
            return {std::string(unit), std::string(unit)};
        }
    }
    return {};
}

Meaning meaningOf(const std::string& name, const ColumnUnit& unit)
{
    const auto* found = std::ranges::find(names, name, &ColumnName::name);
    const auto constituent = constituentNamed(name);
    const Meaning meaning = constituent ? Meaning(*constituent) : found == names.end() ? Meaning{} : found->meaning;
    const bool isByVolume = meaning == Meaning(Constituent::Ethanol) && isAlcoholByVolume(unit.name);
    return isByVolume ? Meaning(NumberColumn::AlcoholByVolume) : meaning;
}

/// Alcohol in grams and in % vol are one thing.
bool meanTheSame(const Meaning& one, const Meaning& other)
{
    const auto isAlcohol = [](const Meaning& meaning) {
        return meaning == Meaning(Constituent::Ethanol) || meaning == Meaning(NumberColumn::AlcoholByVolume);
    };
    return !std::holds_alternative<std::monostate>(one) && (one == other || (isAlcohol(one) && isAlcohol(other)));
}

template <std::size_t count>
std::optional<double> factorAmong(const std::array<UnitName, count>& units, const std::string& unit)
{
    const auto* found = std::ranges::find(units, unit, &UnitName::name);
    return found == units.end() ? std::nullopt : std::optional(found->factor);
}

/// What the numbers of a column are multiplied by; nothing if its unit is none for what it means.
std::optional<double> factorOf(const Meaning& meaning, const std::string& unit)
{
    const auto* number = std::get_if<NumberColumn>(&meaning);
    if (std::holds_alternative<std::monostate>(meaning) || std::holds_alternative<TextColumn>(meaning))
        return 1.0;
    if (number != nullptr && *number == NumberColumn::Energy)
        return unit.empty() ? 1.0 : factorAmong(energyUnits, unit);
    if (number != nullptr && *number == NumberColumn::Density)
        return unit.empty() ? 1.0 : factorAmong(densityUnits, unit);
    if (number != nullptr && *number == NumberColumn::AlcoholByVolume)
        return 1.0;
    const auto factor = factorAmong(massUnits, unit);
    if (number != nullptr && *number == NumberColumn::Sodium)
        return unit.empty() ? 1.0 : factor ? std::optional(*factor * milligramsPerGram) : std::nullopt;
    return unit.empty() ? 1.0 : factor;
}

}  // namespace

Result<std::vector<IngredientColumn>> ingredientColumnsFrom(const CsvRecord& header)
{
    std::vector<IngredientColumn> columns;
    const Figure line = wholeNumber(header.line);
    for (const std::string& cell : header.cells) {
        std::string name = withoutFormulaGuard(cell);
        const ColumnUnit unit = takeUnit(name);
        const Meaning meaning = meaningOf(name, unit);
        if (meaning == Meaning(Constituent::Ethanol) && cell.find('%') != cell.npos)
            return failure(phrase(
                "Line {0}: “{1}” could be % of the weight or of the volume. Write “(g)” or “(% vol)”.", line, shortened(cell)));
        const auto factor = factorOf(meaning, unit.name);
        if (!factor)
            return failure(phrase(
                "Line {0}: “{1}” is not a unit for the column “{2}”. Give grams or mg per 100 g, % vol for alcohol, kcal or kJ for "
                "energy, g/mL for density.",
                line, shortened(unit.asWritten), shortened(cell)));
        const auto twin = std::ranges::find_if(
            columns, [&meaning](const IngredientColumn& column) { return meanTheSame(column.meaning, meaning); });
        if (twin != columns.end())
            return failure(phrase("Line {0}: the columns “{1}” and “{2}” mean the same. Keep one of them.", line,
                shortened(twin->header), shortened(cell)));
        columns.push_back({cell, meaning, *factor});
    }
    if (std::ranges::find(columns, Meaning(TextColumn::Name), &IngredientColumn::meaning) == columns.end())
        return failure(phrase("Line {0}: the first line has to name the columns, and one of them has to be “name”.", line));
    return columns;
}

}  // namespace firn
