// What Escape closes.
#pragma once

#include <QApplication>
#include <QWidget>

namespace firn::app {

/// The list that is open in the window, or else the window.
inline void closeFront(QWidget& window)
{
    if (QWidget* list = QApplication::activePopupWidget())
        list->close();
    else
        window.close();
}

}  // namespace firn::app
