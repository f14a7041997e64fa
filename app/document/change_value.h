// The one command behind every edit: a value at a place in the recipe, before and after.
#pragma once

#include "document/document.h"
#include "document/gesture.h"
#include "document/typed_edit.h"

#include <QUndoCommand>

namespace firn::app {

/// `Place` says where the value is: `in(recipe)` yields a reference to it, and two places can be compared.
template <class Place>
class ChangeValue : public QUndoCommand {
public:
    using Value = typename Place::Value;

    ChangeValue(Document& document, const QString& name, const Place& place, Value after, Gesture gesture)
        : QUndoCommand(name)
        , m_document(document)
        , m_place(place)
        , m_before(place.in(document.m_recipe))
        , m_after(std::move(after))
        , m_gesture(gesture)
    {
    }

    void redo() override { put(m_after); }
    void undo() override { put(m_before); }

    int id() const override { return m_gesture.isNone() ? -1 : 1; }

    bool mergeWith(const QUndoCommand* other) override
    {
        const auto* next = dynamic_cast<const ChangeValue*>(other);
        if (!next || next->m_gesture != m_gesture || !(next->m_place == m_place))
            return false;
        m_after = next->m_after;
        setObsolete(m_after == m_before);
        return true;
    }

private:
    void put(const Value& value)
    {
        m_document.forgetTyping();
        m_place.in(m_document.m_recipe) = value;
        m_document.reanalyse();
    }

    Document& m_document;
    Place m_place;
    Value m_before;
    Value m_after;
    Gesture m_gesture;
};

/// Does the edit, unless the value is there already, after what was typed into a field; of what is still being typed it shows what it would do.
template <class Place>
void change(Document& document, const QString& name, const Place& place, typename Place::Value after, Gesture gesture)
{
    if (!document.m_isShowingTyping)
        finishTyping(document);
    const bool wasTyping = !document.m_isShowingTyping && document.forgetTyping();
    if (place.in(document.recipe()) == after) {
        if (wasTyping)
            document.reanalyse();
    } else if (document.m_isShowingTyping) {
        if (!document.isTyping())
            document.m_beforeTyping = document.m_recipe;
        place.in(document.m_recipe) = std::move(after);
        document.reanalyse();
    } else {
        document.undoStack().push(new ChangeValue<Place>(document, name, place, std::move(after), gesture));
    }
}

template <class Place>
void change(Document& document, const QString& name, const Place& place, typename Place::Value after)
{
    change(document, name, place, std::move(after), Gesture());
}

}  // namespace firn::app
