// Something to do about a fault. It is given only where following it was found to lead to what it promises.
#pragma once

#include "mix/mix.h"
#include "units/sentence.h"

#include <optional>
#include <vector>

namespace firn {

struct TemperatureRange {
    Celsius warmest;
    Celsius coldest;
};

/// What can be stirred into a mix or left out of it.
enum class Stuff {
    Sucrose,
    Dextrose,  // the monohydrate
    Water,
    Spirit,  // of 40 % vol
    Salt,
    Acid  // citric
};

struct MixChange {
    Stuff stuff;
    Grams mass;  // negative for what is left out
};

struct Advice {
    enum class Promise {
        SetsInFreezer,  // it freezes so far that it can be scraped or holds a shape
        ServesWell,     // neither softer nor harder than its kind is served
        IsColdEnough    // the freezer is no warmer than what is served from it
    };
    Promise promise;
    Sentence sentence;
    // What is to be done: one of these.
    std::optional<TemperatureRange> serveBetween = {};  // at any temperature of it
    std::optional<Celsius> freezerAt = {};              // or colder
    std::vector<MixChange> changes = {};
};

/// The mix with these changes made.
Mix changed(Mix mix, const std::vector<MixChange>& changes);

/// A spirit of 40 % vol: OIML R 22.
inline constexpr GramsPerMillilitre densityOfSpirit{0.94805};

/// Ice, as share of the mix, of which the liquid beside it decides: by its water activity, without a curve. Equal to the curve's within its error.
MassFraction iceOnceAt(const Mix& mix, Celsius temperature);

}  // namespace firn
