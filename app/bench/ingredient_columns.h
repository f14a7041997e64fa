// The columns of the ingredient table: what each is called, shows, and takes.
#pragma once

#include "bench/ingredient_model.h"

#include <array>

class QTableView;

namespace firn::app {

struct IngredientColumn {
    const char* title;  // for IngredientModel::tr
    int characters;     // its usual width
    Qt::Alignment alignment;
    QString (*text)(const Row& row, const RowAnalysis& analysis);
    /// Edits the recipe by what was typed, or says why it cannot be read. None where nothing is typed.
    std::optional<AmountFault> (*type)(Document& document, RowPlace place, const std::string& text);
    bool isLive;          // every key counts; a name counts once it is whole
    const char* refusal;  // for IngredientModel::tr; what was typed is %1, the row's name %2, the amount that counts %3
};

/// In the order of IngredientModel::Column.
const std::array<IngredientColumn, IngredientModel::ColumnCount>& ingredientColumns();
inline const IngredientColumn& columnOf(int column) { return ingredientColumns().at(std::size_t(column)); }

/// Why a line such as "1.015 g sugar" cannot be read as a row, with what its amount may mean.
AmountFault faultOfLine(const std::string& line, const Sentence& sentence);

/// Gives the columns their width. Where the table is narrow, the ribbons give way to the names.
void fitColumns(QTableView& table);

}  // namespace firn::app
