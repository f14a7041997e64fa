#include "bench/ingredient_model.h"

#include "bench/ingredient_columns.h"
#include "bench/tool_tip.h"
#include "exchange/recipe_text.h"
#include "gauges/wording.h"

#include <QFont>
#include <QLocale>
#include <algorithm>
#include <ranges>

namespace firn::app {

namespace {

bool isUnknown(const RowAnalysis& row) { return row.ingredientId.empty(); }

/// "1.015 g", with the person's decimal mark: as it would be written if it could mean nothing else.
QString meaningText(const Amount& amount)
{
    const std::string_view symbol = factsOf(amount.unit).symbol;
    return withUnit(QString::fromStdString(exactNumber(amount.value)).replace(u'.', QLocale().decimalPoint()),
        QString::fromUtf8(symbol.data(), qsizetype(symbol.size())));
}

/// The text with its doubtful number as either of the two.
std::vector<AmountChoice> choicesFor(const QString& text, const AmountFault& fault)
{
    std::vector<AmountChoice> choices;
    if (!fault.readings)
        return choices;
    const QString number = QString::fromStdString(fault.number);
    for (const Amount& amount : {fault.readings->thousands, fault.readings->decimals}) {
        QString certain = text;
        certain.replace(text.indexOf(number), number.size(), QString::fromStdString(amountNumber(amount)));
        choices.push_back({meaningText(amount), certain});
    }
    return choices;
}

}  // namespace

IngredientModel::IngredientModel(Document& document, QObject* parent)
    : QAbstractTableModel(parent)
    , m_document(document)
{
    connect(&document, &Document::replaced, this, [this] { showComponent(0); });
    connect(&document, &Document::changed, this, &IngredientModel::follow);
    startAnew();
}

void IngredientModel::showComponent(std::size_t component)
{
    beginResetModel();
    m_component = component;
    startAnew();
    endResetModel();
    m_document.showComponent(component);
}

void IngredientModel::putBlankRow(int row)
{
    const int from = blankRow();
    if (row == from || row == from + 1)
        return;
    beginMoveRows({}, from, from, {}, row);
    m_blank = std::size_t(row > from ? row - 1 : row);
    endMoveRows();
}

std::optional<RowPlace> IngredientModel::placeOf(int row) const
{
    if (row < 0 || row == blankRow())
        return std::nullopt;
    return RowPlace{m_component, std::size_t(row < blankRow() ? row : row - 1)};
}

bool IngredientModel::lacksAmount(int row) const
{
    const auto place = placeOf(row);
    return place && !recipeRows().at(place->row).ingredient.empty() && recipeRows().at(place->row).amount.value <= 0.0;
}

QModelIndex IngredientModel::firstDraft() const
{
    return firstTypedCell([this](const QModelIndex& cell) { return isDraft(cell); });
}

QModelIndex IngredientModel::firstProblem() const
{
    const QModelIndex draft = firstDraft();
    return draft.isValid() ? draft : firstTypedCell([this](const QModelIndex& cell) { return !problemOf(cell).isEmpty(); });
}

template <class Condition>
QModelIndex IngredientModel::firstTypedCell(const Condition& holds) const
{
    for (int row = 0; row < rowCount(); ++row)
        for (int column = 0; column < int(typedColumns); ++column)
            if (const QModelIndex cell = index(row, column); holds(cell))
                return cell;
    return {};
}

QString IngredientModel::refusalOf(const QModelIndex& draft) const
{
    const QString text = textOf(draft);
    if (!placeOf(draft.row()))
        return tr("The line “%1” cannot be read: correct it, or press Escape to drop it.").arg(text);
    const QString name = recipeTextOf(draft.siblingAtColumn(IngredientColumn));
    return tr(columnOf(draft.column()).refusal).arg(text, name, countedAmountOf(draft.row()));
}

int IngredientModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_rows.size()) + 1; }

int IngredientModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant IngredientModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const int column = index.column();
    const auto place = placeOf(index.row());
    switch (role) {
    case Qt::DisplayRole:
        if (column == IngredientColumn && isTakenForAnother(index))
            return tr("%1 (%2)", "a name as typed, and the ingredient that it is taken for")
                .arg(textOf(index), QString::fromStdString(m_rows[place->row].analysis.ingredientName));
        [[fallthrough]];
    case Qt::EditRole:
        return column == CompositionColumn ? QString() : textOf(index);
    case Qt::AccessibleTextRole:
        return textOf(index);
    case Qt::TextAlignmentRole:
        return int(columnOf(column).alignment | Qt::AlignVCenter);
    case Qt::ToolTipRole:
        return toolTipText(explanationOf(index));
    case Qt::FontRole:
        if (QFont font; place && column == IngredientColumn && isUnknown(m_rows[place->row].analysis)) {
            font.setItalic(true);
            return font;
        }
        return {};
    case ProblemRole:
        return problemOf(index);
    case RibbonRole:
        return place && column == CompositionColumn ? QVariant::fromValue(m_rows[place->row].analysis.ribbon) : QVariant();
    case PlaceholderRole:
        if (place || column != IngredientColumn)
            return {};
        return m_rows.empty() ? tr("Type an ingredient, or paste a recipe") : tr("Type an ingredient");
    default:
        return {};
    }
}

