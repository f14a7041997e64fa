// One line of the catalogue: name, whether it is the person's own, group, and the ribbon.
#pragma once

#include <QStyledItemDelegate>

namespace firn::app {

class CatalogueDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace firn::app
