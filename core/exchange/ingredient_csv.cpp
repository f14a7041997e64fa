#include "exchange/ingredient_csv.h"

#include "exchange/csv.h"
#include "exchange/ingredient_columns.h"
#include "exchange/nutrition_table.h"
#include "exchange/plain_text.h"
#include "exchange/unique_ids.h"
#include "exchange/word_suggestions.h"
#include "ingredients/ingredient_id.h"
#include "solution/alcohol_by_volume.h"
#include "units/number.h"
#include "units/text.h"

#include <algorithm>
#include <unordered_map>

namespace firn {

namespace {

/// "1,500": half of the world reads one and a half, the other half fifteen hundred.
bool couldBeThousands(std::string_view number)
{
    const std::size_t comma = number.find(',');
    return comma >= 1 && comma <= 3 && number[0] != '0' && number.size() == comma + 4;
}

/// Whether a column can hold thousands: grams per 100 g and g/mL cannot.
bool couldBeLarge(const IngredientColumn& column)
{
    const auto* number = std::get_if<NumberColumn>(&column.meaning);
    return column.factor != 1.0 || (number != nullptr && (*number == NumberColumn::Sodium || *number == NumberColumn::Energy));
}

/// The texts between bars.
std::vector<std::string> partsOf(std::string_view cell)
{
    std::vector<std::string> parts;
    while (!cell.empty()) {
        const std::size_t bar = std::min(cell.find('|'), cell.size());
        if (const std::string_view part = trimmed(cell.substr(0, bar)); !part.empty())
            parts.emplace_back(part);
        cell.remove_prefix(std::min(bar + 1, cell.size()));
    }
    return parts;
}

bool partsFit(const Composition& food)
{
    using enum Constituent;
    constexpr double rounding_g = 0.1;
    const Amounts& amounts = food.per100g;
    const double solids_g = amounts.total().value - amounts[Water].value - amounts[Ethanol].value + rounding_g;
    return food.milkFat.value <= amounts[Fat].value + rounding_g
           && food.milkFat.value + food.milkSolidsNotFat.value + food.yolkSolids.value <= solids_g;
}

/// Reads one line; remembers the first thing that is wrong with it.
class LineReader {
public:
    ImportedIngredient imported;
    std::optional<Sentence> problem;

    void take(const IngredientColumn& column, const std::string& asWritten)
    {
        const std::string cell(trimmed(asWritten));
        if (cell.empty())
            return;
        if (const auto* text = std::get_if<TextColumn>(&column.meaning)) {
            takeText(*text, withoutFormulaGuard(cell));
        } else if (std::holds_alternative<std::monostate>(column.meaning)) {
            imported.unused.push_back(phrase("The column “{0}” is not used.", shortened(column.header)));
        } else if (const auto strength = strengthIn(cell, column)) {
            takeStrength(column, *strength);
        } else if (const auto number = numberIn(cell, column)) {
            takeNumber(column, *number);
        }
    }

    void finish(bool hasAllergenColumn)
    {
        Ingredient& ingredient = imported.ingredient;
        if (ingredient.name.empty())
            refuse(phrase("the name is missing. Add it."));
        const auto amounts = amountsFrom(m_table, isDairy(ingredient) ? SugarsOf::Milk : SugarsOf::Fruit, imported.guessed);
        if (!amounts) {
            refuse(amounts.error());
            return;
        }
        ingredient.composition.per100g = *amounts;
        if (!partsFit(ingredient.composition))
            refuse(
                phrase("milk fat, milk solids-not-fat and yolk solids are parts of the fat and the solids, and here they are more. "
                       "Correct them."));
        if (!m_hasPartsOfMilkOrYolk)
            suggestMilkAndYolk(imported);
        if (!hasAllergenColumn)
            suggestAllergens(imported);
    }

private:
    NutritionTable m_table;
    bool m_hasPartsOfMilkOrYolk = false;

    void refuse(Sentence sentence)
    {
        if (!problem)
            problem = std::move(sentence);
    }

