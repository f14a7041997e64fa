// The places of everything on a page of a lesson: measured first, and split into parts where one screen is too small.
#pragma once

#include "explain/lesson.h"
#include "teach/projected_text.h"
#include "teach/projector_type.h"

#include <QRect>

namespace firn::app {

enum class ProjectedKind { Title, Idea, Text, Formula, Picture, Number };

struct ProjectedItem {
    ProjectedKind kind = ProjectedKind::Text;
    QRect place;     // pixels of the screen
    FormulaBox box;  // to draw at its top left corner; empty for a picture
    QString spoken;
    int shownFrom = 0;  // how many times one has to go on until it is shown: not at all for what comes first
};

/// What stands on the screen at a time.
struct ProjectedPart {
    std::vector<ProjectedItem> items;
    int lastStep = 0;  // with so many everything is shown
};

/// How much room a picture needs.
struct PictureNeed {
    bool isStrip = false;        // as wide as the page, else beside the text
    int height = 0;              // of a strip
    double shareOfWidth = 0.45;  // of one beside the text
};

/// Never empty. Nothing overlaps, and no type is smaller than leastType_px, for screens of at least 1024 x 720.
std::vector<ProjectedPart> projectedParts(
    const LessonPage& page, QSize screen, const QFont& family, const PictureNeed& picture, const HiddenAnswers& hidden);

}  // namespace firn::app
