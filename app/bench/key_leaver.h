// Keys that mean something in a text field, and something else in its window.
#pragma once

#include <QKeySequence>
#include <QList>
#include <QObject>

namespace firn::app {

/// As an event filter of a field, or of the application: these keys go to the shortcuts of the window first. Where it has none, they mean what
/// they mean in text.
class KeyLeaver : public QObject {
public:
    explicit KeyLeaver(QList<QKeySequence> keys, QObject* parent)
        : QObject(parent)
        , m_keys(std::move(keys))
    {
    }

    bool eventFilter(QObject* object, QEvent* event) override;

private:
    const QList<QKeySequence> m_keys;
};

}  // namespace firn::app
