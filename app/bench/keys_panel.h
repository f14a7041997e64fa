// What the keyboard does, for those who forget.
#pragma once

#include <QWidget>

namespace firn::app {

class KeysPanel : public QWidget {
    Q_OBJECT

public:
    explicit KeysPanel(QWidget* parent = nullptr);
};

}  // namespace firn::app
