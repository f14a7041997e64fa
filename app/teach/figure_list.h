// All figures that can be explained, each with its value, to choose one.
#pragma once

#include "analysis/analysis.h"
#include "derivation/working.h"
#include "teach/figure_wording.h"

#include <QTreeWidget>
#include <functional>

namespace firn::app {

/// What the figure means; of a row, what it says.
QString titleInLocale(const QString& figure, const Symbol& result, const Analysis& analysis);

class FigureList : public QTreeWidget {
    Q_OBJECT

public:
    explicit FigureList(QWidget* parent = nullptr);

    using HeadOf = std::function<FigureHead(const QString& figure, const Symbol& result)>;
    void show(const Workings& workings, const HeadOf& headOf);

    /// Chooses this figure, or none where it is not in the list, without a signal.
    void choose(const QString& figure);

signals:
    void chosen(const QString& figure);
};

}  // namespace firn::app
