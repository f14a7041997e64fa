// The columns of the ingredient table: what each is called, shows, and takes.
#pragma once

#include "bench/ingredient_model.h"

#include <array>

namespace firn::app {

struct IngredientColumn {
    const char* title;  // for IngredientModel::tr
    Qt::Alignment alignment;
    QString (*text)(const Row& row, const RowAnalysis& analysis);
    /// Edits the recipe by what was typed, or says why it cannot be read. None where nothing is typed.
    std::optional<Sentence> (*type)(Document& document, RowPlace place, const std::string& text);
};

/// In the order of IngredientModel::Column.
const std::array<IngredientColumn, IngredientModel::ColumnCount>& ingredientColumns();

}  // namespace firn::app