    /// "29 % vol" in a column of alcohol, whatever its header says.
    static std::optional<double> strengthIn(const std::string& cell, const IngredientColumn& column)
    {
        const auto* constituent = std::get_if<Constituent>(&column.meaning);
        const auto* meaning = std::get_if<NumberColumn>(&column.meaning);
        const bool isByVolume = meaning != nullptr && *meaning == NumberColumn::AlcoholByVolume;
        const auto number = leadingNumber(cell);
        if (!number || (!isByVolume && (constituent == nullptr || *constituent != Constituent::Ethanol)))
            return std::nullopt;
        const std::string_view unit = trimmed(std::string_view(cell).substr(number->length));
        return isAlcoholByVolume(unit) || (isByVolume && unit == "%") ? std::optional(number->value) : std::nullopt;
    }

    void takeStrength(const IngredientColumn& column, double strength_percent)
    {
        m_table.alcoholByVolume_percent = strength_percent;
        map(phrase("{0} % vol, from the column “{1}”.", Figure{strength_percent, 1}, shortened(column.header)));
    }

    std::optional<double> numberIn(const std::string& cell, const IngredientColumn& column)
    {
        const auto number = leadingNumber(cell);
        if (!number) {
            refuse(phrase("“{0}” in the column “{1}” is not an amount. Enter a number from 0 up, such as 4.5, or leave the cell "
                          "empty.",
                shortened(cell), shortened(column.header)));
            return std::nullopt;
        }
        if (number->length < cell.size()) {
            refuse(phrase("“{0}” in the column “{1}” is more than a number. Enter only the number; its unit belongs in the header.",
                shortened(cell), shortened(column.header)));
            return std::nullopt;
        }
        if (couldBeLarge(column) && couldBeThousands(cell)) {
            refuse(phrase("“{0}” in the column “{1}” could be thousands or a decimal. Write it with a point or without the comma.",
                cell, shortened(column.header)));
            return std::nullopt;
        }
        return number->value * column.factor;
    }

    void takeText(TextColumn column, const std::string& text)
    {
        Ingredient& ingredient = imported.ingredient;
        switch (column) {
        case TextColumn::Id:
            if (!isIngredientId(text))
                refuse(
                    phrase("“{0}” is not a valid id. Use lower-case letters, digits and single hyphens, or leave the cell empty.",
                        shortened(text)));
            ingredient.id = text;
            return;
        case TextColumn::Name:
            ingredient.name = text;
            return;
        case TextColumn::Synonyms:
            ingredient.synonyms = partsOf(text);
            return;
        case TextColumn::Group:
            ingredient.group = text;
            return;
        case TextColumn::Source:
            ingredient.source = text;
            return;
        case TextColumn::DensitySource:
            ingredient.densitySource = text;
            return;
        case TextColumn::EnergyNote:
            ingredient.energyNote = text;
            return;
        case TextColumn::Allergens:
            break;
        }
        for (const std::string& part : partsOf(text)) {
            const auto allergen = allergenNamed(lowered(part));
            if (!allergen)
                refuse(phrase("Firn does not know the allergen “{0}”. Correct its spelling, or leave it out.", shortened(part)));
            else if (std::ranges::count(ingredient.allergens, *allergen) == 0)
                ingredient.allergens.push_back(*allergen);
        }
    }

    void takeNumber(const IngredientColumn& column, double value)
    {
        Ingredient& ingredient = imported.ingredient;
        if (const auto* constituent = std::get_if<Constituent>(&column.meaning)) {
            m_table[*constituent] = value;
            mapGrams(column, value);
            return;
        }
        switch (std::get<NumberColumn>(column.meaning)) {
        case NumberColumn::Sugars:
            m_table.sugars_g = value;
            return mapGrams(column, value);
        case NumberColumn::Carbohydrate:
        case NumberColumn::CarbohydrateWithFibre:
            m_table.carbohydrate_g = value;
            if (std::get<NumberColumn>(column.meaning) == NumberColumn::CarbohydrateWithFibre)
                m_table.carbohydrateKind = CarbohydrateKind::WithFibre;
            return mapGrams(column, value);
        case NumberColumn::Ash:
            m_table.ash_g = value;
            return mapGrams(column, value);
        case NumberColumn::Sodium:
            m_table.sodium_mg = value;
            return map(phrase("Sodium {0} mg, from the column “{1}”.", Figure{value, 0}, shortened(column.header)));
        case NumberColumn::MilkFat:
            return takePart(ingredient.composition.milkFat, column, value);
        case NumberColumn::MilkSolidsNotFat:
            return takePart(ingredient.composition.milkSolidsNotFat, column, value);
        case NumberColumn::YolkSolids:
            return takePart(ingredient.composition.yolkSolids, column, value);
        case NumberColumn::AlcoholByVolume:
            return takeStrength(column, value);
        case NumberColumn::Energy:
            if (value > mostEnergy_kcal)
                refuse(tooMuchEnergy());
            ingredient.energy_kcalPer100g = value;
            return map(phrase("Energy {0} kcal, from the column “{1}”.", Figure{value, 0}, shortened(column.header)));
        case NumberColumn::Density:
            if (value <= 0.0)
                refuse(phrase("the density is zero. Correct it, or leave the cell empty."));
            ingredient.density = GramsPerMillilitre{value};
            return map(phrase("Density {0} g/mL, from the column “{1}”.", Figure{value, 3}, shortened(column.header)));
        }
    }

