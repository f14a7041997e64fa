#include "bench/number_field.h"

#include "bench/tool_tip.h"
#include "gauges/palette.h"
#include "gauges/wording.h"

#include <QKeyEvent>
#include <QPainter>

namespace firn::app {

NumberField::NumberField(Reader reader, Writer writer, QWidget* parent)
    : QLineEdit(parent)
    , m_reader(std::move(reader))
    , m_writer(std::move(writer))
{
    setAcceptDrops(false);
    setAlignment(Qt::AlignRight);
    connect(this, &QLineEdit::textEdited, this, &NumberField::read);
}

void NumberField::showNumber(std::optional<double> number, double usual)
{
    setPlaceholderText(m_writer(usual));
    if (number != m_number) {
        m_number = number;
        m_isTyping = false;
        write();
    } else if (!m_isTyping && m_problem.isEmpty()) {
        write();
    }
}

void NumberField::forget()
{
    m_number.reset();
    m_isTyping = false;
    write();
}

void NumberField::read()
{
    m_isTyping = true;
    // The typographic blank between a number and its unit becomes a plain one.
    const std::string typed = text().simplified().toStdString();
    const auto number = typed.empty() ? Result<double>(0.0) : m_reader(typed);
    setProblem(number ? QString() : translated(number.error()));
    if (!number)
        return;
    m_number = typed.empty() ? std::nullopt : std::optional(*number);
    emit numberTyped(m_number, m_gesture);
}

void NumberField::write()
{
    setProblem({});
    const QString written = m_number ? m_writer(*m_number) : QString();
    if (text() != written)
        setText(written);
}

void NumberField::finishTyping()
{
    m_isTyping = false;
    if (m_problem.isEmpty())
        write();
    update();
}

void NumberField::setProblem(const QString& problem)
{
    m_problem = problem;
    setToolTip(toolTipText(problem));
    update();
    emit problemChanged();
}

void NumberField::focusInEvent(QFocusEvent* event)
{
    m_gesture = Gesture::begin();
    QLineEdit::focusInEvent(event);
}

void NumberField::focusOutEvent(QFocusEvent* event)
{
    finishTyping();
    QLineEdit::focusOutEvent(event);
}

void NumberField::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && m_isTyping) {
        m_isTyping = false;
        write();
    } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        finishTyping();
        selectAll();
    } else {
        QLineEdit::keyPressEvent(event);
    }
}

void NumberField::paintEvent(QPaintEvent* event)
{
    QLineEdit::paintEvent(event);
    // A number that is still being typed is not wrong yet.
    if (m_problem.isEmpty() || m_isTyping)
        return;
    QPainter painter(this);
    painter.setPen(QPen(gaugeColours(palette()).caution, 2));
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

}  // namespace firn::app
