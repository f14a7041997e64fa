#include "ingredients/kitchen_words.h"

#include "ingredients/catalogue.h"
#include "ingredients/slips.h"

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
    static const WordSet words{"a", "about", "fruity", "partly", "italian", "english", "french", "spanish", "british", "american",
        "australian", "scottish", "soft", "runny", "smooth", "mild", "ball", "pushed", "passed", "put", "rubbed", "run",
        "approximately", "crisp", "pared", "sharp", "tasty", "sticky", "tangy", "squashy", "silky", "rustic", "worth", "patted",
        "least", "min", "minimum", "bottled", "crosswise", "crossway", "icelandic", "lengthway", "lengthwise", "off", "out", "ring",
        "wedge", "round", "aged", "alphonso", "amalfi", "an", "and", "at", "authentic", "bag", "barista", "bashed", "beaten",
        "belgian", "best", "bit", "blended", "blitzed", "block", "boiled", "boiling", "bottle", "bought", "box", "brand", "brewed",
        "broken", "bruised", "bunch", "californian", "can", "carton", "charentais", "chilled", "chopped", "chunk", "cleaned",
        "clear", "cloudy", "coarsely", "cold", "conference", "cool", "cooled", "cored", "cracked", "crumbled", "crushed", "cube",
        "cubed", "cut", "dash", "deeply", "defrosted", "deseeded", "desired", "destalked", "destemmed", "diced", "drained", "drop",
        "extra", "fairly", "favorite", "favourite", "few", "filtered", "fine", "finely", "finest", "firm", "firmly", "flavour",
        "flavoured", "for", "forced", "fragrant", "fresh", "freshly", "fridge", "from", "fully", "generous", "genuine", "good",
        "grade", "granulated", "grated", "halved", "handful", "heaped", "heaping", "home", "homemade", "hot", "hulled", "in",
        "into", "jar", "jarful", "juicy", "jumbo", "just", "kind", "knob", "large", "leftover", "level", "lightly", "little",
        "local", "loosely", "lukewarm", "macerated", "madagascan", "made", "medium", "medjool", "melted", "minced", "more", "my",
        "necessary", "needed", "nice", "normal", "of", "optional", "or", "ordinary", "organic", "our", "overnight", "overripe",
        "packed", "packet", "packing", "peeled", "perfectly", "picked", "piece", "pinch", "pitted", "plain", "plump", "pot",
        "pounded", "premium", "prepared", "pressed", "proper", "punnet", "quality", "quartered", "quite", "ready", "real", "really",
        "refrigerated", "regular", "required", "reserved", "rinsed", "ripe", "ripened", "room", "roughly", "sachet", "scalded",
        "scraped", "scrubbed", "seeded", "seedless", "segment", "segmented", "separated", "shaken", "shaved", "shelled", "shop",
        "shot", "sicilian", "sieved", "sifted", "simmering", "size", "sized", "skinned", "slice", "sliced", "slightly", "slivered",
        "small", "smashed", "snipped", "softened", "some", "splash", "split", "sprig", "squeeze", "squeezed", "stalk", "standard",
        "steaming", "stemmed", "stick", "stirred", "stoned", "store", "straight", "strained", "strip", "stripped", "style",
        "supermarket", "tahitian", "tailed", "taste", "temperature", "tepid", "thawed", "the", "thick", "thinly", "tin", "tinful",
        "to", "top", "topped", "torn", "trimmed", "tub", "type", "unsalted", "unsprayed", "untreated", "unwaxed", "unwrapped",
        "usual", "valencia", "variety", "very", "warm", "warmed", "washed", "weighed", "well", "whipped", "whisked", "william",
        "with", "your"};
    return words;
}

// What is done to food so that something else comes of it; any other word in "-ed" says how a cook prepares it.
const WordSet& changes()
{
    static const WordSet words{"acidified", "added", "aged", "alkalised", "amidated", "aniseed", "atomised", "baked", "barbecued",
        "blanched", "bloomed", "botrytised", "braised", "breaded", "brined", "browned", "candied", "canned", "caramelised",
        "carbonated", "charred", "clarified", "clotted", "coated", "concentrated", "condensed", "cooked", "creamed", "crusted",
        "crystallised", "cultured", "cured", "dealcoholised", "decaffeinated", "defatted", "dehydrated", "demineralised",
        "desiccated", "dipped", "distilled", "dried", "emulsified", "enriched", "evaporated", "fermented", "filled", "flaked",
        "flavoured", "flaxseed", "fleshed", "fortified", "fried", "frosted", "frozen", "glazed", "grapeseed", "grilled", "hardened",
        "hydrated", "hydrogenated", "hydrolysed", "iced", "infused", "inverted", "jellied", "linseed", "malted", "marinated",
        "mashed", "mixed", "modified", "mulled", "oiled", "pasteurised", "peated", "pickled", "poached", "popped", "potted",
        "preserved", "processed", "puffed", "pureed", "rapeseed", "rectified", "red", "reduced", "rendered", "roasted", "rolled",
        "salted", "seaweed", "seed", "shortbread", "shred", "shredded", "smoked", "soaked", "soured", "spiced", "standardised",
        "steamed", "steeped", "stewed", "stuffed", "sugared", "sulphured", "sweetened", "toasted", "unfortified", "unpeeled",
        "unrefined", "unsalted", "unsweetened", "veined", "weed", "whisked"};
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
        {"herbal", "herb"}, {"rhum", "rum"}, {"pureed", "puree"}, {"percentage", "percent"}, {"molasse", "molass"},
        {"flaked", "flake"}, {"peppercorn", "pepper"}, {"glace", "candied"}, {"pale", "light"}, {"strand", "thread"},
        {"strongly", "strong"}};
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
        "salted", "seed", "semi", "sheet", "single", "skim", "smoked", "smooth", "soft", "sour", "soured", "spiced", "sparkling",
        "spray", "starch", "still", "strong", "sugared", "sweet", "sweetened", "syrup", "toasted", "unripe", "unsweetened",
        "virgin", "vol", "weak", "whipping", "white", "whole", "wild", "yellow", "yolk", "young", "zest"};
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

