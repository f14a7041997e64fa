#include "teach/figure_list.h"

#include "bench/tool_tip.h"
#include "explain/figures.h"
#include "gauges/wording.h"
#include "teach/listed_figures.h"

#include <QHeaderView>
#include <QSignalBlocker>

namespace firn::app {

namespace {

constexpr int narrowest_px = 220;
constexpr int targetHeight_px = 24;
constexpr int keyRole = Qt::UserRole;

}  // namespace

QString titleInLocale(const QString& figure, const Symbol& result, const Analysis& analysis)
{
    std::size_t row = 0;
    for (const auto& component : analysis.components) {
        for (const RowAnalysis& each : component) {
            if (figure == QStringLiteral("rows[%1].grams").arg(row))
                return FigureList::tr("Mass of the row “%1”").arg(plain(each.text));
            if (figure == QStringLiteral("compared.rows[%1].grams").arg(row))
                return FigureList::tr("The row “%1” in the mass that is compared").arg(plain(each.text));
            if (figure == QStringLiteral("rows[%1].share_percent").arg(row++))
                return FigureList::tr("Share of the row “%1”").arg(plain(each.text));
        }
    }
    return capitalised(plain(titleOf(figure.toStdString(), result)));
}

FigureList::FigureList(QWidget* parent)
    : QTreeWidget(parent)
{
    setObjectName(QStringLiteral("allFigures"));
    setAccessibleName(tr("All figures"));
    setColumnCount(2);
    setHeaderHidden(true);
    setMinimumWidth(narrowest_px);
    setRootIsDecorated(false);
    header()->setStretchLastSection(false);
    header()->setSectionResizeMode(0, QHeaderView::Stretch);
    header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    connect(this, &QTreeWidget::itemSelectionChanged, this, [this] {
        if (const QList<QTreeWidgetItem*> items = selectedItems(); !items.isEmpty())
            emit chosen(items.front()->data(0, keyRole).toString());
    });
}

void FigureList::show(const Workings& workings, const HeadOf& headOf)
{
    const QSignalBlocker quietly(this);
    const std::vector<std::string> keys = listedFigures(workings);
    while (topLevelItemCount() > int(keys.size()))
        delete takeTopLevelItem(topLevelItemCount() - 1);
    for (int i = 0; i < int(keys.size()); ++i) {
        if (i == topLevelItemCount())
            addTopLevelItem(new QTreeWidgetItem);
        const QString key = QString::fromStdString(keys[std::size_t(i)]);
        const Symbol& result = workings.find(keys[std::size_t(i)])->steps().back().result;
        QTreeWidgetItem* item = topLevelItem(i);
        const FigureHead head = headOf(key, result);
        item->setText(0, head.title);
        item->setText(1, shownText(head, key, result));
        item->setTextAlignment(1, Qt::AlignRight | Qt::AlignVCenter);
        item->setData(0, keyRole, key);
        item->setToolTip(0, toolTipText(head.title));
        item->setSizeHint(0, {0, std::max(targetHeight_px, fontMetrics().height())});
    }
}

void FigureList::choose(const QString& figure)
{
    QTreeWidgetItem* listed = nullptr;
    for (int i = 0; i < topLevelItemCount() && !listed; ++i)
        listed = topLevelItem(i)->data(0, keyRole).toString() == figure ? topLevelItem(i) : nullptr;
    const QSignalBlocker quietly(this);
    setCurrentItem(listed);
}

}  // namespace firn::app
