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

Result<Recipe> recipeOnClipboard()
{
    const QMimeData* data = QGuiApplication::clipboard()->mimeData();
    return data->hasFormat(wholeRows) ? recipeFromJson(data->data(wholeRows).toStdString())
                                      : recipeFromPastedText(data->text().toStdString());
}

Result<Recipe> recipeFromPastedText(const std::string& text)
{
    // Lines such as "250 g sugar, fine" have commas too, so a table is only what reads as one to the last line.
    if (text.find_first_of(",;\t") != std::string::npos)
        if (auto table = recipeFromCsv(text))
            return table;
    return recipeFromText(text);
}

}  // namespace firn::app
