#include "measure/choice_table.h"

#include "bench/tool_tip.h"
#include "gauges/palette.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "measure/measure_wording.h"

#include <QCoreApplication>
#include <QHeaderView>
#include <QTableWidget>
#include <algorithm>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::ChoiceTable)
};

enum Column { Name, Amount, Total, Sugars, Sweetness, Freezing, Texture, columnCount };

constexpr double rowHeight_px = 24.0;
constexpr double leastRowsSeen = 4.0;  // the header and a few choices

QString textureText(const MixFigures& figures)
{
    return Words::tr("%1, %2", "a kind of ice and how firm it is")
        .arg(translatedName(nameOf(figures.textureClass)), translatedName(nameOf(figures.firmness)));
}

QStringList lineOf(const QString& name, const QString& amount, const MixFigures& figures)
{
    return {name, amount, gramsText(figures.mass), percentText(figures.sugars),
        withUnit(figure(figures.sweetness_percentSucrose, 1), QStringLiteral("%")),
        figures.freezingPoint ? degrees(*figures.freezingPoint) : Words::tr("none"), textureText(figures)};
}

void put(QTableWidget& table, int row, const QStringList& line, Qt::ItemFlags flags, const QString& toolTip)
{
    for (int column = 0; column < columnCount; ++column) {
        auto* item = new QTableWidgetItem(line.at(column));
        const bool isText = column == Name || column == Texture;
        item->setTextAlignment((isText ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
        item->setFlags(flags);
        item->setToolTip(toolTip);
        if (!(flags & Qt::ItemIsSelectable))
            item->setForeground(coloursInWindow(table.palette()).quietInk);
        table.setItem(row, column, item);
    }
}

}  // namespace

QTableWidget* choiceTable()
{
    auto* table = new QTableWidget(0, columnCount);
    table->setObjectName(QStringLiteral("choices"));
    table->setAccessibleName(Words::tr("What can be added"));
    table->setHorizontalHeaderLabels({Words::tr("What to add"), Words::tr("Amount"), Words::tr("Makes"), Words::tr("Sugars"),
        Words::tr("Sweet as sucrose at"), Words::tr("Freezes from"), Words::tr("Texture")});
    for (const int column : {int(Name), int(Texture)})
        table->horizontalHeaderItem(column)->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    for (const int column : {int(Amount), int(Total), int(Sugars), int(Sweetness), int(Freezing)})
        table->horizontalHeaderItem(column)->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->horizontalHeader()->setSectionResizeMode(Name, QHeaderView::Stretch);
    table->horizontalHeader()->setHighlightSections(false);
    table->verticalHeader()->hide();
    table->verticalHeader()->setDefaultSectionSize(qRound(besideText(table->font(), rowHeight_px)));
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setTabKeyNavigation(false);
    table->setShowGrid(false);
    table->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    table->setMinimumHeight(qRound(leastRowsSeen * besideText(table->font(), rowHeight_px)));
    table->setWordWrap(false);
    return table;
}

void fillChoices(QTableWidget& table, const CorrectionPlan* plan)
{
    const std::size_t before = chosenIn(table).value_or(0);
    table.setRowCount(plan ? int(plan->choices.size()) + 1 : 0);
    if (!plan)
        return;
    put(table, 0, lineOf(Words::tr("as it is now"), QString(), plan->nowFigures), Qt::ItemIsEnabled, {});
    for (std::size_t i = 0; i < plan->choices.size(); ++i) {
        const CorrectionChoice& choice = plan->choices[i];
        const QString name = QString::fromStdString(choice.name);
        put(table, int(i) + 1, lineOf(name, addedText(choice), choice.after), Qt::ItemIsEnabled | Qt::ItemIsSelectable,
            toolTipText(name));
    }
    if (!plan->choices.empty())
        table.setCurrentCell(int(std::min(before, plan->choices.size() - 1)) + 1, Name);
}

std::optional<std::size_t> chosenIn(const QTableWidget& table)
{
    const int row = table.currentRow();
    return row > 0 ? std::optional(std::size_t(row - 1)) : std::nullopt;
}

}  // namespace firn::app
