#include "measure/kept_readings.h"

#include "bench/fields.h"
#include "bench/tool_tip.h"
#include "document/measure_edits.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "measure/measure_wording.h"

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>
#include <algorithm>
#include <functional>

namespace firn::app {

KeptReadings::KeptReadings(Document& document, QWidget* parent)
    : QWidget(parent)
    , m_document(document)
    , m_hint(plainLabel())
    , m_list(new QListWidget)
    , m_delete(new QPushButton(tr("&Delete reading")))
{
    m_hint->setInk(InkLabel::Quiet);
    m_hint->setText(tr("Saved readings appear here, measured next to calculated, and what was added to a batch."));
    m_list->setObjectName(QStringLiteral("keptReadings"));
    m_list->setAccessibleName(tr("Saved readings"));
    m_list->setWordWrap(true);
    m_list->setSpacing(gridStep / 2);
    m_list->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    m_list->setMinimumHeight(4 * lineHeight(font()));
    m_delete->setObjectName(QStringLiteral("deleteReading"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(titleLabel(tr("Saved readings")));
    layout->addWidget(m_hint);
    layout->addWidget(m_list, 1);
    layout->addWidget(m_delete, 0, Qt::AlignLeft);
    layout->addStretch();
    connect(m_delete, &QPushButton::clicked, this, &KeptReadings::remove);
    connect(m_list, &QListWidget::currentRowChanged, this, &KeptReadings::enableDeletion);
    auto* key = new QShortcut(Qt::Key_Delete, m_list, nullptr, nullptr, Qt::WidgetShortcut);
    connect(key, &QShortcut::activated, this, &KeptReadings::remove);
}

QString KeptReadings::textOf(const ReadingRecord& record, const Mix& computed) const
{
    QString text = tr("%1, calculated %2").arg(readingText(record), computedText(besideComputed(record, computed))) + u'\n'
                   + instrumentText(record);
    if (!record.note.empty())
        text += u'\n' + QString::fromStdString(record.note);
    return text;
}

QString KeptReadings::textOf(const BatchCorrection& correction) const
{
    QStringList added;
    for (const AddedIngredient& one : correction.added)
        added << tr("%1 of %2", "grams and an ingredient").arg(gramsText(one.mass), QString::fromStdString(one.ingredient));
    return tr("Added to the batch: %1\nSugars from %2 to %3")
        .arg(added.join(QStringLiteral(", ")), percentText(fromPercent(correction.sugarsBefore_percent)),
            percentText(fromPercent(correction.sugarsAfter_percent)));
}

void KeptReadings::show(const Mix& computed)
{
    calm(*m_list);
    const int before = m_list->currentRow();
    const Recipe& recipe = m_document.recipe();
    const auto isInView = [&](const auto& record) { return isAbout(record.component, recipe, m_document.component()); };
    m_lines.clear();
    for (std::size_t i = recipe.batchCorrections.size(); i-- > 0;)
        if (isInView(recipe.batchCorrections[i]))
            m_lines.push_back({true, i, recipe.batchCorrections[i].date});
    for (std::size_t i = recipe.readings.size(); i-- > 0;)
        if (isInView(recipe.readings[i]))
            m_lines.push_back({false, i, recipe.readings[i].date});
    // ISO dates sort as text; what has the same date stays as it was recorded.
    std::ranges::stable_sort(m_lines, std::greater{}, &Line::date);
    m_list->clear();
    for (const Line& line : m_lines) {
        QString text =
            line.isCorrection ? textOf(recipe.batchCorrections[line.number]) : textOf(recipe.readings[line.number], computed);
        if (!line.date.empty())
            text = dateText(line.date) + u'\n' + text;
        auto* item = new QListWidgetItem(text, m_list);
        item->setToolTip(toolTipText(text));
    }
    m_list->setCurrentRow(std::min(before, m_list->count() - 1));
    m_list->setVisible(!m_lines.empty());
    m_hint->setVisible(m_lines.empty());
    enableDeletion();
}

void KeptReadings::enableDeletion()
{
    const int row = m_list->currentRow();
    m_delete->setVisible(!m_lines.empty());
    m_delete->setEnabled(row >= 0);
    m_delete->setText(row >= 0 && m_lines.at(std::size_t(row)).isCorrection ? tr("&Delete correction") : tr("&Delete reading"));
}

void KeptReadings::remove()
{
    if (m_list->currentRow() < 0)
        return;
    const Line line = m_lines.at(std::size_t(m_list->currentRow()));
    if (line.isCorrection)
        removeBatchCorrection(m_document, line.number);
    else
        removeReading(m_document, line.number);
}

}  // namespace firn::app
