// The pages of a lesson that need more than steps at hand.
#pragma once

#include "explain/lesson.h"

namespace firn {

/// A conclusion that is an answer as a whole.
inline Conclusion verdict(Sentence sentence) { return {std::move(sentence), true}; }
void addVerdicts(LessonPage& page, const std::vector<Sentence>& sentences);

/// Whether there is a share of sugars to bring the mix to.
bool canBeCorrected(const Analysis& analysis);

/// How much sucrose or water takes the mix to the middle of its trade band, or, where the trade gives none, how much sucrose to a little more.
void fillCorrection(LessonPage& page, const ExplainedAnalysis& explained);

/// The mix with its alcohol and without it: what the alcohol does, then all the steps to it.
void fillSpirit(LessonPage& page, const ExplainedAnalysis& explained);
void fillSpiritInNumbers(LessonPage& page, const ExplainedAnalysis& explained);

}  // namespace firn
