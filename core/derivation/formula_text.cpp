#include "derivation/formula_text.h"

#include "units/number.h"

#include <array>
#include <cmath>
#include <cstdlib>
#include <fmt/format.h>

namespace firn {

namespace {

constexpr int significantDigits = 4;
constexpr int scientificDecimals = 2;
constexpr std::string_view tenToThe = "·10";

/// How firmly a formula holds together when written in one line.
enum class Binding { Relation, Sum, Negative, Product, Power, Atom };

Binding bindingOf(const Formula& formula)
{
    if (const auto* number = std::get_if<Number>(&formula.node)) {
        if (number->value < 0.0)
            return Binding::Negative;
        return number->unit.empty() ? Binding::Atom : Binding::Product;
    }
    if (const auto* sum = std::get_if<Series>(&formula.node))
        return sum->isWrittenOut && sum->terms.size() == 1 ? bindingOf(sum->terms.front().formula)
               : sum->isWrittenOut && sum->terms.empty()   ? Binding::Atom
                                                           : Binding::Sum;
    if (const auto* operation = std::get_if<Operation>(&formula.node)) {
        switch (operation->op) {
        case Operator::Equals:
            return Binding::Relation;
        case Operator::Sum:
            return Binding::Sum;
        case Operator::Negative:
            return Binding::Negative;
        case Operator::Product:
        case Operator::Fraction:
            return Binding::Product;
        case Operator::Power:
            return Binding::Power;
        case Operator::Root:
        case Operator::Function:
            break;
        }
    }
    return Binding::Atom;
}

std::string withoutTrailingZeros(std::string text)
{
    if (text.find('.') == std::string::npos)
        return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.'))
        text.pop_back();
    return text;
}

std::string withDecimals(int decimals, double size) { return fmt::format("{:.{}f}", roundedTo(decimals, size), decimals); }

/// "9.31·10⁻⁵"
std::string scientific(double size)
{
    static constexpr std::array<std::string_view, 10> raised{"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"};
    const std::string text = fmt::format("{:.{}e}", size, scientificDecimals);
    const std::size_t e = text.find('e');
    std::string power = text[e + 1] == '-' ? "⁻" : "";
    for (const char digit : std::to_string(std::abs(std::stoi(text.substr(e + 1)))))
        power += raised[static_cast<std::size_t>(digit - '0')];
    return withoutTrailingZeros(text.substr(0, e)) + std::string(tenToThe) + power;
}

std::string digitsOf(const Number& number)
{
    const double size = std::abs(number.value);
    if (size == 0.0)
        return "0";
    if (!std::isfinite(number.value))
        return number.value > 0.0 ? "∞" : "−∞";
    if (!number.isValue)
        return exactNumber(size);
    if (number.decimals)
        return withDecimals(*number.decimals, size);
    if (size < 1e-4 || size >= 1e9)
        return scientific(size);
    const int before = static_cast<int>(std::floor(std::log10(size))) + 1;
    return withoutTrailingZeros(withDecimals(std::max(significantDigits - before, before >= significantDigits ? 1 : 0), size));
}

class Writer {
public:
    explicit Writer(std::size_t mostTerms)
        : m_mostTerms(mostTerms)
    {
    }

    std::string operator()(const Formula& formula) const
    {
        return std::visit([this](const auto& node) { return write(node); }, formula.node);
    }

private:
    std::string part(const Formula& formula, Operator op, std::size_t place) const
    {
        const std::string text = (*this)(formula);
        return needsBrackets(formula, op, place) ? "(" + text + ")" : text;
    }

    std::string write(const Number& number) const { return valueText(number); }
    std::string write(const Symbol& symbol) const { return textOf(symbol); }

    std::string write(const Operation& operation) const
    {
        const auto& parts = operation.parts;
        const Operator op = operation.op;
        switch (op) {
        case Operator::Sum:
            return sum(parts.size(), [&](std::size_t i) -> const Formula& { return parts[i]; });
        case Operator::Product:
            return listed(parts, op, " · ");
        case Operator::Fraction:
            return part(parts[0], op, 0) + " / " + part(parts[1], op, 1);
        case Operator::Negative:
            return "−" + part(parts[0], op, 0);
        case Operator::Power:
            return part(parts[0], op, 0) + exponent(parts[1]);
        case Operator::Root:
            return "√(" + (*this)(parts[0]) + ")";
        case Operator::Function:
            return operation.function + "(" + listed(parts, op, ", ") + ")";
        case Operator::Equals:
            return listed(parts, op, " = ");
        }
        return {};
    }

