#include "compare/output_row.h"

#include "bench/fields.h"
#include "gauges/type_and_space.h"
#include "print/chosen_paper.h"

#include <QHBoxLayout>
#include <QPushButton>

namespace firn::app {

OutputRow::OutputRow(QWidget* parent)
    : QWidget(parent)
    , m_layout(new QHBoxLayout(this))
{
    m_layout->setContentsMargins(0, 0, 0, 0);
    m_layout->setSpacing(closeSpace);
    addButton(QStringLiteral("copyText"), tr("&Copy as text"), &OutputRow::textWanted);
    addButton(QStringLiteral("copyPicture"), tr("Copy as pict&ure"), &OutputRow::pictureWanted);
    addButton(QStringLiteral("print"), tr("&Print…"), &OutputRow::printWanted);
    addButton(QStringLiteral("pdf"), tr("Save as P&DF…"), &OutputRow::pdfWanted);
    m_layout->addWidget(namedPaperChoice());
}

void OutputRow::addButton(const QString& name, const QString& text, void (OutputRow::*wanted)())
{
    QPushButton* button = buttonOf(name, text);
    connect(button, &QPushButton::clicked, this, wanted);
    m_layout->addWidget(button);
}

}  // namespace firn::app
