#include "bench/ingredient_columns.h"

#include "gauges/ribbon.h"
#include "gauges/wording.h"

#include <QLocale>

namespace firn::app {

namespace {

/// The catalogue's name in place of its id, or of the same name in other letters; a synonym and the unknown as they were typed.
QString nameText(const Row& row, const RowAnalysis& analysis)
{
    const bool isCatalogueName =
        row.ingredient == analysis.ingredientId || folded(row.ingredient) == folded(analysis.ingredientName);
    return QString::fromStdString(isCatalogueName ? analysis.ingredientName : row.ingredient);
}

/// The number in the person's locale, as the cell takes it back.
QString numberText(const Row& row, const RowAnalysis&)
{
    return QString::fromStdString(amountNumber(row.amount)).replace(QLatin1Char('.'), QLocale().decimalPoint());
}

QString unitText(const Row& row, const RowAnalysis&)
{
    const std::string_view symbol = factsOf(row.amount.unit).symbol;
    return QString::fromUtf8(symbol.data(), qsizetype(symbol.size()));
}

QString massText(const Row&, const RowAnalysis& analysis) { return gramsText(analysis.mass); }

QString shareText(const Row&, const RowAnalysis& analysis) { return percentText(analysis.share); }

QString compositionText(const Row&, const RowAnalysis& analysis)
{
    return analysis.mass.value > 0.0 ? ribbonText(analysis.ribbon) : QString();
}

const Amount& amountAt(const Document& document, RowPlace place)
{
    return document.recipe().components.at(place.component).rows.at(place.row).amount;
}

std::optional<Sentence> typeName(Document& document, RowPlace place, const std::string& text)
{
    if (text.empty())
        return phrase("A row needs an ingredient. Type one, or press Delete to take the row away.");
    renameIngredient(document, place, text);
    return std::nullopt;
}

std::optional<Sentence> typeAmount(Document& document, RowPlace place, const std::string& text)
{
    const auto amount = parseAmount(text, amountAt(document, place).unit);
    if (!amount)
        return amount.error();
    changeAmount(document, place, *amount);
    return std::nullopt;
}

std::optional<Sentence> typeUnit(Document& document, RowPlace place, const std::string& text)
{
    const auto unit = unitNamed(text);
    if (!unit)
        return phrase("\"{0}\" is not a unit. Write g, ml, cup, tbsp, tsp, piece or another one from the list.", text);
    changeAmount(document, place, {amountAt(document, place).value, *unit});
    return std::nullopt;
}

}  // namespace

const std::array<IngredientColumn, IngredientModel::ColumnCount>& ingredientColumns()
{
    static const std::array<IngredientColumn, IngredientModel::ColumnCount> columns{{
        {QT_TRANSLATE_NOOP("firn::app::IngredientModel", "Ingredient"), Qt::AlignLeft, nameText, typeName},
        {QT_TRANSLATE_NOOP("firn::app::IngredientModel", "Amount"), Qt::AlignRight, numberText, typeAmount},
        {QT_TRANSLATE_NOOP("firn::app::IngredientModel", "Unit"), Qt::AlignLeft, unitText, typeUnit},
        {QT_TRANSLATE_NOOP("firn::app::IngredientModel", "Grams"), Qt::AlignRight, massText, nullptr},
        {QT_TRANSLATE_NOOP("firn::app::IngredientModel", "Share"), Qt::AlignRight, shareText, nullptr},
        {QT_TRANSLATE_NOOP("firn::app::IngredientModel", "Composition"), Qt::AlignLeft, compositionText, nullptr},
    }};
    return columns;
}

}  // namespace firn::app
