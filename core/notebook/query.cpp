#include "notebook/search.h"
#include "units/text.h"

#include <array>
#include <charconv>
#include <utility>

namespace firn {

namespace {

using namespace std::string_view_literals;

constexpr std::array<std::pair<std::string_view, CardFigure>, 10> figureNames{
    {{"sugar", CardFigure::Sugar}, {"sugars", CardFigure::Sugar}, {"fat", CardFigure::Fat}, {"alcohol", CardFigure::Alcohol},
        {"freezes", CardFigure::FreezingPoint}, {"freezing", CardFigure::FreezingPoint}, {"ice", CardFigure::Ice},
        {"sweetness", CardFigure::Sweetness}, {"sweet", CardFigure::Sweetness}, {"fats", CardFigure::Fat}}};

// Longer signs stand before those that they begin with.
constexpr std::array quotes{"\""sv, "“"sv, "”"sv, "„"sv};
constexpr std::array dashes{"-"sv, "\u2212"sv, "\u2013"sv};
constexpr std::array ellipses{"..."sv, ".."sv, "…"sv};
constexpr std::array units{"% vol"sv, "%"sv};

struct Comparison {
    std::string_view sign;
    bool isBelow;  // else above
    bool holdsEnd;
};
constexpr std::array comparisons{Comparison{"<=", true, true}, Comparison{"≤", true, true}, Comparison{"<", true, false},
    Comparison{">=", false, true}, Comparison{"≥", false, true}, Comparison{">", false, false}};
constexpr std::array comparingWords{Comparison{"under ", true, false}, Comparison{"below ", true, false},
    Comparison{"over ", false, false}, Comparison{"above ", false, false}};

struct TypedNumber {
    double value;
    double halfOfLastDigit;
};

class QueryReader {
public:
    explicit QueryReader(std::string_view typed, TemperatureUnit fallback = TemperatureUnit::Celsius)
        : m_rest(typed)
        , m_fallback(fallback)
    {
    }

    Result<CardQuery> read()
    {
        for (skipBlanks(); !m_rest.empty(); skipBlanks()) {
            const std::string_view before = m_rest;
            if (takeOneOf(quotes)) {
                addPhrase();
            } else if (startsWithRange()) {
                return failure(phrase("“{0}” needs the name of a figure in front: sugar, fat, alcohol, freezes, ice or sweetness.",
                    shortened(trimmed(before))));
            } else {
                const std::string word = folded(takeWord());
                const auto* const named = std::ranges::find(figureNames, word, &std::pair<std::string_view, CardFigure>::first);
                if (named != figureNames.end() && isRangeAhead(named->second)) {
                    if (!takeRange(named->second))
                        return failure(phrase("“{0}” is not a range yet. Write it as sugar 24..28, alcohol > 0 or freezes < -3.",
                            shortened(trimmed(before))));
                } else if (!word.empty()) {
                    m_query.words.push_back(" " + word);
                }
            }
        }
        return m_query;
    }

private:
    void skipBlanks() { m_rest.remove_prefix(blanksAt(m_rest)); }

    bool take(std::string_view sign)
    {
        const bool isThere = m_rest.starts_with(sign);
        if (isThere)
            m_rest.remove_prefix(sign.size());
        return isThere;
    }

    bool takeOneOf(const auto& signs)
    {
        return std::ranges::any_of(signs, [this](std::string_view sign) { return take(sign); });
    }

    bool isAhead(const auto& signs) const
    {
        return std::ranges::any_of(signs, [this](std::string_view sign) { return m_rest.starts_with(sign); });
    }

    bool isComparisonAhead() const
    {
        return m_rest.starts_with('=')
               || std::ranges::any_of(comparisons, [this](const Comparison& c) { return m_rest.starts_with(c.sign); });
    }

    bool isAtEnd() const { return m_rest.empty() || blankAt(m_rest) > 0 || isAhead(quotes); }

    /// Whether "< 5", "..28" or "24..28" comes, without a name.
    bool startsWithRange() const
    {
        QueryReader ahead(m_rest);
        return isComparisonAhead() || isAhead(ellipses) || (ahead.number() && ahead.isAhead(ellipses));
    }

    std::string_view takeWord()
    {
        const std::string_view before = m_rest;
        while (!isAtEnd() && !isComparisonAhead())
            m_rest.remove_prefix(1);
        return before.substr(0, before.size() - m_rest.size());
    }

    void addPhrase()
    {
        const std::string_view before = m_rest;
        while (!m_rest.empty() && !isAhead(quotes))
            m_rest.remove_prefix(1);
        const std::string words = folded(before.substr(0, before.size() - m_rest.size()));
        const bool isClosed = takeOneOf(quotes);
        if (!words.empty())
            m_query.words.push_back(" " + words + (isClosed ? " " : ""));
    }