    std::string write(const Series& series) const
    {
        if (!series.isWrittenOut)
            return "Σ_" + series.index + " " + part(*series.body, Operator::Product, 0);
        if (series.terms.empty())
            return "0";
        return sum(series.terms.size(), [&](std::size_t i) -> const Formula& { return series.terms[i].formula; });
    }

    std::string exponent(const Formula& formula) const
    {
        const auto* number = std::get_if<Number>(&formula.node);
        if (number && number->value == 2.0)
            return "²";
        if (number && number->value == 3.0)
            return "³";
        return "^" + part(formula, Operator::Power, 1);
    }

    std::string listed(const std::vector<Formula>& parts, Operator op, std::string_view between) const
    {
        std::string text;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            if (i > 0)
                text += between;
            text += part(parts[i], op, i);
        }
        return text;
    }

    template <class Terms>
    std::string sum(std::size_t count, Terms term) const
    {
        const bool isFolded = m_mostTerms > 0 && count > m_mostTerms;
        std::string text;
        for (std::size_t i = 0; i < count; ++i) {
            if (isFolded && i + 2 > m_mostTerms && i + 1 < count) {
                text += " + …";
                i = count - 2;
                continue;
            }
            std::string next = part(term(i), Operator::Sum, i);
            constexpr std::string_view minus = "−";
            if (i == 0)
                text = next;
            else if (next.starts_with(minus))
                text += " − " + next.substr(minus.size());
            else
                text += " + " + next;
        }
        return isFolded ? fmt::format("{} ({} terms)", text, count) : text;
    }

    std::size_t m_mostTerms;
};

}  // namespace

std::string valueText(const Number& number)
{
    const std::string digits = digitsOf(number);
    const bool isZero = digits.find_first_not_of("0.") == std::string::npos;
    const std::string text = (number.value < 0.0 && !isZero && std::isfinite(number.value) ? "−" : "") + digits;
    return number.unit.empty() ? text : text + " " + number.unit;
}

std::optional<int> decimalsShown(const Number& number)
{
    const std::string text = digitsOf(number);
    if (!std::isfinite(number.value) || text.find(tenToThe) != std::string::npos)
        return std::nullopt;
    const std::size_t mark = text.find('.');
    return mark == std::string::npos ? 0 : static_cast<int>(text.size() - mark) - 1;
}

double valueShown(const Number& number)
{
    if (!number.isValue || !std::isfinite(number.value))
        return number.value;
    if (const auto decimals = decimalsShown(number))
        return roundedTo(*decimals, number.value);
    // Of the smallest numbers, too, which have no full precision.
    return std::strtod(fmt::format("{:.{}e}", number.value, scientificDecimals).c_str(), nullptr);
}

std::string textOf(const Formula& formula, std::size_t mostTerms) { return Writer(mostTerms)(formula); }

std::string textOf(const Symbol& symbol) { return symbol.subscript.empty() ? symbol.name : symbol.name + "_" + symbol.subscript; }

bool needsBrackets(const Formula& part, Operator op, std::size_t place)
{
    const Binding binding = bindingOf(part);
    const bool isFirst = place == 0;
    const auto* number = std::get_if<Number>(&part.node);
    const bool hasCompoundUnit = number && number->unit.find('/') != std::string::npos;
    switch (op) {
    case Operator::Equals:
    case Operator::Function:
    case Operator::Root:
        return false;
    case Operator::Sum:
        return binding < Binding::Sum || (binding == Binding::Sum && !isFirst);
    case Operator::Negative:
        return binding <= Binding::Negative;
    case Operator::Product:
        return binding < Binding::Negative || (binding == Binding::Negative && !isFirst);
    case Operator::Fraction:
        return isFirst ? binding < Binding::Negative
                       : hasCompoundUnit || binding < Binding::Product || (binding == Binding::Product && !number);
    case Operator::Power:
        return binding < Binding::Atom;
    }
    return false;
}

}  // namespace firn
