// A formula as a tree: what a derivation shows, writes with its values put in, and can reckon again to check itself.
#pragma once

#include "units/sentence.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace firn {

/// A symbol with its meaning, and its value in this recipe.
struct Symbol {
    std::string name;       // "m"
    std::string subscript;  // "sugars", or nothing
    double value = 0.0;
    std::string unit;  // "g"; nothing for a bare number
    Sentence meaning{};
    std::string figure = {};           // key of the figure that it is, so that a reader can go on to it
    std::optional<int> decimals = {};  // where the usual four significant digits are too few or too many
};

struct Formula;

/// A number of the formula itself, exact; or a value put in for a symbol.
struct Number {
    double value = 0.0;
    std::string unit;
    bool isValue = false;
    std::optional<int> decimals = {};
};

enum class Operator { Sum, Product, Fraction, Negative, Power, Root, Function, Equals };

struct Operation {
    Operator op;
    std::vector<Formula> parts;  // of a fraction and a power two; of a function its arguments
    std::string function = {};   // "ln", or a table or polynomial that the source prints; "a_ice" has a subscript
    Sentence meaning = {};       // what such a table or polynomial gives, and of what
};

struct SeriesTerm;

/// A sum over an index. The terms are kept apart, so that a reader can fold a long sum.
struct Series {
    std::string index;                    // "i"
    std::shared_ptr<const Formula> body;  // the general term, in symbols without values
    std::vector<SeriesTerm> terms;
    bool isWrittenOut = false;  // shown as its terms, with their values put in
};

struct Formula {
    std::variant<Number, Symbol, Operation, Series> node;

    Formula(double number);  // NOLINT: a number of the formula
    Formula(Symbol symbol);  // NOLINT: a symbol is a formula
    Formula(Number number);
    Formula(Operation operation);
    Formula(Series series);
};

struct SeriesTerm {
    std::string label;  // plain text, it may come from a file: a row, a constituent
    Formula formula;
    std::string source = {};  // where the numbers of this term come from, if not from the step's source
};

Formula operator+(Formula a, Formula b);
Formula operator-(Formula a, Formula b);
Formula operator-(Formula a);
Formula operator*(Formula a, Formula b);
Formula operator/(Formula above, Formula below);
Formula power(Formula base, Formula exponent);
Formula root(Formula radicand);
Formula ln(Formula argument);
/// "max", "min" and "exp", or with its meaning one that the source prints as a table or a long polynomial: named, not spelled out.
Formula function(std::string name, std::vector<Formula> arguments, Sentence meaning = {});
Formula equation(Formula left, Formula right);
/// 100 %, which is 1: a share times this is a percentage, a percentage over this a share, and percent is never counted twice.
Formula oneHundredPercent();
/// 273.15 K, from a temperature in °C to one in kelvin.
Formula zeroCelsius();
/// A number below a thousandth as m · 10^n, any other as it is.
Formula inPowersOfTen(double number);
/// c[0] + c[1] x + c[2] x^2 + …, without the terms whose coefficient is zero.
Formula polynomial(const std::vector<double>& coefficients, const Formula& x);
Formula series(std::string index, Formula body, std::vector<SeriesTerm> terms);

/// The formula with every symbol but `kept` replaced by its value; sums over an index are written out. Values in a sum get as many decimals as
/// make them add up to the result `kept` as it is shown.
Formula withValues(const Formula& formula, const Symbol* kept = nullptr);

/// What a formula amounts to with its symbols' values; none where a named function stands in it.
std::optional<double> valueOf(const Formula& formula);

/// The symbols that have a value here, each once, in the order in which they stand.
std::vector<Symbol> symbolsOf(const Formula& formula);

/// The same with as many decimals as they have in `values`, which is this formula with its values put in: what is said of a symbol beside a sum
/// is rounded as in the sum.
std::vector<Symbol> symbolsAsShown(const Formula& formula, const Formula& values);

/// What stands for any of the terms in sums over an index ("m_i"), each once, with its meaning: the legend of the sums.
std::vector<Symbol> generalSymbolsOf(const Formula& formula);

/// The tables and polynomials that are named in the formula, each once, as symbols without a value: name, subscript and meaning.
std::vector<Symbol> functionsOf(const Formula& formula);

/// The longest list of terms in the formula; none if there is no sum over an index.
const std::vector<SeriesTerm>* termsOf(const Formula& formula);

bool isSame(const Symbol& a, const Symbol& b);

}  // namespace firn
