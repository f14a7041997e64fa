#include "bench/ingredient_table.h"

#include "analysis/weighing_working.h"
#include "bench/ingredient_columns.h"
#include "bench/ingredient_delegate.h"
#include "bench/other_meanings.h"
#include "document/document.h"
#include "gauges/figure_button.h"
#include "gauges/palette.h"
#include "gauges/type_and_space.h"

#include <QContextMenuEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMenu>
#include <QMouseEvent>
#include <algorithm>
#include <cstdlib>

namespace firn::app {

namespace {

constexpr int dragBegins_px = 4;
constexpr int smallestTarget_px = 28;

ScrubPace paceOf(Qt::KeyboardModifiers modifiers) { return modifiers & Qt::ShiftModifier ? ScrubPace::Fine : ScrubPace::Usual; }

}  // namespace

IngredientTable::IngredientTable(Document& document, QWidget* parent)
    : QTableView(parent)
    , m_document(document)
    , m_model(new IngredientModel(document, this))
    , m_scrub(new AmountScrub(document, this))
    , m_question(new AmountQuestion(*this, viewport()))
{
    setObjectName(QStringLiteral("ingredients"));
    setAccessibleName(tr("Ingredients"));
    setModel(m_model);
    auto* delegate = new IngredientDelegate(document, this);
    setItemDelegate(delegate);
    connect(delegate, &IngredientDelegate::entered, this, &IngredientTable::goDown);
    connect(m_model, &IngredientModel::rowTyped, this,
        [this](int row) { m_typed = m_model->index(row, IngredientModel::IngredientColumn); });
    connect(m_model, &QAbstractItemModel::modelReset, this, &IngredientTable::goToBlankRow);
    connect(delegate, &IngredientDelegate::typed, this, &IngredientTable::followTyping);
    connect(m_question, &AmountQuestion::chosen, this, &IngredientTable::answer);
    connect(m_model, &QAbstractItemModel::modelReset, this, &IngredientTable::ask);
    connect(m_model, &QAbstractItemModel::dataChanged, this, &IngredientTable::ask);
    // An editor that goes with its row leaves the focus to nobody, once it has gone.
    const auto takeFocusLeft = [this] {
        if (const QWidget* focus = window()->focusWidget(); focus && focus->isVisible())
            return;
        setState(NoState);
        setFocus();
    };
    connect(m_model, &QAbstractItemModel::rowsRemoved, this, takeFocusLeft, Qt::QueuedConnection);

    setSelectionBehavior(SelectRows);
    setSelectionMode(ExtendedSelection);
    setEditTriggers(DoubleClicked | EditKeyPressed | AnyKeyPressed);
    setHorizontalScrollMode(ScrollPerPixel);
    setVerticalScrollMode(ScrollPerPixel);
    setShowGrid(false);
    setAlternatingRowColors(true);
    setWordWrap(false);
    setFrameShape(NoFrame);
    setMouseTracking(true);

    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Interactive);
    horizontalHeader()->setSectionResizeMode(IngredientModel::IngredientColumn, QHeaderView::Stretch);
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    verticalHeader()->setDefaultAlignment(Qt::AlignCenter);
    verticalHeader()->setSectionsMovable(true);
    verticalHeader()->setToolTip(tr("Drag to move the row"));
    connect(verticalHeader(), &QHeaderView::sectionMoved, this, [this](int, int from, int to) { moveByHeader(from, to); });

    fitToFont();
    goToBlankRow();
}

void IngredientTable::commitEditor()
{
    // An editor is committed when it loses the focus.
    if (state() == EditingState)
        setFocus();
}

QString IngredientTable::takeTyping()
{
    commitEditor();
    const QModelIndex draft = m_model->firstDraft();
    if (!draft.isValid())
        return {};
    goTo(draft);
    QTableView::edit(draft);
    return m_model->refusalOf(draft);
}

void IngredientTable::insertBlankRow()
{
    m_model->putBlankRow(std::max(0, currentIndex().row()));
    goToBlankRow();
    setFocus();
}

