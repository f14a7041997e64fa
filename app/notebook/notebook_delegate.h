// One recipe of the notebook: title and star, its figures, its ribbon and date.
#pragma once

#include <QStyledItemDelegate>

namespace firn::app {

class NotebookDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

    /// Where a click makes the recipe of this line a favourite.
    static QRect starPlace(const QRect& line);

signals:
    void starClicked(const QModelIndex& index);

protected:
    bool editorEvent(
        QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option, const QModelIndex& index) override;
};

}  // namespace firn::app
