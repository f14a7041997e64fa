#include "compare/matching.h"

#include <algorithm>

namespace firn {

namespace {

std::string keyOf(const WeighedRecipe& side, std::size_t component, std::size_t row)
{
    const RowAnalysis& analysis = side.analysis->components[component][row];
    return analysis.ingredientId.empty() ? "name " + folded(side.recipe->components[component].rows[row].ingredient)
                                         : analysis.ingredientId;
}

/// A component of the comparison with the keys of its lines.
struct Matching {
    MatchedComponent component;
    std::vector<std::string> keys;
    std::vector<std::string> names;
};

std::vector<std::string> keysOf(const WeighedRecipe& side, std::size_t component)
{
    std::vector<std::string> keys;
    for (std::size_t row = 0; row < side.recipe->components[component].rows.size(); ++row)
        keys.push_back(keyOf(side, component, row));
    return keys;
}

bool sharesAny(const std::vector<std::string>& a, const std::vector<std::string>& b)
{
    return std::ranges::any_of(a, [&b](const std::string& key) { return std::ranges::find(b, key) != b.end(); });
}

void addRows(Matching& matching, std::size_t side, std::size_t sideCount, const std::vector<std::string>& keys)
{
    std::vector<MatchedLine>& lines = matching.component.lines;
    std::vector<bool> isPlaced(keys.size());
    for (std::size_t row = 0; row < keys.size(); ++row) {
        for (std::size_t line = 0; line < lines.size() && !isPlaced[row]; ++line) {
            if (matching.keys[line] == keys[row] && !lines[line].rows[side]) {
                lines[line].rows[side] = row;
                isPlaced[row] = true;
            }
        }
    }
    std::size_t next = 0;  // the line under which the row before stands
    for (std::size_t row = 0; row < keys.size(); ++row) {
        if (!isPlaced[row]) {
            while (next < lines.size() && !lines[next].rows[side])
                ++next;
            MatchedLine line{std::vector<std::optional<std::size_t>>(sideCount)};
            line.rows[side] = row;
            lines.insert(lines.begin() + std::ptrdiff_t(next), std::move(line));
            matching.keys.insert(matching.keys.begin() + std::ptrdiff_t(next), keys[row]);
        }
        const auto placed =
            std::ranges::find(lines, std::optional(row), [side](const MatchedLine& line) { return line.rows[side]; });
        next = std::size_t(placed - lines.begin()) + 1;
    }
}

class ComponentMatcher {
public:
    explicit ComponentMatcher(std::size_t sideCount)
        : m_sideCount(sideCount)
    {
    }

    void add(const WeighedRecipe& side, std::size_t index)
    {
        const std::vector<Component>& components = side.recipe->components;
        std::vector<std::optional<std::size_t>> partners(components.size());
        std::vector<bool> isTaken(m_matchings.size());
        const auto pairUp = [&](auto isPartner) {
            for (std::size_t i = 0; i < components.size(); ++i) {
                for (std::size_t j = 0; j < isTaken.size() && !partners[i]; ++j) {
                    if (!isTaken[j] && isPartner(i, m_matchings[j])) {
                        partners[i] = j;
                        isTaken[j] = true;
                    }
                }
            }
        };
        pairUp([&](std::size_t i, const Matching& other) {
            return !components[i].name.empty() && std::ranges::find(other.names, folded(components[i].name)) != other.names.end();
        });
        const bool isOnlyOne = components.size() == 1 && m_matchings.size() == 1;
        pairUp([&](std::size_t i, const Matching& other) { return isOnlyOne || sharesAny(keysOf(side, i), other.keys); });
        for (std::size_t i = 0; i < components.size(); ++i) {
            if (!partners[i]) {
                partners[i] = m_matchings.size();
                m_matchings.emplace_back().component.components.resize(m_sideCount);
            }
            Matching& matching = m_matchings[*partners[i]];
            matching.component.components[index] = i;
            matching.names.push_back(folded(components[i].name));
            addRows(matching, index, m_sideCount, keysOf(side, i));
        }
    }

    std::vector<MatchedComponent> done() &&
    {
        std::vector<MatchedComponent> result;
        for (Matching& matching : m_matchings)
            result.push_back(std::move(matching.component));
        return result;
    }

private:
    std::size_t m_sideCount;
    std::vector<Matching> m_matchings;
};

}  // namespace

std::vector<MatchedComponent> matched(std::span<const WeighedRecipe> recipes)
{
    ComponentMatcher matcher(recipes.size());
    for (std::size_t i = 0; i < recipes.size(); ++i)
        matcher.add(recipes[i], i);
    return std::move(matcher).done();
}

}  // namespace firn
