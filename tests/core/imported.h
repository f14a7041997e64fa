// What the tests of the readers of ingredients have in common.
#pragma once

#include "exchange/imported_ingredient.h"

#include <gtest/gtest.h>
#include <string>
#include <vector>

namespace firn {

using Import = Result<std::vector<ImportedIngredient>>;

/// What was read; where it was refused, the test fails and there is one empty ingredient.
inline std::vector<ImportedIngredient> imported(const Import& import)
{
    EXPECT_TRUE(import) << english(import.error());
    return import ? *import : std::vector<ImportedIngredient>(1);
}

inline std::string refusalOf(const Import& import) { return import ? "read" : english(import.error()); }

inline std::string joined(const std::vector<Sentence>& sentences)
{
    std::string text;
    for (const Sentence& sentence : sentences)
        text += english(sentence) + "\n";
    return text;
}

inline double amount(const ImportedIngredient& imported, Constituent constituent)
{
    return imported.ingredient.composition.per100g[constituent].value;
}

}  // namespace firn