void IngredientTable::goToRow(int row) { goTo(m_model->index(std::min(row, m_model->rowCount() - 1), currentIndex().column())); }

/// Selects the row, and no other even while Ctrl is still held down.
void IngredientTable::goTo(const QModelIndex& index)
{
    selectionModel()->setCurrentIndex(index, QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
}

void IngredientTable::selectRows(std::size_t first, std::size_t last)
{
    const QModelIndex top = m_model->index(m_model->rowOf(first), 0);
    const QModelIndex bottom = m_model->index(m_model->rowOf(last), IngredientModel::ColumnCount - 1);
    selectionModel()->setCurrentIndex(bottom.siblingAtColumn(currentIndex().column()), QItemSelectionModel::NoUpdate);
    selectionModel()->select(QItemSelection(top, bottom), QItemSelectionModel::ClearAndSelect);
}

void IngredientTable::goToBlankRow() { setCurrentIndex(m_model->index(m_model->blankRow(), IngredientModel::IngredientColumn)); }

std::vector<std::size_t> IngredientTable::selectedRows() const
{
    std::vector<std::size_t> rows;
    for (const QModelIndex& index : selectionModel()->selectedRows())
        if (const auto place = m_model->placeOf(index.row()))
            rows.push_back(place->row);
    std::ranges::sort(rows);
    return rows;
}

// Moving about

/// The cell itself where there is none further on.
QModelIndex IngredientTable::editableCellFrom(const QModelIndex& from, int step) const
{
    const int columns = m_model->columnCount();
    const int cells = m_model->rowCount() * columns;
    for (int cell = from.row() * columns + from.column() + step; cell >= 0 && cell < cells; cell += step)
        if (const QModelIndex index = m_model->index(cell / columns, cell % columns); index.flags() & Qt::ItemIsEditable)
            return index;
    return from;
}

QModelIndex IngredientTable::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers)
{
    if (action == MoveNext || action == MovePrevious)
        return editableCellFrom(currentIndex(), action == MoveNext ? 1 : -1);
    return QTableView::moveCursor(action, modifiers);
}

QModelIndex IngredientTable::whereTypingWent()
{
    const QModelIndex typed = m_typed;
    m_typed = QModelIndex();
    return typed.isValid() ? typed : currentIndex();
}

void IngredientTable::goDown()
{
    const QModelIndex from = whereTypingWent();
    if (from.column() == IngredientModel::IngredientColumn && m_model->lacksAmount(from.row()))
        setCurrentIndex(from.siblingAtColumn(IngredientModel::AmountColumn));
    else
        setCurrentIndex(m_model->index(std::min(from.row() + 1, m_model->rowCount() - 1), from.column()));
}

void IngredientTable::commitData(QWidget* editor)
{
    m_typed = QModelIndex();
    QTableView::commitData(editor);
}

void IngredientTable::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint)
{
    const bool goesOn = hint == QAbstractItemDelegate::EditNextItem || hint == QAbstractItemDelegate::EditPreviousItem;
    QTableView::closeEditor(editor, goesOn ? QAbstractItemDelegate::NoHint : hint);
    if (hint == QAbstractItemDelegate::RevertModelCache)
        m_model->forgetDraft(currentIndex());
    endTyping();
    if (!goesOn)
        return;
    const QModelIndex from = whereTypingWent();
    const QModelIndex to = editableCellFrom(from, hint == QAbstractItemDelegate::EditNextItem ? 1 : -1);
    setCurrentIndex(to);
    if (to != from)
        QTableView::edit(to);
}

/// Every view follows what is being typed. What may mean two amounts is asked about at once.
void IngredientTable::followTyping(const QModelIndex& cell, const QString& text, bool isNew)
{
    const auto choices = isNew ? m_model->showTyping(cell, text) : std::vector<AmountChoice>();
    if (!isNew)
        m_document.takeBackTyping();
    m_asked = cell;
    m_question->askBeside(choices, visualRect(cell));
}

/// What was typed is in the recipe now, or was not meant.
void IngredientTable::endTyping()
{
    m_document.takeBackTyping();
    m_asked = QModelIndex();
    ask();
}

