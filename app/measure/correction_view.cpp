#include "measure/correction_view.h"

#include "bench/fields.h"
#include "document/measure_edits.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "measure/choice_table.h"
#include "measure/measure_wording.h"
#include "teach/figure_link.h"

#include <QComboBox>
#include <QEvent>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace firn::app {

namespace {

constexpr int mostCausesSeen = 3;
const QString addedFigure = QStringLiteral("correction.added_g");

QString oneText(const std::vector<Sentence>& sentences)
{
    QStringList all;
    for (const Sentence& sentence : sentences)
        all << translated(sentence);
    return all.join(u' ');
}

}  // namespace

CorrectionView::CorrectionView(Document& document, QWidget* parent)
    : QWidget(parent)
    , m_document(document)
    , m_plan(failure(Sentence{}))
    , m_subject(choiceOf(QStringLiteral("subject"), tr("What to correct"), {tr("Correct this batch"), tr("Correct the recipe")}))
    , m_target(fieldFor(QStringLiteral("target"), tr("Target"), QString(), {}, {0.0, 100.0}))
    , m_targetKind(choiceOf(
          QStringLiteral("targetKind"), tr("Unit of the target"), {tr("% sugars by mass"), tr("°Bx on a refractometer at 20 °C")}))
    , m_diagnosis(plainLabel(QStringLiteral("diagnosis")))
    , m_causes(new QListWidget)
    , m_apply(new QPushButton(tr("Apply to the &recipe")))
    , m_choices(choiceTable())
    , m_add(new QPushButton(tr("&Add")))
    , m_why(new FigureLink(tr("Explain this amount"), addedFigure))
    , m_effects(plainLabel(QStringLiteral("effects")))
    , m_besides(plainLabel(QStringLiteral("besides")))
{
    m_causes->setObjectName(QStringLiteral("causes"));
    m_causes->setAccessibleName(tr("Possible explanations"));
    m_causes->setWordWrap(true);
    m_causes->setSpacing(gridStep / 2);
    for (InkLabel* quiet : {m_effects, m_besides})
        quiet->setInk(InkLabel::Quiet);
    m_apply->setObjectName(QStringLiteral("applyCause"));
    m_add->setObjectName(QStringLiteral("addChoice"));
    for (QPushButton* button : {m_apply, m_add})
        button->setMinimumHeight(m_targetKind->minimumHeight());
    layOut();
    connect(m_target, &QLineEdit::textChanged, this, &CorrectionView::plan);
    connect(m_targetKind, &QComboBox::currentIndexChanged, this, [this] {
        m_target->forget();
        showUsualTarget();
        plan();
    });
    connect(m_subject, &QComboBox::currentIndexChanged, this, &CorrectionView::plan);
    connect(m_causes, &QListWidget::currentRowChanged, this, &CorrectionView::enableApplying);
    connect(m_apply, &QPushButton::clicked, this, &CorrectionView::applyChosen);
    connect(m_add, &QPushButton::clicked, this, &CorrectionView::addChosen);
    connect(m_why, &FigureLink::chosen, this, &CorrectionView::explainChosen);
    connect(m_choices, &QTableWidget::itemSelectionChanged, this, &CorrectionView::showEffects);
    connect(m_choices, &QTableWidget::activated, this, &CorrectionView::addChosen);
}

void CorrectionView::layOut()
{
    auto* wanted = new QHBoxLayout;
    wanted->setSpacing(closeSpace);
    wanted->addWidget(titleLabel(tr("Correct the mix")));
    wanted->addSpacing(groupSpace);
    wanted->addWidget(m_subject);
    wanted->addWidget(new QLabel(tr("Target")));
    wanted->addWidget(m_target);
    wanted->addWidget(m_targetKind);
    wanted->addStretch();
    auto* why = new QHBoxLayout;
    why->addWidget(m_causes, 1);
    why->addWidget(m_apply, 0, Qt::AlignTop);
    auto* adding = new QHBoxLayout;
    adding->addWidget(m_effects, 1);
    adding->addWidget(m_why, 0, Qt::AlignTop | Qt::AlignRight);
    adding->addWidget(m_add, 0, Qt::AlignTop | Qt::AlignRight);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addLayout(wanted);
    layout->addWidget(m_diagnosis);
    layout->addLayout(why);
    layout->addWidget(m_choices, 1);
    layout->addLayout(adding);
    layout->addWidget(m_besides);
}

void CorrectionView::show(const Measuring& measuring, const std::optional<MeasuredState>& measured, bool isRefused)
{
    m_measuring = measuring;
    m_isRefused = isRefused;
    m_measured = measured;
    showUsualTarget();
    plan();
}

StrengthTarget CorrectionView::target() const
{
    if (m_targetKind->currentIndex() == 1)
        return BrixTarget{m_target->number().value_or(m_measuring.refractometer_brix.value_or(0.0))};
    return SugarsTarget{m_target->number() ? fromPercent(*m_target->number()) : m_measuring.sugar};
}

Corrected CorrectionView::subject() const { return m_subject->currentIndex() == 1 ? Corrected::Recipe : Corrected::Batch; }

void CorrectionView::forgetTarget() { m_target->forget(); }

