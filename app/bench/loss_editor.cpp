#include "bench/loss_editor.h"

#include "analysis/steps.h"
#include "bench/number_field.h"
#include "bench/typed_text.h"
#include "document/step_numbers.h"
#include "gauges/type_and_space.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>

namespace firn::app {

namespace {

/// Zero stands in quiet ink, so that an emptied field stays empty while something else is typed.
void showAmount(NumberField& field, double amount) { field.showNumber(amount == 0.0 ? std::nullopt : std::optional(amount), 0.0); }

template <class Kind>
constexpr int indexOf = int(Loss(Kind{}).index());

}  // namespace

LossEditor::LossEditor(QWidget* parent)
    : QWidget(parent)
    , m_kind(new QComboBox)
    , m_row(new QComboBox)
    , m_grams(new NumberField(gramsFromText, [](double mass_g) { return typedText(mass_g, tr("g")); }))
    , m_brix(new NumberField(brixFromText, [](double brix) { return typedText(brix, tr("°Bx")); }))
    , m_soaking(new NumberField(soakingFromText, [](double soaking) { return typedText(soaking, tr("g per g")); }))
    , m_extracted(new NumberField(extractedFromText, [](double share) { return typedText(share, QStringLiteral("%")); }))
    , m_steeping(new QWidget)
{
    // In the order of the kinds of Loss.
    m_kind->addItems({tr("nothing"), tr("held back"), tr("steeped row"), tr("boiled to g"), tr("boiled to °Bx")});
    m_kind->setObjectName(QStringLiteral("loss"));
    m_row->setObjectName(QStringLiteral("steepedRow"));
    m_grams->setObjectName(QStringLiteral("lossGrams"));
    m_brix->setObjectName(QStringLiteral("lossBrix"));
    m_soaking->setObjectName(QStringLiteral("soaksUp"));
    m_extracted->setObjectName(QStringLiteral("extracted"));
    m_row->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_row->setMinimumContentsLength(10);

    auto* first = new QHBoxLayout;
    for (QWidget* field : QList<QWidget*>{m_kind, m_grams, m_brix})
        first->addWidget(field);
    first->addWidget(m_row, 1);
    first->addStretch();
    auto* second = new QHBoxLayout(m_steeping);
    second->setContentsMargins(0, 0, 0, 0);
    second->addWidget(new QLabel(tr("soaks up")));
    second->addWidget(m_soaking);
    second->addWidget(new QLabel(tr("extracted")));
    second->addWidget(m_extracted);
    second->addStretch();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(gridStep);
    layout->addLayout(first);
    layout->addWidget(m_steeping);

    connect(m_kind, &QComboBox::activated, this, &LossEditor::chooseKind);
    connect(m_row, &QComboBox::activated, this, [this](int row) {
        auto steeped = std::get<Steeped>(m_loss);
        steeped.ingredient = m_row->itemData(row).toString().toStdString();
        emit lossChosen(steeped);
    });
    connect(m_grams, &NumberField::numberTyped, this, [this](std::optional<double> number) {
        const Grams mass{number.value_or(0.0)};
        emit lossTyped(std::holds_alternative<HeldBack>(m_loss) ? Loss(HeldBack{mass}) : Loss(BoiledToMass{mass}));
    });
    connect(m_brix, &NumberField::numberTyped, this,
        [this](std::optional<double> number) { emit lossTyped(BoiledToBrix{number.value_or(0.0)}); });
    const auto takeSteeped = [this](NumberField* field, double Steeped::*member) {
        connect(field, &NumberField::numberTyped, this, [this, member](std::optional<double> number) {
            auto steeped = std::get<Steeped>(m_loss);
            steeped.*member = number.value_or(0.0);
            emit lossTyped(steeped);
        });
    };
    takeSteeped(m_soaking, &Steeped::soaksUp_gPerG);
    takeSteeped(m_extracted, &Steeped::extracted_percent);
    for (NumberField* field : numbers()) {
        field->setFixedWidth(field->fontMetrics().horizontalAdvance(QStringLiteral("00.00 g per g0")));
        connect(field, &QLineEdit::textChanged, this, &LossEditor::textChanged);
        connect(field, &NumberField::typingFinished, this, &LossEditor::typingFinished);
    }
    m_soaking->setToolTip(
        tr("Liquid that goes out with each gram. Coffee grounds hold about twice their weight (common practice, no source)."));
    m_extracted->setToolTip(tr("Of what in it can dissolve, the part that stays in the mix."));
    showFields();
}

QList<NumberField*> LossEditor::numbers() const { return {m_grams, m_brix, m_soaking, m_extracted}; }

QList<QWidget*> LossEditor::fields() const { return {m_kind, m_grams, m_brix, m_row, m_soaking, m_extracted}; }

QString LossEditor::problem() const
{
    for (const NumberField* field : numbers())
        if (field->isVisibleTo(this) && !field->problem().isEmpty())
            return field->problem();
    return {};
}

void LossEditor::show(const Loss& loss, const Component& component, const Catalogue& catalogue, Grams massNow)
{
    m_loss = loss;
    m_massNow = massNow;
    m_kind->setCurrentIndex(int(loss.index()));
    m_likelySteeped = int(likelySteepedRow(component, catalogue).value_or(0));
    m_row->clear();
    for (const Row& row : component.rows) {
        const Ingredient* ingredient = catalogue.find(row.ingredient);
        m_row->addItem(
            QString::fromStdString(ingredient ? ingredient->name : row.ingredient), QString::fromStdString(row.ingredient));
    }
    if (const auto* held = std::get_if<HeldBack>(&loss))
        showAmount(*m_grams, held->mass.value);
    if (const auto* boiled = std::get_if<BoiledToMass>(&loss))
        showAmount(*m_grams, boiled->mass.value);
    if (const auto* boiled = std::get_if<BoiledToBrix>(&loss))
        showAmount(*m_brix, boiled->brix);
    if (const auto* steeped = std::get_if<Steeped>(&loss)) {
        const QString name = QString::fromStdString(steeped->ingredient);
        m_row->setPlaceholderText(name);
        m_row->setCurrentIndex(m_row->findData(name));
        showAmount(*m_soaking, steeped->soaksUp_gPerG);
        showAmount(*m_extracted, steeped->extracted_percent);
    }
    showFields();
}

void LossEditor::chooseKind(int kind)
{
    if (kind == int(m_loss.index()))
        return;
    const Loss choices[] = {Loss(), HeldBack{}, Steeped{}, BoiledToMass{m_massNow}, BoiledToBrix{}};
    Loss chosen = choices[kind];
    if (auto* steeped = std::get_if<Steeped>(&chosen))
        *steeped = {m_row->itemData(m_likelySteeped).toString().toStdString(), usualSoaking_gPerG, usualExtraction_percent};
    emit lossChosen(chosen);
}

void LossEditor::showFields()
{
    const int kind = int(m_loss.index());
    m_grams->setVisible(kind == indexOf<HeldBack> || kind == indexOf<BoiledToMass>);
    m_brix->setVisible(kind == indexOf<BoiledToBrix>);
    m_row->setVisible(kind == indexOf<Steeped>);
    m_steeping->setVisible(kind == indexOf<Steeped>);
}

}  // namespace firn::app
