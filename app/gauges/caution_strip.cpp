#include "gauges/caution_strip.h"

#include "gauges/marked_lines.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QPainter>

namespace firn::app {

namespace {

Mark markOf(Severity severity)
{
    switch (severity) {
    case Severity::Danger:
        return Mark::Danger;
    case Severity::Warning:
        return Mark::Warning;
    case Severity::Note:
        return Mark::Note;
    }
    return Mark::None;
}

}  // namespace

CautionStrip::CautionStrip(QWidget* parent)
    : Gauge(tr("Cautions"), parent)
    , m_lines(new MarkedLines(this))
{
    m_lines->setAccessibleName(tr("Cautions"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    show(Analysis{});
}

QSize CautionStrip::sizeHint() const { return {fontMetrics().averageCharWidth() * 60, 3 * (lineHeight(font()) + gridStep / 2)}; }

QSize CautionStrip::minimumSizeHint() const
{
    return {fontMetrics().averageCharWidth() * 30, 2 * (lineHeight(font()) + gridStep / 2)};
}

void CautionStrip::show(const Analysis& analysis)
{
    std::vector<MarkedLine> lines;
    for (const Caution& caution : analysis.cautions)
        lines.push_back({markOf(caution.severity), translated(caution.sentence), false});
    if (lines.empty())
        lines.push_back({Mark::None, tr("Nothing to watch out for"), true});
    m_lines->setLines(std::move(lines));
    setValueText(m_lines->spokenText());
}

void CautionStrip::paintGauge(QPainter& /*painter*/, const GaugeColours& /*colours*/)
{
    // The lines cover all of it.
}

void CautionStrip::resizeEvent(QResizeEvent* event)
{
    Gauge::resizeEvent(event);
    m_lines->setGeometry(rect());
}

}  // namespace firn::app
