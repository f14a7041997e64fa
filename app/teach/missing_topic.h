// What stands on the page of a topic while the recipe has not got the stuff for it.
#pragma once

#include "explain/lesson.h"

namespace firn::app {

/// Its title, and what to type to get it back.
LessonPage missingTopicPage(LessonTopic topic, const Analysis& analysis);

}  // namespace firn::app
