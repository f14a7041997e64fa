#include "bench/live_field.h"

#include "bench/number_field.h"
#include "document/document.h"
#include "document/typed_edit.h"

namespace firn::app {

void typeInto(Document& document, NumberField& field, const std::function<void(std::optional<double> number)>& edit)
{
    QObject::connect(&field, &NumberField::numberTyped, &document,
        [&document, edit](std::optional<double> number) { typeLive(document, [edit, number] { edit(number); }); });
    QObject::connect(&field, &NumberField::typingFinished, &document, [&document] { finishTyping(document); });
}

}  // namespace firn::app
