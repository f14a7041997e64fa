// Figures that are not those of the bench: of a side of a comparison, of a sample that is measured, of a tasting.
#pragma once

#include "analysis/analysis.h"

#include <QHash>
#include <QString>
#include <memory>

namespace firn::app {

struct FigureSet {
    Workings workings;       // as they were when they were asked for
    QString whose = {};      // "“lean” as compared"; without it they stand beside those of the bench, of the same recipe
    Analysis analysis = {};  // whose rows they are about
    QHash<QString, QString> shown = {};                        // as a reader saw them, by their keys
    std::vector<std::shared_ptr<const FigureSet>> sides = {};  // what keys such as "sides[1].mass_g" lead to
};

using SharedFigures = std::shared_ptr<const FigureSet>;

/// A figure, and of what. Without a set it is one of the bench.
struct PlacedFigure {
    QString figure;
    SharedFigures set = {};
    friend bool operator==(const PlacedFigure&, const PlacedFigure&) = default;
};

}  // namespace firn::app
