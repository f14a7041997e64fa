#include "measure/field_grid.h"

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

}  // namespace firn::app
