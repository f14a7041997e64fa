// Between what belongs apart, in light and in dark.
#pragma once

#include "gauges/palette.h"

#include <QPainter>
#include <QWidget>

namespace firn::app {

class Hairline : public QWidget {
public:
    Hairline() { setFixedHeight(1); }

protected:
    void paintEvent(QPaintEvent* /*event*/) override { QPainter(this).fillRect(rect(), coloursInWindow(palette()).hairline); }
};

}  // namespace firn::app
