// The figures of the mix in a compact table.
#pragma once

#include "analysis/analysis.h"
#include "gauges/gauge.h"

#include <vector>

namespace firn::app {

class FiguresPanel : public Gauge {
    Q_OBJECT

public:
    explicit FiguresPanel(QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    int heightForWidth(int width) const override;

public slots:
    void show(const firn::Analysis& analysis);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void paintGauge(QPainter& painter, const GaugeColours& colours) override;

private:
    struct Item {
        QString label;
        QString beforeMark;  // the figure up to its decimal mark …
        QString afterMark;   // … and from there on, with the unit
        QString widest;      // what beforeMark may grow to without moving its neighbours
        QString key;         // of the figure in the report
        bool isNone = false;
    };

    /// The widest of each in one column, pixels.
    struct Column {
        int label = 0;
        int beforeMark = 0;
        int afterMark = 0;
        int width() const;
    };

    void add(const QString& label, const QString& figureWithUnit, const QString& widest, const char* key);
    std::vector<QRect> places() const;
    static QString spokenText(const Item& item);
    void placeFigures();
    int rowHeight() const;
    std::vector<Column> columnsOf(int rows) const;
    int rowsIn(int width) const;

    bool m_isEmpty = true;
    std::vector<Item> m_items;
};

}  // namespace firn::app
