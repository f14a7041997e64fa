// What a line of a pasted recipe is: an ingredient, a heading, a sentence of the method.
#pragma once

#include "recipe/text_line.h"

#include <optional>
#include <string>
#include <string_view>

namespace firn {

enum class LineKind {
    Blank,
    Comment,
    Amount,       // an ingredient and how much of it, or a line that is meant so and cannot be read
    Name,         // words without an amount: an ingredient, a title or the name of a component
    Heading,      // "For the syrup:", "## Syrup"
    Title,        // "Subject: Pear sorbet"
    Ingredients,  // "Ingredients:"
    Method,       // "Method", "Step 1"
    Notes,        // "Notes:"
    Prose         // a step of the method, a greeting, "Serves 6"
};

struct KindOfLine {
    LineKind kind;
    std::string heading = {};       // of a heading or title, without its marks
    bool isForComponent = false;    // "For the syrup", which is no title
    std::optional<Line> line = {};  // of an ingredient that can be read
};

KindOfLine kindOf(std::string_view line);

}  // namespace firn
