// What came of importing a folder: how many recipes, and which files were not taken, and why.
#pragma once

#include "notebook/folder_import.h"

#include <QWidget>

class QListWidget;
class QPushButton;

namespace firn::app {

class InkLabel;

class ImportReport : public QWidget {
    Q_OBJECT

public:
    explicit ImportReport(QWidget* parent = nullptr);

    void show(const ImportOutcome& outcome);

signals:
    void closed();

private:
    InkLabel* m_summary;
    QListWidget* m_refused;
    QPushButton* m_close;
};

}  // namespace firn::app
