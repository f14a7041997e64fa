// Plain text in one of the inks, light or dark; takes no room while it has nothing to say.
#pragma once

#include <QLabel>

namespace firn::app {

class InkLabel : public QLabel {
    Q_OBJECT

public:
    enum Ink { Plain, Quiet, Caution };

    explicit InkLabel(Ink ink, QWidget* parent = nullptr);

    void setText(const QString& text);
    void setInk(Ink ink);

protected:
    void changeEvent(QEvent* event) override;

private:
    void colour();

    Ink m_ink;
};

}  // namespace firn::app
