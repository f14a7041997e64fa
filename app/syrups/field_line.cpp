#include "syrups/field_line.h"

#include "bench/ink_label.h"
#include "bench/number_field.h"
#include "bench/typed_text.h"
#include "gauges/wording.h"

#include <QComboBox>
#include <QGridLayout>

namespace firn::app {

FieldLine::FieldLine(const Field& field, QGridLayout& grid, QObject* parent)
    : QObject(parent)
    , m_field(field)
    , m_number(new NumberField([this](std::string_view text) { return meaning().read(text); },
          [this](double number) {
              return meaning().write ? meaning().write(number) : typedText(number, meaning().unit, meaning().mostDecimals);
          }))
    , m_fault(new InkLabel(InkLabel::Caution))
{
    const int row = grid.rowCount();
    auto* label = new QLabel(m_field.label);
    label->setBuddy(m_number);
    m_number->setObjectName(m_field.name);
    m_number->setAccessibleName(m_field.label);
    m_fault->setObjectName(m_field.name + QStringLiteral("Fault"));
    grid.addWidget(label, row, 0);
    grid.addWidget(m_number, row, 1);
    grid.addWidget(m_fault, row + 1, 1, 1, 3);
    if (m_field.meanings.size() > 1) {
        m_meanings = new QComboBox;
        m_meanings->setObjectName(m_field.name + QStringLiteral("Meaning"));
        m_meanings->setAccessibleName(tr("%1: how the number is meant").arg(m_field.label));
        for (const Meaning& each : m_field.meanings)
            m_meanings->addItem(each.name);
        grid.addWidget(m_meanings, row, 2);
        connect(m_meanings, &QComboBox::currentIndexChanged, this, &FieldLine::changeMeaning);
    }
    connect(m_number, &NumberField::numberTyped, this, &FieldLine::read);
    // A text that cannot be read is no number, and so is not told as one.
    connect(m_number, &QLineEdit::textEdited, this, [this] {
        if (m_number->problem().isEmpty())
            return;
        m_typed.reset();
        refuse(m_number->problem());
        emit changed();
    });
    m_number->showNumber(meaning().example, meaning().example);
    read(meaning().example);
}

const Meaning& FieldLine::meaning() const { return m_field.meanings.at(m_meanings ? std::size_t(m_meanings->currentIndex()) : 0); }

void FieldLine::read(std::optional<double> number)
{
    m_typed.reset();
    if (!number) {
        refuse(tr("Write a number here, such as %1.").arg(m_number->placeholderText()));
    } else if (const auto taken = meaning().take(*number)) {
        m_typed = *taken;
        refuse({});
    } else {
        refuse(translated(taken.error()));
    }
    emit changed();
}

/// What was meant stays, and is written in the new way; only what has no such number makes room for one.
void FieldLine::changeMeaning()
{
    const auto number = m_typed ? meaning().numberFor(*m_typed) : std::nullopt;
    m_number->showNumber(std::nullopt, meaning().example);
    m_number->showNumber(number, meaning().example);
    read(number);
}

void FieldLine::refuse(const QString& why)
{
    m_fault->setText(why);
    m_number->setAccessibleDescription(why);
}

void FieldLine::takeFocus()
{
    m_number->setFocus(Qt::OtherFocusReason);
    m_number->selectAll();
}

void FieldLine::fitToFont(int height)
{
    m_number->setMinimumHeight(height);
    m_number->setFixedWidth(m_number->fontMetrics().horizontalAdvance(QStringLiteral("000000.00 mL")));
    if (m_meanings)
        m_meanings->setMinimumHeight(height);
}

}  // namespace firn::app
