#include "teach/exercise_pane.h"

#include "bench/hairline.h"
#include "bench/ink_label.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "teach/exercise_sheet.h"
#include "teach/figure_wording.h"
#include "teach/step_view.h"

#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace firn::app {

namespace {

constexpr int targetHeight_px = 28;
constexpr int answerWidth_px = 180;

}  // namespace

bool ExerciseProgress::isRight() const { return judgement && firn::isRight(judgement->verdict); }

ExercisePane::ExercisePane(QWidget* parent)
    : QWidget(parent)
    , m_question(new QLabel)
    , m_given(new InkLabel(InkLabel::Plain))
    , m_tables(new QVBoxLayout)
    , m_answerRow(new QWidget)
    , m_answer(new QLineEdit)
    , m_verdict(new InkLabel(InkLabel::Plain))
    , m_hints(new QVBoxLayout)
    , m_hint(new QPushButton)
    , m_solve(new QPushButton(tr("&Solution")))
    , m_lines(new QVBoxLayout(this))
{
    m_question->setObjectName(QStringLiteral("question"));
    m_question->setTextFormat(Qt::PlainText);
    m_question->setWordWrap(true);
    m_question->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_question->setFont(titleFont(font()));
    m_given->setObjectName(QStringLiteral("given"));
    m_answer->setObjectName(QStringLiteral("answer"));
    m_answer->setFixedWidth(answerWidth_px);
    m_answer->setMinimumHeight(targetHeight_px);
    m_verdict->setObjectName(QStringLiteral("verdict"));
    m_hint->setObjectName(QStringLiteral("hint"));
    m_solve->setObjectName(QStringLiteral("solution"));
    auto* label = new QLabel(tr("&Answer"));
    label->setBuddy(m_answer);
    auto* checkIt = new QPushButton(tr("&Check"));
    checkIt->setObjectName(QStringLiteral("check"));
    auto* row = new QHBoxLayout(m_answerRow);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(closeSpace);
    row->addWidget(label);
    row->addWidget(m_answer);
    for (QPushButton* button : {checkIt, m_hint, m_solve}) {
        button->setMinimumHeight(targetHeight_px);
        row->addWidget(button);
    }
    row->addStretch();

    m_lines->setContentsMargins(groupSpace, closeSpace, groupSpace, groupSpace);
    m_lines->setSpacing(groupSpace);
    m_lines->addWidget(m_question);
    m_lines->addWidget(m_given);
    m_lines->addLayout(m_tables);
    m_lines->addWidget(m_answerRow);
    m_lines->addWidget(m_verdict);
    m_hints->setSpacing(closeSpace);
    m_lines->addLayout(m_hints);
    m_lines->addStretch(1);

    connect(m_answer, &QLineEdit::returnPressed, this, &ExercisePane::check);
    connect(m_answer, &QLineEdit::textEdited, this, [this](const QString& text) {
        m_progress->typed = text;
        m_progress->judgement.reset();
        m_progress->refusal.clear();
        m_verdict->setText({});
        emit progressed();
    });
    connect(checkIt, &QPushButton::clicked, this, &ExercisePane::check);
    connect(m_hint, &QPushButton::clicked, this, &ExercisePane::showHint);
    connect(m_solve, &QPushButton::clicked, this, &ExercisePane::showSolution);
}

void ExercisePane::show(const Exercise& exercise, ExerciseProgress& progress)
{
    m_exercise = exercise;
    m_progress = &progress;
    m_question->setText(plainInCelsius(exercise.question));
    QStringList given;
    for (const Sentence& line : exercise.given)
        given << plainInCelsius(line);
    m_given->setText(given.join(QLatin1Char('\n')));
    showTables();
    m_answerRow->show();
    m_answer->setText(progress.typed);
    m_answer->setPlaceholderText(tr("a number and its unit"));
    showProgress();
}

void ExercisePane::showNone(const QString& why)
{
    m_progress = nullptr;
    m_question->setText(why);
    m_given->setText({});
    m_exercise.tables.clear();
    showTables();
    m_answerRow->hide();
    m_verdict->setText({});
    showProgress();
}

