// Rows of a label and a field, of which some are hidden at times. QFormLayout loses rows that are hidden and shown again (Qt 6.4).
#pragma once

#include <QGridLayout>
#include <QHash>

namespace firn::app {

class FieldGrid : public QGridLayout {
public:
    explicit FieldGrid(QWidget* parent = nullptr);

    void addRow(const QString& label, QWidget* field);
    void addRow(QWidget* label, QWidget* field);

    /// The field with its label.
    void setRowVisible(QWidget* field, bool isVisible);

private:
    QHash<QWidget*, QWidget*> m_labels;
};

/// Several things in one row.
QWidget* inOneRow(const QList<QWidget*>& widgets);

}  // namespace firn::app
