#include "bench/ingredient_columns.h"

#include "bench/typed_text.h"
#include "exchange/recipe_text.h"
#include "gauges/ribbon.h"
#include "gauges/wording.h"

#include <QTableView>
#include <algorithm>

namespace firn::app {

namespace {

constexpr int charactersOfName = 30;
constexpr int leastComposition_px = 80;

/// The catalogue's name in place of its id, or of the same name in other letters; a synonym and the unknown as they were typed.
QString nameText(const Row& row, const RowAnalysis& analysis)
{
    const bool isCatalogueName =
        row.ingredient == analysis.ingredientId || folded(row.ingredient) == folded(analysis.ingredientName);
    return QString::fromStdString(isCatalogueName ? analysis.ingredientName : row.ingredient);
}

QString numberText(const Row& row, const RowAnalysis&) { return amountNumberText(row.amount); }

QString unitText(const Row& row, const RowAnalysis&)
{
    const std::string_view word = unitWord(row.amount);
    return QString::fromUtf8(word.data(), qsizetype(word.size()));
}

/// What was measured in this very fruit; nothing where the catalogue's figures count.
QString readingText(const Row& row, const RowAnalysis&) { return row.measuredBrix ? typedText(*row.measuredBrix, {}) : QString(); }

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

std::optional<AmountFault> typeName(Document& document, RowPlace place, const std::string& text)
{
    if (text.empty())
        return AmountFault{phrase("A row needs an ingredient. Type one, or press Delete to take the row away.")};
    if (document.catalogue().find(text)) {
        renameIngredient(document, place, text);
        return std::nullopt;
    }
    // A whole line, such as "20 g sugar", brings its amount.
    const auto row = rowFromText(text);
    if (!row)
        return faultOfLine(text, row.error());
    if (row->amount.value > 0.0 && !row->ingredient.empty())
        replaceIngredient(document, place, row->ingredient, row->amount);
    else
        renameIngredient(document, place, text);
    return std::nullopt;
}

std::optional<AmountFault> typeAmount(Document& document, RowPlace place, const std::string& text)
{
    const auto amount = parseAmount(text, amountAt(document, place).unit);
    if (!amount)
        return amount.error();
    changeAmount(document, place, *amount);
    return std::nullopt;
}

std::optional<AmountFault> typeUnit(Document& document, RowPlace place, const std::string& text)
{
    const auto unit = unitNamed(text);
    if (!unit)
        return AmountFault{phrase("\"{0}\" is not a unit. Write g, ml, cup, tbsp, tsp, piece or another one from the list.", text)};
    changeAmount(document, place, {amountAt(document, place).value, *unit});
    return std::nullopt;
}

std::optional<AmountFault> typeReading(Document& document, RowPlace place, const std::string& text)
{
    if (QString::fromStdString(text).trimmed().isEmpty()) {
        changeReading(document, place, std::nullopt);
        return std::nullopt;
    }
    constexpr double endOfScale_brix = 100.0;
    const auto number = leadingNumber(text);
    if (!number)
        return AmountFault{number.error()};
    const QString unit = QString::fromStdString(text.substr(number->length)).remove(QChar(u'°')).trimmed().toLower();
    if ((!unit.isEmpty() && unit != QLatin1String("bx") && unit != QLatin1String("brix")) || number->value > endOfScale_brix)
        return AmountFault{phrase("A reading is a number of °Bx, such as 14.5, or nothing where none was taken.")};
    changeReading(document, place, number->value);
    return std::nullopt;
}

}  // namespace

AmountFault faultOfLine(const std::string& line, const Sentence& sentence)
{
    const auto amount = leadingAmount(line);
    return !amount && amount.error().readings ? amount.error() : AmountFault{sentence};
}

const std::array<IngredientColumn, IngredientModel::ColumnCount>& ingredientColumns()
{
    static const std::array<IngredientColumn, IngredientModel::ColumnCount> columns{{
        {QT_TRANSLATE_NOOP("firn::app::IngredientModel", "Ingredient"), charactersOfName, Qt::AlignLeft, nameText, typeName, false,
            QT_TRANSLATE_NOOP(
                "firn::app::IngredientModel", "The name “%1” cannot stand for %2. Correct it, or press Escape to keep %3 of %2.")},
        {QT_TRANSLATE_NOOP("firn::app::IngredientModel", "Amount"), 10, Qt::AlignRight, numberText, typeAmount, true,
            QT_TRANSLATE_NOOP(
                "firn::app::IngredientModel", "The amount “%1” of %2 cannot be counted. Correct it, or press Escape to keep %3.")},
        {QT_TRANSLATE_NOOP("firn::app::IngredientModel", "Unit"), 9, Qt::AlignLeft, unitText, typeUnit, true,
            QT_TRANSLATE_NOOP("firn::app::IngredientModel", "“%1” is not a unit for %2. Correct it, or press Escape to keep %3.")},
        {QT_TRANSLATE_NOOP("firn::app::IngredientModel", "Reads °Bx"), 9, Qt::AlignRight, readingText, typeReading, true,
            QT_TRANSLATE_NOOP(
                "firn::app::IngredientModel", "“%1” is not a reading of %2. Correct it, or press Escape to go on without it.")},
        {QT_TRANSLATE_NOOP("firn::app::IngredientModel", "Grams"), 10, Qt::AlignRight, massText, nullptr, false, nullptr},
        {QT_TRANSLATE_NOOP("firn::app::IngredientModel", "Share"), 9, Qt::AlignRight, shareText, nullptr, false, nullptr},
        {QT_TRANSLATE_NOOP("firn::app::IngredientModel", "Composition"), 24, Qt::AlignLeft, compositionText, nullptr, false,
            nullptr},
    }};
    return columns;
}

void fitColumns(QTableView& table)
{
    const int character = table.fontMetrics().horizontalAdvance(QLatin1Char('0'));
    int room = table.viewport()->width() - charactersOfName * character;
    for (int column = IngredientModel::AmountColumn; column < IngredientModel::CompositionColumn; ++column) {
        const int width = columnOf(column).characters * character;
        table.setColumnWidth(column, width);
        room -= width;
    }
    const int usual = columnOf(IngredientModel::CompositionColumn).characters * character;
    table.setColumnWidth(IngredientModel::CompositionColumn, std::clamp(room, std::min(leastComposition_px, usual), usual));
}

}  // namespace firn::app
