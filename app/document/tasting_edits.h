// The edits of the tasting log: like those of edits.h, each is one named step of the undo history, or none where nothing would change.
#pragma once

#include "document/gesture.h"
#include "recipe/recipe.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace firn::app {

class Document;

/// A tasting of today, of what is on the bench, behind those of before.
void addTasting(Document& document);
void removeTasting(Document& document, std::size_t place);

/// Date, tasters, words, the next change, or photo.
void changeTastingText(
    Document& document, std::size_t place, std::string Tasting::*member, const std::string& text, Gesture gesture = {});
/// How cold it was served, or how long it had been frozen.
void changeTastingNumber(Document& document, std::size_t place, std::optional<double> Tasting::*member,
    std::optional<double> number, Gesture gesture = {});

/// What was tasted: a version (empty for what is on the bench), or what was in the cup with this code.
void changeTasted(Document& document, std::size_t place, const std::string& version, const std::string& code);

/// No score where none is given.
void changeScore(
    Document& document, std::size_t place, const std::string& scale, std::optional<double> value, Gesture gesture = {});

void addScale(Document& document, const TastingScale& scale);
/// A new name goes to the scores.
void changeScale(Document& document, std::size_t place, const TastingScale& scale);
/// Takes its scores along.
void removeScale(Document& document, std::size_t place);

/// Makes codes for these versions. What is on the bench (an empty id) is kept first unless a version holds it, so that later edits change nothing
/// in the cups.
void addBlindSheet(Document& document, std::vector<std::string> versions, std::uint64_t seed);
void revealBlindSheet(Document& document, std::size_t place);

}  // namespace firn::app