/// Asks at the cell whose text may mean two amounts; while something is being typed the question there comes first.
void IngredientTable::ask()
{
    if (state() == EditingState && m_asked.isValid())
        return;
    m_asked = m_model->firstQuestion();
    m_question->askBeside(m_model->choicesOf(m_asked), m_asked.isValid() ? visualRect(m_asked) : QRect());
}

void IngredientTable::answer(const QString& text)
{
    const QModelIndex cell = m_asked;
    if (auto* editor = qobject_cast<SuggestingEdit*>(indexWidget(cell))) {
        editor->setText(text);
        commitData(editor);
        closeEditor(editor, QAbstractItemDelegate::NoHint);
    } else {
        m_model->setData(cell, text, Qt::EditRole);
    }
    setFocus();
}

void IngredientTable::scrollContentsBy(int dx, int dy)
{
    QTableView::scrollContentsBy(dx, dy);
    if (m_asked.isValid())
        m_question->standBeside(visualRect(m_asked));
}

/// Columns and rows may have another size now, or another place.
void IngredientTable::updateEditorGeometries()
{
    QTableView::updateEditorGeometries();
    if (m_asked.isValid())
        m_question->standBeside(visualRect(m_asked));
}

bool IngredientTable::edit(const QModelIndex& index, EditTrigger trigger, QEvent* event)
{
    // Wherever in the blank row typing begins, it begins an ingredient.
    if (index.row() == m_model->blankRow() && index.column() != IngredientModel::IngredientColumn && (trigger & editTriggers())) {
        goToBlankRow();
        return edit(currentIndex(), trigger, event);
    }
    const auto* key = trigger == AnyKeyPressed ? static_cast<QKeyEvent*>(event) : nullptr;
    const bool isText = key && !key->text().isEmpty() && key->text().front().isPrint();
    if (isText && index.row() == m_model->blankRow() && m_model->keepRefusedLine()) {
        goToBlankRow();
        return edit(currentIndex(), trigger, event);
    }
    // Suggestions open beside the editor, so it has to be in sight.
    if (trigger & editTriggers())
        scrollTo(index);
    return QTableView::edit(index, trigger, event);
}

void IngredientTable::currentChanged(const QModelIndex& current, const QModelIndex& previous)
{
    QTableView::currentChanged(current, previous);
    if (m_scrub->isActive() && !m_press)
        m_scrub->finish();
    // A blank row that was left goes back to the end, once the view is done with this move.
    if (current.isValid() && current.row() != m_model->blankRow())
        QMetaObject::invokeMethod(
            this,
            [this] {
                if (currentIndex().row() != m_model->blankRow())
                    m_model->putBlankRow(m_model->rowCount());
            },
            Qt::QueuedConnection);
}

void IngredientTable::keyPressEvent(QKeyEvent* event)
{
    const bool isPlain = !(event->modifiers() & ~Qt::KeypadModifier);
    if (event->key() == Qt::Key_Escape && m_scrub->isActive()) {
        m_scrub->putBack();
        m_press.reset();
    } else if (event->key() == Qt::Key_Escape && state() != EditingState) {
        m_model->forgetDraft(currentIndex());
    } else if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && isPlain && state() != EditingState) {
        goDown();
    } else if ((event->key() == Qt::Key_Up || event->key() == Qt::Key_Down) && event->modifiers() & Qt::AltModifier) {
        scrubByKey(*event);
    } else {
        QTableView::keyPressEvent(event);
    }
}

// How a row's figures come about

/// Of a row that has an analysis; its name and amount lead to its mass.
QString IngredientTable::figureAt(const QModelIndex& index) const
{
    const auto place = m_model->placeOf(index.row());
    if (!place)
        return {};
    const bool isShare = index.column() == IngredientModel::ShareColumn;
    const auto key = isShare ? figureOfRowShare : figureOfRow;
    return QString::fromStdString(key(m_document.recipe(), place->component, place->row));
}

