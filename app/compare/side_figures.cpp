#include "compare/side_figures.h"

#include "analysis/workings_as_read.h"
#include "compare/comparison_lines.h"
#include "compare/comparison_workings.h"
#include "gauges/wording.h"

#include <QCoreApplication>
#include <algorithm>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::SideFigures)
};

QString nameOf(const Comparison& comparison, std::size_t side) { return QString::fromStdString(comparison.sides[side].name); }

/// The latest reading of the instrument that this figure is computed for.
const BesideReading* readingFor(const QString& figure, const ComparedSide& side)
{
    const auto found = std::find_if(side.readings.rbegin(), side.readings.rend(),
        [&figure](const BesideReading& reading) { return figureComputedFor(reading.record.instrument) == figure.toStdString(); });
    return found == side.readings.rend() ? nullptr : &*found;
}

}  // namespace

SharedFigures SideFigures::of(const Comparison& comparison, std::size_t side, const Catalogue& catalogue)
{
    if (!m_ofSides[side])
        m_ofSides[side] = std::make_shared<const FigureSet>(
            FigureSet{workingsOfSide(comparison, side, catalogue), Words::tr("“%1” as compared").arg(nameOf(comparison, side)),
                comparison.sides[side].analysis, shownFigures(comparison, side)});
    return m_ofSides[side];
}

SharedFigures SideFigures::having(const QString& figure, const Comparison& comparison, std::size_t side, const Catalogue& catalogue)
{
    const ComparedSide& compared = comparison.sides[side];
    const BesideReading* reading = readingFor(figure, compared);
    if (!reading)
        return of(comparison, side, catalogue);
    return std::make_shared<const FigureSet>(
        FigureSet{workingsAsRead({&reading->record, 1}, compared.recipe, catalogue, compared.analysis.conditions),
            Words::tr("“%1” as it was read").arg(nameOf(comparison, side)), compared.analysis,
            {{figure, valueOn(reading->record.instrument, *reading->computed->value)}}});
}

SharedFigures SideFigures::differences(const Comparison& comparison, std::size_t side, const Catalogue& catalogue)
{
    const SharedFigures first = of(comparison, 0, catalogue), other = of(comparison, side, catalogue);
    return std::make_shared<const FigureSet>(FigureSet{workingsOfDifferences(comparison, side, first->workings, other->workings),
        Words::tr("“%1” less “%2”", "two recipes").arg(nameOf(comparison, side), nameOf(comparison, 0)), {},
        shownDifferences(comparison, side), {first, other}});
}

}  // namespace firn::app
