// CSV (RFC 4180) taken apart and put together, whatever its columns mean. Only the files of this folder include it.
#pragma once

#include "units/sentence.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace firn {

struct CsvRecord {
    std::size_t line = 0;  // on which it begins, from 1
    std::vector<std::string> cells;
};

/// The records of a text whose cells are parted by what its first line has most of: comma, semicolon or tab. Records of empty cells are
/// left out; cells without quotes lose the blanks around them. Fails on a broken quote, with its line, and on what is no UTF-8 text.
Result<std::vector<CsvRecord>> csvRecords(std::string_view text);

/// The text of a cell, without the apostrophe that keeps a spreadsheet from taking it for a formula.
std::string withoutFormulaGuard(const std::string& cell);

/// A text as a cell: quoted where it has to be, and led by an apostrophe where a spreadsheet would take it for a formula.
std::string csvCell(std::string cell);

}  // namespace firn