QVariant IngredientModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation == Qt::Vertical) {
        const auto place = placeOf(section);
        return role == Qt::DisplayRole ? QVariant(place ? QString::number(place->row + 1) : QStringLiteral("+")) : QVariant();
    }
    if (role == Qt::DisplayRole)
        return tr(columnOf(section).title);
    return role == Qt::TextAlignmentRole ? QVariant(int(columnOf(section).alignment | Qt::AlignVCenter)) : QVariant();
}

Qt::ItemFlags IngredientModel::flags(const QModelIndex& index) const
{
    if (!index.isValid())
        return Qt::NoItemFlags;
    // The caret can stand in the blank row, but there is nothing to select.
    if (!placeOf(index.row()))
        return Qt::ItemIsEnabled | Qt::ItemNeverHasChildren
               | (index.column() == IngredientColumn ? Qt::ItemIsEditable : Qt::NoItemFlags);
    const Qt::ItemFlags flags = QAbstractTableModel::flags(index) | Qt::ItemNeverHasChildren;
    return columnOf(index.column()).type ? flags | Qt::ItemIsEditable : flags;
}

bool IngredientModel::setData(const QModelIndex& index, const QVariant& value, int role)
{
    if (role != Qt::EditRole || !flags(index).testFlag(Qt::ItemIsEditable))
        return false;
    const QString text = value.toString().trimmed();
    // Typing may insert a row above, so the cell is held on to.
    const QPersistentModelIndex cell(index);
    m_document.takeBackTyping();
    const auto place = placeOf(index.row());
    const auto problem =
        place ? columnOf(index.column()).type(m_document, *place, text.toStdString()) : typeBlank(text.toStdString());
    setDraft(cell, problem ? std::optional(Draft{text, translated(problem->sentence), choicesFor(text, *problem)}) : std::nullopt);
    return true;
}

std::vector<AmountChoice> IngredientModel::showTyping(const QModelIndex& index, const QString& text)
{
    const std::string typed = text.trimmed().toStdString();
    const auto place = placeOf(index.row());
    std::optional<AmountFault> fault;
    if (place && columnOf(index.column()).isLive) {
        m_document.showTyping([&] {
            fault = columnOf(index.column()).type(m_document, *place, typed);
            return !fault;
        });
    } else if (const auto row = rowFromText(typed); !row) {
        fault = faultOfLine(typed, row.error());
    }
    return fault ? choicesFor(text, *fault) : std::vector<AmountChoice>();
}

QModelIndex IngredientModel::firstQuestion() const
{
    return firstTypedCell([this](const QModelIndex& cell) { return !choicesOf(cell).empty(); });
}

std::vector<AmountChoice> IngredientModel::choicesOf(const QModelIndex& index) const
{
    const Draft* draft = index.isValid() ? draftAt(index) : nullptr;
    return draft ? draft->choices : std::vector<AmountChoice>();
}

std::optional<AmountFault> IngredientModel::typeBlank(const std::string& text)
{
    if (text.empty())
        return std::nullopt;
    const auto row = rowFromText(text);
    if (!row)
        return faultOfLine(text, row.error());
    if (row->ingredient.empty())
        return AmountFault{phrase("\"{0}\" names no ingredient. Write it as in \"250 g water\".", text)};
    const std::size_t at = m_blank;
    firn::app::insertRows(m_document, {m_component, at}, {*row});
    emit rowTyped(rowOf(at));
    return std::nullopt;
}

void IngredientModel::startAnew()
{
    m_rows.assign(recipeRows().size(), {});
    m_blank = m_rows.size();
    m_blankDraft.reset();
    fillShown();
}

