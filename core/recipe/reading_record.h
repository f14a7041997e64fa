// A reading as it was made, kept with the recipe. What it says about the mix is worked out anew each time.
#pragma once

#include "units/quantity.h"
#include "units/sentence.h"

#include <optional>
#include <string>
#include <string_view>

namespace firn {

enum class Instrument { Refractometer, HydrometerBrix, HydrometerGravity, HydrometerBaume, Egg, BoilingPoint };

std::string_view keyOf(Instrument instrument);
std::optional<Instrument> instrumentNamed(std::string_view key);

struct ReadingRecord {
    std::string date;  // ISO 8601, "2026-04-03" or "2026-04-03T15:20"; empty if nobody noted it
    Instrument instrument = Instrument::Refractometer;
    double value = 0.0;  // °Bx, SG, °Bé, width of the egg's patch in mm, or °C at the boil
    std::optional<double> temperature_c;
    std::string component;  // that was measured; empty for the whole dessert or its only one
    std::string note;

    // The instrument, where it differs from the usual one.
    bool compensates = false;    // refractometer
    bool isMadeFor60F = false;   // hydrometer
    std::optional<double> from;  // ends of its scale, and what one division is worth
    std::optional<double> to;
    std::optional<double> division;
    std::optional<Grams> eggMass;
    std::optional<GramsPerMillilitre> eggDensity;
    std::optional<Hectopascals> pressure;

    std::string unknown;       // JSON fields that this version of Firn does not know
    std::string version = {};  // id of the version that was measured; empty for what is on the bench
    friend bool operator==(const ReadingRecord&, const ReadingRecord&) = default;
};

/// Why this is no date as a record has it; nothing for an empty text.
std::optional<Sentence> faultOfDate(std::string_view date);

}  // namespace firn
