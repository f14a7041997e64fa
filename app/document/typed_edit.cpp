#include "document/typed_edit.h"

#include "document/document.h"

#include <utility>

namespace firn::app {

namespace {

/// Belongs to its document.
class TypedEdit : public QObject {
public:
    explicit TypedEdit(Document& document)
        : QObject(&document)
    {
    }

    std::function<void()> edit;  // none while no field is being typed into
};

TypedEdit* typedEditOf(const Document& document)
{
    for (QObject* child : document.children())
        if (auto* typed = dynamic_cast<TypedEdit*>(child))
            return typed;
    return nullptr;
}

}  // namespace

void typeLive(Document& document, std::function<void()> edit)
{
    document.showTyping([&edit] {
        edit();
        return true;
    });
    TypedEdit* typed = typedEditOf(document);
    if (!typed)
        typed = new TypedEdit(document);
    typed->edit = std::move(edit);
}

void finishTyping(Document& document)
{
    TypedEdit* typed = typedEditOf(document);
    const auto edit = typed ? std::exchange(typed->edit, nullptr) : nullptr;
    if (!edit)
        return;
    edit();
    document.takeBackTyping();
}

void forgetTypedEdit(Document& document)
{
    if (TypedEdit* typed = typedEditOf(document))
        typed->edit = nullptr;
}

}  // namespace firn::app
