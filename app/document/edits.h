// The only door for edits: free functions named after what the person did. Each makes one named step of the undo history, or none
// where nothing would change.
#pragma once

#include "document/gesture.h"
#include "recipe/recipe.h"
#include "units/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace firn::app {

class Document;

struct RowPlace {
    std::size_t component = 0;
    std::size_t row = 0;
    friend bool operator==(const RowPlace&, const RowPlace&) = default;
};

void changeAmount(Document& document, RowPlace place, const Amount& amount, Gesture gesture = {});

/// What a refractometer reads in this row's fruit or juice; none for what the catalogue says.
void changeReading(Document& document, RowPlace place, std::optional<double> brix);

void renameIngredient(Document& document, RowPlace place, const std::string& ingredient);
/// Puts another ingredient, and how much of it, in the place of a row's.
void replaceIngredient(Document& document, RowPlace place, const std::string& ingredient, const Amount& amount);

/// Puts rows in front of the row at this place, which may be one past the last.
void insertRows(Document& document, RowPlace place, const std::vector<Row>& rows);
void removeRows(Document& document, std::size_t component, const std::vector<std::size_t>& rows);

/// Moves a row; `to` is its number afterwards.
void moveRow(Document& document, RowPlace from, std::size_t to);

/// Puts a copy of each row under the last of them.
void duplicateRows(Document& document, std::size_t component, const std::vector<std::size_t>& rows);

void changeTitle(Document& document, const std::string& title, Gesture gesture = {});
/// Of this component where the recipe has several, else of the recipe.
void changeProcess(Document& document, std::size_t component, Process process);
void changeOverrun(Document& document, std::size_t component, double overrun_percent, Gesture gesture = {});
void changeNotes(Document& document, const std::string& notes, Gesture gesture = {});

/// No temperature means the usual one.
void changeServingTemperature(Document& document, std::optional<Celsius> temperature, Gesture gesture = {});
void changeFreezerTemperature(Document& document, std::optional<Celsius> temperature, Gesture gesture = {});

void addComponent(Document& document, const std::string& name);
void renameComponent(Document& document, std::size_t component, const std::string& name, Gesture gesture = {});

/// The last component stays: a recipe always has one.
void removeComponent(Document& document, std::size_t component);

}  // namespace firn::app
