#include "tasting/scales_view.h"

#include "bench/field_grid.h"
#include "bench/fields.h"
#include "bench/ink_label.h"
#include "bench/opaque_editor.h"
#include "document/tasting_edits.h"
#include "document/typed_numbers.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "tasting/scales.h"
#include "tasting/tasting_wording.h"

#include <QHeaderView>
#include <QMenu>
#include <QPushButton>
#include <QShortcut>
#include <QSignalBlocker>
#include <QStyledItemDelegate>
#include <QTableWidget>
#include <QVBoxLayout>

namespace firn::app {

namespace {

enum Column { NameColumn, FromColumn, LowColumn, ToColumn, HighColumn, ColumnCount };

constexpr double target_px = 26.0;

class CellDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        QWidget* editor = QStyledItemDelegate::createEditor(parent, option, index);
        if (editor)
            makeOpaque(*editor);
        return editor;
    }
};

}  // namespace

ScalesView::ScalesView(Document& document, QWidget* parent)
    : QWidget(parent)
    , m_document(document)
    , m_table(new QTableWidget(0, ColumnCount))
    , m_suggestions(new QMenu(this))
    , m_remove(new QPushButton(tr("Delete scale")))
    , m_problem(new InkLabel(InkLabel::Caution, this))
{
    m_table->setObjectName(QStringLiteral("scales"));
    m_table->setAccessibleName(tr("Scales"));
    m_table->setHorizontalHeaderLabels({tr("Scale"), tr("from"), tr("which means"), tr("to"), tr("which means")});
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setDefaultSectionSize(qRound(besideText(font(), target_px)));
    m_table->setItemDelegate(new CellDelegate(m_table));
    m_table->setShowGrid(false);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    for (const Column column : {NameColumn, LowColumn, HighColumn})
        m_table->horizontalHeader()->setSectionResizeMode(column, QHeaderView::Stretch);
    for (const Column column : {FromColumn, ToColumn}) {
        m_table->horizontalHeader()->setSectionResizeMode(column, QHeaderView::Fixed);
        m_table->setColumnWidth(column, fontMetrics().horizontalAdvance(QStringLiteral("-00000")) + closeSpace);
    }
    auto* add = new QPushButton(tr("&Add scale"));
    add->setObjectName(QStringLiteral("addScale"));
    add->setMenu(m_suggestions);
    m_remove->setObjectName(QStringLiteral("deleteScale"));
    m_remove->setToolTip(tr("With the scores on it; undo brings both back"));
    m_problem->setObjectName(QStringLiteral("scaleProblem"));
    for (QPushButton* button : {add, m_remove})
        button->setMinimumHeight(qRound(besideText(font(), target_px)));
    auto* hint = new InkLabel(InkLabel::Quiet, this);
    hint->setText(tr("Write down what both ends mean, so that a 7 is the same next month."));
    auto* layout = new QVBoxLayout(this);
    layout->setSpacing(closeSpace);
    layout->addWidget(hint);
    layout->addWidget(m_table, 1);
    layout->addWidget(m_problem);
    layout->addWidget(inOneRow({add, m_remove}));
    connect(m_suggestions, &QMenu::aboutToShow, this, &ScalesView::fillSuggestions);
    connect(m_table, &QTableWidget::cellChanged, this, &ScalesView::take);
    connect(m_remove, &QPushButton::clicked, this, &ScalesView::remove);
    connect(new QShortcut(Qt::Key_Delete, m_table, nullptr, nullptr, Qt::WidgetShortcut), &QShortcut::activated, this,
        &ScalesView::remove);
    fill();
}

void ScalesView::show()
{
    calm(*m_table);
    if (m_shown != m_document.recipe().scales)
        fill();
}

void ScalesView::fill()
{
    const QSignalBlocker blocker(m_table);
    m_shown = m_document.recipe().scales;
    m_problem->setText({});
    // The cell stays the current one, so that Tab goes on from the one that was just typed over.
    const int before = m_table->currentRow(), column = std::max(0, m_table->currentColumn());
    m_table->setRowCount(int(m_shown.size()));
    for (int row = 0; row < m_table->rowCount(); ++row) {
        const TastingScale& scale = m_shown[std::size_t(row)];
        const QStringList texts{QString::fromStdString(scale.name), scoreText(scale.from), QString::fromStdString(scale.low),
            scoreText(scale.to), QString::fromStdString(scale.high)};
        for (int each = 0; each < ColumnCount; ++each) {
            auto* item = new QTableWidgetItem(texts[each]);
            if (each == FromColumn || each == ToColumn)
                item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            m_table->setItem(row, each, item);
        }
    }
    m_table->setCurrentCell(std::min(std::max(before, 0), m_table->rowCount() - 1), column);
    m_remove->setEnabled(m_table->rowCount() > 0);
}

void ScalesView::fillSuggestions()
{
    m_suggestions->clear();
    for (const TastingScale& scale : suggestedScales()) {
        if (scaleNamed(m_document.recipe(), scale.name))
            continue;
        // The words are the person's from then on, so the file has them in the language in which they were shown.
        TastingScale own = scale;
        for (std::string* text : {&own.name, &own.low, &own.high})
            *text = translatedName(*text).toStdString();
        QAction* action =
            m_suggestions->addAction(tr("%1: %2", "a scale and its ends").arg(QString::fromStdString(own.name), endsText(own)),
                this, [this, own] { add(own); });
        action->setObjectName(QString::fromStdString(scale.name));
    }
    m_suggestions->addSeparator();
    m_suggestions->addAction(tr("A scale of your own"), this, &ScalesView::addOwn);
}

/// The new one is what a person goes on with.
void ScalesView::add(const TastingScale& scale)
{
    addScale(m_document, scale);
    fill();
    m_table->setCurrentCell(m_table->rowCount() - 1, NameColumn);
}

void ScalesView::addOwn()
{
    TastingScale scale;
    for (int number = 1; scale.name.empty() || scaleNamed(m_document.recipe(), scale.name); ++number)
        scale.name = tr("scale %1").arg(number).toStdString();
    add(scale);
    m_table->editItem(m_table->currentItem());
}

Result<TastingScale> ScalesView::typedAt(int row) const
{
    const auto text = [&](Column column) { return m_table->item(row, column)->text().trimmed().toStdString(); };
    TastingScale scale = m_shown.at(std::size_t(row));
    scale.name = text(NameColumn);
    scale.low = text(LowColumn);
    scale.high = text(HighColumn);
    const auto from = numberFromText(text(FromColumn));
    if (!from)
        return failure(from.error());
    const auto to = numberFromText(text(ToColumn));
    if (!to)
        return failure(to.error());
    // What is shown is rounded; what was not typed over stays.
    if (scoreText(scale.from) != m_table->item(row, FromColumn)->text())
        scale.from = *from;
    if (scoreText(scale.to) != m_table->item(row, ToColumn)->text())
        scale.to = *to;
    return scale;
}

void ScalesView::take(int row)
{
    const auto scale = typedAt(row);
    const auto fault = scale ? faultOfScale(m_document.recipe(), std::size_t(row), *scale) : std::optional<Sentence>(scale.error());
    if (fault) {
        m_problem->setText(translated(*fault));
        return;
    }
    m_problem->setText({});
    changeScale(m_document, std::size_t(row), *scale);
    fill();
}

void ScalesView::remove()
{
    if (const int row = m_table->currentRow(); row >= 0)
        removeScale(m_document, std::size_t(row));
}

}  // namespace firn::app
