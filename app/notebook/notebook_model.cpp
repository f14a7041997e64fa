#include "notebook/notebook_model.h"

#include "bench/tool_tip.h"
#include "gauges/ribbon.h"
#include "gauges/wording.h"
#include "notebook/notebook_folder.h"

#include <QDateTime>
#include <QLocale>
#include <algorithm>

namespace firn::app {

namespace {

QString dateOf(const RecipeCard& card)
{
    const QDate date = QDateTime::fromSecsSinceEpoch(card.changed_s).date();
    const bool isThisYear = date.year() == QDate::currentDate().year();
    return isThisYear ? QLocale().toString(date, NotebookModel::tr("d MMM", "day and month"))
                      : QLocale().toString(date, QLocale::ShortFormat);
}

/// One line of a list: what a file calls itself may have several.
QString oneLine(const std::string& text) { return QString::fromStdString(text).simplified(); }

QString figuresOf(const RecipeCard& card)
{
    if (card.fault)
        return translated(*card.fault);
    if (!card.figures)
        return NotebookModel::tr("…");
    QStringList parts;
    if (card.figures->textureClass != TextureClass::Nothing)
        parts << capitalised(translatedName(nameOf(card.figures->textureClass)));
    parts << NotebookModel::tr("sugar %1").arg(percentText(card.figures->sugars));
    return parts.join(QStringLiteral(" · "));
}

QString freezingOf(const RecipeCard& card)
{
    const bool freezes = card.figures && card.figures->freezingPoint;
    return freezes ? NotebookModel::tr("freezes at %1").arg(degrees(*card.figures->freezingPoint)) : QString();
}

/// All that the line has no room for.
QString detailsOf(const RecipeCard& card)
{
    QStringList lines{oneLine(card.title), figuresOf(card), freezingOf(card)};
    QStringList ingredients;
    for (const std::string& ingredient : card.ingredients)
        ingredients << oneLine(ingredient);
    lines << ingredients.join(QStringLiteral(", "));
    if (card.figures) {
        lines << ribbonText(card.figures->ribbon);
        if (card.figures->alcohol_percentByVolume > 0.0)
            lines << NotebookModel::tr("alcohol %1 by volume")
                         .arg(withUnit(figure(card.figures->alcohol_percentByVolume, 1), QStringLiteral("%")));
    }
    QStringList tags;
    for (const std::string& tag : card.tags)
        tags << oneLine(tag);
    if (!tags.isEmpty())
        lines << NotebookModel::tr("Tags: %1").arg(tags.join(QStringLiteral(", ")));
    if (card.versions > 0)
        lines << (card.versions == 1 ? NotebookModel::tr("one version")
                                     : NotebookModel::tr("%n versions", nullptr, int(card.versions)));
    if (card.tastings > 0)
        lines << (card.tastings == 1 ? NotebookModel::tr("one tasting")
                                     : NotebookModel::tr("%n tastings", nullptr, int(card.tastings)));
    lines.removeAll(QString());
    return lines.join(u'\n');
}

}  // namespace

NotebookModel::NotebookModel(const NotebookFolder& folder, QObject* parent)
    : QAbstractListModel(parent)
    , m_folder(folder)
{
}

void NotebookModel::setFilter(const NotebookFilter& filter)
{
    if (filter == m_filter)
        return;
    m_filter = filter;
    look();
}

void NotebookModel::setOrder(CardOrder order)
{
    if (order == m_order)
        return;
    m_order = order;
    readAnew();
}

void NotebookModel::setOpenFile(const QString& file)
{
    if (file == m_openFile)
        return;
    const QModelIndex before = indexOf(m_openFile);
    m_openFile = file;
    for (const QModelIndex& index : {before, indexOf(file)})
        if (index.isValid())
            emit dataChanged(index, index, {IsOpenRole});
}

void NotebookModel::readAnew()
{
    m_ordered = ordered(m_folder.cards(), m_order);
    look();
}

void NotebookModel::look()
{
    beginResetModel();
    m_found = found(m_folder.cards(), m_ordered, m_filter);
    endResetModel();
}

/// Between a change of the folder and the next look, places may lead nowhere.
const RecipeCard* NotebookModel::cardAt(const QModelIndex& index) const
{
    if (!index.isValid() || index.row() >= rowCount())
        return nullptr;
    const std::size_t place = m_found[std::size_t(index.row())];
    return place < m_folder.cards().size() ? &m_folder.cards()[place] : nullptr;
}

QModelIndex NotebookModel::indexOf(const QString& file) const
{
    const std::string wanted = file.toStdString();
    const auto cards = m_folder.cards();
    const auto place = std::ranges::find_if(
        m_found, [&](std::size_t candidate) { return candidate < cards.size() && cards[candidate].file == wanted; });
    return place == m_found.end() ? QModelIndex() : index(int(place - m_found.begin()));
}

int NotebookModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_found.size()); }

QVariant NotebookModel::data(const QModelIndex& index, int role) const
{
    const RecipeCard* card = cardAt(index);
    if (!card)
        return {};
    const QString title = oneLine(card->title);
    switch (role) {
    case Qt::DisplayRole:
        return title;
    case Qt::ToolTipRole:
        return toolTipText(detailsOf(*card));
    case Qt::AccessibleTextRole:
        return (card->isFavourite ? tr("%1, favourite, %2, %3, %4") : tr("%1, %2, %3, %4"))
            .arg(title, figuresOf(*card), freezingOf(*card), dateOf(*card));
    case FileRole:
        return QString::fromStdString(card->file);
    case FiguresRole:
        return figuresOf(*card);
    case FreezingRole:
        return freezingOf(*card);
    case DateRole:
        return dateOf(*card);
    case RibbonRole:
        return card->figures ? QVariant::fromValue(card->figures->ribbon) : QVariant();
    case IsFavouriteRole:
        return card->isFavourite;
    case IsReadableRole:
        return !card->fault;
    case IsOpenRole:
        return QString::fromStdString(card->file) == m_openFile;
    default:
        return {};
    }
}

}  // namespace firn::app
