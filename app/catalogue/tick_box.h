// A box to tick whose frame is seen on a dark ground too.
#pragma once

#include <QCheckBox>

namespace firn::app {

class TickBox : public QCheckBox {
    Q_OBJECT

public:
    using QCheckBox::QCheckBox;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
};

}  // namespace firn::app
