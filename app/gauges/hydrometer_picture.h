// A hydrometer's stem where it comes out of the liquid: the scale moves, the level stays.
#pragma once

#include "gauges/palette.h"

#include <QPainter>

namespace firn::app {

/// The stem in its jar, with the reading at the liquid's level. Lighter liquids let it sink deeper, so the scale counts downwards.
void paintHydrometer(QPainter& painter, const QRectF& place, double specificGravity, const GaugeColours& colours);

}  // namespace firn::app
