#include "catalogue/catalogue_delegate.h"

#include "bench/ingredient_model.h"
#include "catalogue/catalogue_model.h"
#include "gauges/palette.h"
#include "gauges/ribbon.h"
#include "gauges/type_and_space.h"

#include <QPainter>
#include <algorithm>

namespace firn::app {

namespace {

constexpr int ribbonHeight = 10;
constexpr int markWidth = 3;
constexpr double shareOfGroup = 0.55;  // of the lower line, the rest is the ribbon's

/// Draws to the left end and returns where it stops.
int drawn(QPainter& painter, const QRect& place, const QString& text)
{
    const QString shown = painter.fontMetrics().elidedText(text, Qt::ElideRight, place.width());
    painter.drawText(place, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, shown);
    return place.left() + painter.fontMetrics().horizontalAdvance(shown);
}

}  // namespace

QSize CatalogueDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const
{
    return {option.fontMetrics.averageCharWidth() * 40, 2 * lineHeight(option.font) + closeSpace + gridStep};
}

void CatalogueDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const GaugeColours colours = gaugeColours(option.palette);
    const bool isChosen = option.state & QStyle::State_Selected;
    painter->save();
    painter->setClipRect(option.rect);
    if (isChosen) {
        QColor tint = colours.curve;
        tint.setAlphaF(0.14F);
        painter->fillRect(option.rect, tint);
        painter->fillRect(QRect(option.rect.topLeft(), QSize(markWidth, option.rect.height())), colours.curve);
    }
    painter->setFont(option.font);
    const int line = lineHeight(option.font);
    const QRect inside = option.rect.adjusted(closeSpace + markWidth, gridStep, -closeSpace, -gridStep);
    const QRect upper(inside.left(), inside.top(), inside.width(), line);
    const QRect lower(inside.left(), inside.top() + line + gridStep / 2, inside.width(), line);

    const QString mark = index.data(CatalogueModel::IsOwnRole).toBool() ? tr("own") : QString();
    const int markSpace = mark.isEmpty() ? 0 : painter->fontMetrics().horizontalAdvance(mark) + closeSpace;
    painter->setPen(colours.ink);
    const int end = drawn(*painter, upper.adjusted(0, 0, -markSpace, 0), index.data(Qt::DisplayRole).toString());
    painter->setPen(colours.curve);
    drawn(*painter, QRect(end + closeSpace, upper.top(), upper.right() - end - closeSpace + 1, line), mark);

    const int ribbonLeft = lower.left() + int(lower.width() * shareOfGroup);
    painter->setPen(colours.quietInk);
    drawn(*painter, QRect(lower.left(), lower.top(), ribbonLeft - lower.left() - closeSpace, line),
        index.data(CatalogueModel::GroupRole).toString());
    const QRect ribbon(ribbonLeft, lower.center().y() - ribbonHeight / 2 + 1, lower.right() - ribbonLeft + 1, ribbonHeight);
    painter->fillRect(ribbon, option.palette.color(QPalette::Base));
    paintRibbon(*painter, ribbon, index.data(CatalogueModel::RibbonRole).value<Ribbon>(), option.palette);
    painter->restore();
}

}  // namespace firn::app
