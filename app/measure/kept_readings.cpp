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

namespace firn::app {

KeptReadings::KeptReadings(Document& document, QWidget* parent)
    : QWidget(parent)
    , m_document(document)
    , m_hint(plainLabel())
    , m_list(new QListWidget)
    , m_delete(new QPushButton(tr("&Delete reading")))
{
    m_hint->setInk(InkLabel::Quiet);
    m_hint->setText(tr("Readings that you keep stand here, measured beside computed."));
    m_list->setObjectName(QStringLiteral("keptReadings"));
    m_list->setAccessibleName(tr("Kept readings"));
    m_list->setWordWrap(true);
    m_list->setSpacing(gridStep / 2);
    m_list->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    m_list->setMinimumHeight(4 * lineHeight(font()));
    m_delete->setObjectName(QStringLiteral("deleteReading"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(titleLabel(tr("Kept readings")));
    layout->addWidget(m_hint);
    layout->addWidget(m_list, 1);
    layout->addWidget(m_delete, 0, Qt::AlignLeft);
    layout->addStretch();
    connect(m_delete, &QPushButton::clicked, this, &KeptReadings::remove);
    connect(m_list, &QListWidget::currentRowChanged, this, &KeptReadings::enableDeletion);
    auto* key = new QShortcut(Qt::Key_Delete, m_list, nullptr, nullptr, Qt::WidgetShortcut);
    connect(key, &QShortcut::activated, this, &KeptReadings::remove);
}

void KeptReadings::show(const Mix& computed)
{
    calm(*m_list);
    const int before = m_list->currentRow();
    const auto& readings = m_document.recipe().readings;
    m_list->clear();
    m_numbers.clear();
    for (std::size_t i = readings.size(); i-- > 0;) {
        const ReadingRecord& record = readings[i];
        if (!isAbout(record, m_document.recipe(), m_document.component()))
            continue;
        const BesideReading beside = besideComputed(record, computed);
        QString text = tr("%1, computed %2").arg(readingText(record), computedText(beside)) + u'\n' + instrumentText(record);
        if (!record.date.empty())
            text = dateText(record.date) + u'\n' + text;
        if (!record.note.empty())
            text += u'\n' + QString::fromStdString(record.note);
        auto* item = new QListWidgetItem(text, m_list);
        item->setToolTip(toolTipText(text));
        m_numbers.push_back(i);
    }
    m_list->setCurrentRow(std::min(before, m_list->count() - 1));
    m_list->setVisible(!m_numbers.empty());
    m_hint->setVisible(m_numbers.empty());
    enableDeletion();
}

void KeptReadings::enableDeletion()
{
    m_delete->setVisible(!m_numbers.empty());
    m_delete->setEnabled(m_list->currentRow() >= 0);
}

void KeptReadings::remove()
{
    if (const int row = m_list->currentRow(); row >= 0)
        removeReading(m_document, m_numbers.at(std::size_t(row)));
}

}  // namespace firn::app
