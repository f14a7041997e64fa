// The edits of a component's steps: like those of edits.h, each is one named step of the undo history, or none where nothing would change.
#pragma once

#include "document/gesture.h"
#include "recipe/step.h"

#include <cstddef>
#include <vector>

namespace firn::app {

class Document;

/// Puts a step of this kind, which takes nothing away, behind the last one.
void addStep(Document& document, std::size_t component, StepKind kind);
void removeSteps(Document& document, std::size_t component, const std::vector<std::size_t>& steps);

/// Moves a step; `to` is its number afterwards.
void moveStep(Document& document, std::size_t component, std::size_t from, std::size_t to);
void changeStep(Document& document, std::size_t component, std::size_t index, const Step& step, Gesture gesture = {});

}  // namespace firn::app