bool isFiller(std::string_view word)
{
    constexpr std::size_t fewestLetters = 6, farSlips = 2;
    if (fillers().contains(word))
        return true;
    if (word.size() < fewestLetters || !word.ends_with("ed") || changes().contains(word))
        return false;
    // A slip for a word that changes the food is as bad as that word: "dryed".
    return std::ranges::none_of(
        changes(), [&](std::string_view change) { return slipsBetween(word, change, farSlips) <= farSlips; });
}

bool sayHowPrepared(std::span<const std::string> words)
{
    static const WordSet doneByTheCook{"flake", "mashed", "puree", "shredded", "bashed", "broken", "cooked", "frozen", "ground",
        "liquid", "roasted", "soft", "soaked", "whole"};
    // "Vanilla pod, seeds scraped out"; "pineapple, core removed". Peel is a spelling of zest.
    static const WordSet parts{"bone", "core", "crust", "end", "leaf", "membrane", "pip", "pit", "pith", "seed", "shell", "skin",
        "stalk", "stem", "stone", "zest"};
    static const WordSet takenAway{"discarded", "out", "off", "removed", "scraped", "stripped"};
    static const WordSet washings{"cleaned", "patted", "rinsed", "scrubbed", "washed"};
    const bool isWashed = std::ranges::any_of(words, [](const std::string& word) { return washings.contains(word); });
    const bool isTakenAway = std::ranges::any_of(words, [](const std::string& word) { return takenAway.contains(word); });
    return std::ranges::all_of(words, [&](const std::string& word) {
        return isFiller(word) || doneByTheCook.contains(word) || (isTakenAway && parts.contains(word))
               || (isWashed && (word == "dried" || word == "dry"));
    });
}

std::size_t wordsBeforeAnAside(const Words& words, std::size_t turnsAt)
{
    static const WordSet openingsOfHow{"at", "by", "in", "into", "on", "over", "then", "through", "to", "using", "with"};
    static const WordSet openings{"but", "depending", "if", "ideally", "like", "not", "only", "preferably", "reserve", "see",
        "such", "until", "for", "from", "weight", "weighing"};
    static const WordSet furtherAmounts{
        "a", "additional", "another", "extra", "more", "some"};  // "plus 2 tbsp" is part of the amount
    static const WordSet purposes{"coat", "cover", "decorate", "dip", "drizzle", "dust", "finish", "garnish", "glaze", "grease",
        "make", "roll", "scatter", "serve", "sprinkle", "sweeten", "taste", "top"};
    for (std::size_t i = 1; i < words.size(); ++i) {
        const std::string_view next = i + 1 < words.size() ? std::string_view(words[i + 1]) : std::string_view();
        if (openings.contains(words[i]) || (turnsAt > 0 && i > turnsAt && openingsOfHow.contains(words[i]))
            || (words[i] == "to" && purposes.contains(next)) || (words[i] == "plus" && furtherAmounts.contains(next))
            || (words[i] == "as" && (next == "needed" || next == "required" || next == "necessary")))
            return i;
    }
    return words.size();
}

bool isQualifier(std::string_view word) { return hasDigit(word) || qualifiers().contains(word); }

bool isNeverASlip(std::string_view word) { return otherFood().contains(word) || changes().contains(word); }

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
        // "Fresh or canned": the fresh one is meant.
        const bool isOtherThanFresh = i >= 2 && words[i - 1] == "or" && words[i - 2] == "fresh";
        const bool goesWithFigure = hasFigure && std::ranges::find(besideFigures, word) != besideFigures.end();
        if (!isFiller(word) && !isPureInFront && !isOtherThanFresh && !goesWithFigure && !isPhrase("free", "range")
            && !isPhrase("skin", "on") && !isPhrase("ice", "cold") && !isPhrase("full", "fat"))
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
