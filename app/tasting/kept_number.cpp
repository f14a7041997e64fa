#include "tasting/kept_number.h"

#include "bench/ink_label.h"
#include "bench/number_field.h"
#include "bench/undo_shortcut.h"

#include <QEvent>

namespace firn::app {

KeptNumber::KeptNumber(NumberField* field, Read read, Write write)
    : QObject(field)
    , m_field(field)
    , m_read(std::move(read))
    , m_write(std::move(write))
    , m_fault(new InkLabel(InkLabel::Caution))
{
    m_fault->setObjectName(field->objectName() + QStringLiteral("Fault"));
    leaveUndoToWindow(*field);
    field->installEventFilter(this);
    connect(field, &NumberField::numberTyped, this, &KeptNumber::take);
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

bool KeptNumber::eventFilter(QObject* object, QEvent* event)
{
    if (event->type() == QEvent::FocusIn)
        m_gesture = {};
    return QObject::eventFilter(object, event);
}

void KeptNumber::take(std::optional<double> number, Gesture gesture)
{
    if (!(m_gesture == gesture)) {
        m_gesture = gesture;
        m_before = m_read();
    }
    m_write(number, gesture);
}

void KeptNumber::showProblem()
{
    const QString problem = m_field->problem();
    m_fault->setText(problem);
    m_field->setAccessibleDescription(problem);
    // The first digits of it may have been a number by themselves.
    if (!problem.isEmpty() && !m_gesture.isNone())
        m_write(m_before, m_gesture);
}

}  // namespace firn::app
