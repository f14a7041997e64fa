// How figures were worked out. A model that is given a Working writes each of its steps into it as it goes, with the very numbers that it
// computes with; without one it writes nothing and loses no time.
#pragma once

#include "derivation/formula.h"
#include "derivation/source.h"

#include <functional>
#include <map>

namespace firn {

struct WorkingStep {
    Symbol result;
    Formula formula;  // an equation; where `method` says that it was solved, with the result somewhere in it
    Source source;
    std::optional<Sentence> origin = {};  // more of where this recipe's numbers come from
    std::optional<Sentence> method = {};  // how it was solved or looked up, and between which bounds
    std::optional<Sentence> range = {};   // where it holds, and what happens outside
    std::optional<Sentence> uncertainty = {};
    bool isInNumbers = false;  // as handbooks print fitted formulas: each symbol stands for its number in its unit
};

/// The step with its values put in, and its result as it is written.
Formula withValues(const WorkingStep& step);

/// The step with every symbol as `change` leaves it: its result, those of its formula and of the general terms of its sums.
WorkingStep withSymbols(WorkingStep step, const std::function<void(Symbol&)>& change);

/// What a reader of a formula in numbers must know.
Sentence noteOnNumbers();

/// The steps of one figure, in order. The last one's result is the figure.
class Working {
public:
    /// `home` stands before the keys of figures that steps refer to: "" for the dessert, "components[1]." for a part of it.
    explicit Working(std::string home = {})
        : m_home(std::move(home))
    {
    }

    /// Of a mix whose figures have no keys, such as one that a reading found: its symbols lead nowhere.
    static Working apart()
    {
        Working working;
        working.m_home.reset();
        return working;
    }

    /// result = right; returned to add range and uncertainty.
    WorkingStep& found(Symbol result, Formula right, Source source);
    /// An equation that was solved for the result.
    WorkingStep& solved(Symbol result, Formula left, Formula right, Source source, Sentence method);
    void add(const std::vector<WorkingStep>& steps);
    /// The figure turned out not to exist: there is nothing to show.
    void giveUp() { m_steps.clear(); }

    const std::vector<WorkingStep>& steps() const { return m_steps; }
    std::string keyOf(std::string_view figure) const { return m_home ? *m_home + std::string(figure) : std::string(); }

private:
    std::optional<std::string> m_home;
    std::vector<WorkingStep> m_steps;
};

/// The workings of all figures of an analysis, each by its key in the report.
class Workings {
public:
    /// Of a mix whose figures have no keys: their symbols lead nowhere.
    static Workings apart()
    {
        Workings workings;
        workings.m_isApart = true;
        return workings;
    }

    Working& of(const std::string& figure, const std::string& home = {});
    const Working* find(const std::string& figure) const;
    /// Takes over the workings of figures that it has none of.
    void add(Workings more) { m_workings.merge(more.m_workings); }
    const std::map<std::string, Working, std::less<>>& all() const { return m_workings; }

private:
    std::map<std::string, Working, std::less<>> m_workings;
    bool m_isApart = false;
};

}  // namespace firn