void IngredientTable::contextMenuEvent(QContextMenuEvent* event)
{
    const bool isByKey = event->reason() == QContextMenuEvent::Keyboard;
    const QModelIndex cell = isByKey ? currentIndex() : indexAt(event->pos());
    const QString figure = figureAt(cell);
    if (figure.isEmpty())
        return;
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    menu->addAction(invitation(), this, [this, figure] { emit figureChosen(figure); });
    if (const auto place = m_model->placeOf(cell.row()))
        addOtherMeanings(*menu, m_document, *place);
    menu->popup(isByKey ? viewport()->mapToGlobal(visualRect(currentIndex()).center()) : event->globalPos());
}

// Scrubbing

bool IngredientTable::isAmountAt(QPoint position) const
{
    const QModelIndex index = indexAt(position);
    return index.column() == IngredientModel::AmountColumn && m_model->placeOf(index.row());
}

void IngredientTable::scrubByKey(const QKeyEvent& event)
{
    const auto place = m_model->placeOf(currentIndex().row());
    if (!place || currentIndex().column() != IngredientModel::AmountColumn)
        return;
    if (m_scrub->place() != place)
        m_scrub->begin(*place);
    m_scrub->stepBy(event.key() == Qt::Key_Up ? 1 : -1, paceOf(event.modifiers()));
}

void IngredientTable::keyReleaseEvent(QKeyEvent* event)
{
    // While Alt is held down, all steps are one gesture.
    if (event->key() == Qt::Key_Alt && !m_press)
        m_scrub->finish();
    QTableView::keyReleaseEvent(event);
}

void IngredientTable::mousePressEvent(QMouseEvent* event)
{
    m_scrub->finish();
    QTableView::mousePressEvent(event);
    const QPoint position = event->position().toPoint();
    m_press.reset();
    if (isAmountAt(position) && event->button() == Qt::LeftButton && state() != EditingState)
        m_press = position;
}

void IngredientTable::mouseMoveEvent(QMouseEvent* event)
{
    const QPoint position = event->position().toPoint();
    if (!m_press) {
        viewport()->setCursor(isAmountAt(position) ? Qt::SizeHorCursor : Qt::ArrowCursor);
        QTableView::mouseMoveEvent(event);
        return;
    }
    const int pixels = position.x() - m_press->x();
    const auto place = m_model->placeOf(indexAt(*m_press).row());
    if (!m_scrub->isActive() && std::abs(pixels) >= dragBegins_px && place)
        m_scrub->begin(*place);
    if (m_scrub->isActive())
        m_scrub->dragTo(pixels, paceOf(event->modifiers()));
}

void IngredientTable::mouseReleaseEvent(QMouseEvent* event)
{
    m_press.reset();
    m_scrub->finish();
    QTableView::mouseReleaseEvent(event);
}

// Looks

void IngredientTable::moveByHeader(int oldPlace, int newPlace)
{
    // The header has moved its picture of the row; the recipe moves the row itself.
    {
        const QSignalBlocker blocker(verticalHeader());
        verticalHeader()->moveSection(newPlace, oldPlace);
    }
    const auto from = m_model->placeOf(oldPlace);
    const auto to = m_model->placeOf(newPlace);
    if (!from || !to)
        return;
    moveRow(m_document, *from, to->row);
    goToRow(newPlace);
}

void IngredientTable::changeEvent(QEvent* event)
{
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        fitToFont();
}

void IngredientTable::resizeEvent(QResizeEvent* event)
{
    QTableView::resizeEvent(event);
    fitColumns(*this);
}

void IngredientTable::initViewItemOption(QStyleOptionViewItem* option) const
{
    QTableView::initViewItemOption(option);
    // Selected rows are tinted, not filled, so that their ribbons keep their colours.
    QColor tint = gaugeColours(palette()).curve;
    tint.setAlphaF(0.10F);
    option->palette.setColor(QPalette::Highlight, tint);
    option->palette.setColor(QPalette::HighlightedText, palette().color(QPalette::Text));
}

void IngredientTable::fitToFont() { fitColumns(*this); }

}  // namespace firn::app
