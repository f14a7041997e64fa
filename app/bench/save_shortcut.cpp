#include "bench/save_shortcut.h"

#include "bench/message_bar.h"
#include "document/document.h"

#include <QAction>
#include <QShortcut>

namespace firn::app {

namespace {

void save(QWidget& bench, const Document& document, MessageBar& messages)
{
    for (QAction* action : bench.findChildren<QAction*>()) {
        if (action->shortcut() == QKeySequence(QKeySequence::Save))
            action->trigger();
    }
    if (document.isModified()) {
        bench.raise();
        bench.activateWindow();
    } else {
        messages.note(MessageBar::tr("Saved."));
    }
}

}  // namespace

void takeRecipesSave(QWidget& window, QWidget& bench, const Document& document, MessageBar& messages)
{
    QObject::connect(
        new QShortcut(QKeySequence::Save, &window), &QShortcut::activated, &window, [&] { save(bench, document, messages); });
}

}  // namespace firn::app
