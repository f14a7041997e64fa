// What a teacher shows a class of a recipe, one idea a page: its sentence, the steps that lead to its figures, what follows, and a picture.
#pragma once

#include "explain/explain.h"
#include "texture/sugar_ice_curve.h"

namespace firn {

enum class LessonTopic {
    Nothing,  // the recipe is empty
    Sugars,
    TotalSolids,
    Milk,
    Alcohol,
    Density,
    Egg,
    FreezingPoint,
    FreezingCurve,
    Spirit,
    SpiritInNumbers,
    Sweetness,
    Texture,
    Bands,
    Correction
};

enum class LessonPicture { None, SugarScale, RibbonBar, Hydrometer, Egg, FreezingCurve, FreezingCurves, SugarIce };

/// What follows from the steps. Its figures are answers; of a verdict ("It floats.") every word is.
struct Conclusion {
    Sentence sentence;
    bool isVerdict = false;

    Conclusion(Sentence said, bool verdict = false)  // NOLINT: a sentence is a conclusion
        : sentence(std::move(said))
        , isVerdict(verdict)
    {
    }
};

struct LessonPage {
    LessonTopic topic = LessonTopic::Nothing;
    Sentence title;
    Sentence idea;                        // without figures
    std::vector<WorkingStep> steps;       // in the order in which they are shown; sums have their largest terms first
    std::vector<Conclusion> conclusions;  // the last one warns of a row that nothing is known about
    LessonPicture picture = LessonPicture::None;
    std::optional<FreezingCurve> beside = {};  // the second curve of FreezingCurves: the mix without its alcohol
    std::optional<SugarIceCurve> sugarIce = {};
    std::optional<Sentence> caption = {};  // of the picture
};

/// The pages that the recipe has the stuff for, in order: none on milk without milk, none on spirit without alcohol. Never empty.
std::vector<LessonTopic> lessonTopics(const Analysis& analysis);

Sentence titleOf(LessonTopic topic);

/// One of these pages. What only one page needs, such as the mix without its alcohol, is worked out for that page alone.
LessonPage lessonPage(LessonTopic topic, const ExplainedAnalysis& explained);

}  // namespace firn
