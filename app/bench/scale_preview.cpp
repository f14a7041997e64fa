#include "bench/scale_preview.h"

#include "bench/batch_wording.h"
#include "gauges/palette.h"

#include <QHeaderView>
#include <array>

namespace firn::app {

ScalePreview::ScalePreview(QWidget* parent)
    : QTableWidget(parent)
{
    setObjectName(QStringLiteral("scalePreview"));
    setAccessibleName(tr("Rows before and after scaling"));
    setColumnCount(ColumnCount);
    setHorizontalHeaderLabels({tr("Ingredient"), tr("Now"), tr("Scaled"), tr("Rounded by")});
    for (int column = BeforeColumn; column < ColumnCount; ++column)
        horizontalHeaderItem(column)->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
    horizontalHeaderItem(IngredientColumn)->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    horizontalHeader()->setSectionResizeMode(IngredientColumn, QHeaderView::Stretch);
    horizontalHeader()->setHighlightSections(false);
    verticalHeader()->hide();
    setEditTriggers(NoEditTriggers);
    setSelectionMode(NoSelection);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setWordWrap(false);
    setFrameShape(NoFrame);
}

void ScalePreview::show(const std::vector<BatchRow>& rows, const Recipe& recipe)
{
    setVisible(!rows.empty());
    setRowCount(int(rows.size()));
    for (int i = 0; i < rowCount(); ++i) {
        const BatchRow& row = rows[std::size_t(i)];
        const std::array<QString, ColumnCount> texts{
            nameText(row, recipe), writtenAmount(row.before), writtenAmount(row.after.amount), deviationText(row.after)};
        for (int column = 0; column < ColumnCount; ++column) {
            auto* cell = new QTableWidgetItem(texts.at(std::size_t(column)));
            cell->setTextAlignment((column == IngredientColumn ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
            if (column == DeviationColumn && row.after.isOff())
                cell->setForeground(gaugeColours(palette()).caution);
            setItem(i, column, cell);
        }
    }
    resizeRowsToContents();
}

}  // namespace firn::app
