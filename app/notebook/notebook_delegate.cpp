#include "notebook/notebook_delegate.h"

#include "bench/list_line.h"
#include "gauges/palette.h"
#include "gauges/ribbon.h"
#include "gauges/type_and_space.h"
#include "notebook/notebook_model.h"

#include <QMouseEvent>
#include <QPainter>
#include <cmath>
#include <numbers>

namespace firn::app {

namespace {

constexpr int ribbonHeight = 8;
constexpr double shareOfRibbon = 0.45;  // of the lowest line, so that ribbons can be compared
constexpr int starSpace = 28;           // more than the least target of a click
constexpr double starRadius = 7.5;

/// Wrapped, and shortened to what is sure to fit wherever the first line breaks.
void drawOnTwoLines(QPainter& painter, const QRect& place, const QString& text)
{
    constexpr double linesSurelyFilled = 1.7;
    painter.drawText(place, Qt::AlignTop | Qt::TextWordWrap,
        painter.fontMetrics().elidedText(text, Qt::ElideRight, int(place.width() * linesSurelyFilled)));
}

void paintStar(QPainter& painter, const QPointF& middle, const QColor& ink, bool isFilled)
{
    constexpr double inner = 0.45;
    QPolygonF star;
    for (int point = 0; point < 10; ++point) {
        const double angle = std::numbers::pi * (point / 5.0 - 0.5);
        const double radius = point % 2 == 0 ? starRadius : inner * starRadius;
        star << middle + radius * QPointF(std::cos(angle), std::sin(angle));
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(ink, 1.2));
    painter.setBrush(isFilled ? QBrush(ink) : Qt::NoBrush);
    painter.drawPolygon(star);
    painter.restore();
}

}  // namespace

QRect NotebookDelegate::starPlace(const QRect& line)
{
    return {line.right() - starSpace - gridStep + 1, line.top(), starSpace, starSpace};
}

QSize NotebookDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const
{
    return {option.fontMetrics.averageCharWidth() * 30, 3 * lineHeight(option.font) + closeSpace + gridStep};
}

void NotebookDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const GaugeColours colours = gaugeColours(option.palette);
    const bool isChosen = option.state & QStyle::State_Selected;
    const bool isReadable = index.data(NotebookModel::IsReadableRole).toBool();
    painter->save();
    painter->setClipRect(option.rect);
    if (isChosen)
        paintChosen(*painter, option.rect, colours.curve);
    const int line = lineHeight(option.font);
    const QRect inside = option.rect.adjusted(closeSpace + chosenMark_px, gridStep, -closeSpace, -gridStep);
    const QRect title(inside.left(), inside.top(), starPlace(option.rect).left() - inside.left(), line);
    const QRect figures(inside.left(), title.bottom() + 1 + gridStep / 2, inside.width(), line);
    const QRect below(inside.left(), figures.bottom() + 1 + gridStep / 2, inside.width(), line);

    QFont bold = option.font;
    bold.setBold(index.data(NotebookModel::IsOpenRole).toBool());
    painter->setFont(bold);
    painter->setPen(isReadable ? colours.ink : colours.quietInk);
    drawShortened(*painter, title, index.data(Qt::DisplayRole).toString());
    painter->setFont(option.font);
    const bool isFavourite = index.data(NotebookModel::IsFavouriteRole).toBool();
    if (isFavourite || (isReadable && (isChosen || option.state & QStyle::State_MouseOver)))
        paintStar(*painter, QPointF(starPlace(option.rect).center().x(), title.center().y() + 1),
            isFavourite ? colours.curve : colours.quietInk, isFavourite);

    painter->setPen(colours.quietInk);
    const QString said = index.data(NotebookModel::FiguresRole).toString();
    if (isReadable) {
        const int dateWidth = drawShortened(*painter, figures, index.data(NotebookModel::DateRole).toString(), Qt::AlignRight);
        drawShortened(*painter, figures.adjusted(0, 0, -dateWidth - closeSpace, 0), said);
    } else {
        drawOnTwoLines(*painter, QRect(figures.topLeft(), QSize(figures.width(), 2 * line)), said);
    }
    const int ribbonWidth = int(below.width() * shareOfRibbon);
    drawShortened(*painter, below.adjusted(ribbonWidth + closeSpace, 0, 0, 0), index.data(NotebookModel::FreezingRole).toString(),
        Qt::AlignRight);
    if (const QVariant parts = index.data(NotebookModel::RibbonRole); parts.isValid()) {
        const QRect ribbon(below.left(), below.center().y() - ribbonHeight / 2 + 1, ribbonWidth, ribbonHeight);
        painter->fillRect(ribbon, option.palette.color(QPalette::Base));
        paintRibbon(*painter, ribbon, parts.value<Ribbon>(), option.palette);
    }
    if (option.state & QStyle::State_HasFocus && !isChosen) {
        painter->setPen(colours.curve);
        painter->drawRect(option.rect.adjusted(0, 0, -1, -1));
    }
    painter->restore();
}

bool NotebookDelegate::editorEvent(QEvent* event, QAbstractItemModel*, const QStyleOptionViewItem& option, const QModelIndex& index)
{
    const bool isClick = event->type() == QEvent::MouseButtonRelease || event->type() == QEvent::MouseButtonDblClick;
    if (!isClick || !starPlace(option.rect).contains(static_cast<QMouseEvent*>(event)->position().toPoint()))
        return false;
    if (event->type() == QEvent::MouseButtonRelease && index.data(NotebookModel::IsReadableRole).toBool())
        emit starClicked(index);
    return true;
}

}  // namespace firn::app
