#include "recipe/written_amount.h"

#include "recipe/measure_words.h"
#include "recipe/stated_twice.h"
#include "recipe/written_number.h"

#include <algorithm>

namespace firn {

namespace {

/// A unit as leadingAmount reads it: "cl" is ten millilitres.
struct MeasureAt {
    double factor;
    Unit unit;
    std::string word;
};

/// Takes a unit, which a hyphen may tie to its number: "14-oz".
std::optional<MeasureAt> takeMeasure(WordReader& reader)
{
    const std::size_t start = reader.place();
    takeDash(reader);
    constexpr std::size_t longestUnit_bytes = 64;  // with room for blanks between its words
    std::string text(reader.rest().substr(0, longestUnit_bytes));
    for (const std::string_view dash : {"\u2013", "\u2014", "\u2212"})  // after a unit they end it: "200g–250g"
        if (const auto at = text.find(dash); at != text.npos)
            text.resize(at);
    if (!text.empty() && (isAsciiLetter(text.front()) || text.front() == '%')) {
        if (const auto one = leadingAmount("1 " + text); one && one->unit) {
            reader.skip(one->length - 2);
            return MeasureAt{one->value, *one->unit, text.substr(0, one->length - 2)};
        }
    }
    reader.goBackTo(start);
    return std::nullopt;
}

/// A number with its unit, or, where it has none, in pieces.
struct Term {
    Amount amount;
    bool isBare = true;
};

Result<Term> termOf(const WrittenNumber& number, const std::optional<MeasureAt>& measure)
{
    const auto amount = leadingAmount(number.digits + (measure ? " " + measure->word : ""));
    if (!amount)
        return failure(amount.error());
    return Term{{amount->value, amount->unit.value_or(Unit::Piece)}, !amount->unit};
}

/// "(400 g)", "[7 oz]": takes the brackets, and returns what stands in them.
std::optional<std::string_view> takeBrackets(WordReader& reader)
{
    for (const auto& [opening, closing] : {std::pair{'(', ')'}, std::pair{'[', ']'}}) {
        const std::size_t end = reader.rest().starts_with(opening) ? reader.rest().find(closing) : std::string_view::npos;
        if (end == std::string_view::npos)
            continue;
        const std::string_view content = trimmed(reader.rest().substr(1, end - 1));
        reader.skip(end + 1);
        return content;
    }
    return std::nullopt;
}

class AmountReader {
public:
    explicit AmountReader(std::string_view text)
        : m_reader(text)
    {
    }

    Result<std::optional<WrittenAmount>> read()
    {
        // A dash before a number is the sign of a negative one, which leadingNumber refuses.
        if (const auto negative = m_reader.rest(); startsWithNumber(negative) && takeDash(m_reader))
            return failure(leadingNumber(negative).error());
        takeRough();
        const bool isBetween = m_reader.take("between") || m_reader.take("from");
        const std::size_t start = m_reader.place();
        if (m_reader.take(words::uncounted))
            return uncounted(start);
        auto number = takeNumber(m_reader);
        if (!number && m_hasArticle)
            number = WrittenNumber{"1", true};
        if (!number)
            return withoutNumber();
        m_amount.isInWords = number->isInWords;
        takeRough();
        auto term = firstTerm(*number, start, isBetween);
        if (!term)
            return failure(std::move(term.error()));
        if (m_isUncounted)
            return done();
        if (!*term)
            return std::optional<WrittenAmount>();
        m_amount.amount = (*term)->amount;
        m_amount.isBare = (*term)->isBare;
        if (!m_amount.isBare)
            if (auto fault = addFurtherTerms())
                return failure(std::move(*fault));
        if (auto fault = chooseAmongAlternatives())
            return failure(std::move(*fault));
        return done();
    }

private:
    using Outcome = Result<std::optional<WrittenAmount>>;

    Outcome done()
    {
        m_amount.length = m_reader.place();
        return std::optional(std::move(m_amount));
    }

