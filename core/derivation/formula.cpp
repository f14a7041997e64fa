#include "derivation/formula.h"

#include "derivation/sum_digits.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <fmt/format.h>
#include <string>

namespace firn {

namespace {

template <class... Visitors>
struct Overloaded : Visitors... {
    using Visitors::operator()...;
};
template <class... Visitors>
Overloaded(Visitors...) -> Overloaded<Visitors...>;

Operation* asOperation(Formula& formula, Operator op)
{
    auto* operation = std::get_if<Operation>(&formula.node);
    return operation && operation->op == op ? operation : nullptr;
}

/// a and b as parts of one operation, flat: a + b + c is one sum.
Formula joined(Operator op, Formula a, Formula b)
{
    if (auto* first = asOperation(a, op)) {
        first->parts.push_back(std::move(b));
        return a;
    }
    return Operation{op, {std::move(a), std::move(b)}};
}

template <class Values>
std::optional<double> valueOfOperation(const Operation& operation, const Values& v)
{
    switch (operation.op) {
    case Operator::Sum: {
        double sum = 0.0;
        for (const double part : v)
            sum += part;
        return sum;
    }
    case Operator::Product: {
        double product = 1.0;
        for (const double part : v)
            product *= part;
        return product;
    }
    case Operator::Fraction:
        return v[0] / v[1];
    case Operator::Negative:
        return -v[0];
    case Operator::Power:
        return std::pow(v[0], v[1]);
    case Operator::Root:
        return std::sqrt(v[0]);
    case Operator::Function:
        if (operation.function == "ln")
            return std::log(v[0]);
        if (operation.function == "exp")
            return std::exp(v[0]);
        if (operation.function == "max")
            return *std::ranges::max_element(v);
        if (operation.function == "min")
            return *std::ranges::min_element(v);
        return std::nullopt;
    case Operator::Equals:
        return v[1];
    }
    return std::nullopt;
}

void collect(const Formula& formula, std::vector<Symbol>& symbols)
{
    std::visit(Overloaded{[](const Number&) {},
                   [&](const Symbol& symbol) {
                       if (std::ranges::none_of(symbols, [&](const Symbol& known) { return isSame(known, symbol); }))
                           symbols.push_back(symbol);
                   },
                   [&](const Operation& operation) {
                       for (const Formula& part : operation.parts)
                           collect(part, symbols);
                   },
                   [&](const Series& sum) {
                       for (const SeriesTerm& term : sum.terms)
                           collect(term.formula, symbols);
                   }},
        formula.node);
}

}  // namespace

Formula::Formula(double number)
    : node(Number{number, {}})
{
}
Formula::Formula(Symbol symbol)
    : node(std::move(symbol))
{
}
Formula::Formula(Number number)
    : node(std::move(number))
{
}
Formula::Formula(Operation operation)
    : node(std::move(operation))
{
}
Formula::Formula(Series series)
    : node(std::move(series))
{
}

Formula operator+(Formula a, Formula b) { return joined(Operator::Sum, std::move(a), std::move(b)); }
Formula operator-(Formula a, Formula b) { return joined(Operator::Sum, std::move(a), -std::move(b)); }
Formula operator-(Formula a) { return Operation{Operator::Negative, {std::move(a)}}; }
Formula operator*(Formula a, Formula b) { return joined(Operator::Product, std::move(a), std::move(b)); }
Formula operator/(Formula above, Formula below) { return Operation{Operator::Fraction, {std::move(above), std::move(below)}}; }
Formula power(Formula base, Formula exponent) { return Operation{Operator::Power, {std::move(base), std::move(exponent)}}; }
Formula root(Formula radicand) { return Operation{Operator::Root, {std::move(radicand)}}; }
Formula ln(Formula argument) { return function("ln", {std::move(argument)}); }

Formula function(std::string name, std::vector<Formula> arguments, Sentence meaning)
{
    return Operation{Operator::Function, std::move(arguments), std::move(name), std::move(meaning)};
}

Formula oneHundredPercent() { return Number{100.0, "%"}; }

Formula zeroCelsius() { return Number{273.15, "K"}; }

Formula equation(Formula left, Formula right) { return Operation{Operator::Equals, {std::move(left), std::move(right)}}; }

Formula inPowersOfTen(double number)
{
    constexpr double small = 1e-3;
    if (number == 0.0 || std::abs(number) >= small)
        return number;
    const double exponent = std::floor(std::log10(std::abs(number)));
    constexpr int digits = 15;  // as many as a double keeps
    return std::strtod(fmt::format("{:.{}g}", number / std::pow(10.0, exponent), digits).c_str(), nullptr) * power(10.0, exponent);
}

Formula polynomial(const std::vector<double>& coefficients, const Formula& x)
{
    std::optional<Formula> sum;
    for (std::size_t i = 0; i < coefficients.size(); ++i) {
        if (coefficients[i] == 0.0)
            continue;
        const Formula size = inPowersOfTen(std::abs(coefficients[i]));
        Formula term = i == 0 ? size : i == 1 ? size * x : size * power(x, static_cast<double>(i));
        if (coefficients[i] < 0.0)
            term = -std::move(term);
        sum = sum ? std::move(*sum) + std::move(term) : std::move(term);
    }
    return sum.value_or(0.0);
}

Formula series(std::string index, Formula body, std::vector<SeriesTerm> terms)
{
    return Series{std::move(index), std::make_shared<const Formula>(std::move(body)), std::move(terms)};
}

namespace {

void alignValues(Formula& written, const Formula& inSymbols, const Symbol* kept)
{
    auto& operation = std::get<Operation>(written.node);
    if (operation.op == Operator::Sum)
        alignDecimals(written, inSymbols);
    else if (operation.op == Operator::Equals && kept)
        alignDecimals(operation.parts[1], std::get<Operation>(inSymbols.node).parts[1],
            Number{kept->value, kept->unit, true, kept->decimals});
}

}  // namespace

Formula withValues(const Formula& formula, const Symbol* kept)
{
    return std::visit(Overloaded{[](const Number& number) -> Formula { return number; },
                          [&](const Symbol& symbol) -> Formula {
                              if (kept && isSame(symbol, *kept))
                                  return symbol;
                              return Number{symbol.value, symbol.unit, true, symbol.decimals};
                          },
                          [&](Operation operation) -> Formula {
                              for (Formula& part : operation.parts)
                                  part = withValues(part, kept);
                              Formula written = std::move(operation);
                              alignValues(written, formula, kept);
                              return written;
                          },
                          [&](Series sum) -> Formula {
                              for (SeriesTerm& term : sum.terms)
                                  term.formula = withValues(term.formula, kept);
                              sum.isWrittenOut = true;
                              return sum;
                          }},
        formula.node);
}

std::optional<double> valueOf(const Formula& formula)
{
    const auto valuesOf = [](const auto& parts, const auto& formulaIn) -> std::optional<std::vector<double>> {
        std::vector<double> values;
        for (const auto& part : parts) {
            const auto value = valueOf(formulaIn(part));
            if (!value)
                return std::nullopt;
            values.push_back(*value);
        }
        return values;
    };
    return std::visit(
        Overloaded{[](const Number& number) { return std::optional(number.value); },
            [](const Symbol& symbol) { return std::optional(symbol.value); },
            [&](const Operation& operation) -> std::optional<double> {
                if (operation.op == Operator::Equals)
                    return valueOf(operation.parts[1]);
                const auto values = valuesOf(operation.parts, [](const Formula& part) -> const Formula& { return part; });
                return values ? valueOfOperation(operation, *values) : std::nullopt;
            },
            [&](const Series& sum) -> std::optional<double> {
                const auto values = valuesOf(sum.terms, [](const SeriesTerm& term) -> const Formula& { return term.formula; });
                return values ? valueOfOperation(Operation{Operator::Sum, {}}, *values) : std::nullopt;
            }},
        formula.node);
}

std::vector<Symbol> symbolsOf(const Formula& formula)
{
    std::vector<Symbol> symbols;
    collect(formula, symbols);
    return symbols;
}

namespace {

void roundAlike(const Formula& formula, const Formula& values, std::vector<Symbol>& symbols)
{
    if (const auto* symbol = std::get_if<Symbol>(&formula.node)) {
        const auto* number = std::get_if<Number>(&values.node);
        const auto known = std::ranges::find_if(symbols, [&](const Symbol& each) { return isSame(each, *symbol); });
        if (number && number->decimals && known != symbols.end())
            known->decimals = known->decimals ? std::max(*known->decimals, *number->decimals) : number->decimals;
    } else if (const auto* operation = std::get_if<Operation>(&formula.node)) {
        const auto& others = std::get<Operation>(values.node).parts;
        for (std::size_t i = 0; i < operation->parts.size(); ++i)
            roundAlike(operation->parts[i], others[i], symbols);
    } else if (const auto* sum = std::get_if<Series>(&formula.node)) {
        const auto& others = std::get<Series>(values.node).terms;
        for (std::size_t i = 0; i < sum->terms.size(); ++i)
            roundAlike(sum->terms[i].formula, others[i].formula, symbols);
    }
}

}  // namespace

std::vector<Symbol> symbolsAsShown(const Formula& formula, const Formula& values)
{
    std::vector<Symbol> symbols = symbolsOf(formula);
    roundAlike(formula, values, symbols);
    return symbols;
}

std::vector<Symbol> generalSymbolsOf(const Formula& formula)
{
    std::vector<Symbol> symbols;
    if (const auto* operation = std::get_if<Operation>(&formula.node)) {
        for (const Formula& part : operation->parts) {
            for (Symbol& symbol : generalSymbolsOf(part))
                if (std::ranges::none_of(symbols, [&](const Symbol& known) { return isSame(known, symbol); }))
                    symbols.push_back(std::move(symbol));
        }
    } else if (const auto* sum = std::get_if<Series>(&formula.node)) {
        for (Symbol& symbol : symbolsOf(*sum->body))
            if (const std::string subscripts = "," + symbol.subscript + ",";
                subscripts.find("," + sum->index + ",") != std::string::npos)
                symbols.push_back(std::move(symbol));
    }
    return symbols;
}

std::vector<Symbol> functionsOf(const Formula& formula)
{
    std::vector<Symbol> functions;
    const auto add = [&](Symbol symbol) {
        if (std::ranges::none_of(functions, [&](const Symbol& known) { return isSame(known, symbol); }))
            functions.push_back(std::move(symbol));
    };
    const auto addAllOf = [&](const Formula& part) {
        for (Symbol& symbol : functionsOf(part))
            add(std::move(symbol));
    };
    if (const auto* operation = std::get_if<Operation>(&formula.node)) {
        if (operation->op == Operator::Function && !operation->meaning.pattern.empty()) {
            const std::size_t mark = operation->function.find('_');
            add({operation->function.substr(0, mark), mark == std::string::npos ? "" : operation->function.substr(mark + 1), 0.0,
                {}, operation->meaning});
        }
        for (const Formula& part : operation->parts)
            addAllOf(part);
    } else if (const auto* sum = std::get_if<Series>(&formula.node)) {
        for (const SeriesTerm& term : sum->terms)
            addAllOf(term.formula);
    }
    return functions;
}

const std::vector<SeriesTerm>* termsOf(const Formula& formula)
{
    if (const auto* sum = std::get_if<Series>(&formula.node))
        return &sum->terms;
    const std::vector<SeriesTerm>* longest = nullptr;
    if (const auto* operation = std::get_if<Operation>(&formula.node)) {
        for (const Formula& part : operation->parts) {
            const auto* terms = termsOf(part);
            if (terms && (!longest || terms->size() > longest->size()))
                longest = terms;
        }
    }
    return longest;
}

bool isSame(const Symbol& a, const Symbol& b) { return a.name == b.name && a.subscript == b.subscript; }

}  // namespace firn
