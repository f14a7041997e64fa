// A text or formula on a projection.
#pragma once

#include "gauges/gauge.h"
#include "teach/projector_layout.h"

namespace firn::app {

class ProjectedView : public Gauge {
    Q_OBJECT

public:
    ProjectedView(const ProjectedItem& item, QWidget* parent);

    ProjectedKind kind() const { return m_kind; }
    const FormulaBox& box() const { return m_box; }
    int shownFrom() const { return m_shownFrom; }

protected:
    void paintGauge(QPainter& painter, const GaugeColours& colours) override;

private:
    ProjectedKind m_kind;
    FormulaBox m_box;
    int m_shownFrom;
};

}  // namespace firn::app