    void addNote(std::string_view note)
    {
        m_amount.note += m_amount.note.empty() ? "" : ", ";
        m_amount.note += note;
    }

    void takeRough()
    {
        const std::size_t start = m_reader.place();
        for (const std::string_view sign : {"~", "\u2248", "\u00b1"})
            if (m_reader.takeSign(sign))
                return addNote("about");
        // "a generous 2 tbsp", "a good pinch": the article belongs to the number that follows, or is one.
        const bool hasArticle = m_reader.take(words::articles);
        const std::size_t word = m_reader.place();
        if (!m_reader.take(words::rough))
            return m_reader.goBackTo(start);
        const std::string_view note = m_reader.since(word);
        if (hasArticle && !startsWithNumber(m_reader.rest())) {
            const std::size_t after = m_reader.place();
            const bool isMeasure = m_reader.take(words::aloneForOne) || takeMeasure(m_reader) || m_reader.take(words::handfuls);
            m_reader.goBackTo(isMeasure ? after : start);
            if (!isMeasure)
                return;
            m_hasArticle = true;
        }
        addNote(note);
    }

    /// "a handful", "some", "1 large tin": listed, with what was said as the note.
    Outcome uncounted(std::size_t start)
    {
        m_reader.take(words::handfuls);
        addNote(m_reader.since(start));
        m_isUncounted = true;
        return done();
    }

    /// "pinch of salt", "handful of mint".
    Outcome withoutNumber()
    {
        const std::size_t start = m_reader.place();
        const bool isAlone = oneOfWordsAt(words::aloneForOne, m_reader.rest()) > 0;
        if (const auto measure = isAlone ? takeMeasure(m_reader) : std::nullopt) {
            m_amount.amount = Amount{measure->factor, measure->unit};
            return done();
        }
        WordReader ahead = m_reader;
        if (ahead.take(words::handfuls) && ahead.take("of")) {
            m_reader.take(words::handfuls);
            return uncounted(start);
        }
        return std::optional<WrittenAmount>();
    }

    /// The first number with all that belongs to it; nothing if it turns out to be part of a name ("7up").
    Result<std::optional<Term>> firstTerm(const WrittenNumber& number, std::size_t start, bool isBetween)
    {
        if (auto size = sizeOf(number); !size || *size)
            return size;
        if (auto mean = meanOf(number, isBetween); !mean || *mean)
            return mean;
        const std::size_t afterNumber = m_reader.place();
        const auto measure = takeMeasure(m_reader);
        if (!measure)
            if (auto held = heldOrHandful(number, start); !held || *held || m_isUncounted)
                return held;
        if (!measure && !number.isInWords && isGluedToName(afterNumber))
            return std::nullopt;
        if (number.isInWords && !measure && !isCountedInWords(number))
            return std::nullopt;
        const bool isMixed = number.digits.find(' ') != std::string::npos;  // "1-1/2" is no range
        if (!number.isInWords && !isMixed)
            if (auto fault = faultOfDigits(start))
                return failure(std::move(*fault));
        auto term = termOf(number, measure);
        if (!term)
            return failure(std::move(term.error()));
        if (measure) {
            m_reader.take(words::containers);  // "250 g tub"
            if (m_reader.take("each"))
                return failure(phrase("It is not clear how many there are. Type the whole amount."));
        } else if (takeTimes() && startsWithNumber(m_reader.rest())) {
            return failure(phrase("The second number needs a unit. Type an amount such as 2 x 400 g."));
        }
        return std::optional(std::move(*term));
    }

    /// What only the whole text shows: "1 000 g", "1.000,5", and ranges that are none.
    std::optional<Sentence> faultOfDigits(std::size_t start)
    {
        WordReader from = m_reader;
        from.goBackTo(start);
        const auto number = leadingNumber(from.rest());
        return number ? std::nullopt : std::optional(number.error());
    }

