#include "bench/scale_panel.h"

#include "bench/amount_question.h"
#include "bench/batch_wording.h"
#include "bench/field_grid.h"
#include "bench/ink_label.h"
#include "bench/scale_preview.h"
#include "bench/typed_text.h"
#include "bench/undo_shortcut.h"
#include "document/scale_edits.h"
#include "document/typed_sizes.h"
#include "gauges/palette.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <algorithm>
#include <array>
#include <initializer_list>

namespace firn::app {

namespace {

// Resolutions of kitchen scales (common practice, no source).
constexpr std::array scaleSteps{Grams{0.01}, Grams{0.1}, Grams{1.0}, Grams{2.0}, Grams{5.0}, Grams{}};
constexpr int usualScaleStep = 2;

// What a wet finger still hits.
constexpr double smallestTarget_px = 24.0;

void nameChoice(const QString& label, QComboBox& choice, const QString& objectName)
{
    choice.setObjectName(objectName);
    choice.setAccessibleName(label);
}

std::string typedIn(const QLineEdit* edit) { return edit->text().toStdString(); }

InkLabel* sentenceLabel(const QString& objectName)
{
    auto* label = new InkLabel(InkLabel::Plain);
    label->setObjectName(objectName);
    return label;
}

}  // namespace

ScalePanel::ScalePanel(Document& document, QWidget* parent)
    : QWidget(parent)
    , m_document(document)
    , m_form(new FieldGrid)
    , m_way(new QComboBox)
    , m_ingredient(new QComboBox)
    , m_scaleStep(new QComboBox)
    , m_spoonFractions(new QCheckBox(tr("round cups, spoons, jugs and pieces")))
    , m_preview(new ScalePreview)
    , m_result(sentenceLabel(QStringLiteral("scaleResult")))
    , m_sentence(sentenceLabel(QStringLiteral("scaleSentence")))
    , m_question(new AmountQuestion(*this, this))
    , m_apply(new QPushButton(tr("Scale recipe")))
{
    m_way->addItems({tr("a factor"), tr("a total mass"), tr("a finished volume"), tr("portions"), tr("a pan"),
        tr("amount available of one ingredient")});
    addChoice(tr("Scale to"), m_way, QStringLiteral("scaleWay"));
    m_factor = addField(Way::Factor, tr("Factor"), QStringLiteral("scaleFactor"), figure(1.5, 1));
    m_mass = addField(Way::Mass, tr("Total mass"), QStringLiteral("scaleMass"), tr("2 kg"), Unit::Gram);
    m_volume = addField(Way::Volume, tr("Finished volume"), QStringLiteral("scaleVolume"), tr("3 L"), Unit::Millilitre);
    m_portions = addField(Way::Portions, tr("Portions"), QStringLiteral("scalePortions"), QStringLiteral("24"));
    m_portion = addField(Way::Portions, tr("Portion size"), QStringLiteral("scalePortion"), tr("60 g or 80 mL"), Unit::Gram);
    m_length = newField(Way::Pan, tr("Inner length"), QStringLiteral("scaleLength"), tr("30 cm"));
    m_width = newField(Way::Pan, tr("Inner width"), QStringLiteral("scaleWidth"), tr("20 cm"));
    auto* inside = inOneRow({m_length, new QLabel(QStringLiteral("×")), m_width});
    m_form->addRow(tr("Inside (length × width)"), inside);
    for (auto side = m_fields.end() - 2; side != m_fields.end(); ++side)
        side->row = inside;
    m_depth = addField(Way::Pan, tr("Fill depth"), QStringLiteral("scaleDepth"), tr("2 cm"));
    addChoice(tr("Ingredient"), m_ingredient, QStringLiteral("scaleIngredient"));
    m_available = addField(Way::Ingredient, tr("Available"), QStringLiteral("scaleAvailable"), tr("740 g"), Unit::Gram);
    for (const Grams step : scaleSteps)
        m_scaleStep->addItem(step.value > 0.0 ? typedText(step.value, tr("g")) : tr("no rounding"));
    m_scaleStep->setCurrentIndex(usualScaleStep);
    m_scaleStep->setToolTip(tr("Below 10 g, and where this step would be off by more than 2 %, weights go to a tenth of a gram."));
    nameChoice(tr("Round weights to"), *m_scaleStep, QStringLiteral("scaleStep"));
    m_spoonFractions->setObjectName(QStringLiteral("scaleSpoons"));
    m_spoonFractions->setChecked(true);
    m_apply->setObjectName(QStringLiteral("scaleApply"));
    layOut();

    connect(m_way, &QComboBox::currentIndexChanged, this, &ScalePanel::showFieldsOfWay);
    for (QComboBox* choice : {m_ingredient, m_scaleStep})
        connect(choice, &QComboBox::currentIndexChanged, this, &ScalePanel::preview);
    connect(m_spoonFractions, &QCheckBox::toggled, this, &ScalePanel::preview);
    connect(m_apply, &QPushButton::clicked, this, &ScalePanel::apply);
    connect(m_question, &AmountQuestion::chosen, this, &ScalePanel::answer);
    connect(&document, &Document::changed, this, &ScalePanel::showIngredients);
    showFieldsOfWay();
}

QLineEdit* ScalePanel::addField(Way way, const QString& label, const QString& objectName, const QString& example, UsualUnit unit)
{
    QLineEdit* edit = newField(way, label, objectName, example, unit);
    m_form->addRow(label, edit);
    return edit;
}

QLineEdit* ScalePanel::newField(Way way, const QString& name, const QString& objectName, const QString& example, UsualUnit unit)
{
    auto* edit = new QLineEdit;
    edit->setObjectName(objectName);
    edit->setAccessibleName(name);
    edit->setPlaceholderText(example);
    edit->setAlignment(Qt::AlignRight);
    edit->setAcceptDrops(false);
    // Enter scales from here, so the next undo must take that back, not the letters.
    leaveUndoToWindow(*edit);
    m_fields.push_back({way, edit, edit, unit});
    connect(edit, &QLineEdit::textChanged, this, &ScalePanel::preview);
    connect(edit, &QLineEdit::returnPressed, this, &ScalePanel::apply);
    return edit;
}

void ScalePanel::addChoice(const QString& label, QComboBox* choice, const QString& objectName)
{
    nameChoice(label, *choice, objectName);
    // A long ingredient must not widen the window.
    choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    choice->setMinimumContentsLength(8);
    m_form->addRow(label, choice);
}

void ScalePanel::layOut()
{
    m_form->setHorizontalSpacing(closeSpace);
    m_form->setVerticalSpacing(gridStep);
    m_form->addRow(m_scaleStep->accessibleName(), inOneRow({m_scaleStep, m_spoonFractions}));
    auto* asked = new QVBoxLayout;
    asked->setSpacing(closeSpace);
    asked->addLayout(m_form);
    asked->addWidget(m_apply, 0, Qt::AlignLeft);
    asked->addStretch();
    auto* made = new QVBoxLayout;
    made->setSpacing(closeSpace);
    made->addWidget(m_result);
    made->addWidget(m_sentence);
    made->addWidget(m_question, 0, Qt::AlignLeft);
    made->addWidget(m_preview, 1);
    made->addStretch();
    // Side by side, since the panel has little height at the foot of the window.
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(groupSpace);
    layout->addLayout(asked);
    layout->addLayout(made, 1);
    fitToFont();
}

void ScalePanel::fitToFont()
{
    m_result->setFont(titleFont(font()));
    const int target = qRound(besideText(font(), smallestTarget_px));
    for (const Field& field : m_fields)
        field.edit->setMinimumHeight(target);
    for (QWidget* widget : std::initializer_list<QWidget*>{m_way, m_ingredient, m_scaleStep, m_spoonFractions, m_apply})
        widget->setMinimumHeight(target);
}

void ScalePanel::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    showIngredients();
}

void ScalePanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        fitToFont();
}

void ScalePanel::goToField()
{
    const auto first = std::ranges::find(m_fields, way(), &Field::way);
    first->edit->setFocus(Qt::ShortcutFocusReason);
    first->edit->selectAll();
}

ScalePanel::Way ScalePanel::way() const { return Way(m_way->currentIndex()); }

void ScalePanel::showFieldsOfWay()
{
    for (const Field& field : m_fields)
        m_form->setRowVisible(field.row, field.way == way());
    m_form->setRowVisible(m_ingredient, way() == Way::Ingredient);
    preview();
}

void ScalePanel::showIngredients()
{
    // Nobody looks while it is hidden, and scrubbing an amount should not wait for it.
    if (!isVisible())
        return;
    {
        const QSignalBlocker blocker(m_ingredient);
        const int chosen = std::max(0, m_ingredient->currentIndex());
        m_ingredient->clear();
        m_ingredientRows.clear();
        const auto& components = m_document.analysis().components;
        for (std::size_t component = 0; component < components.size(); ++component) {
            for (std::size_t row = 0; row < components[component].size(); ++row) {
                m_ingredient->addItem(QString::fromStdString(components[component][row].text));
                m_ingredientRows.push_back({component, row});
            }
        }
        m_ingredient->setCurrentIndex(std::min(chosen, m_ingredient->count() - 1));
    }
    preview();
}