/// Brings the table to what the recipe has now, by the difference, so that selection, caret and an open editor stay where they are.
void IngredientModel::follow()
{
    if (m_component >= m_document.recipe().components.size()) {
        showComponent(m_document.recipe().components.size() - 1);
        return;
    }
    const auto& rows = recipeRows();
    if (rows.size() != m_rows.size()) {
        const auto firstChange = std::ranges::mismatch(m_rows, rows, {}, &ShownRow::row).in2;
        const auto at = std::size_t(firstChange - rows.begin());
        if (rows.size() > m_rows.size())
            insertShown(at, rows.size() - m_rows.size());
        else
            removeShown(at, m_rows.size() - rows.size());
    }
    fillShown();
    emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

void IngredientModel::insertShown(std::size_t at, std::size_t count)
{
    const bool isAboveBlank = at <= m_blank;
    const int row = int(isAboveBlank ? at : at + 1);
    beginInsertRows({}, row, row + int(count) - 1);
    m_rows.insert(m_rows.begin() + std::ptrdiff_t(at), count, ShownRow{});
    if (isAboveBlank)
        m_blank += count;
    endInsertRows();
}

void IngredientModel::removeShown(std::size_t at, std::size_t count)
{
    if (at < m_blank && m_blank < at + count)
        putBlankRow(rowCount());
    const bool isAboveBlank = at < m_blank;
    const int row = int(isAboveBlank ? at : at + 1);
    beginRemoveRows({}, row, row + int(count) - 1);
    const auto first = m_rows.begin() + std::ptrdiff_t(at);
    m_rows.erase(first, first + std::ptrdiff_t(count));
    if (isAboveBlank)
        m_blank -= count;
    endRemoveRows();
}

void IngredientModel::fillShown()
{
    const auto& rows = recipeRows();
    const auto& components = m_document.analysis().components;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        ShownRow& shown = m_rows[i];
        // A text that could not be read goes once the cell gets a value from elsewhere, but not while another cell is being typed in.
        if (!m_document.isTyping()) {
            if (shown.settled.ingredient != rows[i].ingredient)
                shown.drafts[IngredientColumn].reset();
            if (shown.settled.amount != rows[i].amount)
                shown.drafts[AmountColumn].reset(), shown.drafts[UnitColumn].reset();
            if (shown.settled.measuredBrix != rows[i].measuredBrix)
                shown.drafts[ReadingColumn].reset();
            shown.settled = rows[i];
        }
        shown.row = rows[i];
        // Between the opening of another recipe and its analysis there is nothing to say about its rows.
        shown.analysis =
            m_component < components.size() && i < components[m_component].size() ? components[m_component][i] : RowAnalysis{};
    }
}

const IngredientModel::Draft* IngredientModel::draftAt(const QModelIndex& index) const
{
    const auto column = std::size_t(index.column());
    if (column >= typedColumns)
        return nullptr;
    const auto place = placeOf(index.row());
    if (!place)
        return column == IngredientColumn && m_blankDraft ? &*m_blankDraft : nullptr;
    const auto& draft = m_rows[place->row].drafts[column];
    return draft ? &*draft : nullptr;
}

void IngredientModel::setDraft(const QModelIndex& index, std::optional<Draft> draft)
{
    if (!index.isValid() || !flags(index).testFlag(Qt::ItemIsEditable))
        return;
    if (const auto place = placeOf(index.row()))
        m_rows[place->row].drafts[std::size_t(index.column())] = std::move(draft);
    else
        m_blankDraft = std::move(draft);
    emit dataChanged(index, index);
}

QString IngredientModel::problemOf(const QModelIndex& index) const
{
    const auto place = placeOf(index.row());
    if (const Draft* draft = draftAt(index)) {
        const bool isAmount = place && (index.column() == AmountColumn || index.column() == UnitColumn);
        return isAmount ? tr("%1 Until then, %2 counts.").arg(draft->problem, countedAmountOf(index.row())) : draft->problem;
    }
    if (!place)
        return {};
    const RowAnalysis& row = m_rows[place->row].analysis;
    // What is wrong with a known ingredient lies in how much of it is asked for, or in what was measured in it.
    const int column = isUnknown(row) ? IngredientColumn : row.isProblemOfReading ? ReadingColumn : AmountColumn;
    return row.problem && index.column() == column ? translated(*row.problem) : QString();
}

/// Whether the row's name is a general word or a slip, and does not show what it is taken for.
bool IngredientModel::isTakenForAnother(const QModelIndex& index) const
{
    const auto place = placeOf(index.row());
    if (!place || draftAt(index))
        return false;
    const RowAnalysis& row = m_rows[place->row].analysis;
    // "sugar" is "Sugar (sucrose)", and no other.
    const QString name = QString::fromStdString(row.ingredientName), typed = recipeTextOf(index);
    return row.takenAs && name != typed && !name.startsWith(typed + QStringLiteral(" ("), Qt::CaseInsensitive);
}

QString IngredientModel::textOf(const QModelIndex& index) const
{
    const Draft* draft = draftAt(index);
    return draft ? draft->text : recipeTextOf(index);
}

QString IngredientModel::recipeTextOf(const QModelIndex& index) const
{
    const auto place = placeOf(index.row());
    return place ? columnOf(index.column()).text(m_rows[place->row].row, m_rows[place->row].analysis) : QString();
}

QString IngredientModel::countedAmountOf(int row) const
{
    return withUnit(recipeTextOf(index(row, AmountColumn)), recipeTextOf(index(row, UnitColumn)));
}

QString IngredientModel::explanationOf(const QModelIndex& index) const
{
    if (QString problem = problemOf(index); !problem.isEmpty())
        return problem;
    const auto place = placeOf(index.row());
    if (place && index.column() == IngredientColumn && m_rows[place->row].analysis.takenAs)
        return translated(*m_rows[place->row].analysis.takenAs);
    if (place && index.column() == GramsColumn) {
        // "mean of 3 and 4" is a part of how the amount was found.
        const QString how = translated(m_rows[place->row].analysis.how);
        const QString note = QString::fromStdString(m_rows[place->row].row.note);
        return note.isEmpty() ? how : tr("%1 (%2)").arg(how, note);
    }
    return place && index.column() == CompositionColumn ? textOf(index) : QString();
}

}  // namespace firn::app
