#include "versions/version_delegate.h"

#include "bench/opaque_editor.h"
#include "gauges/type_and_space.h"
#include "versions/version_model.h"

#include <QDateEdit>
#include <QLineEdit>
#include <QLocale>

namespace firn::app {

namespace {

constexpr double line_px = 26.0;

}  // namespace

QWidget* VersionDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    if (index.column() != VersionModel::DateColumn) {
        QWidget* editor = QStyledItemDelegate::createEditor(parent, option, index);
        if (auto* line = qobject_cast<QLineEdit*>(editor))
            line->setAcceptDrops(false);
        if (editor)
            makeOpaque(*editor);
        return editor;
    }
    auto* day = new QDateEdit(parent);
    makeOpaque(*day);
    day->setCalendarPopup(true);
    day->setDisplayFormat(QLocale().dateFormat(QLocale::ShortFormat));
    day->setDate(QDate::currentDate());
    return day;
}

QSize VersionDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    return QStyledItemDelegate::sizeHint(option, index).expandedTo({0, qRound(besideText(option.font, line_px))});
}

}  // namespace firn::app
