#include "syrups/syrup_form.h"

#include "bench/hairline.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "syrups/field_line.h"
#include "syrups/outcome_view.h"

#include <QEvent>
#include <QGridLayout>

namespace firn::app {

namespace {

// What a wet finger still hits.
constexpr double smallestTarget_px = 24.0;
// The numbers stand in one line whichever job is shown.
constexpr double labelWidth_px = 128.0;

}  // namespace

SyrupForm::SyrupForm(SyrupJob job, QWidget* parent)
    : QWidget(parent)
    , m_job(std::move(job))
    , m_grid(new QGridLayout)
    , m_outcome(new OutcomeView(m_job.hasSquare))
{
    auto* layout = new QVBoxLayout(this);
    layout->setSpacing(groupSpace);
    layout->setContentsMargins(groupSpace, groupSpace, groupSpace, groupSpace);
    m_grid->setHorizontalSpacing(closeSpace);
    m_grid->setVerticalSpacing(gridStep);
    m_grid->setColumnStretch(3, 1);
    layout->addLayout(m_grid);
    for (const Field& field : m_job.fields) {
        auto* line = new FieldLine(field, *m_grid, this);
        connect(line, &FieldLine::changed, this, &SyrupForm::work);
        m_lines.push_back(line);
    }
    layout->addWidget(new Hairline);
    layout->addWidget(m_outcome, 1);
    connect(m_outcome, &OutcomeView::rowsWanted, this, &SyrupForm::rowsWanted);
    connect(m_outcome, &OutcomeView::derivationWanted, this, &SyrupForm::derivationWanted);
    fitToFont();
    work();
}

void SyrupForm::takeFocus() { m_lines.front()->takeFocus(); }

void SyrupForm::work()
{
    // What core refuses lies in one field; the others that can be read are clear of earlier refusals.
    std::vector<Typed> typed;
    for (FieldLine* line : m_lines) {
        if (!line->typed())
            continue;
        line->refuse({});
        typed.push_back(*line->typed());
    }
    if (typed.size() < m_lines.size()) {
        m_outcome->show({});
        return;
    }
    const Worked worked = m_job.work(typed);
    if (!worked)
        m_lines.at(worked.error().field)->refuse(translated(worked.error().why));
    m_outcome->show(worked.value_or(Outcome{}));
}

void SyrupForm::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        fitToFont();
}

void SyrupForm::fitToFont()
{
    const int target = qRound(besideText(font(), smallestTarget_px));
    for (FieldLine* line : m_lines)
        line->fitToFont(target);
    m_grid->setColumnMinimumWidth(0, qRound(besideText(font(), labelWidth_px)));
    m_outcome->fitToFont(target);
}

}  // namespace firn::app