    bool isGluedToName(std::size_t afterNumber) const
    {
        WordReader at = m_reader;
        at.goBackTo(afterNumber);
        const std::string_view before = m_reader.since(0);
        const bool hasBlank = before.size() < afterNumber;
        return !hasBlank && !at.isAtEnd()
               && (isAsciiLetter(at.rest().front()) || static_cast<unsigned char>(at.rest().front()) >= 0x80);
    }

    /// "a lemon", "two eggs"; not "a granita for a spring evening".
    bool isCountedInWords(const WrittenNumber& number) const
    {
        constexpr std::size_t mostWords = 3;
        const bool isArticle = number.digits == "1";
        return !m_reader.isAtEnd() && (!isArticle || wordCount(m_reader.rest()) < mostWords);
    }

    /// Pieces of a size of their own: "2 x 400 g tins", "1 14-oz can", "1 (400 g) tin", "half a 400 g tin".
    Result<std::optional<Term>> sizeOf(const WrittenNumber& number)
    {
        const std::size_t start = m_reader.place();
        const bool isTimes = takeTimes();
        std::optional<std::string_view> brackets;
        std::optional<Amount> size;
        if (isTimes || startsWithNumber(m_reader.rest())) {
            const auto second = takeNumber(m_reader);
            const auto measure = second && !second->isInWords ? takeMeasure(m_reader) : std::nullopt;
            if (measure) {
                const auto term = termOf(*second, measure);
                if (!term && isTimes)
                    return failure(term.error());
                if (term)
                    size = term->amount;
            }
        } else if ((brackets = takeBrackets(m_reader))) {
            size = sizeInBrackets(*brackets);
        }
        m_reader.take(words::sizes);
        const bool isHeld = m_reader.take(words::containers);
        const auto count = leadingNumber(number.digits);
        if (!size || !count || (!isTimes && !isHeld)) {
            m_reader.goBackTo(start);
            return std::nullopt;
        }
        return times(*size, count->value);
    }

    /// "2 x 400 g", "2x400 g", "2 × 400 g", "2 x lemons".
    bool takeTimes()
    {
        const std::string_view rest = m_reader.rest();
        const bool isGluedX = rest.size() > 1 && lowered(rest.substr(0, 1)) == "x" && isDigit(rest[1]);
        return m_reader.take("x") || m_reader.takeSign("\u00d7") || (isGluedX && m_reader.takeSign(rest.substr(0, 1)));
    }

    static Result<std::optional<Term>> times(const Amount& size, double count)
    {
        if (auto fault = faultOfAmount(size.value * count))
            return failure(std::move(*fault));
        return std::optional(Term{{size.value * count, size.unit}, false});
    }

    /// "400 g", "400 g each", without the word.
    std::optional<Amount> sizeInBrackets(std::string_view content)
    {
        constexpr auto each = std::to_array<std::string_view>({" each", " per tin", " per can"});
        m_saysEach = false;
        for (const std::string_view word : each) {
            if (!content.ends_with(word))
                continue;
            m_saysEach = true;
            content = trimmed(content.substr(0, content.size() - word.size()));
        }
        return amountInBrackets(content);
    }

