// The pages of a lesson that need more than steps at hand.
#pragma once

#include "explain/lesson.h"

namespace firn {

/// The band of sugar that the trade gives to this kind of dessert; none for kinds that it gives none.
const TradeBand* tradeBandOf(TextureClass textureClass);

/// How much sucrose or water takes the mix to the middle of its trade band.
void fillCorrection(LessonPage& page, const ExplainedAnalysis& explained);

/// The mix with its alcohol and without it.
void fillSpirit(LessonPage& page, const ExplainedAnalysis& explained);

}  // namespace firn
