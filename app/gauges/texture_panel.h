// What the frozen mix will be like: its kind in large words, why, what is wrong with it, and where it is best served.
#pragma once

#include "analysis/analysis.h"
#include "gauges/gauge.h"

namespace firn::app {

class MarkedLines;

class TexturePanel : public Gauge {
    Q_OBJECT

public:
    explicit TexturePanel(QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

public slots:
    void show(const firn::Analysis& analysis);

protected:
    void paintGauge(QPainter& painter, const GaugeColours& colours) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    bool isWindowBesideKind() const;
    int headHeight() const;
    void layOut();
    void placeFigures();
    QRect windowPlace() const;

    MarkedLines* m_lines;
    QString m_kind;    // empty for an empty mix
    QString m_window;  // "best served …"
    QString m_coldest, m_warmest;
    QString m_sugars;
};

}  // namespace firn::app