    /// "1 tin (397 g)", "2 tins (400 g each)", "1 large tin", "2 sprigs". Nothing where a name follows the number.
    Result<std::optional<Term>> heldOrHandful(const WrittenNumber& number, std::size_t start)
    {
        const std::size_t before = m_reader.place();
        m_reader.take(words::sizes);
        const bool isStick = stickOfButter();
        if (isStick) {
            addNote("stick");
            const auto term = termOf(number, std::nullopt);
            return term ? Result<std::optional<Term>>(std::optional(Term{term->amount, false})) : failure(term.error());
        }
        constexpr auto sticks = std::to_array<std::string_view>({"stick", "sticks"});
        const bool isHeld = m_reader.take(words::containers);
        if (!isHeld && !m_reader.take(words::handfuls) && !m_reader.take(sticks)) {
            m_reader.goBackTo(before);
            return std::nullopt;
        }
        const std::string_view said = m_reader.since(start);
        const std::size_t after = m_reader.place();
        if (const auto brackets = isHeld ? takeBrackets(m_reader) : std::nullopt) {
            if (const auto size = sizeInBrackets(*brackets)) {
                const auto count = leadingNumber(number.digits);
                if (!count)
                    return failure(count.error());
                if (count->value == 1.0 || m_saysEach)
                    return times(*size, count->value);
                return failure(phrase("“{0}” can mean {1} in all or {1} each. Type the whole amount.",
                    std::string(m_reader.since(start)), amountText(*size)));
            }
            m_reader.goBackTo(after);
        }
        addNote(said);
        m_isUncounted = true;
        return std::nullopt;
    }

    /// A stick of butter has a weight of its own, of cinnamon none.
    bool stickOfButter()
    {
        constexpr auto sticks = std::to_array<std::string_view>({"stick", "sticks"});
        const std::size_t start = m_reader.place();
        if (m_reader.take(sticks) && lowered(m_reader.rest()).find("butter") != std::string::npos)
            return true;
        m_reader.goBackTo(start);
        return false;
    }

    /// The mean of "3-4", "1 to 2 cups", "200g-250g", "between 2 and 3".
    Result<std::optional<Term>> meanOf(const WrittenNumber& low, bool isBetween)
    {
        const std::size_t start = m_reader.place();
        const auto lowMeasure = takeLowMeasure();
        const bool isOr = m_reader.take("or");
        const bool isRange = isOr || takeDash(m_reader) || m_reader.take("to") || (isBetween && m_reader.take("and"));
        const std::size_t second = m_reader.place();
        const auto high = isRange ? takeNumber(m_reader) : std::nullopt;
        if (!high || (high->isInWords && !low.isInWords)) {
            m_reader.goBackTo(start);
            return std::nullopt;
        }
        const std::string_view highDigits = m_reader.since(second);
        const auto highMeasure = takeMeasure(m_reader);
        // "225 g or 8 oz" says one amount twice.
        if (isOr && lowMeasure) {
            m_reader.goBackTo(start);
            return std::nullopt;
        }
        const auto from = termOf(low, lowMeasure ? lowMeasure : highMeasure);
        const auto to = termOf(*high, highMeasure ? highMeasure : lowMeasure);
        if (!from)
            return failure(from.error());
        if (!to)
            return failure(to.error());
        const double low_base = inBaseUnit(from->amount);
        const double high_base = inBaseUnit(to->amount);
        if (dimensionOf(from->amount) != dimensionOf(to->amount) || !(low_base < high_base))
            return failure(phrase("A range goes from less to more of one measure. Type one amount, or a range such as 2-3 tbsp."));
        const std::string lowText = low.digits + (lowMeasure && highMeasure ? " " + lowMeasure->word : "");
        const std::string highText = high->isInWords ? high->digits : std::string(highDigits);
        addNote("mean of " + lowText + " and " + highText
                + (highMeasure   ? " " + highMeasure->word
                    : lowMeasure ? " " + lowMeasure->word
                                 : ""));
        return std::optional(Term{{(low_base + high_base) / 2.0 / factsOf(to->amount.unit).size, to->amount.unit}, to->isBare});
    }

    /// The unit of the lower end, which is not the hyphen of a range: "200g-250g".
    std::optional<MeasureAt> takeLowMeasure()
    {
        WordReader ahead = m_reader;
        return takeDash(ahead) ? std::nullopt : takeMeasure(m_reader);
    }

