// The form of one job: its fields, and what follows from them at every keystroke.
#pragma once

#include "syrups/syrup_job.h"

#include <QWidget>

class QGridLayout;

namespace firn::app {

class FieldLine;
class OutcomeView;

class SyrupForm : public QWidget {
    Q_OBJECT

public:
    explicit SyrupForm(SyrupJob job, QWidget* parent = nullptr);

    void takeFocus();

    /// Works it out anew.
    void work();

signals:
    void rowsWanted(const std::vector<firn::Row>& rows);
    void derivationWanted(const QString& figure, const firn::Workings& workings);

protected:
    void changeEvent(QEvent* event) override;

private:
    void fitToFont();

    const SyrupJob m_job;
    QGridLayout* m_grid;
    std::vector<FieldLine*> m_lines;
    OutcomeView* m_outcome;
};

}  // namespace firn::app
