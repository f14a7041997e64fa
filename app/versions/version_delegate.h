// Editing a version in its list: its day on a calendar, by the locale; all else as text. Lines are as high as a wet finger needs.
#pragma once

#include <QStyledItemDelegate>

namespace firn::app {

class VersionDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace firn::app
