#include "gauges/type_and_space.h"

#include <algorithm>

namespace firn::app {

namespace {

QFont scaled(QFont font, double factor)
{
    if (font.pixelSize() > 0)
        font.setPixelSize(qRound(font.pixelSize() * factor));
    else
        font.setPointSizeF(font.pointSizeF() * factor);
    return font;
}

}  // namespace

QFont figureFont(const QFont& text) { return scaled(text, 1.6); }

QFont titleFont(const QFont& text) { return scaled(text, 1.25); }

int lineHeight(const QFont& font) { return QFontMetrics(font).height(); }

double besideText(const QFont& font, double usual)
{
    constexpr double usualLineHeight = 16.0;
    return usual * std::max(1.0, lineHeight(font) / usualLineHeight);
}

}  // namespace firn::app
