// The ingredient table: moving about in it, scrubbing its amounts, and what can be done to its rows.
#pragma once

#include "bench/amount_question.h"
#include "bench/amount_scrub.h"
#include "bench/ingredient_model.h"

#include <QPersistentModelIndex>
#include <QTableView>

namespace firn::app {

class IngredientTable : public QTableView {
    Q_OBJECT
    /// What Ctrl+E opens while the table has the focus: the figure of the current cell; empty where it is none.
    Q_PROPERTY(QString figure READ figure)

public:
    explicit IngredientTable(Document& document, QWidget* parent = nullptr);

    IngredientModel& rows() { return *m_model; }

    /// What is being typed goes into the recipe, as far as it can be read.
    void commitEditor();

    /// Commits the editor. Where a text cannot be read, its cell is opened again and the sentence about it returned; otherwise
    /// the sentence is empty.
    QString takeTyping();

    QString figure() const { return figureAt(currentIndex()); }

    /// Numbers of the recipe's rows that are selected, in their order.
    std::vector<std::size_t> selectedRows() const;

    /// Opens the blank row above the current one.
    void insertBlankRow();
    /// Puts the caret on a row of the table, in the column where it is.
    void goToRow(int row);
    /// Selects these rows of the recipe, and no others, with the caret on the last.
    void selectRows(std::size_t first, std::size_t last);
    void goToBlankRow();

    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;

signals:
    /// Somebody wants to know how a row's mass or share comes about; its key in the report.
    void figureChosen(const QString& figure);

protected:
    void contextMenuEvent(QContextMenuEvent* event) override;
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    bool edit(const QModelIndex& index, EditTrigger trigger, QEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void commitData(QWidget* editor) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void updateEditorGeometries() override;
    void initViewItemOption(QStyleOptionViewItem* option) const override;

private:
    QModelIndex editableCellFrom(const QModelIndex& from, int step) const;
    QModelIndex whereTypingWent();
    void goTo(const QModelIndex& index);
    void goDown();
    QString figureAt(const QModelIndex& index) const;
    bool isAmountAt(QPoint position) const;
    void scrubByKey(const QKeyEvent& event);
    void moveByHeader(int oldPlace, int newPlace);
    void fitToFont();
    void followTyping(const QModelIndex& cell, const QString& text, bool isNew);
    void endTyping();
    void ask();
    void answer(const QString& text);

    Document& m_document;
    IngredientModel* m_model;
    AmountScrub* m_scrub;
    AmountQuestion* m_question;
    QPersistentModelIndex m_asked;  // the cell of the question
    QPersistentModelIndex m_typed;  // the row that the last typing into the blank one made
    std::optional<QPoint> m_press;  // where a drag on an amount began
};

}  // namespace firn::app
