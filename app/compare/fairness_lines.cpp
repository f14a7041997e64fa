#include "compare/fairness_lines.h"

#include "gauges/type_and_space.h"
#include "gauges/wording.h"

namespace firn::app {

namespace {

constexpr int mostLines = 4;

}  // namespace

FairnessLines::FairnessLines(QWidget* parent)
    : MarkedLines(parent)
{
    setObjectName(QStringLiteral("fairness"));
    setAccessibleName(tr("Is the comparison fair?"));
    setFocusPolicy(Qt::TabFocus);
}

void FairnessLines::show(const std::vector<Sentence>& sentences)
{
    std::vector<MarkedLine> lines;
    for (const Sentence& sentence : sentences)
        lines.push_back({Mark::Note, translated(sentence)});
    setVisible(!lines.empty());
    setLines(std::move(lines));
    fit();
}

void FairnessLines::resizeEvent(QResizeEvent* event)
{
    MarkedLines::resizeEvent(event);
    fit();
}

void FairnessLines::fit()
{
    setFixedHeight(qMin(topsFor(qMax(1, width())).back(), mostLines * (lineHeight(font()) + gridStep / 2)));
}

}  // namespace firn::app