    void takePart(Grams& part, const IngredientColumn& column, double value)
    {
        m_hasPartsOfMilkOrYolk = true;
        part = {value};
        mapGrams(column, value);
    }

    void map(Sentence sentence) { imported.mapped.push_back(std::move(sentence)); }

    void mapGrams(const IngredientColumn& column, double value_g)
    {
        map(phrase("{0} g, from the column “{1}”.", Figure{value_g, 2}, shortened(column.header)));
    }
};

bool hasColumn(const std::vector<IngredientColumn>& columns, TextColumn column)
{
    return std::ranges::any_of(columns, [&](const IngredientColumn& each) {
        const auto* text = std::get_if<TextColumn>(&each.meaning);
        return text != nullptr && *text == column;
    });
}

Sentence atLine(const CsvRecord& record, const Sentence& sentence)
{
    return phrase("Line {0}: {1}", wholeNumber(record.line), english(sentence));
}

Result<ImportedIngredient> ingredientFrom(const CsvRecord& record, const std::vector<IngredientColumn>& columns)
{
    const std::size_t extra = record.cells.size() > columns.size() ? columns.size() : record.cells.size();
    const bool hasMore = !std::all_of(record.cells.begin() + static_cast<std::ptrdiff_t>(extra), record.cells.end(),
        [](const std::string& cell) { return cell.empty(); });
    if (record.cells.size() < columns.size() || hasMore)
        return failure(
            phrase("it has {0} cells where the first line has {1}: complete a line that was cut short, and put a cell with a "
                   "comma in quotes.",
                wholeNumber(record.cells.size()), wholeNumber(columns.size())));
    LineReader line;
    for (std::size_t i = 0; i < columns.size(); ++i)
        line.take(columns[i], record.cells[i]);
    if (!line.problem)
        line.finish(hasColumn(columns, TextColumn::Allergens));
    if (line.problem)
        return failure(std::move(*line.problem));
    return std::move(line.imported);
}

}  // namespace

Result<std::vector<ImportedIngredient>> ingredientsFromCsv(std::string_view text)
{
    const auto records = csvRecords(text);
    if (!records)
        return failure(records.error());
    if (records->empty())
        return failure(phrase("The file is empty: its first line has to name the columns, and one of them has to be “name”."));
    const auto columns = ingredientColumnsFrom(records->front());
    if (!columns)
        return failure(columns.error());

    std::vector<ImportedIngredient> result;
    std::unordered_map<std::string, std::size_t> lines;  // of the ids that the file gives
    for (std::size_t i = 1; i < records->size(); ++i) {
        const CsvRecord& record = (*records)[i];
        auto imported = ingredientFrom(record, *columns);
        if (!imported)
            return failure(atLine(record, imported.error()));
        const std::string& id = imported->ingredient.id;
        if (const auto [twin, isNew] = lines.try_emplace(id, record.line); !isNew && !id.empty())
            return failure(phrase("Line {0}: the id “{1}” stands in line {2} already. Give one of them another.",
                wholeNumber(record.line), shortened(id), wholeNumber(twin->second)));
        result.push_back(std::move(*imported));
    }
    if (result.empty())
        return failure(phrase("The file has a header and no ingredient below it. Add a line for each."));
    fillMissingIds(result);
    return result;
}

}  // namespace firn
