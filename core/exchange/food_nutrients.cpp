#include "exchange/food_nutrients.h"

#include "exchange/plain_text.h"
#include "units/number.h"
#include "units/text.h"

#include <algorithm>
#include <array>

namespace firn {

namespace {

struct NutrientNumber {
    std::string_view number;
    Constituent constituent;
};

// Nutrient numbers of USDA SR28 (2015), file NUTR_DEF, which FoodData Central keeps.
constexpr auto constituentNumbers = std::to_array<NutrientNumber>({{"255", Constituent::Water}, {"203", Constituent::Protein},
    {"204", Constituent::Fat}, {"209", Constituent::Starch}, {"210", Constituent::Sucrose}, {"211", Constituent::Glucose},
    {"212", Constituent::Fructose}, {"213", Constituent::Lactose}, {"214", Constituent::Maltose}, {"287", Constituent::Galactose},
    {"291", Constituent::Fibre}, {"221", Constituent::Ethanol}});
constexpr std::string_view carbohydrateNumber = "205";  // by difference
constexpr std::string_view sugarsNumber = "269";
constexpr std::string_view ashNumber = "207";
constexpr std::string_view sodiumNumber = "307";
// In kcal, the first that a food has; the two last are from memory (by food-specific and by general factors).
constexpr auto energyNumbers = std::to_array<std::string_view>({"208", "958", "957"});

struct MassUnit {
    std::string_view name;
    double grams;
};
constexpr auto massUnits = std::to_array<MassUnit>({{"g", 1.0}, {"mg", 1e-3}, {"ug", 1e-6}, {"µg", 1e-6}});
constexpr double milligramsPerGram = 1000.0;
constexpr double mostGrams = 101.0;  // per 100 g, with what a sum may be off

/// One nutrient in either form: with an object "nutrient" around its number, name and unit, or with them beside the amount.
struct Nutrient {
    std::string number;
    std::string name;
    std::string unit;  // lower case
    std::optional<double> amount;
};

std::string textOf(const Json& object, std::initializer_list<const char*> keys)
{
    for (const char* key : keys) {
        const auto found = object.find(key);
        if (found != object.end() && found->is_string())
            return found->get<std::string>();
        if (found != object.end() && found->is_number())
            return exactNumber(found->get<double>());
    }
    return {};
}

Result<Nutrient> nutrientFrom(const Json& object)
{
    if (!object.is_object())
        return failure(phrase("\"foodNutrients\" must hold objects in braces."));
    const auto nested = object.find("nutrient");
    const Json& about = nested != object.end() && nested->is_object() ? *nested : object;
    Nutrient nutrient{textOf(about, {"number", "nutrientNumber"}), textOf(about, {"name", "nutrientName"}),
        lowered(textOf(about, {"unitName"})), std::nullopt};
    if (nutrient.name.empty())
        nutrient.name = "nutrient " + nutrient.number;
    for (const char* key : {"amount", "value"}) {
        const auto amount = object.find(key);
        if (amount == object.end() || amount->is_null())
            continue;
        if (!amount->is_number())
            return failure(phrase("the amount of “{0}” is not a number. Correct it.", shortened(nutrient.name)));
        nutrient.amount = amount->get<double>();
        break;
    }
    return nutrient;
}

class NutrientReader {
public:
    NutrientReader(NutritionTable& table, ImportedIngredient& imported)
        : m_table(table)
        , m_imported(imported)
    {
    }

    std::optional<Sentence> take(const Nutrient& nutrient)
    {
        if (!nutrient.amount)
            return std::nullopt;
        if (const auto energy = std::ranges::find(energyNumbers, nutrient.number); energy != energyNumbers.end())
            return takeEnergy(nutrient, energy - energyNumbers.begin());
        std::optional<double>* const place = placeOf(nutrient.number);
        if (place == nullptr || place->has_value()) {
            m_unused += (m_unused.empty() ? "" : ", ") + nutrient.name;
            return std::nullopt;
        }
        if (*nutrient.amount < 0.0)
            return phrase("the amount of “{0}” is negative. Correct it.", shortened(nutrient.name));
        const auto unit = std::ranges::find(massUnits, nutrient.unit, &MassUnit::name);
        if (unit == massUnits.end())
            return phrase(
                "the amount of “{0}” has the unit “{1}”. Give it in g or mg.", shortened(nutrient.name), shortened(nutrient.unit));
        const bool isSodium = nutrient.number == sodiumNumber;
        const double perUnit = isSodium ? unit->grams * milligramsPerGram : unit->grams;
        if (*nutrient.amount * unit->grams > mostGrams)
            return phrase("100 g of it have more than 100 g of “{0}”. Correct the amount or its unit.", shortened(nutrient.name));
        *place = *nutrient.amount * perUnit;
        m_imported.mapped.push_back(
            isSodium ? phrase("Sodium {0} mg, from nutrient 307.", Figure{**place, 0})
                     : phrase("{0} {1} g, from nutrient {2}.", nutrient.name, Figure{**place, 2}, nutrient.number));
        return std::nullopt;
    }

    void finish()
    {
        if (m_energyRank)
            m_imported.mapped.push_back(phrase("Energy {0} kcal, from nutrient {1}.",
                Figure{*m_imported.ingredient.energy_kcalPer100g, 0}, std::string(energyNumbers[std::size_t(*m_energyRank)])));
        if (!m_unused.empty())
            m_imported.unused.push_back(phrase("Not used: {0}.", std::move(m_unused)));
    }

private:
    NutritionTable& m_table;
    ImportedIngredient& m_imported;
    std::string m_unused;
    std::optional<std::ptrdiff_t> m_energyRank;

    std::optional<double>* placeOf(std::string_view number)
    {
        if (number == carbohydrateNumber)
            return &m_table.carbohydrate_g;
        if (number == sugarsNumber)
            return &m_table.sugars_g;
        if (number == ashNumber)
            return &m_table.ash_g;
        if (number == sodiumNumber)
            return &m_table.sodium_mg;
        const auto found = std::ranges::find(constituentNumbers, number, &NutrientNumber::number);
        return found == constituentNumbers.end() ? nullptr : &m_table[found->constituent];
    }

    std::optional<Sentence> takeEnergy(const Nutrient& nutrient, std::ptrdiff_t rank)
    {
        if (nutrient.unit != "kcal" || (m_energyRank && *m_energyRank <= rank))
            return std::nullopt;
        if (*nutrient.amount < 0.0)
            return phrase("the amount of “{0}” is negative. Correct it.", shortened(nutrient.name));
        if (*nutrient.amount > mostEnergy_kcal)
            return tooMuchEnergy();
        m_energyRank = rank;
        m_imported.ingredient.energy_kcalPer100g = *nutrient.amount;
        return std::nullopt;
    }
};

}  // namespace

std::optional<Sentence> takeNutrients(const Json& foodNutrients, NutritionTable& table, ImportedIngredient& imported)
{
    if (!foodNutrients.is_array())
        return phrase("\"foodNutrients\" must be a list in square brackets.");
    table.carbohydrateKind = CarbohydrateKind::WithFibre;
    NutrientReader reader(table, imported);
    for (const Json& object : foodNutrients) {
        const auto nutrient = nutrientFrom(object);
        if (!nutrient)
            return nutrient.error();
        if (auto problem = reader.take(*nutrient))
            return problem;
    }
    reader.finish();
    return std::nullopt;
}

}  // namespace firn
