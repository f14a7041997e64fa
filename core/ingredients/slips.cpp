#include "ingredients/slips.h"

#include <algorithm>
#include <array>
#include <bit>
#include <vector>

namespace firn {

namespace {

/// The last row of the table of distances: from all of `a` to every beginning of `b`.
std::vector<std::size_t> distances(std::string_view a, std::string_view b)
{
    std::vector<std::size_t> beforeLast(b.size() + 1), last(b.size() + 1), row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j)
        row[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        beforeLast.swap(last);
        last.swap(row);
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1)});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                row[j] = std::min(row[j], beforeLast[j - 2] + 1);
        }
    }
    return row;
}

}  // namespace

std::size_t slipsBetween(std::string_view a, std::string_view b, std::size_t most)
{
    if (std::max(a.size(), b.size()) - std::min(a.size(), b.size()) > most)
        return most + 1;
    return std::min(distances(a, b).back(), most + 1);
}

std::size_t slipsToBeginning(std::string_view typed, std::string_view word, std::size_t most)
{
    const auto toBeginnings = distances(typed, word.substr(0, typed.size() + most));
    return std::min(*std::ranges::min_element(toBeginnings), most + 1);
}

std::uint64_t lettersOf(std::string_view word)
{
    std::uint64_t letters = 0;
    for (const char c : word)
        letters |= std::uint64_t{1} << (static_cast<unsigned char>(c) % 64);
    return letters;
}

bool isFartherThan(std::size_t most, std::uint64_t lettersOfA, std::uint64_t lettersOfB)
{
    // A changed letter takes one bit away and brings another; nothing else changes more than one.
    return static_cast<std::size_t>(std::popcount(lettersOfA & ~lettersOfB)) > most
           || static_cast<std::size_t>(std::popcount(lettersOfB & ~lettersOfA)) > most;
}

}  // namespace firn
