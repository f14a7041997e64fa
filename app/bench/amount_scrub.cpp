#include "bench/amount_scrub.h"

#include "document/document.h"

#include <QScopedValueRollback>
#include <algorithm>
#include <cmath>

namespace firn::app {

namespace {

double shareOfAmount(ScrubPace pace) { return pace == ScrubPace::Fine ? 0.001 : 0.01; }

bool isMarkedInQuarters(Unit unit)
{
    const Dimension dimension = factsOf(unit).dimension;
    return dimension == Dimension::Count || (dimension == Dimension::Volume && unit != Unit::Millilitre && unit != Unit::Litre);
}

/// The largest of 1, 2 or 5 times a power of ten that is not above the value.
double roundedDown(double value)
{
    const double power = std::pow(10.0, std::floor(std::log10(value)));
    const double digit = value / power;
    return power * (digit >= 5.0 ? 5.0 : digit >= 2.0 ? 2.0 : 1.0);
}

}  // namespace

double scrubStep(const Amount& amount, ScrubPace pace)
{
    if (isMarkedInQuarters(amount.unit))
        return pace == ScrubPace::Fine ? 0.125 : 0.25;
    // An empty row moves as 100 of its unit would.
    const double value = amount.value > 0.0 ? amount.value : 100.0;
    return roundedDown(value * shareOfAmount(pace));
}

double afterSteps(const Amount& start, double steps, ScrubPace pace)
{
    const double whole = std::round(steps);
    if (whole == 0.0)
        return start.value;
    const double step = scrubStep(start, pace);
    // Steps below one are divided by their inverse, so that 0.1 comes out as 0.1 and not as 0.1000000000000001.
    const double count = std::round(start.value / step + whole);
    const double value = step < 1.0 ? count / std::round(1.0 / step) : count * step;
    return std::clamp(value, 0.0, largestAmount);
}

AmountScrub::AmountScrub(Document& document, QObject* parent)
    : QObject(parent)
    , m_document(document)
{
    // Whatever else changes the recipe may take the row away.
    connect(&document, &Document::changed, this, [this] {
        if (!m_isOwnChange)
            finish();
    });
}

void AmountScrub::begin(RowPlace place)
{
    m_place = place;
    m_start = m_document.recipe().components.at(place.component).rows.at(place.row).amount;
    m_gesture = Gesture::begin();
}

void AmountScrub::dragTo(double pixels, ScrubPace pace)
{
    const double value = m_start.value > 0.0 ? m_start.value : 100.0;
    change(afterSteps(m_start, pixels * value * shareOfAmount(pace) / scrubStep(m_start, pace), pace));
}

void AmountScrub::stepBy(int steps, ScrubPace pace)
{
    if (m_place)
        change(afterSteps(m_document.recipe().components.at(m_place->component).rows.at(m_place->row).amount, steps, pace));
}

void AmountScrub::finish() { m_place.reset(); }

void AmountScrub::putBack()
{
    change(m_start.value);
    finish();
}

void AmountScrub::change(double value)
{
    if (!m_place)
        return;
    const QScopedValueRollback own(m_isOwnChange, true);
    changeAmount(m_document, *m_place, {value, m_start.unit}, m_gesture);
}

}  // namespace firn::app
