// A recipe as the cook writes it.
#pragma once

#include "ingredients/ingredient.h"
#include "recipe/batch_correction.h"
#include "recipe/reading_record.h"
#include "recipe/step.h"
#include "recipe/tasting.h"
#include "units/amount.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace firn {

/// How the mix is frozen; creams, sauces, jellies and crumbles are not.
enum class Process { Still, Scraped, Churned, Folded, Unfrozen };

inline constexpr std::array allProcesses{Process::Still, Process::Scraped, Process::Churned, Process::Folded, Process::Unfrozen};

std::string_view keyOf(Process process);
std::optional<Process> processNamed(std::string_view key);

/// JSON fields that this version of Firn does not know, as the text of one object, kept so that they can be written back.
using UnknownFields = std::string;

struct Row {
    std::string
        ingredient;  // an id, a name as typed, or the name of another component or linked recipe; unknown names stay as typed
    Amount amount;
    std::string note;
    UnknownFields unknown;
    std::optional<double> measuredBrix = {};  // what a refractometer reads in this very fruit or juice, instead of the table
    friend bool operator==(const Row&, const Row&) = default;
};

struct Component {
    std::string name;
    std::vector<Row> rows;
    UnknownFields unknown;
    std::vector<Step> steps = {};                // what is done with the rows, in order
    std::optional<Process> process = {};         // where it differs from the recipe's
    std::optional<double> overrun_percent = {};  // where it differs from the recipe's
    friend bool operator==(const Component&, const Component&) = default;
};

struct LinkedRecipe;
struct Version;

/// Holds other recipes, whose types are complete only below it: what handles those vectors (making, copying, destroying) stands in recipe.cpp.
struct Recipe {
    Recipe();
    Recipe(const Recipe&);
    Recipe(Recipe&&) noexcept;
    Recipe& operator=(const Recipe&);
    Recipe& operator=(Recipe&&) noexcept;
    ~Recipe();

    std::string title;
    std::optional<Process> process;
    double overrun_percent = 0.0;  // air beaten in, % of the mix's volume
    std::optional<double> serveAt_c;
    std::optional<double> freezerAt_c;
    std::string notes;
    std::vector<Component> components{Component{}};  // never empty
    UnknownFields unknown;
    std::vector<Ingredient> ingredients = {};  // the cook's own ones that it uses, so that it reads the same on another machine
    std::vector<LinkedRecipe> linked;
    std::vector<ReadingRecord> readings = {};            // of all versions, in the order in which they were made
    std::vector<BatchCorrection> batchCorrections = {};  // likewise

    // What the notebook finds it by.
    std::vector<std::string> tags = {};
    bool isFavourite = false;
    bool isArchived = false;

    std::vector<Version> versions;  // in the order in which they were kept
    std::string basedOn = {};       // id of the version that the rows above come from; empty if they come from none
    std::vector<TastingScale> scales = {};
    std::vector<Tasting> tastings = {};  // of all versions
    std::vector<BlindSheet> blindSheets = {};
    friend bool operator==(const Recipe&, const Recipe&);
};

/// Another recipe that rows can name as an ingredient, as it was when it was taken in: its file may change, move or be missing.
struct LinkedRecipe {
    std::string name;  // as rows have it
    std::string file;  // absolute, or from the folder of the recipe that links to it
    Recipe recipe;
    friend bool operator==(const LinkedRecipe&, const LinkedRecipe&);
};

/// The recipe as it was at one time, kept in the same file. See versions.h.
struct Version {
    std::string id;  // "1"; of no other version of this recipe
    std::string name;
    std::string note;
    std::string date;     // ISO 8601
    std::string basedOn;  // id of the version that it was made from; empty for none
    Recipe recipe;        // alone: without versions, readings and tastings of its own
    UnknownFields unknown = {};
    friend bool operator==(const Version&, const Version&);
};

/// How a component is frozen, and with how much air: its own, else the recipe's; none where neither says so.
std::optional<Process> processOf(const Recipe& recipe, std::size_t component);
/// How the whole dessert is frozen: as its frozen parts are, of which the recipe's own process speaks where they are several. Unfrozen only where
/// every part is.
std::optional<Process> processOfWhole(const Recipe& recipe);
double overrunOf(const Recipe& recipe, std::size_t component);

}  // namespace firn
