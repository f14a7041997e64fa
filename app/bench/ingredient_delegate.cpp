#include "bench/ingredient_delegate.h"

#include "bench/ingredient_model.h"
#include "bench/other_meanings.h"
#include "exchange/recipe_text.h"
#include "gauges/palette.h"
#include "gauges/ribbon.h"
#include "gauges/type_and_space.h"
#include "ingredients/own_ingredient.h"

#include <QApplication>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <iterator>

namespace firn::app {

namespace {

constexpr std::size_t mostSuggestions = 12;
constexpr int ribbonHeight = 10;
constexpr int ribbonMargin = 3;

bool holds(std::string_view name, const std::string& foldedText) { return folded(name).find(foldedText) != std::string::npos; }

/// The name, and the synonym that was typed where the name does not show it.
QString shownName(const Ingredient& ingredient, const std::string& typed)
{
    QString name = QString::fromStdString(ingredient.name);
    const std::string text = folded(typed);
    if (holds(ingredient.name, text))
        return name;
    const auto synonym = std::ranges::find_if(ingredient.synonyms, [&](const std::string& other) { return holds(other, text); });
    return synonym == ingredient.synonyms.end() ? name : QStringLiteral("%1 (%2)").arg(name, QString::fromStdString(*synonym));
}

QString fromView(std::string_view text) { return QString::fromUtf8(text.data(), qsizetype(text.size())); }

Suggestions unitsLike(const QString& typed)
{
    Suggestions suggestions{.isFirstMeant = !unitNamed(typed.toStdString())};
    for (const UnitFacts& unit : allUnits()) {
        const QString symbol = fromView(unit.symbol);
        const QString plural = fromView(unit.plural);
        if (symbol.startsWith(typed, Qt::CaseInsensitive) || plural.startsWith(typed, Qt::CaseInsensitive))
            suggestions.list.push_back({symbol == plural ? symbol : QStringLiteral("%1 (%2)").arg(symbol, plural), symbol});
    }
    return suggestions;
}

void paintMark(QPainter& painter, const QRect& cell, const QColor& colour)
{
    painter.setPen(QPen(colour, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(cell.adjusted(1, 1, -2, -2));
}

/// A triangle that stands on its side, for those who do not see the colour.
void paintFlag(QPainter& painter, const QRect& cell, const QColor& colour)
{
    const int size = cell.height() / 3;
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawPolygon(
        QPolygon({cell.topRight() + QPoint(1, 0), cell.topRight() + QPoint(1, size), cell.topRight() - QPoint(size - 1, 0)}));
}

}  // namespace

IngredientDelegate::IngredientDelegate(const Document& document, QObject* parent)
    : QStyledItemDelegate(parent)
    , m_document(document)
{
}

QWidget* IngredientDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex& index) const
{
    SuggestingEdit::Source source = [](const QString&) { return Suggestions(); };
    if (index.column() == IngredientModel::IngredientColumn)
        source = [this](const QString& typed) { return ingredientsLike(typed); };
    if (index.column() == IngredientModel::UnitColumn)
        source = unitsLike;
    auto* edit = new SuggestingEdit(source, parent);
    edit->setFrame(false);
    edit->setAcceptDrops(false);
    edit->setAccessibleName(index.model()->headerData(index.column(), Qt::Horizontal).toString());
    edit->setPlaceholderText(index.data(IngredientModel::PlaceholderRole).toString());
    if (index.column() == IngredientModel::AmountColumn)
        edit->setAlignment(Qt::AlignRight);
    connect(edit, &QLineEdit::textEdited, this, [this, edit, cell = QPersistentModelIndex(index)](const QString& text) {
        emit typed(cell, text, edit->differsFromBeginning());
    });
    return edit;
}

void IngredientDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const
{
    if (auto* edit = qobject_cast<SuggestingEdit*>(editor))
        edit->begin(index.data(Qt::EditRole).toString());
}

void IngredientDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const
{
    const auto* edit = qobject_cast<SuggestingEdit*>(editor);
    if (edit && edit->differsFromBeginning())
        model->setData(index, edit->text(), Qt::EditRole);
}

void IngredientDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    QStyleOptionViewItem withoutCaret = option;
    withoutCaret.state &= ~QStyle::State_HasFocus;
    QStyledItemDelegate::paint(painter, withoutCaret, index);

    painter->save();
    const GaugeColours colours = gaugeColours(option.palette);
    const QRect inside = option.rect.adjusted(closeSpace, 0, -closeSpace, 0);
    if (const QVariant ribbon = index.data(IngredientModel::RibbonRole); ribbon.isValid()) {
        const QRect place(inside.left(), inside.center().y() - ribbonHeight / 2, inside.width(), ribbonHeight);
        // The tint of a selected row is too close to the colour of water.
        painter->fillRect(
            place.adjusted(-ribbonMargin, -ribbonMargin, ribbonMargin, ribbonMargin), option.palette.color(QPalette::Base));
        paintRibbon(*painter, place, ribbon.value<Ribbon>(), option.palette);
    }
    if (index.data(Qt::DisplayRole).toString().isEmpty()) {
        painter->setPen(option.palette.color(QPalette::PlaceholderText));
        painter->drawText(inside.adjusted(-gridStep, 0, 0, 0), Qt::AlignVCenter | Qt::TextSingleLine,
            index.data(IngredientModel::PlaceholderRole).toString());
    }
    if (!index.data(IngredientModel::ProblemRole).toString().isEmpty()) {
        paintMark(*painter, option.rect, colours.caution);
        paintFlag(*painter, option.rect, colours.caution);
    } else if (option.state & QStyle::State_HasFocus) {
        paintMark(*painter, option.rect, colours.curve);
    }
    painter->restore();
}

bool IngredientDelegate::eventFilter(QObject* object, QEvent* event)
{
    auto* edit = qobject_cast<SuggestingEdit*>(object);
    if (edit && event->type() == QEvent::KeyPress) {
        switch (static_cast<QKeyEvent*>(event)->key()) {
        case Qt::Key_Enter:
        case Qt::Key_Return:
            edit->takeSuggestion();
            emit commitData(edit);
            emit closeEditor(edit, NoHint);
            emit entered();
            return true;
        case Qt::Key_Tab:
        case Qt::Key_Backtab:
            edit->takeSuggestion();
            break;
        case Qt::Key_Escape:
            if (edit->hideSuggestions())
                return true;
            break;
        default:
            break;
        }
    }
    return QStyledItemDelegate::eventFilter(object, event);
}

/// Suggestions for the end of a line such as "1 1/2 cups straw"; what stands before is kept.
Suggestions IngredientDelegate::ingredientsLike(const QString& typed) const
{
    const auto row = rowFromText(typed.toStdString());
    if (!row || row->ingredient.empty())
        return {};
    const QString name = QString::fromStdString(row->ingredient);
    if (!typed.endsWith(name))
        return {};
    const QString before = typed.chopped(name.size());
    const std::vector<std::string> mixes = mixesLike(m_document, row->ingredient);
    Suggestions suggestions{.isFirstMeant = !meansSomething(m_document, row->ingredient)};
    for (const std::string& mix : mixes)
        suggestions.list.push_back({QString::fromStdString(mix), before + QString::fromStdString(mix)});
    for (const Ingredient* ingredient : m_document.catalogue().search(row->ingredient, mostSuggestions)) {
        const std::string called = callName(*ingredient, m_document.catalogue()).value_or(ingredient->name);
        suggestions.list.push_back({shownName(*ingredient, row->ingredient), before + QString::fromStdString(called)});
    }
    return suggestions;
}

}  // namespace firn::app
