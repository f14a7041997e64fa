// What the frozen mix will be like: class, firmness, serving window, and why, in plain sentences.
#pragma once

#include "freezing/freezing_curve.h"
#include "recipe/recipe.h"
#include "texture/advice.h"
#include "units/sentence.h"

#include <optional>
#include <vector>

namespace firn {

enum class TextureClass {
    Nothing,
    Ice,
    Slush,
    Granita,
    ScrapedIce,
    StillFrozenIce,
    Sorbet,
    Sherbet,
    MilkIce,
    IceCream,
    FrozenCustard,
    CreamyIce,
    Semifreddo,
    WillNotFreeze,
    Unfrozen  // and not meant to be frozen
};
std::string_view nameOf(TextureClass textureClass);

/// How it resists the spoon, of what is in one piece from Liquid to Block; or how loose crystals lie, which scraping leaves: Liquid, Slush, Wet,
/// Loose, Dry. Thresholds in firmness.cpp; only scoopable rests on a published figure.
enum class Firmness { Liquid, Slush, Soft, Scoopable, Firm, Hard, Block, Wet, Loose, Dry };
std::string_view nameOf(Firmness firmness);
/// What follows "it is": "hard as a block".
std::string_view afterIs(Firmness firmness);

struct TextureInput {
    Process process = Process::Churned;
    double overrun_percent = 0.0;
    Celsius serveAt{-12.0};
    Celsius freezerAt{-18.0};
};

/// A stretch of temperatures in which the mix has one firmness.
struct FirmnessRegion {
    TemperatureRange range;
    Firmness firmness;
};

/// Two ways out of too much alcohol; one of them where the other would not do.
struct SpiritExcess {
    std::optional<Millilitres> spiritToRemove;  // of 40 % vol; none where the mix would not freeze without its spirit either
    std::optional<Grams> waterToAdd;            // none where it would be more than the mix
};

/// How it is at the serving temperature, against how its kind is served.
enum class Served { Unjudged, Well, TooSoft, TooHard };

struct Texture {
    Mix mix;  // what this is about: of a dessert of parts those that are frozen
    TextureClass textureClass = TextureClass::Nothing;
    Process process = Process::Churned;
    Firmness firmness = Firmness::Liquid;
    bool willFreeze = false;
    MassFraction iceAtServing;
    MassFraction iceInFreezer;
    std::optional<TemperatureRange> servingWindow;
    std::vector<FirmnessRegion> regions;  // from 0 °C down to -30 °C without gaps
    Served served = Served::Unjudged;
    std::vector<Sentence> reasons;
    std::vector<Sentence> faults;  // what is wrong and what to do
    std::vector<Advice> advice;    // what to do, once more: each checked to lead to what it promises
    std::optional<SpiritExcess> spiritExcess;
};

/// The firmness that begins at the warm edge of the serving window, and the one that begins at its cold edge; none for kinds without a window.
std::optional<Firmness> softestToServe(TextureClass textureClass);
std::optional<Firmness> hardestToServe(TextureClass textureClass);

/// `workings`, if given, take the ice at serving and in the freezer, and the serving window.
Texture texture(const Mix& mix, const FreezingCurve& curve, const TextureInput& input, Workings* workings = nullptr);

}  // namespace firn