    /// "+ 1 tbsp", "plus 2 tablespoons", "and 2 tbsp", "200 g" after "1 kg".
    std::optional<Sentence> addFurtherTerms()
    {
        for (;;) {
            const std::size_t start = m_reader.place();
            constexpr auto minus = std::to_array<std::string_view>({"less", "minus"});
            if (m_reader.take(minus) && startsWithNumber(m_reader.rest()))
                return phrase("Firn does not subtract amounts. Type the amount that is left.");
            const bool isPlus = m_reader.takeSign("+") || m_reader.take("plus");
            const bool isAnd = !isPlus && (m_reader.take("and") || m_reader.takeSign("&"));
            const auto number = startsWithNumber(m_reader.rest()) ? takeNumber(m_reader) : std::nullopt;
            if (!number) {
                m_reader.goBackTo(start);
                return std::nullopt;
            }
            const auto measure = takeMeasure(m_reader);
            const auto term = termOf(*number, measure);
            const bool isSmallerPart = term && measure && dimensionOf(term->amount) == dimensionOf(*m_amount.amount)
                                       && factsOf(term->amount.unit).size < factsOf(m_amount.amount->unit).size;
            if (!isPlus && !isAnd && !isSmallerPart) {
                m_reader.goBackTo(start);
                return std::nullopt;
            }
            if (!term)
                return term.error();
            if (!measure || dimensionOf(term->amount) != dimensionOf(*m_amount.amount))
                return phrase("Amounts of different kinds cannot be added. Type one row for each.");
            add(term->amount);
            if (auto fault = faultOfAmount(m_amount.amount->value))
                return fault;
        }
    }

    void add(const Amount& further)
    {
        Amount& sum = *m_amount.amount;
        sum.value += inBaseUnit(further) / factsOf(sum.unit).size;
    }

    /// "/7oz", "(1 cup)", "or 8 oz", "(approx.)".
    std::optional<Sentence> chooseAmongAlternatives()
    {
        for (;;) {
            const std::size_t start = m_reader.place();
            std::optional<Amount> other;
            if (const auto brackets = takeBrackets(m_reader)) {
                other = amountInBrackets(*brackets);
                if (!other && oneOfWordsAt(words::rough, *brackets) == brackets->size()) {
                    addNote(*brackets);
                    continue;
                }
            } else if (!m_amount.isBare && (m_reader.takeSign("/") || m_reader.take("or") || m_reader.takeSign("="))) {
                const std::size_t said = m_reader.place();
                const auto number = takeNumber(m_reader);
                const auto measure = number ? takeMeasure(m_reader) : std::nullopt;
                const auto term = measure ? termOf(*number, measure) : failure(Sentence{});
                if (term) {
                    if (auto better = betterOf(*m_amount.amount, term->amount); !better)
                        return better.error();
                    addNote(m_reader.since(said));
                    continue;
                }
            }
            if (!other) {
                m_reader.goBackTo(start);
                return std::nullopt;
            }
            auto better = betterOf(*m_amount.amount, *other);
            if (!better)
                return better.error();
            addNote(amountText(*better == *other ? *m_amount.amount : *other));
            m_amount.amount = *better;
            m_amount.isBare = false;
        }
    }

    WordReader m_reader;
    WrittenAmount m_amount;
    bool m_hasArticle = false;  // "a generous cup"
    bool m_isUncounted = false;
    bool m_saysEach = false;
};

}  // namespace

Result<std::optional<WrittenAmount>> writtenAmountAt(std::string_view text) { return AmountReader(text).read(); }

std::optional<Amount> amountInBrackets(std::string_view text)
{
    WordReader reader(text);
    reader.take("or");
    const auto amount =
        startsWithNumber(reader.rest()) || oneOfWordsAt(words::rough, reader.rest()) > 0 || reader.rest().starts_with('~')
            ? writtenAmountAt(reader.rest())
            : Result<std::optional<WrittenAmount>>(std::nullopt);
    const bool isAll = amount && *amount && (*amount)->amount && !(*amount)->isBare && (*amount)->length == reader.rest().size();
    return isAll ? (*amount)->amount : std::nullopt;
}

}  // namespace firn
