#include "teach/missing_topic.h"

namespace firn::app {

namespace {

Sentence whatToType(LessonTopic topic, const Analysis& analysis)
{
    const bool isUnfrozen = analysis.texture.process == Process::Unfrozen;
    switch (topic) {
    case LessonTopic::Sugars:
    case LessonTopic::Sweetness:
        return phrase("No sugar in the mix now. Type some.");
    case LessonTopic::TotalSolids:
        return phrase("Nothing but water and alcohol in the mix now. Type something with solids.");
    case LessonTopic::Milk:
        return phrase("No milk in the mix now. Type some.");
    case LessonTopic::Correction:
        return phrase("No sugar in the mix now, or more than dissolves in the cold: change how much.");
    case LessonTopic::Alcohol:
    case LessonTopic::Spirit:
    case LessonTopic::SpiritInNumbers:
        if (analysis.mix[Constituent::Ethanol].value <= 0.0)
            return phrase("No alcohol in the mix now. Type some.");
        break;
    default:
        break;
    }
    return isUnfrozen ? phrase("This part is not frozen.") : phrase("No water in the mix now. Type some.");
}

}  // namespace

LessonPage missingTopicPage(LessonTopic topic, const Analysis& analysis)
{
    LessonPage page;
    page.topic = topic;
    page.title = titleOf(topic);
    page.idea = whatToType(topic, analysis);
    return page;
}

}  // namespace firn::app
