#include "bench/row_clipboard.h"

#include "exchange/recipe_csv.h"
#include "exchange/recipe_text.h"

#include <QClipboard>
#include <QGuiApplication>

namespace firn::app {

void putOnClipboard(const std::vector<Row>& rows)
{
    QGuiApplication::clipboard()->setText(QString::fromStdString(rowsToText(rows)));
}

Result<Recipe> recipeOnClipboard() { return recipeFromPastedText(QGuiApplication::clipboard()->text().toStdString()); }

Result<Recipe> recipeFromPastedText(const std::string& text)
{
    // Lines such as "250 g sugar, fine" have commas too, so a table is only what reads as one to the last line.
    if (text.find_first_of(",;\t") != std::string::npos)
        if (auto table = recipeFromCsv(text))
            return table;
    return recipeFromText(text);
}

}  // namespace firn::app
