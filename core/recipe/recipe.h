// A recipe as the cook writes it.
#pragma once

#include "recipe/step.h"
#include "units/amount.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace firn {

/// How the mix is frozen.
enum class Process { Still, Scraped, Churned, Folded };

std::string_view keyOf(Process process);
std::optional<Process> processNamed(std::string_view key);

/// JSON fields that this version of Firn does not know, as the text of one object, kept so that they can be written back.
using UnknownFields = std::string;

struct Row {
    std::string ingredient;  // an id, the name as typed, or the name of another component; unknown names stay as typed
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
    std::vector<Step> steps = {};  // what is done with the rows, in order
    friend bool operator==(const Component&, const Component&) = default;
};

struct Recipe {
    std::string title;
    std::optional<Process> process;
    double overrun_percent = 0.0;  // air beaten in, % of the mix's volume
    std::optional<double> serveAt_c;
    std::optional<double> freezerAt_c;
    std::string notes;
    std::vector<Component> components{Component{}};  // never empty
    UnknownFields unknown;
    friend bool operator==(const Recipe&, const Recipe&) = default;
};

}  // namespace firn
