// Everything that Firn says, in the window, on the command line and in its documents, is searched for turns that no cook says aloud, and for errors
// that join what is wrong and what to do by a colon: these are two sentences.

#include <algorithm>
#include <array>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

namespace firn {
namespace {

bool isLetter(char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; }

/// Lower case, one blank for each run of white space.
std::string flattened(std::string_view text)
{
    std::string flat = " ";
    for (const char c : text) {
        const bool isBlank = std::isspace(static_cast<unsigned char>(c)) != 0;
        if (!isBlank || flat.back() != ' ')
            flat += isBlank ? ' ' : char(std::tolower(static_cast<unsigned char>(c)));
    }
    return flat + " ";
}

std::string wordAt(std::string_view text, std::size_t begin)
{
    std::size_t end = begin;
    while (end < text.size() && isLetter(text[end]))
        ++end;
    return std::string(text.substr(begin, end - begin));
}

/// "is no sheet", but not "there is no sheet", "is no longer" or "is no warmer".
bool deniesByNo(std::string_view flat)
{
    for (const std::string_view turn : {" is no ", " are no ", " was no ", " be no "}) {
        for (std::size_t at = flat.find(turn); at != std::string_view::npos; at = flat.find(turn, at + 1)) {
            const std::string next = wordAt(flat, at + turn.size());
            if (!flat.substr(0, at).ends_with("there") && next != "longer" && next != "more" && next != "less"
                && !next.ends_with("er"))
                return true;
        }
    }
    return false;
}

/// "… is not there: choose another", but not "catalogue: write an object", where the place comes first.
bool joinsByColon(std::string_view flat)
{
    static constexpr std::array verbs{
        "choose", "write", "type", "give", "correct", "ask", "check", "measure", "weigh", "open", "keep", "enter"};
    for (std::size_t at = flat.find(": "); at != std::string_view::npos; at = flat.find(": ", at + 1)) {
        const bool isAfterPlace = flat.substr(0, at).find(' ', 1) == std::string_view::npos;
        if (!isAfterPlace && std::ranges::find(verbs, wordAt(flat, at + 2)) != verbs.end())
            return true;
    }
    return false;
}

/// The turn that nobody says aloud; empty where there is none.
std::string turnIn(std::string_view text)
{
    const std::string flat = flattened(text);
    for (const std::string_view turn :
        {" shall ", "comes about", "come about", "for nothing", "reckon", "anew", "afresh", "thereof", "whatever else"}) {
        if (flat.find(turn) != std::string::npos)
            return std::string(turn);
    }
    return deniesByNo(flat) ? "is no …" : "";
}

std::string faultOf(std::string_view text)
{
    const std::string turn = turnIn(text);
    return turn.empty() && joinsByColon(flattened(text)) ? "colon before what to do" : turn;
}

/// What stands between quotation marks in a source, neighbours joined as the compiler joins them.
std::vector<std::string> stringsOf(const std::string& source)
{
    std::vector<std::string> strings;
    bool isNeighbour = false;
    const auto skipTo = [&source](std::size_t from, std::string_view end) {
        const std::size_t found = source.find(end, from);
        return found == std::string::npos ? source.size() : found + end.size();
    };
    for (std::size_t i = 0; i < source.size();) {
        const std::string_view rest = std::string_view(source).substr(i);
        if (rest.starts_with("//") || rest.starts_with("/*")) {
            i = skipTo(i, rest[1] == '/' ? "\n" : "*/");
            continue;
        }
        if (rest.starts_with("R\"")) {
            const std::size_t open = source.find('(', i);
            const std::size_t end = skipTo(open, ")" + source.substr(i + 2, open - i - 2) + "\"");
            strings.push_back(source.substr(open + 1, end - open - 2));
            isNeighbour = false;
            i = end;
            continue;
        }
        if (source[i] == '\'' && !(i > 0 && std::isalnum(static_cast<unsigned char>(source[i - 1])))) {
            i += source[i + 1] == '\\' ? 4 : 3;
            continue;
        }
        if (source[i] == '"') {
            std::string text;
            for (++i; i < source.size() && source[i] != '"'; ++i) {
                if (source[i] == '\\')
                    text += source[++i] == 'n' ? ' ' : source[i];
                else
                    text += source[i];
            }
            ++i;
            if (isNeighbour)
                strings.back() += text;
            else
                strings.push_back(std::move(text));
            isNeighbour = true;
            continue;
        }
        if (!std::isspace(static_cast<unsigned char>(source[i])))
            isNeighbour = false;
        ++i;
    }
    return strings;
}

std::string contentsOf(const std::filesystem::path& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

std::vector<std::filesystem::path> filesUnder(const std::filesystem::path& folder, std::initializer_list<std::string_view> endings)
{
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        if (std::ranges::find(endings, entry.path().extension().string()) != endings.end())
            files.push_back(entry.path());
    }
    std::ranges::sort(files);
    return files;
}

const std::filesystem::path root = FIRN_SOURCE_DIR;

TEST(PlainWords, OfEveryStringOfTheProgram)
{
    std::size_t searched = 0;
    for (const char* folder : {"app", "core"}) {
        for (const auto& path : filesUnder(root / folder, {".cpp", ".h"})) {
            if (path.filename() == "kitchen_words.cpp")
                continue;  // words that cooks may write
            for (const std::string& text : stringsOf(contentsOf(path))) {
                ++searched;
                EXPECT_EQ(faultOf(text), "") << std::filesystem::relative(path, root) << ": " << text;
            }
        }
    }
    EXPECT_GT(searched, 5000u);
}

TEST(PlainWords, OfEveryDocument)
{
    std::vector<std::filesystem::path> documents = filesUnder(root / "docs", {".md"});
    documents.insert(documents.end(), {root / "README.md", root / "DEVELOPERS.md"});
    ASSERT_GE(documents.size(), 5u);
    for (const auto& path : documents) {
        const std::string text = contentsOf(path);
        ASSERT_FALSE(text.empty()) << path;
        for (std::size_t from = 0; from < text.size();) {
            const std::size_t end = std::min(text.find("\n\n", from), text.size());
            const std::string_view paragraph = std::string_view(text).substr(from, end - from);
            EXPECT_EQ(turnIn(paragraph), "") << std::filesystem::relative(path, root) << ": " << paragraph;
            from = end + 2;
        }
    }
}

TEST(PlainWords, AreToldFromTurns)
{
    for (const char* turn : {"“dust” is no allergen.", "1 and 2 are no sheets.", "The mix shall have 20 %.", "How this comes about",
             "It counts for nothing.", "Read anew", "It is not there: choose another.",
             "“{0}” cannot stand here: write only a number."})
        EXPECT_NE(faultOf(turn), "") << turn;
    for (const char* plain : {"There is no water to freeze.", "It is no longer on the disk.",
             "No colder than -18 °C is no colder than this.", "It has no more than 5 %.", "Line 2: the name is missing. Add it.",
             "catalogue: write an object in braces here.", "It is not there. Choose another."})
        EXPECT_EQ(faultOf(plain), "") << plain;
    EXPECT_EQ(stringsOf(R"x(a("one " /* "no" */ "two", 'c', '"', "three\n"); // "no")x"),
        (std::vector<std::string>{"one two", "three "}));
}

}  // namespace
}  // namespace firn
