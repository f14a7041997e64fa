#include "measure/found_view.h"

#include "gauges/figure_button.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "measure/measure_wording.h"

#include <QComboBox>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

namespace firn::app {

namespace {

constexpr int tableRows = 5;  // the header, sugars, alcohol, and two instruments

}  // namespace

FoundView::FoundView(QWidget* parent)
    : QWidget(parent)
    , m_result(plainLabel(QStringLiteral("found")))
    , m_explanation(plainLabel(QStringLiteral("explanation")))
    , m_mixes(choiceOf(QStringLiteral("mixes"), tr("Possible mixes"), {}))
    , m_table(new QGridLayout)
    , m_disturbances(plainLabel(QStringLiteral("disturbances")))
    , m_note(new QLineEdit)
    , m_keep(new QPushButton(tr("&Save this reading")))
{
    m_result->setFont(figureFont(font()));
    m_result->setAccessibleName(tr("What is in the mix"));
    m_table->setHorizontalSpacing(groupSpace - gridStep);
    m_table->setVerticalSpacing(gridStep);
    m_table->setColumnStretch(0, 1);
    for (int row = 0; row < tableRows; ++row) {
        auto& cells = m_cells.emplace_back();
        auto& buttons = m_buttons.emplace_back();
        for (int column = 0; column < columnCount; ++column) {
            cells[std::size_t(column)] = new InkLabel(row == 0 || column == 0 || column == 3 ? InkLabel::Quiet : InkLabel::Plain);
            cells[std::size_t(column)]->setWordWrap(false);
            m_table->addWidget(cells[std::size_t(column)], row, column, column == 0 ? Qt::AlignLeft : Qt::AlignRight);
            buttons[std::size_t(column)] = row == 0 || column == 0 ? nullptr : buttonInTable(row, column);
        }
    }
    m_disturbances->setInk(InkLabel::Quiet);
    // Sentences wrap while a reading is typed: room for the usual ones, so that the table does not move under the eye.
    m_result->setMinimumHeight(2 * lineHeight(m_result->font()));
    m_explanation->setMinimumHeight(2 * lineHeight(font()));
    m_disturbances->setMinimumHeight(3 * lineHeight(font()));
    for (InkLabel* label : {m_result, m_explanation, m_disturbances})
        label->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_note->setObjectName(QStringLiteral("readingNote"));
    m_note->setAccessibleName(tr("Note to the reading"));
    m_note->setPlaceholderText(tr("a note, if you like"));
    m_note->setMinimumHeight(m_mixes->minimumHeight());
    m_keep->setObjectName(QStringLiteral("keepReading"));
    m_keep->setMinimumHeight(m_mixes->minimumHeight());

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    // Above all sentences, and the button on the side where nothing grows: it stays under the pointer.
    auto* keeping = new QHBoxLayout;
    keeping->addWidget(m_keep);
    keeping->addWidget(m_note, 1);
    layout->addLayout(keeping);
    layout->addWidget(m_result);
    layout->addWidget(m_explanation);
    layout->addWidget(m_mixes);
    layout->addLayout(m_table);
    layout->addWidget(m_disturbances);
    layout->addStretch();

    const auto keep = [this] {
        if (!m_keep->isEnabled())
            return;
        const QString note = m_note->text().trimmed();
        m_note->clear();
        emit keepingAsked(note);
    };
    connect(m_keep, &QPushButton::clicked, this, keep);
    connect(m_note, &QLineEdit::returnPressed, this, keep);
    connect(m_mixes, &QComboBox::currentIndexChanged, this, [this] {
        showTable();
        emit mixChosen();
    });
}

/// Over a cell, whatever figure stands in it.
FigureButton* FoundView::buttonInTable(int row, int column)
{
    auto* button = new FigureButton({}, {});
    button->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Minimum);
    const InkLabel* cell = m_cells[std::size_t(row)][std::size_t(column)];
    connect(button, &FigureButton::chosen, this, [this, cell](const QString& figure) { emit figureChosen(figure, cell->text()); });
    m_table->addWidget(button, row, column);
    return button;
}

void FoundView::show(const Measuring& measuring, const QString& problem)
{
    m_measuring = measuring;
    m_problem = problem;
    if (!problem.isEmpty())
        m_measuring.mixes.clear();
    showMixes();
    showResult();
    showTable();
}

std::optional<MeasuredState> FoundView::measured() const
{
    if (m_measuring.mixes.empty())
        return std::nullopt;
    return m_measuring.mixes.at(chosen()).state;
}

void FoundView::forgetNote() { m_note->clear(); }

