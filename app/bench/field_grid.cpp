#include "bench/field_grid.h"

#include "gauges/type_and_space.h"

#include <QHBoxLayout>
#include <QLabel>

namespace firn::app {

FieldGrid::FieldGrid(QWidget* parent)
    : QGridLayout(parent)
{
    setContentsMargins(0, 0, 0, 0);
    setColumnStretch(1, 1);
}

void FieldGrid::addRow(const QString& label, QWidget* field)
{
    auto* named = new QLabel(label);
    named->setBuddy(field);
    addRow(named, field);
}

void FieldGrid::addRow(QWidget* label, QWidget* field)
{
    const int row = rowCount();
    addWidget(label, row, 0);
    addWidget(field, row, 1);
    m_labels.insert(field, label);
}

void FieldGrid::setRowVisible(QWidget* field, bool isVisible)
{
    field->setVisible(isVisible);
    m_labels.value(field)->setVisible(isVisible);
}

QWidget* inOneRow(const QList<QWidget*>& widgets)
{
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    for (QWidget* widget : widgets)
        layout->addWidget(widget);
    layout->addStretch();
    return row;
}

}  // namespace firn::app
