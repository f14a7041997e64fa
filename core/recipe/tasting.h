// What people said when they tasted, and the sheets with codes for tasting blind.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace firn {

/// One aspect that tasters give a number for. Both ends have words of the person's own, so that a 7 means the same next month.
struct TastingScale {
    std::string name;  // "iciness"
    double from = 0.0;
    double to = 10.0;
    std::string low;   // what the lower end means: "smooth"
    std::string high;  // "crushed ice"
    std::string unknown = {};
    friend bool operator==(const TastingScale&, const TastingScale&) = default;
};

struct Score {
    std::string scale;  // its name
    double value = 0.0;
    friend bool operator==(const Score&, const Score&) = default;
};

struct Tasting {
    std::string date;     // ISO 8601, day or day and time; empty if nobody noted it
    std::string version;  // its id; empty for what is on the bench, or while a blind sheet hides it
    std::string code;     // on the cup of a blind tasting
    std::string tasters;
    std::optional<double> servedAt_c;
    std::optional<double> frozen_h;  // since it went into the freezer
    std::vector<Score> scores;
    std::string words;
    std::string next;   // the one thing to change
    std::string photo;  // a file, from the folder of the recipe or absolute
    std::string unknown = {};
    friend bool operator==(const Tasting&, const Tasting&) = default;
};

struct CodedSample {
    std::string code;     // three digits
    std::string version;  // its id; empty for what was on the bench
    friend bool operator==(const CodedSample&, const CodedSample&) = default;
};

/// Which code stands for which version, until the sheet is revealed for nobody to read.
struct BlindSheet {
    std::string date;
    std::vector<CodedSample> samples;  // in the order in which they are handed out
    bool isRevealed = false;
    std::string unknown = {};
    friend bool operator==(const BlindSheet&, const BlindSheet&) = default;
};

}  // namespace firn
