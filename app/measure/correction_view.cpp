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
    , m_plan(failure({}))
    , m_target(fieldFor(QStringLiteral("target"), tr("What the mix shall have"), QString(), {}, {0.0, 100.0}))
    , m_targetKind(choiceOf(QStringLiteral("targetKind"), tr("Unit of what the mix shall have"),
          {tr("% sugars by mass"), tr("°Bx on a refractometer at 20 °C")}))
    , m_diagnosis(plainLabel(QStringLiteral("diagnosis")))
    , m_causes(new QListWidget)
    , m_putRight(new QPushButton(tr("&Put the recipe right")))
    , m_choices(choiceTable())
    , m_add(new QPushButton(tr("&Add")))
    , m_why(new FigureLink(tr("How these grams come about"), addedFigure))
    , m_effects(plainLabel(QStringLiteral("effects")))
    , m_besides(plainLabel(QStringLiteral("besides")))
{
    m_causes->setObjectName(QStringLiteral("causes"));
    m_causes->setAccessibleName(tr("What would explain the reading"));
    m_causes->setWordWrap(true);
    m_causes->setSpacing(gridStep / 2);
    for (InkLabel* quiet : {m_effects, m_besides})
        quiet->setInk(InkLabel::Quiet);
    m_putRight->setObjectName(QStringLiteral("putRight"));
    m_add->setObjectName(QStringLiteral("addChoice"));
    for (QPushButton* button : {m_putRight, m_add})
        button->setMinimumHeight(m_targetKind->minimumHeight());
    layOut();
    connect(m_target, &QLineEdit::textChanged, this, &CorrectionView::plan);
    connect(m_targetKind, &QComboBox::currentIndexChanged, this, [this] {
        m_target->forget();
        showUsualTarget();
        plan();
    });
    connect(m_putRight, &QPushButton::clicked, this, &CorrectionView::putRightChosen);
    connect(m_add, &QPushButton::clicked, this, &CorrectionView::addChosen);
    connect(m_why, &FigureLink::chosen, this, &CorrectionView::explainChosen);
    connect(m_choices, &QTableWidget::itemSelectionChanged, this, &CorrectionView::showEffects);
    connect(m_choices, &QTableWidget::activated, this, &CorrectionView::addChosen);
}

void CorrectionView::layOut()
{
    auto* wanted = new QHBoxLayout;
    wanted->setSpacing(closeSpace);
    wanted->addWidget(titleLabel(tr("Put it right")));
    wanted->addSpacing(groupSpace);
    wanted->addWidget(new QLabel(tr("The mix shall have")));
    wanted->addWidget(m_target);
    wanted->addWidget(m_targetKind);
    wanted->addStretch();
    auto* why = new QHBoxLayout;
    why->addWidget(m_causes, 1);
    why->addWidget(m_putRight, 0, Qt::AlignTop);
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

void CorrectionView::show(const Measuring& measuring, const std::optional<MeasuredState>& measured)
{
    m_measuring = measuring;
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
    if (m_target->problem().isEmpty())
        m_plan = corrections(
            m_document.recipe(), m_document.catalogue(), m_document.component(), m_measured.value_or(MeasuredState{}), target());
    m_diagnosis->setText(!m_target->problem().isEmpty() ? m_target->problem()
                         : m_plan                       ? translated(m_plan->diagnosis)
                                                        : translated(m_plan.error()));
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
    if (m_plan)
        for (const Cause& cause : m_plan->causes)
            m_causes->addItem(translated(cause.sentence));
    const int count = m_causes->count();
    m_causes->setVisible(count > 0);
    m_putRight->setVisible(count > 0);
    m_causes->setCurrentRow(std::clamp(before, 0, std::max(0, count - 1)));
    int height = 2 * m_causes->frameWidth();
    for (int row = 0; row < std::min(count, mostCausesSeen); ++row)
        height += m_causes->sizeHintForRow(row) + 2 * m_causes->spacing();
    m_causes->setFixedHeight(height);
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
    m_add->setText(choice ? tr("&Add %1").arg(gramsText(m_plan->choices[*choice].added)) : tr("&Add"));
}

void CorrectionView::putRightChosen()
{
    const int row = m_causes->currentRow();
    if (!m_plan || row < 0 || std::size_t(row) >= m_plan->causes.size())
        return;
    const Cause cause = m_plan->causes[std::size_t(row)];
    putRight(m_document, m_document.component(), cause);
    emit recipePutRight(
        tr("The recipe is put right: %1 What can be added is reckoned from there.").arg(translated(cause.sentence)));
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
    const QString from = percentText(m_plan->nowFigures.sugars), to = percentText(choice.after.sugars);
    const bool isMeasured = m_measured.has_value();
    // What was wanted is reached; the recipe need not say so where it does not say what was measured.
    m_target->forget();
    addChoice(m_document, m_document.component(), choice);
    const QString what = tr("Added %1 of %2").arg(gramsText(choice.added), QString::fromStdString(choice.name));
    const QString computed = percentText(m_document.analysis().shares.sugars);
    emit choiceAdded(isMeasured && computed != to ? tr(
                         "%1: from %2 as measured to %3 sugars. By the recipe it is %4; read again when all is mixed and cool.")
                                                        .arg(what, from, to, computed)
                                                  : tr("%1: from %2 to %3 sugars.").arg(what, from, to));
}

void CorrectionView::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        plan();
}

}  // namespace firn::app
