// Edits of what the notebook finds the recipe on the bench by.
#pragma once

#include <string>
#include <vector>

namespace firn::app {

class Document;

void changeTags(Document& document, const std::vector<std::string>& tags);
void changeFavourite(Document& document, bool isFavourite);
void changeArchived(Document& document, bool isArchived);

}  // namespace firn::app