void ExercisePane::showTables()
{
    while (m_tables->count() > 0) {
        const std::unique_ptr<QLayoutItem> item(m_tables->takeAt(0));
        delete item->widget();
    }
    for (const GivenTable& given : m_exercise.tables) {
        auto* table = new QWidget(this);
        table->setObjectName(QStringLiteral("table"));
        auto* grid = new QGridLayout(table);
        grid->setContentsMargins(0, 0, 0, 0);
        grid->setHorizontalSpacing(groupSpace);
        grid->setVerticalSpacing(gridStep / 2);
        const auto addLine = [&](const std::vector<Sentence>& cells, int row, InkLabel::Ink ink) {
            for (int column = 0; column < int(cells.size()); ++column) {
                auto* cell = new InkLabel(ink, table);
                cell->setText(plainInCelsius(cells[std::size_t(column)]));
                cell->setWordWrap(false);
                cell->setAlignment(column == 0 ? Qt::AlignLeft : Qt::AlignRight);
                grid->addWidget(cell, row, column);
            }
        };
        addLine(given.names, 0, InkLabel::Quiet);
        for (std::size_t i = 0; i < given.rows.size(); ++i)
            addLine(given.rows[i], int(i) + 1, InkLabel::Plain);
        grid->setColumnStretch(int(given.names.size()), 1);
        m_tables->addWidget(table);
    }
}

void ExercisePane::takeFocus()
{
    m_answer->setFocus();
    m_answer->selectAll();
}

void ExercisePane::check()
{
    m_progress->typed = m_answer->text();
    const auto judgement = judge(m_progress->typed.toStdString(), m_exercise.answer);
    m_progress->judgement = judgement ? std::optional(*judgement) : std::nullopt;
    m_progress->refusal = judgement ? QString() : plainInCelsius(judgement.error());
    showProgress();
    emit progressed();
}

void ExercisePane::showHint()
{
    m_progress->hintsShown = std::min(m_progress->hintsShown + 1, m_exercise.hints.size());
    showProgress();
}

void ExercisePane::showSolution()
{
    m_progress->isSolutionShown = !m_progress->isSolutionShown;
    showProgress();
}

void ExercisePane::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    // Pictures of formulas and quiet labels are made for one ground.
    if (event->type() == QEvent::PaletteChange && m_steps)
        showSteps();
}

void ExercisePane::showProgress()
{
    const std::size_t hintsShown = m_progress ? m_progress->hintsShown : 0;
    if (m_progress) {
        m_verdict->setInk(m_progress->isRight() ? InkLabel::Plain : InkLabel::Caution);
        m_verdict->setText(m_progress->judgement ? plainInCelsius(m_progress->judgement->sentence) : m_progress->refusal);
        const std::size_t left = m_exercise.hints.size() - hintsShown;
        m_hint->setText(left > 0 ? tr("&Hint %1 of %2").arg(hintsShown + 1).arg(m_exercise.hints.size()) : tr("No more &hints"));
        m_hint->setEnabled(left > 0);
        m_solve->setText(m_progress->isSolutionShown ? tr("Hide the &solution") : tr("&Solution"));
    }
    while (m_hints->count() > 0) {
        const std::unique_ptr<QLayoutItem> item(m_hints->takeAt(0));
        delete item->widget();
    }
    for (std::size_t i = 0; i < hintsShown; ++i) {
        auto* label = new InkLabel(InkLabel::Plain, this);  // without a parent it would show as a window of its own
        label->setObjectName(QStringLiteral("hint%1").arg(i + 1));
        label->setText(tr("Hint %1: %2").arg(i + 1).arg(plainInCelsius(m_exercise.hints[i])));
        m_hints->addWidget(label);
    }
    showSteps();
}

void ExercisePane::showSteps()
{
    delete m_steps;
    m_steps = nullptr;
    if (!m_progress || !m_progress->isSolutionShown)
        return;
    m_steps = new QWidget;
    m_steps->setObjectName(QStringLiteral("steps"));
    auto* layout = new QVBoxLayout(m_steps);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(groupSpace);
    for (std::size_t i = 0; i < m_exercise.solution.size(); ++i) {
        const StepView::Place place{int(i) + 1, isSourceRepeated(m_exercise.solution, i), true, false};
        auto* step = new StepView(m_exercise.solution[i], place);
        connect(step, &StepView::sourceChosen, this, &ExercisePane::sourceChosen);
        layout->addWidget(new Hairline);
        layout->addWidget(step);
    }
    layout->addWidget(new Hairline);
    QWidget* last = plainLabel(tr("Answer: %1").arg(answerText(m_exercise.answer)));
    last->setObjectName(QStringLiteral("lastLine"));
    last->setFont(titleFont(font()));
    layout->addWidget(last);
    m_lines->insertWidget(m_lines->count() - 1, m_steps);
}

}  // namespace firn::app
