#include "catalogue/catalogue_delegate.h"

#include "bench/ingredient_model.h"
#include "bench/list_line.h"
#include "catalogue/catalogue_model.h"
#include "gauges/palette.h"
#include "gauges/ribbon.h"
#include "gauges/type_and_space.h"

#include <QPainter>

namespace firn::app {

namespace {

constexpr int ribbonHeight = 10;
constexpr double shareOfGroup = 0.55;  // of the lower line, the rest is the ribbon's

}  // namespace

QSize CatalogueDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const
{
    return {option.fontMetrics.averageCharWidth() * 40, 2 * lineHeight(option.font) + closeSpace + gridStep};
}

void CatalogueDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const GaugeColours colours = gaugeColours(option.palette);
    painter->save();
    painter->setClipRect(option.rect);
    if (option.state & QStyle::State_Selected)
        paintChosen(*painter, option.rect, colours.curve);
    painter->setFont(option.font);
    const int line = lineHeight(option.font);
    const QRect inside = option.rect.adjusted(closeSpace + chosenMark_px, gridStep, -closeSpace, -gridStep);
    const QRect upper(inside.left(), inside.top(), inside.width(), line);
    const QRect lower(inside.left(), inside.top() + line + gridStep / 2, inside.width(), line);

    const QString mark = index.data(CatalogueModel::IsOwnRole).toBool() ? tr("own") : QString();
    const int markSpace = mark.isEmpty() ? 0 : painter->fontMetrics().horizontalAdvance(mark) + closeSpace;
    painter->setPen(colours.ink);
    const int end =
        upper.left() + drawShortened(*painter, upper.adjusted(0, 0, -markSpace, 0), index.data(Qt::DisplayRole).toString());
    painter->setPen(colours.curve);
    drawShortened(*painter, QRect(end + closeSpace, upper.top(), upper.right() - end - closeSpace + 1, line), mark);

    const int ribbonLeft = lower.left() + int(lower.width() * shareOfGroup);
    painter->setPen(colours.quietInk);
    drawShortened(*painter, QRect(lower.left(), lower.top(), ribbonLeft - lower.left() - closeSpace, line),
        index.data(CatalogueModel::GroupRole).toString());
    const QRect ribbon(ribbonLeft, lower.center().y() - ribbonHeight / 2 + 1, lower.right() - ribbonLeft + 1, ribbonHeight);
    painter->fillRect(ribbon, option.palette.color(QPalette::Base));
    paintRibbon(*painter, ribbon, index.data(CatalogueModel::RibbonRole).value<Ribbon>(), option.palette);
    painter->restore();
}

}  // namespace firn::app
