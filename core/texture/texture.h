// What the frozen mix will be like: class, firmness, serving window, and why, in plain sentences.
#pragma once

#include "freezing/freezing_curve.h"
#include "recipe/recipe.h"
#include "units/sentence.h"

#include <optional>
#include <vector>

namespace firn {

enum class TextureClass {
    Nothing,
    Ice,
    Slush,
    Granita,
    StillFrozenIce,
    Sorbet,
    Sherbet,
    MilkIce,
    IceCream,
    FrozenCustard,
    CreamyIce,
    Semifreddo,
    WillNotFreeze
};
std::string_view nameOf(TextureClass textureClass);

/// How it resists the spoon. Thresholds in texture.cpp; only scoopable rests on a published figure.
enum class Firmness { Liquid, Slush, Soft, Scoopable, Firm, Hard, Block };
std::string_view nameOf(Firmness firmness);
/// What follows "it is": "hard as a block".
std::string_view afterIs(Firmness firmness);

struct TextureInput {
    Process process = Process::Churned;
    double overrun_percent = 0.0;
    Celsius serveAt{-12.0};
    Celsius freezerAt{-18.0};
};

struct TemperatureRange {
    Celsius warmest;
    Celsius coldest;
};

/// A stretch of temperatures in which the mix has one firmness.
struct FirmnessRegion {
    TemperatureRange range;
    Firmness firmness;
};

/// A band of sugar by mass that the trade gives to a kind of dessert (common practice, no source, unless the source is named).
struct TradeBand {
    TextureClass textureClass;
    MassFraction low;
    MassFraction high;
    std::string_view source;
};
const std::vector<TradeBand>& tradeBands();

/// Two ways out of too much alcohol.
struct SpiritExcess {
    std::optional<Millilitres> spiritToRemove;  // of 40 % vol; none where the mix would not freeze without its spirit either
    Grams waterToAdd;
};

struct Texture {
    TextureClass textureClass = TextureClass::Nothing;
    Process process = Process::Churned;
    Firmness firmness = Firmness::Liquid;
    bool willFreeze = false;
    MassFraction iceAtServing;
    MassFraction iceInFreezer;
    std::optional<TemperatureRange> servingWindow;
    std::vector<FirmnessRegion> regions;  // from 0 °C down to -30 °C without gaps
    std::vector<Sentence> reasons;
    std::vector<Sentence> faults;  // what is wrong and what to do
    std::optional<SpiritExcess> spiritExcess;
};

/// The firmness that begins at the warm edge of the serving window; none for coarse ices, which are eaten drier than a scoop.
std::optional<Firmness> softestToServe(TextureClass textureClass);

/// `workings`, if given, take the ice at serving and in the freezer, and the serving window.
Texture texture(const Mix& mix, const FreezingCurve& curve, const TextureInput& input, Workings* workings = nullptr);

}  // namespace firn
