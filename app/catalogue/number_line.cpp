#include "catalogue/number_line.h"

#include "bench/ink_label.h"
#include "bench/typed_text.h"
#include "gauges/type_and_space.h"

#include <QHBoxLayout>
#include <QLabel>

namespace firn::app {

namespace {

constexpr int charactersOfNumber = 14;

}  // namespace

NumberLine::NumberLine(const QString& spoken, NumberField::Reader reader, const QString& unit, QWidget* parent)
    : QWidget(parent)
    , m_field(new NumberField(std::move(reader), [unit](double number) { return typedNumber(number, unit); }))
    , m_unit(unit)
    , m_fault(new InkLabel(InkLabel::Caution))
{
    m_field->setAccessibleName(spoken);
    m_field->setFixedWidth(fontMetrics().averageCharWidth() * charactersOfNumber);
    connect(m_field, &NumberField::numberTyped, this, [this](std::optional<double> number) {
        m_number = number;
        m_fault->setText({});
        emit changed();
    });
    connect(m_field, &QLineEdit::editingFinished, this, &NumberLine::checkTyping);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(m_field);
    if (!unit.isEmpty()) {
        auto* shown = new QLabel(unit);
        shown->setTextFormat(Qt::PlainText);
        layout->addWidget(shown);
    }
    layout->addWidget(m_fault, 1);
    layout->addStretch();
    setFocusProxy(m_field);
}

void NumberLine::showNumber(std::optional<double> number)
{
    m_number = number;
    m_field->showNumber(number, 0.0);
    m_field->setPlaceholderText({});
    m_fault->setText({});
}

void NumberLine::showUsual(std::optional<double> number)
{
    m_field->setPlaceholderText(number ? typedNumber(*number, m_unit) : QString());
}

bool NumberLine::checkTyping()
{
    if (!m_field->problem().isEmpty())
        m_fault->setText(m_field->problem());
    return m_field->problem().isEmpty();
}

void NumberLine::say(const QString& fault)
{
    if (checkTyping())
        m_fault->setText(fault);
}

}  // namespace firn::app