    /// A number with its sign, as it is typed: no thousands, either decimal mark.
    std::optional<TypedNumber> number()
    {
        QueryReader ahead(m_rest);
        std::string decimal = ahead.takeOneOf(dashes) ? "-" : "";
        const std::size_t whole = lengthOf(isDigit, ahead.m_rest);
        decimal += ahead.m_rest.substr(0, whole);
        ahead.m_rest.remove_prefix(whole);
        const bool hasMark =
            ahead.m_rest.size() > 1 && (ahead.m_rest[0] == '.' || ahead.m_rest[0] == ',') && isDigit(ahead.m_rest[1]);
        if (whole == 0)
            return std::nullopt;
        double half = 0.5;
        if (hasMark) {
            const std::size_t decimals = lengthOf(isDigit, ahead.m_rest.substr(1));
            decimal.append(".").append(ahead.m_rest.substr(1, decimals));
            ahead.m_rest.remove_prefix(1 + decimals);
            for (std::size_t i = 0; i < decimals; ++i)
                half /= 10.0;
        }
        // A mark that no digit follows yet.
        if (!hasMark && (ahead.m_rest == "." || ahead.m_rest == ","))
            ahead.m_rest.remove_prefix(1);
        double value = 0.0;
        if (std::from_chars(decimal.data(), decimal.data() + decimal.size(), value).ec != std::errc())
            return std::nullopt;
        m_rest = ahead.m_rest;
        return TypedNumber{value, half};
    }

    /// A freezing point is in the unit that it names.
    void takeUnit(CardRange& range)
    {
        if (range.figure == CardFigure::FreezingPoint) {
            if (const auto named = leadingTemperatureUnit(m_rest)) {
                range.unit = named->unit.value_or(range.unit);
                m_rest.remove_prefix(named->length);
            }
            return;
        }
        QueryReader ahead(m_rest);
        ahead.skipBlanks();
        if (ahead.takeOneOf(units))
            m_rest = ahead.m_rest;
    }

    const Comparison* takeComparison()
    {
        for (const Comparison& comparison : comparisons) {
            if (take(comparison.sign))
                return &comparison;
        }
        for (const Comparison& comparison : comparingWords) {
            if (lowered(m_rest.substr(0, comparison.sign.size())) == comparison.sign) {
                m_rest.remove_prefix(comparison.sign.size());
                return &comparison;
            }
        }
        return nullptr;
    }

    /// Whether the name of a figure is meant as one: "ice > 50", but not "ice cream". Passes over "point" and "at" of "freezing point at -3".
    bool isRangeAhead(CardFigure figure)
    {
        QueryReader ahead(m_rest);
        ahead.skipBlanks();
        if (figure == CardFigure::FreezingPoint) {
            for (const std::string_view between : {"point"sv, "at"sv}) {
                QueryReader further(ahead.m_rest);
                if (further.take(between) && further.isAtEnd()) {
                    further.skipBlanks();
                    ahead.m_rest = further.m_rest;
                }
            }
        }
        QueryReader behindWord(ahead.m_rest);
        const bool isCompared = ahead.isComparisonAhead() || (behindWord.takeComparison() && behindWord.isNumberAhead());
        if (!isCompared && !ahead.isAhead(ellipses) && !ahead.isNumberAhead())
            return false;
        m_rest = ahead.m_rest;
        return true;
    }

    bool isNumberAhead() const
    {
        QueryReader ahead(m_rest);
        ahead.skipBlanks();
        return ahead.number().has_value();
    }

    bool takeRange(CardFigure figure)
    {
        CardRange range{figure};
        if (figure == CardFigure::FreezingPoint)
            range.unit = m_fallback;
        if (const Comparison* comparison = takeComparison()) {
            skipBlanks();
            const auto end = number();
            if (!end)
                return false;
            (comparison->isBelow ? range.to : range.from) = end->value;
            (comparison->isBelow ? range.holdsTo : range.holdsFrom) = comparison->holdsEnd;
        } else if (takeOneOf(ellipses)) {
            skipBlanks();
            const auto end = number();
            if (!end)
                return false;
            range.to = end->value;
        } else {
            take("=");
            skipBlanks();
            const auto from = number();
            if (!from || !takeUpperEnd(*from, range))
                return false;
        }
        takeUnit(range);
        m_query.ranges.push_back(range);
        return isAtEnd();
    }

    /// The rest of "24..28", "24 - 28", "24 to 28", "24..", or of a number alone.
    bool takeUpperEnd(const TypedNumber& from, CardRange& range)
    {
        takeUnit(range);
        QueryReader ahead(m_rest);
        ahead.skipBlanks();
        const bool isSpaced = ahead.m_rest.size() < m_rest.size();
        const bool hasEllipsis = ahead.takeOneOf(ellipses);
        const bool hasDash = !hasEllipsis && ahead.takeOneOf(dashes);
        const bool hasWord = !hasEllipsis && !hasDash && ahead.take("to ");
        // In "-5 -2" and "-5-2" nobody can tell a dash from a minus.
        const bool isDoubtful = hasDash && ((isSpaced && !ahead.isAtEnd()) || (from.value < 0.0 && !ahead.isDashAhead()));
        ahead.skipBlanks();
        const auto to = ahead.number();
        if (hasEllipsis || hasDash || (hasWord && to)) {
            if (isDoubtful || (hasDash && !to))
                return false;
            m_rest = ahead.m_rest;
            range.from = to ? std::min(from.value, to->value) : from.value;
            if (to)
                range.to = std::max(from.value, to->value);
            return true;
        }
        range.from = from.value - from.halfOfLastDigit;
        range.to = from.value + from.halfOfLastDigit;
        range.holdsTo = false;
        return true;
    }

    bool isDashAhead() const
    {
        QueryReader ahead(m_rest);
        ahead.skipBlanks();
        return ahead.isAhead(dashes);
    }

    std::string_view m_rest;
    TemperatureUnit m_fallback;
    CardQuery m_query;
};

}  // namespace

Result<CardQuery> queryFrom(std::string_view typed, TemperatureUnit fallback) { return QueryReader(typed, fallback).read(); }

}  // namespace firn
