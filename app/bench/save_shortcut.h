// Saving from a window beside the bench.
#pragma once

class QWidget;

namespace firn::app {

class Document;
class MessageBar;

/// Ctrl+S in this window saves the recipe as on the bench, and says so here; what hinders it is said on the bench, which comes to the front.
void takeRecipesSave(QWidget& window, QWidget& bench, const Document& document, MessageBar& messages);

}  // namespace firn::app
