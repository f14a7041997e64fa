// How the cells of the ingredient table are painted and typed into.
#pragma once

#include "bench/suggesting_edit.h"
#include "document/document.h"

#include <QStyledItemDelegate>

namespace firn::app {

class IngredientDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    /// The document must outlive the delegate.
    IngredientDelegate(const Document& document, QObject* parent);

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    bool eventFilter(QObject* object, QEvent* event) override;

signals:
    /// Enter was pressed in an editor, which has been committed and closed.
    void entered();

    /// A key changed the text of this cell's editor; `isNew` unless it is what the editing began with.
    void typed(const QModelIndex& cell, const QString& text, bool isNew) const;

private:
    Suggestions ingredientsLike(const QString& typed) const;

    const Document& m_document;
};

}  // namespace firn::app
