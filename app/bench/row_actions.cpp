#include "bench/row_actions.h"

#include "bench/ingredient_table.h"
#include "bench/message_bar.h"
#include "bench/row_clipboard.h"
#include "bench/tool_tip.h"
#include "document/document.h"
#include "document/edits.h"
#include "gauges/wording.h"

#include <QAction>
#include <QMenu>
#include <QUndoStack>
#include <algorithm>

namespace firn::app {

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
    const auto pasted = recipeOnClipboard();
    if (!pasted) {
        m_messages.say(translated(pasted.error()));
        return;
    }
    std::vector<Row> rows;
    for (const Component& component : pasted->components)
        rows.insert(rows.end(), component.rows.begin(), component.rows.end());
    if (rows.empty()) {
        m_messages.say(tr("There are no rows to paste. Copy lines such as \"250 g water\" first."));
        return;
    }
    const IngredientModel& model = m_table.rows();
    const auto current = model.placeOf(m_table.currentIndex().row());
    const std::size_t at = current ? current->row + 1 : std::size_t(model.blankRow());
    // A whole recipe that is pasted onto an empty bench brings its title.
    const bool isBareBench = m_document.recipe().title.empty() && model.rowCount() == 1;
    if (isBareBench && !pasted->title.empty()) {
        m_document.undoStack().beginMacro(tr("Paste recipe"));
        changeTitle(m_document, pasted->title);
        insertRows(m_document, {model.component(), at}, rows);
        m_document.undoStack().endMacro();
    } else {
        insertRows(m_document, {model.component(), at}, rows);
    }
    m_table.goToRow(model.rowOf(at + rows.size() - 1));
}

void RowActions::remove()
{
    const int row = m_table.currentIndex().row();
    removeRows(m_document, m_table.rows().component(), m_table.selectedRows());
    m_table.goToRow(row);
}

void RowActions::duplicate()
{
    const auto rows = m_table.selectedRows();
    if (rows.empty())
        return;
    duplicateRows(m_document, m_table.rows().component(), rows);
    m_table.selectRows(rows.back() + 1, rows.back() + rows.size());
}

void RowActions::move(int by)
{
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
