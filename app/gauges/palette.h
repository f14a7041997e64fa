// The colours of the gauges, in a light and a dark set. They were chosen by distance in CIELAB under simulated protanopia,
// deuteranopia and tritanopia (Machado, Oliveira and Fernandes 2009), so that no two constituents look alike; shape, order and text
// say the same again.
#pragma once

#include "mix/mix.h"
#include "texture/texture.h"

#include <QColor>
#include <QPalette>
#include <array>

namespace firn::app {

/// Colours by what they are for.
struct GaugeColours {
    QColor ground;
    QColor ink;
    QColor quietInk;
    QColor hairline;
    QColor curve;      // the freezing curve, and what is selected
    QColor caution;    // faults and dangers
    QColor liquid;     // texture regions run from here …
    QColor block;      // … to here, one hue in steps of lightness
    QColor fieldDark;  // the refractometer's field above and below its line, and what is written below
    QColor fieldBright;
    QColor fieldInk;
    QColor paper;  // the scale inside a hydrometer's stem
    QColor shell;  // of an egg
    std::array<QColor, ribbonPartCount> parts;
};

/// The dark set where the palette's windows are darker than their text, otherwise the light one.
GaugeColours gaugeColours(const QPalette& palette);

/// The same on the window's own ground, so that no gauge stands in a box.
GaugeColours coloursInWindow(const QPalette& palette);

QColor colourOf(RibbonPart part, const QPalette& palette);

/// Lightest where it is liquid, darkest where it is a block.
QColor regionColour(Firmness firmness, const GaugeColours& colours);

}  // namespace firn::app
