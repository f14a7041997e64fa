// Units of formulas: whether both sides of an equation, and all parts of a sum, are of one kind.
#pragma once

#include "derivation/formula_text.h"
#include "units/unit.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

namespace firn {

/// Units with their powers: {"g": 1, "mL": -1}. °C and K are one kind (a temperature and a difference of two), and so are % and °Bx, which is
/// percent of sucrose by mass. Nothing but these two stands for another unit: g and kg are two.
using UnitPowers = std::map<std::string, double>;

class DimensionFault : public std::runtime_error {
    using std::runtime_error::runtime_error;
};

inline UnitPowers multiplied(UnitPowers a, const UnitPowers& b, double power)
{
    for (const auto& [unit, exponent] : b) {
        a[unit] += power * exponent;
        if (std::abs(a[unit]) < 1e-9)
            a.erase(unit);
    }
    return a;
}

/// "J/(mol K)", "kg/m³", "√(J/mol)", "1/K", "% vol".
class UnitReader {
public:
    explicit UnitReader(std::string text)
        : m_text(std::move(text))
    {
        joinKitchenUnits();
    }

    UnitPowers read()
    {
        if (m_text == "% vol")
            return {{"% vol", 1.0}};
        UnitPowers unit = product();
        if (m_at != m_text.size())
            throw DimensionFault("unit not understood: " + m_text);
        return unit;
    }

private:
    /// "imperial fl oz" is one unit, the longest first.
    void joinKitchenUnits()
    {
        std::vector<std::string> symbols;
        for (const UnitFacts& facts : allUnits())
            symbols.emplace_back(facts.symbol);
        std::ranges::sort(symbols, std::ranges::greater{}, &std::string::size);
        for (const std::string& symbol : symbols) {
            const auto at = symbol.find(' ') == std::string::npos ? std::string::npos : m_text.find(symbol);
            if (at != std::string::npos)
                std::replace(m_text.begin() + std::ptrdiff_t(at), m_text.begin() + std::ptrdiff_t(at + symbol.size()), ' ', '_');
        }
    }

    bool starts(const std::string& what) const { return m_text.compare(m_at, what.size(), what) == 0; }
    bool take(const std::string& what)
    {
        if (!starts(what))
            return false;
        m_at += what.size();
        return true;
    }

    UnitPowers product()
    {
        UnitPowers unit = factor();
        while (m_at < m_text.size() && !starts(")")) {
            if (take("/"))
                unit = multiplied(std::move(unit), factor(), -1.0);
            else if (take(" "))
                unit = multiplied(std::move(unit), factor(), 1.0);
            else
                throw DimensionFault("unit not understood: " + m_text);
        }
        return unit;
    }

    UnitPowers factor()
    {
        if (take("√"))
            return multiplied({}, factor(), 0.5);
        if (take("(")) {
            UnitPowers unit = product();
            if (!take(")"))
                throw DimensionFault("unit not understood: " + m_text);
            return unit;
        }
        if (take("1"))
            return {};
        std::string name;
        while (m_at < m_text.size() && !starts("/") && !starts(" ") && !starts("(") && !starts(")") && !starts("²") && !starts("³"))
            name += m_text[m_at++];
        const double power = take("²") ? 2.0 : take("³") ? 3.0 : 1.0;
        if (name.empty())
            return {};
        if (name == "°C")
            name = "K";
        if (name == "°Bx")
            name = "%";
        return {{name, power}};
    }

    std::string m_text;
    std::size_t m_at = 0;
};

inline UnitPowers dimensionOfUnit(const std::string& unit) { return unit.empty() ? UnitPowers{} : UnitReader(unit).read(); }

/// None for what may be of any kind: zero, an empty sum, what a named table gives.
inline std::optional<UnitPowers> dimensionOf(const Formula& formula);

inline std::optional<UnitPowers> commonDimension(const std::vector<Formula>& parts, const Formula& whole)
{
    std::optional<UnitPowers> common;
    for (const Formula& part : parts) {
        const auto each = dimensionOf(part);
        if (!each)
            continue;
        if (common && *common != *each)
            throw DimensionFault("parts of two kinds: " + textOf(whole));
        common = each;
    }
    return common;
}

inline std::optional<UnitPowers> dimensionOfOperation(const Operation& operation, const Formula& whole)
{
    const auto& parts = operation.parts;
    switch (operation.op) {
    case Operator::Sum:
    case Operator::Equals:
        return commonDimension(parts, whole);
    case Operator::Negative:
        return dimensionOf(parts[0]);
    case Operator::Product:
    case Operator::Fraction: {
        UnitPowers result;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            const auto each = dimensionOf(parts[i]);
            if (!each)
                return std::nullopt;
            result = multiplied(std::move(result), *each, operation.op == Operator::Fraction && i > 0 ? -1.0 : 1.0);
        }
        return result;
    }
    case Operator::Power: {
        const auto base = dimensionOf(parts[0]), exponent = dimensionOf(parts[1]);
        if (exponent && !exponent->empty())
            throw DimensionFault("an exponent with a unit: " + textOf(whole));
        return base ? std::optional(multiplied({}, *base, valueOf(parts[1]).value_or(1.0))) : std::nullopt;
    }
    case Operator::Root: {
        const auto base = dimensionOf(parts[0]);
        return base ? std::optional(multiplied({}, *base, 0.5)) : std::nullopt;
    }
    case Operator::Function:
        if (operation.function == "max" || operation.function == "min")
            return commonDimension(parts, whole);
        if (operation.function == "ln" || operation.function == "exp") {
            const auto argument = dimensionOf(parts[0]);
            if (argument && !argument->empty())
                throw DimensionFault("a logarithm or power of something with a unit: " + textOf(whole));
            return UnitPowers{};
        }
        for (const Formula& part : parts)
            (void)dimensionOf(part);
        return std::nullopt;
    }
    return std::nullopt;
}

inline std::optional<UnitPowers> dimensionOf(const Formula& formula)
{
    if (const auto* number = std::get_if<Number>(&formula.node))
        return number->value == 0.0 && number->unit.empty() ? std::nullopt : std::optional(dimensionOfUnit(number->unit));
    if (const auto* symbol = std::get_if<Symbol>(&formula.node))
        return dimensionOfUnit(symbol->unit);
    if (const auto* operation = std::get_if<Operation>(&formula.node))
        return dimensionOfOperation(*operation, formula);
    const auto& series = std::get<Series>(formula.node);
    std::vector<Formula> terms{*series.body};
    for (const SeriesTerm& term : series.terms)
        terms.push_back(term.formula);
    return commonDimension(terms, formula);
}

}  // namespace firn
