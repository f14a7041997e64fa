#include "ingredients/kitchen_words.h"

#include "ingredients/catalogue.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <unordered_map>
#include <unordered_set>

namespace firn {

namespace {

using WordSet = std::unordered_set<std::string_view>;

// What a cook writes around an ingredient without changing what it is, in the singular. Not here: dried, frozen, whole, raw (raw sugar) and
// other words that make another ingredient of it.
const WordSet& fillers()
{
    static const WordSet words{"a", "an", "and", "at", "aged", "alphonso", "bag", "beaten", "best", "boiled", "boiling", "bottle",
        "bought", "brewed", "bunch", "can", "carton", "charentais", "chilled", "chopped", "chunk", "clear", "cloudy", "coarsely",
        "cold", "conference", "cool", "cored", "crumbled", "crushed", "cube", "cubed", "cut", "dash", "deseeded", "diced",
        "drained", "drop", "extra", "filtered", "fine", "finely", "flavour", "flavoured", "for", "fresh", "freshly", "from", "good",
        "granulated", "grated", "halved", "handful", "homemade", "hot", "hulled", "in", "into", "jar", "jumbo", "knob", "large",
        "lightly", "loosely", "lukewarm", "medium", "medjool", "melted", "of", "optional", "or", "organic", "packed", "packet",
        "peeled", "picked", "piece", "pinch", "pitted", "plain", "pressed", "quality", "quartered", "rinsed", "ripe", "room",
        "roughly", "sachet", "scraped", "seeded", "seedless", "segment", "segmented", "separated", "shaken", "shelled", "shot",
        "sifted", "skinned", "slice", "sliced", "small", "softened", "splash", "split", "sprig", "squeeze", "squeezed", "stalk",
        "stick", "stirred", "stoned", "strained", "strip", "stripped", "tailed", "taste", "temperature", "tepid", "thawed", "the",
        "thick", "thinly", "tin", "to", "topped", "torn", "trimmed", "tub", "unsalted", "unwaxed", "valencia", "very", "warm",
        "warmed", "washed", "well", "whipped", "whisked", "william", "with"};
    return words;
}

// Words that say the same as another one in a name, in the singular: other spellings, other languages' endings, and forms of the verb.
const std::unordered_map<std::string_view, std::string_view>& spellings()
{
    static const std::unordered_map<std::string_view, std::string_view> words{{"yoghurt", "yogurt"}, {"yoghourt", "yogurt"},
        {"yogourt", "yogurt"}, {"whiskey", "whisky"}, {"soy", "soya"}, {"castor", "caster"}, {"confectioner", "confectioners"},
        {"flavored", "flavoured"}, {"pasteurized", "pasteurised"}, {"atomized", "atomised"}, {"alkalized", "alkalised"},
        {"crystallized", "crystallised"}, {"caramelized", "caramelised"}, {"standardized", "standardised"},
        {"stabilizer", "stabiliser"}, {"skimmed", "skim"}, {"powdered", "powder"}, {"juiced", "juice"}, {"zested", "zest"},
        {"peel", "zest"}, {"rind", "zest"}, {"tinned", "canned"}, {"toasted", "roasted"}, {"cacao", "cocoa"}, {"litchi", "lychee"},
        {"gelatine", "gelatin"}, {"glycerin", "glycerol"}, {"glycerine", "glycerol"}, {"liquer", "liqueur"},
        {"expresso", "espresso"}, {"sirup", "syrup"}, {"dessicated", "desiccated"}, {"marscapone", "mascarpone"},
        {"creme", "cream"}, {"mandarine", "mandarin"}, {"choc", "chocolate"}, {"anis", "anise"}, {"processed", "process"},
        {"dutched", "dutch"}, {"fibre", "fiber"}, {"litchis", "lychee"}, {"kiwis", "kiwi"}, {"leave", "leaf"}, {"leaves", "leaf"},
        {"herbal", "herb"}, {"rhum", "rum"}, {"pureed", "puree"}, {"percentage", "percent"}, {"molasse", "molass"}};
    return words;
}

// Kinds and forms that may stand anywhere in a name.
const WordSet& qualifiers()
{
    static const WordSet words{"aged", "alkalised", "anhydrous", "aromatic", "atomised", "baked", "bar", "bitter", "black",
        "blanched", "blonde", "blood", "brown", "brut", "candied", "canned", "caramelised", "caster", "concentrate", "cooked",
        "crystal", "crystalline", "cultured", "cured", "dark", "de", "desiccated", "dihydrate", "distilled", "double", "dried",
        "drink", "dry", "dutch", "essence", "extract", "fat", "flake", "flaked", "flavoured", "flesh", "flour", "flower", "free",
        "freeze", "frozen", "full", "gold", "golden", "granule", "greek", "green", "ground", "gum", "hard", "heavy", "herb", "high",
        "icing", "instant", "inverted", "invert", "jam", "juice", "leaf", "light", "liqueur", "liquid", "low", "malted", "mashed",
        "meal", "mild", "monohydrate", "natural", "nectar", "non", "nonfat", "oil", "paste", "pasteurised", "pearl", "pink", "pod",
        "powder", "process", "pulp", "pure", "puree", "purple", "raw", "red", "reduced", "refined", "ripe", "roasted", "runny",
        "salted", "seed", "semi", "single", "skim", "smoked", "smooth", "soft", "sour", "soured", "spiced", "sparkling", "spray",
        "starch", "still", "strong", "sugared", "sweet", "sweetened", "syrup", "toasted", "unripe", "unsweetened", "virgin", "vol",
        "weak", "whipping", "white", "whole", "wild", "yellow", "yolk", "young", "zest"};
    return words;
}

// Words that go with a figure and say nothing more beside it.
constexpr auto besideFigures =
    std::to_array<std::string_view>({"abv", "alcohol", "fat", "percent", "solid", "strength", "vol", "volume"});

// Food and kitchen words that are one or two letters away from a word of the catalogue and mean something else.
const WordSet& otherFood()
{
    static const WordSet words{"afresh", "barberry", "bayberry", "batter", "bitter", "braise", "broth", "buttercup", "butterfat",
        "buttery", "caffeinated", "cassia", "cassis", "cedar", "chicle", "chive", "cornflower", "creamer", "creamy", "crispy",
        "crunch", "culture", "custard", "desert", "dewberry", "dripping", "filler", "fillet", "filter", "fried", "fruity", "glace",
        "grate", "haddock", "halve", "honeycomb", "insulin", "juicer", "kernel", "lactase", "macaroni", "mannitol", "margarita",
        "marrow", "masala", "match", "methanol", "mustard", "nitrate", "oiled", "onion", "parsley", "pasta", "pastry", "patty",
        "pepsin", "perch", "pimiento", "poach", "potted", "saccharin", "saccharine", "safflower", "salami", "sardine", "sherbet",
        "smoothy", "sorbet", "sprat", "strainer", "sucralose", "sumac", "sweetener", "syrupy", "tablet", "toffee", "trifle",
        "triglyceride", "tripe", "truffle", "vanillin", "wafer", "whisk", "yeasty"};
    return words;
}

// Plurals that the rules below would get wrong.
constexpr std::array<std::pair<std::string_view, std::string_view>, 4> irregularPlurals{
    {{"leaves", "leaf"}, {"halves", "halved"}, {"kiwis", "kiwi"}, {"litchis", "litchi"}}};

/// One form for an English word and its plural.
std::string singular(std::string_view word)
{
    const auto* irregular = std::ranges::find(irregularPlurals, word, [](const auto& pair) { return pair.first; });
    if (irregular != irregularPlurals.end())
        return std::string(irregular->second);
    const auto without = [word](std::size_t letters) { return std::string(word.substr(0, word.size() - letters)); };
    const auto endsWith = [word](auto... ends) { return (word.ends_with(ends) || ...); };
    if (word.size() <= 3 || endsWith("ss", "us", "is"))
        return std::string(word);
    if (endsWith("ies", "ie"))
        return without(word.ends_with('s') ? 3 : 2) + "y";
    if (endsWith("oes", "sses", "xes", "ches", "shes"))
        return without(2);
    return endsWith("s") ? without(1) : std::string(word);
}

bool isDigitOf(char c) { return c >= '0' && c <= '9'; }

void addWord(Words& words, std::string_view word)
{
    const auto afterFigure = std::size_t(std::ranges::find_if_not(word, isDigitOf) - word.begin());
    if (afterFigure > 0 && afterFigure < word.size()) {
        addWord(words, word.substr(0, afterFigure));
        addWord(words, word.substr(afterFigure));
        return;
    }
    if (word == "s")  // of "goat's milk"
        return;
    std::string plain = singular(word);
    const auto other = spellings().find(plain);
    words.push_back(other == spellings().end() ? std::move(plain) : std::string(other->second));
}

}  // namespace

Words plainWords(std::string_view text)
{
    const std::string all = folded(text);
    Words words;
    for (std::size_t begin = 0; begin < all.size();) {
        const std::size_t end = std::min(all.find(' ', begin), all.size());
        addWord(words, std::string_view(all).substr(begin, end - begin));
        begin = end + 1;
    }
    return words;
}

bool isFiller(std::string_view word) { return fillers().contains(word); }

bool isQualifier(std::string_view word) { return hasDigit(word) || qualifiers().contains(word); }

bool isNeverASlip(std::string_view word) { return otherFood().contains(word); }

bool hasDigit(std::string_view word) { return std::ranges::any_of(word, isDigitOf); }

Words withoutFillers(const Words& words)
{
    const bool hasFigure = std::ranges::any_of(words, hasDigit);
    Words kept;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const std::string& word = words[i];
        const auto isPhrase = [&](std::string_view first, std::string_view second) {
            return (word == first && i + 1 < words.size() && words[i + 1] == second)
                   || (word == second && i > 0 && words[i - 1] == first);
        };
        // "Pure honey" is honey, but "peach pure" may be purée.
        const bool isPureInFront = word == "pure" && i == 0 && words.size() > 1;
        const bool goesWithFigure = hasFigure && std::ranges::find(besideFigures, word) != besideFigures.end();
        if (!isFiller(word) && !isPureInFront && !goesWithFigure && !isPhrase("free", "range") && !isPhrase("ice", "cold")
            && !isPhrase("full", "fat"))
            kept.push_back(word);
    }
    return kept;
}

std::string joined(const Words& words, std::string_view between)
{
    std::string result;
    for (const std::string& word : words) {
        if (!result.empty())
            result += between;
        result += word;
    }
    return result;
}

}  // namespace firn
