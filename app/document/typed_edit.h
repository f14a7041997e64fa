// What is being typed into a field that counts once it is left.
#pragma once

#include <functional>

namespace firn::app {

class Document;

/// Shows in all views what an edit that is still being typed would do (Document::showTyping). finishTyping(), and any other edit of this
/// document, make it a step of the history first.
void typeLive(Document& document, std::function<void()> edit);

/// Makes it a step of the history.
void finishTyping(Document& document);

/// It was not meant, or the recipe is another one.
void forgetTypedEdit(Document& document);

}  // namespace firn::app
