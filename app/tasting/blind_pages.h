// What is printed for a blind tasting: a page for each taster, and apart from it the key for whoever fills the cups.
#pragma once

#include "print/block.h"
#include "recipe/recipe.h"
#include "units/sentence.h"

namespace firn::app {

class Document;

/// A section for each taster: the codes in this taster's order, a line to mark for each scale and cup, room for words. Nothing on it says which
/// version is in which cup. `cautions` stand in every section.
Handout tasterPages(const Document& document, const BlindSheet& sheet, std::size_t tasters, const std::vector<Sentence>& cautions);

/// Which version goes into which cup, and in which order each taster gets them.
Handout keyPage(const Document& document, const BlindSheet& sheet, std::size_t tasters);

}  // namespace firn::app
