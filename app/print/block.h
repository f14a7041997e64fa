// What a handout is made of, from top to bottom. Text is text: nothing in it is markup.
#pragma once

#include "derivation/formula.h"

#include <QString>
#include <variant>
#include <vector>

namespace firn::app {

enum class TextStyle { Title, Heading, Body, Strong, Quiet };

/// A paragraph.
struct TextBlock {
    QString text;
    TextStyle style = TextStyle::Body;
    double indent_em = 0.0;
};

/// A formula in as many lines as the page asks for.
struct FormulaBlock {
    Formula formula;
    double indent_em = 0.0;
    QString number = {};  // before it, at the left edge
};

/// A line with this many equal steps on it, for a hand to mark.
struct ScaleLine {
    int steps = 1;
};

/// Cells side by side, of which each takes its share of the width.
struct Cell {
    std::variant<QString, Formula, ScaleLine> content;
    double share = 1.0;
    bool isRight = false;  // set against its right edge
    TextStyle style = TextStyle::Body;
};
struct RowBlock {
    std::vector<Cell> cells;
    double indent_em = 0.0;
};

/// Rows under the names of their columns. Heading and names stay with the first row, and stand again on each page that the rows go on to.
struct TableBlock {
    QString heading;
    std::vector<Cell> names;
    std::vector<std::vector<Cell>> rows;
};

/// A hairline across the page.
struct RuleBlock {};

/// Labels, each with an equal part of the line to write on after it.
struct WritingBlock {
    std::vector<QString> labels;
};

struct Block {
    std::variant<TextBlock, FormulaBlock, RowBlock, TableBlock, RuleBlock, WritingBlock> content;
    double spaceBefore_em = 0.3;  // none at the top of a page
    bool keepsWithNext = false;
};

/// Pages of their own, counted among themselves.
struct Section {
    QString name;    // at the head of each page
    QString number;  // the same, at the right: "Sheet 7"
    std::vector<Block> blocks;
};

struct Handout {
    QString title;
    std::vector<Section> sections;
    bool isLandscape = false;  // for rows that are too wide for a sheet that stands
};

}  // namespace firn::app
