// A big dot over a projection, where the mouse is.
#pragma once

#include <QWidget>

namespace firn::app {

class ProjectorPointer : public QWidget {
    Q_OBJECT

public:
    explicit ProjectorPointer(QWidget* parent);

    void pointAt(const QPoint& place);

protected:
    void paintEvent(QPaintEvent* event) override;
};

}  // namespace firn::app
