#include "bench/step_row.h"

#include "bench/live_field.h"
#include "bench/loss_editor.h"
#include "bench/number_field.h"
#include "bench/tool_tip.h"
#include "bench/typed_text.h"
#include "bench/undo_shortcut.h"
#include "document/step_edits.h"
#include "document/step_numbers.h"
#include "document/typed_edit.h"
#include "gauges/palette.h"
#include "gauges/wording.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QToolButton>

namespace firn::app {

namespace {

/// A field that may be empty, and says nothing then.
void showOptional(NumberField& field, std::optional<double> number)
{
    field.showNumber(number, 0.0);
    field.setPlaceholderText({});
}

}  // namespace

StepRow::StepRow(Document& document, std::size_t component, std::size_t index, QGridLayout& grid)
    : QObject(grid.parentWidget())
    , m_document(document)
    , m_component(component)
    , m_index(index)
    , m_kind(new QComboBox)
    , m_temperature(new NumberField(stepTemperatureFromText, [](double temperature_c) { return chosenDegrees({temperature_c}); }))
    , m_minutes(new NumberField(minutesFromText, [](double minutes) { return typedText(minutes, tr("min")); }))
    , m_loss(new LossEditor(grid.parentWidget()))
    , m_after(new QToolButton)
    , m_lost(new QLabel)
    , m_delete(new QToolButton)
    , m_problem(new QLabel)
{
    for (int kind = 0; kind <= int(StepKind::Freeze); ++kind)
        m_kind->addItem(capitalised(translatedName(keyOf(StepKind(kind)))));
    m_delete->setText(QStringLiteral("×"));
    m_delete->setAutoRaise(true);
    m_delete->setFocusPolicy(Qt::TabFocus);
    m_delete->setMinimumSize(smallestTarget_px, smallestTarget_px);
    m_after->setCheckable(true);
    m_after->setFocusPolicy(Qt::TabFocus);
    m_problem->setTextFormat(Qt::PlainText);
    m_problem->setWordWrap(true);
    nameFields();

    const int line = grid.rowCount();
    const QList<QWidget*> cells{m_kind, m_temperature, m_minutes, m_loss, m_after, m_lost, m_delete};
    for (int column = 0; column < ColumnCount; ++column)
        grid.addWidget(cells[column], line, column, Qt::AlignTop);
    grid.addWidget(m_problem, line + 1, KindColumn, 1, ColumnCount);
    for (QWidget* part : fields() + QList<QWidget*>{m_lost})
        part->setMinimumHeight(smallestTarget_px);
    for (QWidget* field : fields())
        leaveUndoToWindow(*field);

    connect(m_kind, &QComboBox::activated, this, [this](int kind) {
        Step changed = step();
        changed.kind = StepKind(kind);
        change(changed);
    });
    const auto take = [this](NumberField* field, std::optional<double> Step::*member) {
        field->setFixedWidth(field->fontMetrics().horizontalAdvance(QStringLiteral("-00.0 min0")));
        connect(field, &QLineEdit::textChanged, this, &StepRow::showProblem);
        typeInto(m_document, *field,
            [&document = m_document, component = m_component, index = m_index, member](std::optional<double> number) {
                Step changed = document.recipe().components.at(component).steps.at(index);
                changed.*member = number;
                changeStep(document, component, index, changed);
            });
    };
    take(m_temperature, &Step::temperature_c);
    take(m_minutes, &Step::minutes);
    connect(m_loss, &LossEditor::textChanged, this, &StepRow::showProblem);
    const auto withLoss = [this](const Loss& loss) {
        Step changed = step();
        changed.loss = loss;
        return changed;
    };
    connect(m_loss, &LossEditor::lossChosen, this, [this, withLoss](const Loss& loss) { change(withLoss(loss)); });
    connect(m_loss, &LossEditor::lossTyped, this, [this, withLoss](const Loss& loss) {
        typeLive(m_document, [&document = m_document, component = m_component, index = m_index, changed = withLoss(loss)] {
            changeStep(document, component, index, changed);
        });
    });
    connect(m_loss, &LossEditor::typingFinished, this, [this] { finishTyping(m_document); });
    connect(m_after, &QToolButton::clicked, this, [this](bool isOn) {
        m_document.showStepsDone(isOn ? std::optional(m_index + 1) : std::nullopt);
        show();  // the finished mix stays chosen when it is chosen again
    });
    connect(m_delete, &QToolButton::clicked, this, &StepRow::deletionAsked);
    show();
}

QList<QWidget*> StepRow::fields() const
{
    return QList<QWidget*>{m_kind, m_temperature, m_minutes} + m_loss->fields() + QList<QWidget*>{m_after, m_delete};
}

void StepRow::change(const Step& step) { changeStep(m_document, m_component, m_index, step); }

void StepRow::nameFields()
{
    m_kind->setObjectName(QStringLiteral("stepKind"));
    m_temperature->setObjectName(QStringLiteral("stepTemperature"));
    m_minutes->setObjectName(QStringLiteral("stepMinutes"));
    m_after->setObjectName(QStringLiteral("massAfter"));
    m_lost->setObjectName(QStringLiteral("massLost"));
    m_delete->setObjectName(QStringLiteral("deleteStep"));
    m_problem->setObjectName(QStringLiteral("stepProblem"));

    // In the order of fields().
    const QStringList names{tr("kind"), tr("temperature"), tr("minutes"), tr("takes away"), tr("grams"), tr("degrees Brix"),
        tr("row that is steeped"), tr("soaks up, gram per gram"), tr("extracted, per cent"), tr("show the mix after it"),
        tr("delete")};
    for (int i = 0; i < names.size(); ++i)
        fields()[i]->setAccessibleName(tr("Step %1: %2").arg(m_index + 1).arg(names[i]));
    m_after->setToolTip(tr("Show this mix in the gauges"));
    m_delete->setToolTip(tr("Delete the step (Delete)"));
}

void StepRow::show()
{
    const Component& component = m_document.recipe().components.at(m_component);
    m_kind->setCurrentIndex(int(step().kind));
    showOptional(*m_temperature, step().temperature_c);
    showOptional(*m_minutes, step().minutes);

    // Between the opening of another recipe and its analysis there is nothing to say about its steps.
    const auto& analysed = m_document.analysis().steps;
    const bool isAnalysed = m_component < analysed.size() && m_index < analysed[m_component].size();
    const bool isLast = m_index + 1 == component.steps.size();
    const StepOutcome outcome = isAnalysed ? analysed[m_component][m_index] : StepOutcome{};
    m_after->setText(isAnalysed ? gramsText(outcome.after.mass()) : QString());
    m_lost->setText(outcome.lost.isEmpty() ? QString() : gramsText(outcome.lost.mass()));
    m_outcomeProblem = outcome.problem ? translated(*outcome.problem) : QString();
    m_loss->show(step().loss, component, m_document.catalogue(), outcome.after.mass());
    m_after->setChecked(isLast ? !m_document.stepsDone() : m_document.stepsDone() == m_index + 1);
    m_lost->setAlignment(Qt::AlignRight | Qt::AlignVCenter);

    QPalette colours = m_kind->parentWidget()->palette();
    colours.setColor(QPalette::WindowText, coloursInWindow(colours).caution);
    m_problem->setPalette(colours);
    showProblem();
}

/// A text that cannot be read comes first: it is what the person is busy with.
void StepRow::showProblem()
{
    QString problem = m_outcomeProblem;
    for (const QString& typed : {m_loss->problem(), m_minutes->problem(), m_temperature->problem()})
        if (!typed.isEmpty())
            problem = typed;
    m_problem->setText(problem);
    m_problem->setVisible(!problem.isEmpty());
    m_loss->setToolTip(toolTipText(m_outcomeProblem));
}

}  // namespace firn::app
