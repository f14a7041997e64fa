// What the columns of a table of ingredients mean. Only the files of this folder include it.
#pragma once

#include "exchange/csv.h"
#include "ingredients/composition.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace firn {

enum class TextColumn { Id, Name, Synonyms, Group, Allergens, Source, DensitySource, EnergyNote };
enum class NumberColumn {
    Sugars,
    Carbohydrate,
    CarbohydrateWithFibre,
    Ash,
    Sodium,
    MilkFat,
    MilkSolidsNotFat,
    YolkSolids,
    AlcoholByVolume,
    Energy,
    Density
};

/// One column: its header as the file has it, what it means (nothing: it is passed over), and what its numbers are multiplied by to
/// become g, mg of sodium, % vol, kcal or g/mL.
struct IngredientColumn {
    std::string header;
    std::variant<std::monostate, TextColumn, NumberColumn, Constituent> meaning;
    double factor = 1.0;
};

/// The columns of a header. Fails on one without a name, on columns that mean the same, on a unit that is not known, and on
/// alcohol in %, which could be of the weight or of the volume.
Result<std::vector<IngredientColumn>> ingredientColumnsFrom(const CsvRecord& header);

}  // namespace firn
