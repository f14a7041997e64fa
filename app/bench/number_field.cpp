#include "bench/number_field.h"

#include "bench/tool_tip.h"
#include "gauges/palette.h"
#include "gauges/temperature_unit.h"
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
    connect(&ShownTemperatureUnit::instance(), &ShownTemperatureUnit::changed, this, &NumberField::writeInOtherUnit);
}

void NumberField::showNumber(std::optional<double> number, double usual)
{
    showUsual(usual);
    if (number != m_number) {
        m_number = m_before = number;
        m_isTyping = false;
        write();
    } else if (!m_isTyping && m_problem.isEmpty()) {
        m_before = number;
        write();
    }
}

void NumberField::showUsual(double usual)
{
    m_usual = usual;
    m_usualText = m_writer(usual);
    setPlaceholderText(m_usualText);
}

void NumberField::forget()
{
    m_number.reset();
    m_before.reset();
    m_isTyping = false;
    write();
}

Result<std::optional<double>> NumberField::numberIn(const QString& text) const
{
    // The typographic blank between a number and its unit becomes a plain one.
    const QString typed = text.simplified();
    if (typed.isEmpty())
        return std::nullopt;
    // What stood there means what it stood for, also where it was rounded.
    if (m_before && typed == m_writer(*m_before).simplified())
        return m_before;
    return m_reader(typed.toStdString()).map([](double number) { return std::optional(number); });
}

void NumberField::read()
{
    m_isTyping = true;
    const auto number = numberIn(text());
    setProblem(number ? QString() : translated(number.error()));
    take(number.value_or(m_before));
}

void NumberField::take(std::optional<double> number)
{
    if (!m_problem.isEmpty() && number == m_number)
        return;
    m_number = number;
    emit numberTyped(m_number);
}

void NumberField::putBack()
{
    m_isTyping = false;
    setProblem({});
    take(m_before);
    write();
}

void NumberField::write()
{
    setProblem({});
    const QString written = m_number ? m_writer(*m_number) : QString();
    if (text() != written)
        setText(written);
}

void NumberField::writeInOtherUnit()
{
    // Some lines have a hint of their own in place of the usual number.
    if (m_usual && m_usualText == placeholderText())
        showUsual(*m_usual);
    if (!m_isTyping && m_problem.isEmpty())
        write();
}

void NumberField::finishTyping()
{
    m_isTyping = false;
    if (m_problem.isEmpty()) {
        m_before = m_number;
        write();
    }
    update();
    emit typingFinished();
}

void NumberField::setProblem(const QString& problem)
{
    m_problem = problem;
    setToolTip(toolTipText(problem));
    update();
    emit problemChanged();
}

void NumberField::focusOutEvent(QFocusEvent* event)
{
    finishTyping();
    QLineEdit::focusOutEvent(event);
}

void NumberField::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && (m_isTyping || !m_problem.isEmpty())) {
        putBack();
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
