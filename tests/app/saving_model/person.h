// What a person knows of the recipe that they type, save and undo.
#pragma once

#include "recipe/recipe.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <string>
#include <vector>

namespace firn::app {

/// The typed rows, each with a name of its own.
using Rows = std::set<std::string>;

inline Rows rowsOf(const Recipe& recipe)
{
    Rows rows;
    for (const Row& row : recipe.components.front().rows)
        rows.insert(row.ingredient);
    return rows;
}

inline bool holds(const Rows& all, const Rows& wanted) { return std::ranges::includes(all, wanted); }

inline Rows common(const Rows& some, const Rows& others)
{
    Rows result;
    std::ranges::set_intersection(some, others, std::inserter(result, result.end()));
    return result;
}

inline std::string text(const Rows& rows)
{
    std::string all;
    for (const std::string& row : rows)
        all += row + ", ";
    return all;
}

/// The rows after each step, and the step that the recipe is at.
struct Steps {
    std::vector<Rows> all{Rows()};
    std::size_t at = 0;

    const Rows& now() const { return all[at]; }
    void put(Rows rows)
    {
        all.resize(at + 1);
        all.push_back(std::move(rows));
        ++at;
    }
    void undo() { at -= at > 0; }
    void redo() { at += at + 1 < all.size(); }
    void restart(Rows rows)
    {
        all = {std::move(rows)};
        at = 0;
    }
};

}  // namespace firn::app
