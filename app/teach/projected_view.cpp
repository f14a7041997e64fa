#include "teach/projected_view.h"

#include "formulas/formula_picture.h"

namespace firn::app {

namespace {

QString nameOf(ProjectedKind kind)
{
    switch (kind) {
    case ProjectedKind::Title:
        return ProjectedView::tr("Title");
    case ProjectedKind::Idea:
        return ProjectedView::tr("Idea");
    case ProjectedKind::Formula:
        return ProjectedView::tr("Formula");
    case ProjectedKind::Picture:
        return ProjectedView::tr("Picture");
    case ProjectedKind::Number:
        return ProjectedView::tr("Topic");
    case ProjectedKind::Text:
        break;
    }
    return ProjectedView::tr("Text");
}

}  // namespace

ProjectedView::ProjectedView(const ProjectedItem& item, QWidget* parent)
    : Gauge(nameOf(item.kind), parent)
    , m_kind(item.kind)
    , m_box(item.box)
    , m_shownFrom(item.shownFrom)
{
    setGeometry(item.place);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setValueText(item.spoken);
}

void ProjectedView::paintGauge(QPainter& painter, const GaugeColours& colours) { paint(painter, m_box, {0.0, 0.0}, colours); }

}  // namespace firn::app
