// What is wrong with the field beside it, in one sentence; nothing while all is well.
#pragma once

#include <QLabel>

namespace firn::app {

class FaultLabel : public QLabel {
    Q_OBJECT

public:
    explicit FaultLabel(QWidget* parent = nullptr);

    /// An empty sentence hides the label.
    void say(const QString& sentence);

protected:
    void changeEvent(QEvent* event) override;

private:
    void colour();
};

}  // namespace firn::app
