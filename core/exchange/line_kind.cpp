#include "exchange/line_kind.h"

#include "recipe/word_reader.h"
#include "units/number.h"

#include <algorithm>

namespace firn {

namespace {

using Word = std::string_view;

constexpr auto methodHeadings = std::to_array<Word>({"method", "instructions", "directions", "preparation", "procedure", "steps",
    "how to make it", "how to", "to make", "what to do", "zubereitung", "pr\u00e9paration", "preparazione", "preparaci\u00f3n"});
constexpr auto ingredientHeadings = std::to_array<Word>(
    {"ingredients", "you will need", "you'll need", "what you need", "zutaten", "ingr\u00e9dients", "ingredienti", "ingredientes"});
constexpr auto noteHeadings = std::to_array<Word>({"notes", "note", "tips", "tip", "cook's notes"});
constexpr auto titleLabels = std::to_array<Word>({"subject", "title", "recipe", "betreff"});
constexpr auto facts = std::to_array<Word>({"serves", "makes", "yield", "yields", "servings", "portions", "prep time", "cook time",
    "total time", "preparation time", "cooking time", "freezing time", "chilling time", "ready in"});
constexpr auto labels = std::to_array<Word>(
    {"difficulty", "source", "from", "to", "cc", "date", "sent", "author", "by", "photo", "adapted from", "category", "cuisine"});

constexpr auto verbs = std::to_array<Word>({"add", "allow", "arrange", "bake", "beat", "bind", "blend", "blitz", "boil", "break",
    "bring", "check", "chill", "chop", "churn", "combine", "continue", "cook", "cool", "cover", "crack", "crush", "cut", "dip",
    "discard", "dissolve", "divide", "drain", "drizzle", "dust", "fill", "finish", "fold", "freeze", "garnish", "gather", "grate",
    "grind", "halve", "heat", "infuse", "juice", "keep", "layer", "leave", "let", "line", "macerate", "make", "mash", "measure",
    "melt", "mix", "pass", "peel", "place", "pour", "prepare", "press", "process", "pur\u00e9e", "puree", "put", "reduce",
    "refrigerate", "reheat", "remove", "repeat", "rest", "return", "rinse", "roast", "scoop", "scrape", "season", "serve", "set",
    "sieve", "sift", "simmer", "skim", "slice", "soak", "soften", "spoon", "spread", "sprinkle", "squeeze", "start", "steep",
    "stir", "store", "strain", "sweeten", "swirl", "take", "taste", "temper", "thaw", "tip", "toast", "top", "toss", "transfer",
    "turn", "unmould", "use", "wait", "warm", "wash", "weigh", "whip", "whisk", "whizz", "work", "wrap", "zest"});

constexpr auto starters = std::to_array<Word>({"i", "i'm", "i've", "we", "we've", "you", "you'll", "it", "it's", "this", "that",
    "these", "here", "here's", "there", "then", "when", "while", "once", "after", "before", "meanwhile", "in", "if", "my", "our",
    "your", "please", "hi", "hello", "hey", "dear", "thanks", "thank", "best", "love", "see", "enjoy", "regards", "cheers", "yours",
    "as", "at", "on", "with", "next", "now", "finally", "first", "lastly", "using", "keeps", "he", "she", "they", "the recipe",
    "don't", "do", "not", "and", "but", "so", "greetings"});

constexpr auto ofWords = std::to_array<Word>({"of", "from"});

/// What is counted in the method, not weighed: "2 hours", "6 portions", "180 °C".
constexpr auto notIngredients =
    std::to_array<Word>({"hour", "hours", "hrs", "hr", "minute", "minutes", "min", "mins", "day", "days", "week", "weeks", "month",
        "months", "second", "seconds", "serving", "servings", "portion", "portions", "people", "persons", "guests", "times"});

bool isOneOf(std::span<const Word> words, std::string_view text)
{
    return !text.empty() && oneOfWordsAt(words, text) == text.size();
}

std::string_view withoutEmphasis(std::string_view text)
{
    for (const std::string_view mark : {"**", "__", "*"})
        if (text.size() > 2 * mark.size() && text.starts_with(mark) && text.ends_with(mark))
            return trimmed(text.substr(mark.size(), text.size() - 2 * mark.size()));
    return text;
}

/// A heading without its marks: "## Syrup", "Syrup:", "**Syrup**". Nothing if it has none.
std::optional<std::string> markedHeading(std::string_view text)
{
    const bool isHash = text.starts_with("##");
    while (text.starts_with('#'))
        text.remove_prefix(1);
    text = withoutEmphasis(trimmed(text));
    bool hasColon = false;
    for (; text.ends_with(':'); hasColon = true)
        text = trimmed(text.substr(0, text.size() - 1));
    text = withoutEmphasis(text);
    return (isHash || hasColon) && !text.empty() ? std::optional(std::string(text)) : std::nullopt;
}

/// "## Notes ##": a heading that means nothing but its words.
std::optional<std::string> plainHeading(std::string_view text)
{
    if (!text.starts_with("## ") || !text.ends_with(" ##") || text.size() < std::string_view("## x ##").size())
        return std::nullopt;
    const std::string_view name = trimmed(text.substr(3, text.size() - 6));
    return name.empty() ? std::nullopt : std::optional(std::string(name));
}

/// "Step 1", "STEP 2:"
bool isStepHeading(std::string_view text)
{
    WordReader reader(text);
    if (!reader.take("step"))
        return false;
    const std::size_t digits = lengthOf(isDigit, reader.rest());
    return digits > 0 && reader.rest().size() == digits;
}

std::optional<KindOfLine> kindOfHeading(const std::string& heading)
{
    if (isOneOf(methodHeadings, heading) || isStepHeading(heading))
        return KindOfLine{LineKind::Method};
    if (isOneOf(ingredientHeadings, heading))
        return KindOfLine{LineKind::Ingredients};
    if (isOneOf(noteHeadings, heading))
        return KindOfLine{LineKind::Notes};
    return std::nullopt;
}

KindOfLine headingNamed(std::string_view text)
{
    WordReader reader(text);
    constexpr auto forWords = std::to_array<Word>({"for the", "for", "f\u00fcr den", "f\u00fcr die", "pour le", "pour la"});
    if (reader.take(forWords) && !reader.isAtEnd())
        return {LineKind::Heading, std::string(reader.rest()), true};
    return {LineKind::Heading, std::string(text)};
}

/// The line without "1. ", "2) ", "(3) ": the number of a step.
std::string_view withoutStepNumber(std::string_view line)
{
    std::string_view rest = line.starts_with('(') ? line.substr(1) : line;
    const std::size_t digits = lengthOf(isDigit, rest);
    if (digits == 0 || digits > 2 || digits == rest.size() || (rest[digits] != '.' && rest[digits] != ')'))
        return line;
    rest.remove_prefix(digits + 1);
    return blankAt(rest) > 0 ? trimmed(rest) : line;
}

/// Whether the text begins as an order or a remark does: "Boil the …", "Gently heat …", "Hi …".
bool beginsSentence(std::string_view text)
{
    WordReader reader(text);
    if (reader.take(starters))
        return true;
    const std::string first = lowered(text.substr(0, text.find(' ')));
    if (first.size() > 3 && first.ends_with("ly"))
        reader.skip(first.size());
    return reader.take(verbs) && oneOfWordsAt(ofWords, reader.rest()) == 0;
}

bool isProse(std::string_view text)
{
    constexpr std::size_t fewestWords = 4;      // of an order without a full stop
    constexpr std::size_t wordsOfSentence = 6;  // with one, whatever it begins with
    constexpr std::size_t mostWords = 13;       // of a name
    if (startsWithNumber(text))
        return false;
    const std::size_t words = wordCount(text);
    const bool endsSentence = text.ends_with('.') || text.ends_with('!') || text.ends_with('?');
    const bool isLetter = text.ends_with(',') && words <= 3;  // "Hi Mira,"
    if (beginsSentence(text))
        return words >= fewestWords || endsSentence || isLetter;
    return (endsSentence && words >= wordsOfSentence) || words >= mostWords;
}

bool isCountOfSomethingElse(std::string_view text)
{
    const auto number = startsWithNumber(text) ? leadingNumber(text) : failure(Sentence{});
    if (!number)
        return false;
    const std::string_view rest = trimmed(text.substr(number->length));
    return oneOfWordsAt(notIngredients, rest) > 0 || rest.starts_with("\u00b0");
}

/// "Serves 6", "Yield: 1 litre", "From: Ines"
bool isFact(std::string_view text)
{
    WordReader fact(text);
    if (fact.take(facts))
        return fact.takeSign(":") || startsWithNumber(fact.rest()) || fact.take("about");
    return fact.take(labels) && fact.takeSign(":");
}

}  // namespace

KindOfLine kindOf(std::string_view text)
{
    const std::string plain = onOneLine(text);
    if (isPassedOver(plain))
        return {plain.empty() || plain.front() != '#' ? LineKind::Blank : LineKind::Comment};
    if (auto heading = plainHeading(plain))
        return {LineKind::Heading, std::move(*heading)};

    std::string untabbed = plain;  // a heading has no cells
    std::ranges::replace(untabbed, '\t', ' ');
    auto read = lineFrom(plain);
    const bool hasAmount = !read || read->hasAmount;
    const bool isInCells = plain.find('\t') != plain.npos;
    if (auto heading = markedHeading(untabbed); heading && (!hasAmount || plain.starts_with("##"))) {
        if (auto kind = kindOfHeading(*heading))
            return *kind;
        const bool isRemark = !plain.starts_with('#') && beginsSentence(*heading) && wordCount(*heading) >= 3;
        return isRemark ? KindOfLine{LineKind::Prose} : headingNamed(*heading);
    }
    if (isInCells) {
        KindOfLine kind{hasAmount ? LineKind::Amount : LineKind::Name};
        if (read)
            kind.line = std::move(*read);
        return kind;
    }

    const std::string_view body = withoutEmphasis(withoutBullet(plain));
    if (auto kind = kindOfHeading(std::string(body)))
        return *kind;
    WordReader label(body);
    if (label.take(titleLabels) && label.takeSign(":") && !label.isAtEnd())
        return {LineKind::Title, std::string(label.rest())};
    if (isFact(body))
        return {LineKind::Prose};
    const std::string_view unnumbered = withoutStepNumber(body);
    const bool isNumbered = unnumbered.size() != body.size();
    const bool isNumberedStep =
        isNumbered && !startsWithNumber(unnumbered) && (wordCount(unnumbered) >= 4 || beginsSentence(unnumbered));
    const bool endsInAmount = read && read->hasAmount && !startsWithNumber(body);
    if (isNumberedStep || isCountOfSomethingElse(body) || (isProse(unnumbered) && !(endsInAmount && wordCount(unnumbered) <= 6)))
        return {LineKind::Prose};
    KindOfLine kind{hasAmount ? LineKind::Amount : LineKind::Name, std::string(body)};
    if (read)
        kind.line = std::move(*read);
    return kind;
}

}  // namespace firn
