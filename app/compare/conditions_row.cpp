#include "compare/conditions_row.h"

#include "bench/fields.h"
#include "gauges/type_and_space.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>

namespace firn::app {

namespace {

constexpr double usualPortion_g = 80.0;

}  // namespace

ConditionsRow::ConditionsRow(QWidget* parent)
    : QWidget(parent)
    , m_basis(choiceOf(
          QStringLiteral("basis"), tr("What the masses are of"), {tr("in 100 g"), tr("in the whole batch"), tr("in a portion")}))
    , m_portion(fieldFor(QStringLiteral("portion"), tr("Mass of a portion"), tr("g"), usualPortion_g, {0.1, largestAmount}))
    , m_serving(degreesFieldFor(QStringLiteral("servingAll"), tr("Serving temperature for all")))
{
    m_portion->hide();
    m_serving->setPlaceholderText(tr("as each says"));
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(new QLabel(tr("Masses")));
    layout->addWidget(m_basis);
    layout->addWidget(m_portion);
    layout->addSpacing(groupSpace);
    layout->addWidget(new QLabel(tr("Served at")));
    layout->addWidget(m_serving);
    connect(m_basis, &QComboBox::currentIndexChanged, this, [this](int index) {
        m_portion->setVisible(index == Basis::Portion);
        emit changed();
    });
    for (NumberField* field : {m_portion, m_serving})
        connect(field, &QLineEdit::textChanged, this, &ConditionsRow::changed);
}

Basis ConditionsRow::basis() const
{
    return {static_cast<Basis::Per>(m_basis->currentIndex()), {m_portion->number().value_or(usualPortion_g)}};
}

std::optional<Celsius> ConditionsRow::serveAt() const
{
    return m_serving->number() && m_serving->problem().isEmpty() ? std::optional(Celsius{*m_serving->number()}) : std::nullopt;
}

}  // namespace firn::app
