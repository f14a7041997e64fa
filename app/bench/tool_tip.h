// Tool tips of text that people typed.
#pragma once

#include <QString>

namespace firn::app {

/// The text so that a tool tip shows it letter by letter: Qt would take "<b>" in it for markup.
QString toolTipText(const QString& text);

}  // namespace firn::app
