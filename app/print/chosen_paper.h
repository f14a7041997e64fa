// The paper of everything that is printed or kept as PDF: chosen once, in any of the windows that print.
#pragma once

#include <QComboBox>
#include <QPageSize>

namespace firn::app {

/// What was chosen last; before that A4, or Letter where inches are at home.
QPageSize chosenPaper();

/// Follows what was chosen in another window.
class PaperChoice : public QComboBox {
    Q_OBJECT

public:
    explicit PaperChoice(QWidget* parent = nullptr);

protected:
    bool event(QEvent* event) override;

private:
    void follow();
};

/// The choice, with its name before it.
QWidget* namedPaperChoice();

}  // namespace firn::app
