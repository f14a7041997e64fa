#include "notebook/import_report.h"

#include "bench/ink_label.h"
#include "bench/tool_tip.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace firn::app {

ImportReport::ImportReport(QWidget* parent)
    : QWidget(parent)
    , m_summary(new InkLabel(InkLabel::Plain))
    , m_refused(new QListWidget)
    , m_close(new QPushButton(tr("Back to the recipes")))
{
    m_summary->setObjectName(QStringLiteral("importSummary"));
    m_refused->setObjectName(QStringLiteral("importRefused"));
    m_refused->setAccessibleName(tr("Files that were not taken"));
    m_refused->setWordWrap(true);
    m_refused->setTextElideMode(Qt::ElideNone);
    m_refused->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_refused->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_close->setObjectName(QStringLiteral("importClose"));
    m_close->setAutoDefault(false);
    connect(m_close, &QPushButton::clicked, this, &ImportReport::closed);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(m_summary);
    layout->addWidget(m_refused, 1);
    layout->addWidget(m_close, 0, Qt::AlignLeft);
    layout->addStretch();
}

void ImportReport::show(const ImportOutcome& outcome)
{
    const int refused = int(outcome.refused.size());
    const QString taken = outcome.taken == 1 ? tr("One recipe was taken into the notebook.")
                                             : tr("%n recipes were taken into the notebook.", nullptr, outcome.taken);
    const QString left = refused == 1 ? tr("One file could not be read:") : tr("%n files could not be read:", nullptr, refused);
    m_summary->setText(refused == 0 ? taken : taken + u' ' + left);
    m_refused->clear();
    for (const Sentence& why : outcome.refused) {
        auto* item = new QListWidgetItem(translated(why), m_refused);
        item->setToolTip(toolTipText(item->text()));
    }
    m_refused->setVisible(refused > 0);
    m_close->setFocus();
}

}  // namespace firn::app
