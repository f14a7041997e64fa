// Sizes of type and space on a projection, after the height of the screen.
#pragma once

#include <QFont>
#include <QSize>

namespace firn::app {

/// No type on a projection is smaller, pixels: 28 on a screen of 1080 lines, so that the back row can read it.
int leastType_px(QSize screen);

struct ProjectorType {
    ProjectorType(const QFont& family, QSize screen);

    QFont title;
    QFont idea;
    QFont text;
    QFont formula;
    QFont quiet;
    int least_px;
    double margin;
    double gap;       // between steps
    double smallGap;  // between the lines of a step
};

}  // namespace firn::app