bool ScalePanel::isFilledIn() const
{
    return std::ranges::all_of(
        m_fields, [this](const Field& field) { return field.way != way() || !field.edit->text().trimmed().isEmpty(); });
}

Result<BatchSize> ScalePanel::wanted() const
{
    switch (way()) {
    case Way::Factor:
        return factorFromText(typedIn(m_factor)).map([](double factor) -> BatchSize { return ByFactor{factor}; });
    case Way::Mass:
        return massFromText(typedIn(m_mass)).map([](Grams mass) -> BatchSize { return ByMass{mass}; });
    case Way::Volume:
        return volumeFromText(typedIn(m_volume)).map([](Millilitres volume) -> BatchSize { return ByVolume{volume}; });
    case Way::Portions: {
        const auto count = countFromText(typedIn(m_portions));
        if (!count)
            return failure(count.error());
        return portionFromText(typedIn(m_portion)).map([&count](const auto& each) -> BatchSize {
            return ByPortions{*count, each};
        });
    }
    case Way::Pan: {
        const auto length = lengthFromText(typedIn(m_length));
        const auto width = lengthFromText(typedIn(m_width));
        const auto depth = lengthFromText(typedIn(m_depth));
        for (const auto* side : {&length, &width, &depth}) {
            if (!*side)
                return failure(side->error());
        }
        return ByPan{*length, *width, *depth};
    }
    case Way::Ingredient:
        break;
    }
    // Without any row, this is past the end, and core says what to do.
    const auto chosen = std::size_t(std::max(0, m_ingredient->currentIndex()));
    const RowPlace place = chosen < m_ingredientRows.size() ? m_ingredientRows[chosen] : RowPlace{};
    return massFromText(typedIn(m_available)).map([&place](Grams available) -> BatchSize {
        return ByIngredient{place.component, place.row, available};
    });
}

void ScalePanel::preview()
{
    if (!isVisible())
        return;
    m_batch.reset();
    if (!isFilledIn()) {
        say(tr("Enter the amount you want to see the scaled batch."), InkLabel::Quiet);
    } else {
        const Rounding rounding{scaleSteps.at(std::size_t(m_scaleStep->currentIndex())), m_spoonFractions->isChecked()};
        const auto batch = wanted().and_then([&](const BatchSize& size) {
            return batchOf(size, rounding, m_document.recipe(), m_document.catalogue(), m_document.component());
        });
        if (batch) {
            m_batch = *batch;
            say(roundingText(*batch, m_document.recipe(), m_document.component()), InkLabel::Plain);
        } else {
            say(translated(batch.error()), InkLabel::Caution);
        }
    }
    m_result->setText(m_batch ? batchText(*m_batch) : QString());
    m_preview->show(m_batch ? m_batch->rows : std::vector<BatchRow>(), m_document.recipe());
    m_apply->setEnabled(m_batch.has_value());
    ask();
}

/// What the first amount means that may mean two.
void ScalePanel::ask()
{
    for (const Field& field : m_fields) {
        const auto choices =
            field.way == way() && field.unit ? choicesFor(field.edit->text(), *field.unit) : std::vector<AmountChoice>();
        if (choices.empty())
            continue;
        m_asked = field.edit;
        m_question->ask(choices);
        return;
    }
    m_question->ask({});
}

void ScalePanel::answer(const QString& text)
{
    m_asked->setText(text);
    m_asked->setFocus();
}

void ScalePanel::say(const QString& sentence, InkLabel::Ink ink)
{
    m_sentence->setText(sentence);
    m_sentence->setInk(ink);
}

void ScalePanel::apply()
{
    if (!m_batch)
        return;
    const Recipe scaledRecipe = m_batch->recipe;
    // A button that is switched off hands the focus on, perhaps to the notebook, where undo means letters.
    goToField();
    // A factor would multiply once more at the next Enter; the other sizes are reached by now.
    m_factor->clear();
    scaleRecipe(m_document, scaledRecipe);
}

}  // namespace firn::app
