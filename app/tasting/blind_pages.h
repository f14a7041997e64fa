// What is printed for a blind tasting: a page for each taster, and apart from it the key for whoever fills the cups.
#pragma once

#include "recipe/recipe.h"
#include "units/sentence.h"

#include <QTextDocument>
#include <memory>
#include <vector>

namespace firn::app {

/// Black on white, one page a taster: the codes in this taster's order, a line to mark for each scale and cup, room for words. Nothing on it says
/// which version is in which cup. `cautions` stand on every page.
std::unique_ptr<QTextDocument> tasterPages(
    const Recipe& recipe, const BlindSheet& sheet, std::size_t tasters, const std::vector<Sentence>& cautions);

/// Which version goes into which cup, and in which order each taster gets them.
std::unique_ptr<QTextDocument> keyPage(const Recipe& recipe, const BlindSheet& sheet, std::size_t tasters);

/// Writes it on A4. On failure the sentence says the way out.
Result<void> savePdf(const QTextDocument& pages, const QString& file);

}  // namespace firn::app