/// The recipe's own strength, to a tenth.
void CorrectionView::showUsualTarget()
{
    const bool isBrix = m_targetKind->currentIndex() == 1;
    m_target->setPlaceholderText(m_measuring.computed.isEmpty() ? QString()
                                 : isBrix                       ? figure(m_measuring.refractometer_brix.value_or(0.0), 1)
                                                                : figure(percent(m_measuring.sugar), 1));
}

void CorrectionView::plan()
{
    if (m_target->problem().isEmpty()) {
        const auto planFor = [this](const MeasuredState& measured, Corrected what) {
            return corrections(m_document.recipe(), m_document.catalogue(), m_document.component(), measured, target(), what);
        };
        auto ofBatch = planFor(m_measured.value_or(MeasuredState{}), Corrected::Batch);
        m_causesFound = ofBatch ? ofBatch->causes : std::vector<Cause>{};
        m_diagnosis->setText(m_isRefused ? tr("Correct the reading first. Until then this starts from the recipe.")
                             : ofBatch   ? translated(ofBatch->diagnosis)
                                         : translated(ofBatch.error()));
        // The reading is about this batch; the recipe is brought to the target as it is written.
        m_plan = subject() == Corrected::Recipe ? planFor({}, Corrected::Recipe) : std::move(ofBatch);
    } else {
        m_diagnosis->setText(m_target->problem());
    }
    m_diagnosis->setInk(m_plan && m_target->problem().isEmpty() ? InkLabel::Plain : InkLabel::Caution);
    showCauses();
    showChoices();
    QStringList besides;
    if (m_plan)
        besides << oneText(m_plan->cautions) << oneText(m_plan->leftOut);
    besides.removeAll(QString());
    m_besides->setText(besides.join(u'\n'));
}

void CorrectionView::showCauses()
{
    calm(*m_causes);
    const int before = m_causes->currentRow();
    m_causes->clear();
    for (const Cause& cause : m_causesFound)
        m_causes->addItem(translated(cause.sentence));
    const int count = m_causes->count();
    m_causes->setVisible(count > 0);
    m_apply->setVisible(count > 0);
    m_causes->setCurrentRow(std::clamp(before, 0, std::max(0, count - 1)));
    int height = 2 * m_causes->frameWidth();
    for (int row = 0; row < std::min(count, mostCausesSeen); ++row)
        height += m_causes->sizeHintForRow(row) + 2 * m_causes->spacing();
    m_causes->setFixedHeight(height);
    enableApplying();
}

void CorrectionView::showChoices()
{
    const QSignalBlocker quietly(m_choices);
    calm(*m_choices);
    fillChoices(*m_choices, m_plan ? &*m_plan : nullptr);
    showEffects();
}

std::optional<std::size_t> CorrectionView::chosen() const
{
    const auto choice = chosenIn(*m_choices);
    return m_plan && choice && *choice < m_plan->choices.size() ? choice : std::nullopt;
}

void CorrectionView::showEffects()
{
    const auto choice = chosen();
    m_effects->setText(choice ? oneText(m_plan->choices[*choice].effects) : QString());
    m_add->setEnabled(choice.has_value());
    m_why->setVisible(choice.has_value());
    const QString verb = subject() == Corrected::Recipe ? tr("&Change the recipe") : tr("&Add to this batch");
    m_add->setText(
        choice ? tr("%1: %2", "a button: what it does, and how many grams").arg(verb, gramsText(m_plan->choices[*choice].added))
               : verb);
}

void CorrectionView::enableApplying()
{
    const int row = m_causes->currentRow();
    m_apply->setEnabled(row >= 0 && std::size_t(row) < m_causesFound.size() && !m_causesFound[std::size_t(row)].rows.empty());
}

void CorrectionView::applyChosen()
{
    const int row = m_causes->currentRow();
    if (row < 0 || std::size_t(row) >= m_causesFound.size())
        return;
    const Cause cause = m_causesFound[std::size_t(row)];
    applyCause(m_document, m_document.component(), cause);
    emit recipeChanged(
        tr("Recipe corrected: %1 The additions below start from the corrected recipe.").arg(translated(cause.sentence)));
}

void CorrectionView::explainChosen()
{
    const auto index = chosen();
    if (!index)
        return;
    Workings workings;
    workings.of(addedFigure.toStdString()).add(m_plan->choices[*index].working.steps());
    emit derivationWanted(addedFigure, workings);
}

void CorrectionView::addChosen()
{
    const auto index = chosen();
    if (!index)
        return;
    const CorrectionChoice choice = m_plan->choices[*index];
    if (subject() == Corrected::Recipe)
        changeRecipe(choice);
    else
        emit batchCorrected(choice, m_plan->nowFigures.sugars);
}

void CorrectionView::changeRecipe(const CorrectionChoice& choice)
{
    const QString from = percentText(m_plan->nowFigures.sugars);
    m_target->forget();  // it is the recipe's own from now on
    addToRecipe(m_document, m_document.component(), choice);
    emit recipeChanged(
        tr("The recipe has %1 more of %2: from %3 to %4 sugars. The batch that is made already is not changed by that.")
            .arg(gramsText(choice.added), QString::fromStdString(choice.name), from,
                percentText(m_document.analysis().shares.sugars)));
}

void CorrectionView::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        plan();
}

}  // namespace firn::app
