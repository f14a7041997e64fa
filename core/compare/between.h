// The recipes between two: the first one with some of the changes that lead to the other.
#pragma once

#include "compare/matching.h"

#include <span>
#include <string>
#include <vector>

namespace firn {

/// One change from a recipe to another.
struct Change {
    enum Kind { Row, Steps, OwnIngredient, LinkedRecipe, ServingTemperature, Rest };
    enum Way { Other, Added, LeftOut };

    Kind kind = Row;
    Way way = Other;
    std::size_t component = 0;  // of the comparison
    std::size_t line = 0;       // of its lines, for a row
    std::string name;           // the ingredient, component or linked recipe
    Sentence what;              // "sucrose: 190 g → 220 g"
};

/// The first recipe and another one, of which the first is taken in the other's batch size.
class Between {
public:
    /// All that is pointed at must outlive this object.
    Between(
        std::span<const WeighedRecipe> recipes, std::span<const MatchedComponent> matching, std::size_t other, double batchFactor);

    /// Those that can matter to what the mix is: another wording or order of rows, process and air do not.
    const std::vector<Change>& changes() const { return m_changes; }

    /// The recipe with the changes that are marked.
    Recipe with(const std::vector<bool>& isMade) const;

    Celsius servedAt(const std::vector<bool>& isMade) const;

private:
    void findRows(std::size_t component);
    void findSteps(std::size_t component);
    void findMakes();
    bool matters(const MatchedComponent& component, const MatchedLine& line) const;
    const Row* rowOf(const Recipe& recipe, std::size_t side, const MatchedComponent& component, const MatchedLine& line) const;
    Component componentWith(std::size_t index, const std::vector<bool>& isMade) const;

    const WeighedRecipe m_from;
    const WeighedRecipe m_to;
    std::span<const MatchedComponent> m_matching;
    std::size_t m_other;
    double m_factor;
    Recipe m_start;  // the first one in the other's size
    std::vector<Change> m_changes;
};

}  // namespace firn
