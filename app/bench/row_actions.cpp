#include "bench/row_actions.h"

#include "bench/ingredient_table.h"
#include "bench/message_bar.h"
#include "bench/row_clipboard.h"
#include "bench/tool_tip.h"
#include "document/document.h"
#include "document/edits.h"
#include "document/typed_edit.h"
#include "gauges/wording.h"

#include <QAction>
#include <QMenu>
#include <QUndoStack>
#include <algorithm>

namespace firn::app {

namespace {

std::size_t rowCountOf(const Recipe& recipe)
{
    std::size_t count = 0;
    for (const Component& component : recipe.components)
        count += component.rows.size();
    return count;
}

/// Of the rows of all components.
std::size_t problemCountOf(const Analysis& analysis)
{
    std::size_t count = 0;
    for (const std::vector<RowAnalysis>& component : analysis.components)
        count += std::size_t(std::ranges::count_if(component, [](const RowAnalysis& row) { return row.problem.has_value(); }));
    return count;
}

}  // namespace

RowActions::RowActions(Document& document, IngredientTable& table, MessageBar& messages, QObject* parent)
    : QObject(parent)
    , m_document(document)
    , m_table(table)
    , m_messages(messages)
    , m_undo(new QAction(this))
    , m_redo(new QAction(this))
{
    QUndoStack& stack = document.undoStack();
    m_undo->setObjectName(QStringLiteral("undo"));
    m_redo->setObjectName(QStringLiteral("redo"));
    m_undo->setShortcut(QKeySequence::Undo);
    m_redo->setShortcuts({QKeySequence(tr("Ctrl+Shift+Z")), QKeySequence(tr("Ctrl+Y"))});
    connect(m_undo, &QAction::triggered, this, [this] { step(&QUndoStack::undo); });
    connect(m_redo, &QAction::triggered, this, [this] { step(&QUndoStack::redo); });
    connect(&stack, &QUndoStack::indexChanged, this, &RowActions::nameHistory);
    nameHistory();
}

void RowActions::fill(QMenu& menu)
{
    menu.addAction(m_undo);
    menu.addAction(m_redo);
    menu.addSeparator();
    menu.addAction(tr("Cu&t rows"), QKeySequence::Cut, this, &RowActions::cut);
    menu.addAction(tr("&Copy rows"), QKeySequence::Copy, this, &RowActions::copy);
    menu.addAction(tr("&Paste rows"), QKeySequence::Paste, this, &RowActions::paste);
    menu.addSeparator();
    menu.addAction(tr("&Insert row above"), QKeySequence(Qt::Key_Insert), &m_table, &IngredientTable::insertBlankRow);
    menu.addAction(tr("D&uplicate rows"), QKeySequence(tr("Ctrl+D")), this, &RowActions::duplicate);
    QAction* deletion = menu.addAction(tr("&Delete rows"), QKeySequence(Qt::Key_Delete), this, &RowActions::remove);
    menu.addSeparator();
    menu.addAction(tr("Move row &up"), QKeySequence(tr("Ctrl+Up")), this, [this] { move(-1); });
    menu.addAction(tr("Move row do&wn"), QKeySequence(tr("Ctrl+Down")), this, [this] { move(1); });
    // Delete works on rows only while the caret is among them.
    deletion->setShortcutContext(Qt::WidgetShortcut);
    m_table.addAction(deletion);
}

void RowActions::nameHistory()
{
    QUndoStack& stack = m_document.undoStack();
    const auto name = [](QAction& action, const QString& verb, const QString& named, const QString& step) {
        // An ingredient may have an & in its name, which a menu takes for a shortcut.
        action.setText(step.isEmpty() ? verb : named.arg(QString(step).replace(QLatin1Char('&'), QLatin1String("&&"))));
        action.setToolTip(toolTipText(step.isEmpty() ? verb : named.arg(step)));
        action.setEnabled(!step.isEmpty());
    };
    name(*m_undo, tr("Undo"), tr("Undo: %1"), stack.undoText());
    name(*m_redo, tr("Redo"), tr("Redo: %1"), stack.redoText());
}

/// What is being typed is a step of its own, which undo takes back first. The component that changes comes into view.
void RowActions::step(void (QUndoStack::*go)())
{
    m_table.commitEditor();
    finishTyping(m_document);
    const std::vector<Component> before = m_document.recipe().components;
    (m_document.undoStack().*go)();
    const std::vector<Component>& after = m_document.recipe().components;
    if (before.size() != after.size())
        return;
    const auto changed = std::size_t(std::ranges::mismatch(before, after).in2 - after.begin());
    if (changed < after.size() && changed != m_table.rows().component())
        m_table.rows().showComponent(changed);
}

void RowActions::copy()
{
    m_table.commitEditor();
    const std::vector<Row>& all = m_document.recipe().components.at(m_table.rows().component()).rows;
    std::vector<Row> rows;
    for (const std::size_t row : m_table.selectedRows())
        rows.push_back(all.at(row));
    if (!rows.empty())
        putOnClipboard(rows);
}

void RowActions::cut()
{
    copy();
    remove();
}

void RowActions::paste()
{
    m_table.commitEditor();
    const auto [pasted, isText] = recipeOnClipboard();
    if (!pasted) {
        m_messages.say(translated(pasted.error()));
        return;
    }
    if (rowCountOf(*pasted) == 0) {
        m_messages.say(tr("Nothing to paste. Copy lines such as 250 g water first."));
        return;
    }
    const std::size_t problemsBefore = problemCountOf(m_document.analysis());
    insertPasted(*pasted);
    if (isText)
        m_messages.note(pasteSummary(*pasted, problemsBefore));
}

/// Rows without a heading go under the current row; those with one are components of their own.
void RowActions::insertPasted(const Recipe& pasted)
{
    const IngredientModel& model = m_table.rows();
    const auto current = model.placeOf(m_table.currentIndex().row());
    const std::size_t at = current ? current->row + 1 : std::size_t(model.blankRow());
    const std::size_t here = model.component();
    const std::vector<Row>& first = pasted.components.front().rows;
    // A whole recipe that is pasted into an empty one brings its title, and its first heading names the component.
    const bool isIntoEmpty =
        m_document.recipe().title.empty() && m_document.recipe().components.size() == 1 && model.rowCount() == 1;
    const bool isPlain = pasted.components.size() == 1 && pasted.components.front().name.empty() && pasted.notes.empty()
                         && (!isIntoEmpty || pasted.title.empty());
    if (isPlain) {
        insertRows(m_document, {here, at}, first);
        m_table.goToRow(model.rowOf(at + first.size() - 1));
        return;
    }
    m_document.undoStack().beginMacro(tr("Paste recipe"));
    if (isIntoEmpty)
        changeTitle(m_document, pasted.title);
    bool isHere = true;  // whether the rows belong to the component that is shown
    for (const Component& component : pasted.components) {
        isHere = isHere && (isIntoEmpty || component.name.empty());
        const std::size_t place = isHere ? here : m_document.recipe().components.size();
        if (!isHere)
            addComponent(m_document, component.name);
        else if (!component.name.empty())
            renameComponent(m_document, here, component.name);
        if (!component.rows.empty())
            insertRows(m_document, {place, isHere ? at : 0}, component.rows);
        isHere = false;
    }
    if (!pasted.notes.empty()) {
        const std::string& notes = m_document.recipe().notes;
        changeNotes(m_document, notes.empty() ? pasted.notes : notes + "\n\n" + pasted.notes);
    }
    m_document.undoStack().endMacro();
    if (!first.empty() && pasted.components.front().name.empty())
        m_table.goToRow(model.rowOf(at + first.size() - 1));
}

QString RowActions::pasteSummary(const Recipe& pasted, std::size_t problemsBefore) const
{
    const auto rowCount = int(rowCountOf(pasted));
    const std::size_t problemsNow = problemCountOf(m_document.analysis());
    const auto problems = int(problemsNow - std::min(problemsBefore, problemsNow));
    const QString read = rowCount == 1 ? tr("1 ingredient read") : tr("%n ingredients read", nullptr, rowCount);
    const QString look = problems == 1 ? tr("1 line needs a look") : tr("%n lines need a look", nullptr, problems);
    if (pasted.notes.empty())
        return problems == 0 ? tr("%1.").arg(read) : tr("%1; %2.").arg(read, look);
    return problems == 0 ? tr("%1; the method was added to the notes.").arg(read)
                         : tr("%1; the method was added to the notes; %2.").arg(read, look);
}

void RowActions::remove()
{
    m_table.commitEditor();
    const int row = m_table.currentIndex().row();
    removeRows(m_document, m_table.rows().component(), m_table.selectedRows());
    m_table.goToRow(row);
}

void RowActions::duplicate()
{
    m_table.commitEditor();
    const auto rows = m_table.selectedRows();
    if (rows.empty())
        return;
    duplicateRows(m_document, m_table.rows().component(), rows);
    m_table.selectRows(rows.back() + 1, rows.back() + rows.size());
}

void RowActions::move(int by)
{
    m_table.commitEditor();
    const auto from = m_table.rows().placeOf(m_table.currentIndex().row());
    if (!from)
        return;
    const auto rowCount = std::ptrdiff_t(m_document.recipe().components.at(from->component).rows.size());
    const std::ptrdiff_t to = std::ptrdiff_t(from->row) + by;
    if (to < 0 || to >= rowCount)
        return;
    moveRow(m_document, *from, std::size_t(to));
    m_table.goToRow(m_table.rows().rowOf(std::size_t(to)));
}

}  // namespace firn::app
