// What else the name of a row may mean: the others that share a general word, or what is nearest to an unknown name.
#pragma once

#include "document/edits.h"

#include <QString>
#include <vector>

class QMenu;

namespace firn::app {

struct OtherMeaning {
    QString shown;
    std::string name;  // what the row is called once it is chosen
};

/// None where the name says by itself what it is.
std::vector<OtherMeaning> otherMeanings(const Document& document, RowPlace place, std::size_t atMost);

/// Other components, linked recipes, and own ingredients that came with the recipe, whose name has this text in it.
std::vector<std::string> mixesLike(const Document& document, const std::string& typed);

/// Whether a name means an ingredient or one of these mixes as it is, without a guess.
bool meansSomething(const Document& document, const std::string& name);

/// A line in the menu for each, which puts it in the row's place in one step.
void addOtherMeanings(QMenu& menu, Document& document, RowPlace place);

}  // namespace firn::app
