// What one sees through a hand refractometer: a round field, dark above and bright below, with a line between them on a scale.
#pragma once

#include "gauges/palette.h"

#include <QPainter>
#include <optional>

namespace firn::app {

/// The field in the middle of this place, with the line at its reading. Without a reading the field is dark all over.
void paintRefractometer(QPainter& painter, const QRectF& place, std::optional<double> reading_brix, const GaugeColours& colours);

}  // namespace firn::app
