#include "bench/tool_tip.h"

#include <QTextDocument>

namespace firn::app {

QString toolTipText(const QString& text) { return Qt::mightBeRichText(text) ? Qt::convertFromPlainText(text) : text; }

}  // namespace firn::app