std::size_t FoundView::chosen() const { return std::size_t(std::max(0, m_mixes->currentIndex())); }

void FoundView::showMixes()
{
    const QSignalBlocker quietly(m_mixes);
    const int before = m_mixes->currentIndex();
    m_mixes->clear();
    for (const FoundMix& mix : m_measuring.mixes)
        m_mixes->addItem(mixText(mix, u' '));
    m_mixes->setCurrentIndex(std::clamp(before, 0, std::max(0, m_mixes->count() - 1)));
    m_mixes->setVisible(m_mixes->count() > 1);
}

QString FoundView::headline() const
{
    const std::size_t count = m_measuring.mixes.size();
    return count == 0   ? tr("Nothing read yet")
           : count == 1 ? mixText(m_measuring.mixes.front(), u'\n')
                        : tr("%n mixes match", nullptr, int(count));
}

void FoundView::showResult()
{
    const QString problem = !m_problem.isEmpty() ? m_problem : m_measuring.problem ? translated(*m_measuring.problem) : QString();
    m_result->setText(problem.isEmpty() ? headline() : tr("No mix matches these readings"));
    QString explanation = problem;
    if (explanation.isEmpty() && m_measuring.mixes.empty())
        explanation = tr("Enter the reading. Below is what the calculated mix would read.");
    else if (explanation.isEmpty() && m_measuring.range)
        explanation = rangeText(*m_measuring.range);
    else if (explanation.isEmpty() && m_measuring.mixes.size() > 1)
        explanation = tr("Choose the mix you think it is.");
    m_explanation->setText(explanation);
    m_explanation->setInk(problem.isEmpty() ? InkLabel::Quiet : InkLabel::Caution);
    m_result->setInk(problem.isEmpty() && !m_measuring.mixes.empty() ? InkLabel::Plain : InkLabel::Quiet);
    QStringList disturbances;
    for (const Sentence& sentence : m_measuring.disturbances)
        disturbances << translated(sentence);
    m_disturbances->setText(disturbances.join(u'\n'));
    m_keep->setEnabled(!m_measuring.mixes.empty());
}

void FoundView::showTable()
{
    int row = 0;
    put(row++, {QString(), tr("measured"), tr("by the recipe"), tr("difference")});
    const FoundMix* mix = m_measuring.mixes.empty() ? nullptr : &m_measuring.mixes.at(chosen());
    put(row++,
        {tr("sugars"), mix ? sugarsText(*mix) : QString(), percentText(m_measuring.sugar),
            mix ? differenceText(mix->sugarDifference) : QString()},
        {QString(), QStringLiteral("measured.sugars_percent"), QStringLiteral("percent.sugars"),
            QStringLiteral("apart.sugars_percent")});
    if (m_measuring.alcohol.value > 0.0 || (mix && mix->estimate.alcohol.value > 0.0))
        put(row++,
            {tr("alcohol, by mass"), mix ? alcoholText(*mix) : QString(), percentText(m_measuring.alcohol),
                mix ? differenceText(mix->alcoholDifference) : QString()},
            {QString(), QStringLiteral("measured.alcohol_percent"), QStringLiteral("percent.alcohol"),
                QStringLiteral("apart.alcohol_percent")});
    for (const BesideReading& beside : m_measuring.beside) {
        const Instrument instrument = beside.record.instrument;
        const bool opens = beside.difference.has_value();
        const auto ofInstrument = [&](const auto& figure) {
            return opens ? QString::fromStdString(figure(instrument)) : QString();
        };
        put(row++,
            {nameOf(instrument), mix ? valueOn(instrument, beside.record.value) : QString(), computedText(beside),
                mix ? differenceText(beside) : QString()},
            {QString(), QString(), ofInstrument(figureComputedFor), ofInstrument(figureApart)});
    }
    for (; row < tableRows; ++row)
        put(row, {});
}

void FoundView::put(int row, const Line& line, const Figures& figures)
{
    for (std::size_t column = 0; column < line.size(); ++column) {
        m_cells[std::size_t(row)][column]->setText(line[column]);
        FigureButton* button = m_buttons[std::size_t(row)][column];
        if (!button)
            continue;
        button->setFigure(figures[column]);
        button->setAccessibleName(
            tr("%1, %2: %3", "a row, a column and its value").arg(line[0], m_cells[0][column]->text(), line[column]));
        button->setVisible(!figures[column].isEmpty() && !line[column].isEmpty());
    }
}

void FoundView::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        m_result->setFont(figureFont(font()));
}

}  // namespace firn::app
