#include "gauges/palette.h"

namespace firn::app {

namespace {

const GaugeColours& lightColours()
{
    static const GaugeColours colours{.ground = "#F6F8F9",
        .ink = "#1D2B36",
        .quietInk = "#5A6B78",
        .hairline = "#C3CDD3",
        .curve = "#0B6E8A",
        .caution = "#A63A1E",
        .liquid = "#EDF5F8",
        .block = "#9FC3D1",
        .fieldDark = "#2C6A8A",
        .fieldBright = "#FDFEFE",
        .fieldInk = "#1D2B36",
        .paper = "#FDFCF6",
        .shell = "#F3E0C2",
        .parts = {"#BFDCE6", "#E08E1B", "#F6E7AE", "#5E8C4A", "#A08D7C", "#5B3A8C", "#16293F"}};
    return colours;
}

const GaugeColours& darkColours()
{
    static const GaugeColours colours{.ground = "#161C21",
        .ink = "#E6EDF1",
        .quietInk = "#A9B8C2",
        .hairline = "#43505A",
        .curve = "#5CC2DE",
        .caution = "#FF9A7A",
        .liquid = "#2A617D",
        .block = "#182A35",
        .fieldDark = "#1E5470",
        .fieldBright = "#DCE8EE",
        .fieldInk = "#1D2B36",
        .paper = "#2A3239",
        .shell = "#E3CBA6",
        .parts = {"#2F6F8F", "#E9A23B", "#F7ECBF", "#5E9A55", "#8F8378", "#A587D8", "#C4D3E6"}};
    return colours;
}

int between(int from, int to, double share) { return qRound(from + share * (to - from)); }

}  // namespace

GaugeColours gaugeColours(const QPalette& palette)
{
    const bool isDark = palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
    return isDark ? darkColours() : lightColours();
}

GaugeColours coloursInWindow(const QPalette& palette)
{
    GaugeColours colours = gaugeColours(palette);
    colours.ground = palette.color(QPalette::Window);
    return colours;
}

QColor colourOf(RibbonPart part, const QPalette& palette) { return gaugeColours(palette).parts[static_cast<std::size_t>(part)]; }

namespace {

/// Loose crystals have the shade of the firmness that has about as much ice.
Firmness withAsMuchIce(Firmness firmness)
{
    switch (firmness) {
    case Firmness::Wet:
        return Firmness::Soft;
    case Firmness::Loose:
        return Firmness::Firm;
    case Firmness::Dry:
        return Firmness::Block;
    default:
        return firmness;
    }
}

}  // namespace

QColor regionColour(Firmness firmness, const GaugeColours& colours)
{
    const double share = static_cast<double>(withAsMuchIce(firmness)) / static_cast<double>(Firmness::Block);
    const QColor &from = colours.liquid, &to = colours.block;
    return {between(from.red(), to.red(), share), between(from.green(), to.green(), share), between(from.blue(), to.blue(), share)};
}

}  // namespace firn::app
