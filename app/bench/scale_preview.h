// What scaling makes of each row, before it is done.
#pragma once

#include "analysis/batch_size.h"

#include <QTableWidget>

namespace firn::app {

class ScalePreview : public QTableWidget {
    Q_OBJECT

public:
    enum Column { IngredientColumn, BeforeColumn, AfterColumn, DeviationColumn, ColumnCount };

    explicit ScalePreview(QWidget* parent = nullptr);

    /// The rows of this recipe; with none the table is hidden.
    void show(const std::vector<BatchRow>& rows, const Recipe& recipe);
};

}  // namespace firn::app
