#include "teach/projector_type.h"

#include <algorithm>

namespace firn::app {

namespace {

// Pixels on a screen of this many lines.
constexpr double usualHeight = 1080.0;
constexpr double usualLeast = 28.0;
constexpr double usualTitle = 58.0;
constexpr double usualIdea = 38.0;
constexpr double usualText = 36.0;
constexpr double usualFormula = 46.0;
constexpr double usualMargin = 54.0;
constexpr double usualGap = 34.0;
constexpr double usualSmallGap = 16.0;
constexpr int smallestLeast_px = 20;

}  // namespace

int leastType_px(QSize screen) { return std::max(smallestLeast_px, qRound(usualLeast * screen.height() / usualHeight)); }

ProjectorType::ProjectorType(const QFont& family, QSize screen)
    : least_px(leastType_px(screen))
{
    const double scale = screen.height() / usualHeight;
    const auto sized = [&](double usual) {
        QFont font = family;
        font.setPixelSize(std::max(least_px, qRound(usual * scale)));
        return font;
    };
    title = sized(usualTitle);
    title.setBold(true);
    idea = sized(usualIdea);
    text = sized(usualText);
    formula = sized(usualFormula);
    quiet = sized(usualLeast);
    margin = usualMargin * scale;
    gap = usualGap * scale;
    smallGap = usualSmallGap * scale;
}

}  // namespace firn::app
