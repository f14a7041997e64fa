#include "tasting/kept_number.h"

#include "bench/ink_label.h"
#include "bench/live_field.h"
#include "bench/number_field.h"
#include "bench/undo_shortcut.h"

namespace firn::app {

KeptNumber::KeptNumber(Document& document, NumberField* field, Read read, const Write& write)
    : QObject(field)
    , m_field(field)
    , m_read(std::move(read))
    , m_fault(new InkLabel(InkLabel::Caution))
{
    m_fault->setObjectName(field->objectName() + QStringLiteral("Fault"));
    leaveUndoToWindow(*field);
    typeInto(document, *field, write);
    connect(field, &NumberField::problemChanged, this, &KeptNumber::showProblem);
}

void KeptNumber::show(bool isSomethingElse)
{
    if (isSomethingElse)
        m_field->forget();
    else if (!m_field->problem().isEmpty())
        return;
    const QString hint = m_field->placeholderText();
    m_field->showNumber(m_read(), 0.0);
    m_field->setPlaceholderText(hint);
}

void KeptNumber::showProblem()
{
    const QString problem = m_field->problem();
    m_fault->setText(problem);
    m_field->setAccessibleDescription(problem);
}

}  // namespace firn::app
