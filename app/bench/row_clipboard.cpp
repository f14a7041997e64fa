#include "bench/row_clipboard.h"

#include "exchange/recipe_csv.h"
#include "exchange/recipe_json.h"
#include "exchange/recipe_text.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QMimeData>

namespace firn::app {

namespace {

const QString wholeRows = QStringLiteral("application/x-firn-recipe+json");

}  // namespace

void putOnClipboard(const std::vector<Row>& rows)
{
    auto* data = new QMimeData;
    data->setText(QString::fromStdString(rowsToText(rows)));
    // A line of text has no place for what a refractometer read.
    Recipe recipe;
    recipe.components.front().rows = rows;
    data->setData(wholeRows, QByteArray::fromStdString(recipeToJson(recipe)));
    QGuiApplication::clipboard()->setMimeData(data);
}

OnClipboard recipeOnClipboard()
{
    const QMimeData* data = QGuiApplication::clipboard()->mimeData();
    if (data->hasFormat(wholeRows))
        return {recipeFromJson(data->data(wholeRows).toStdString())};
    return {recipeFromPastedText(data->text().toStdString()), true};
}

Result<Recipe> recipeFromPastedText(const std::string& text)
{
    return isRecipeTable(text) ? recipeFromCsv(text) : recipeFromText(text);
}

}  // namespace firn::app
