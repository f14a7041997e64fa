// An egg in a glass of the mix, to scale: floating upright with a patch above the surface, or lying on the bottom.
#pragma once

#include "gauges/palette.h"
#include "readings/egg.h"

#include <QLineF>
#include <QPainterPath>
#include <QRectF>

namespace firn::app {

/// Where everything is drawn, pixels. The patch is as wide standing as lying, so the egg is drawn standing, blunt end up, as an egg
/// with its air cell does.
struct EggPicture {
    double pixelsPerMillimetre = 0.0;
    QRectF glass;  // inside
    double surface = 0.0;
    QPainterPath egg;
    QLineF patch;     // across the surface; of no length where the egg sinks
    QLineF scaleBar;  // 20 mm
};

EggPicture eggPicture(const EggFloat& egg, const QRectF& place, const QFontMetrics& metrics);

void paintEgg(QPainter& painter, const EggFloat& egg, const QRectF& place, const GaugeColours& colours);

}  // namespace firn::app
