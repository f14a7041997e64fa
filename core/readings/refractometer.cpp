#include "readings/refractometer.h"

#include "mix/symbols.h"
#include "solution/refraction.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace firn {

namespace {

/// What one kelvin is worth without compensation: OIV-MA-AS2-02, Table I, about 0.07 °Bx at 15 °C and 10 to 75 °Bx.
constexpr double brixPerKelvin = 0.07;

/// Fitted, together with warming() in refraction.cpp, to the OIV's Table I; a glass of index 1.7 whose index grows by 6e-6 a kelvin.
constexpr double prismPerKelvin = 3.4e-6;

Symbol seenSymbol(double index) { return {"nD", "seen", index, "", phrase("index that the scale seems to see"), {}, 5}; }

Symbol prismSymbol() { return {"k", "prism", prismPerKelvin, "1/K", phrase("change of the prism's own index, for each kelvin")}; }

void recordScale(Working& working, double index, Celsius temperature, std::optional<double> shown)
{
    if (!shown) {
        working.giveUp();
        return;
    }
    const Symbol seen = seenSymbol(refractiveIndexSeen(index, temperature));
    const Symbol prism = prismSymbol();
    const Symbol at{"t", "read", temperature.value, "°C", phrase("temperature at which instruments are read"),
        working.keyOf("readings.temperature_c")};
    WorkingStep& byPrism = working.found(seen, indexSymbol(index) * (1.0 - prism * (at - Number{20.0, "°C"})), Source::Prism);
    byPrism.range = phrase("From 5 to 17 °C as the OIV's table; above, the same physics, which no table at hand could check.");
    byPrism.uncertainty = phrase("Another prism, as in digital instruments, may differ by as much as this step is worth.");
    const Symbol brix{"B", "", *shown, "°Bx", phrase("what the refractometer shows")};
    if (*shown <= 0.0) {
        working.found(brix, Number{0.0, "°Bx"}, Source::SugarScale).range =
            phrase("The index is not above that of water: the scale shows 0.");
        return;
    }
    WorkingStep& step = working.solved(brix, indexOfSucrose({brix, Number{20.0, "°C"}}), seen, Source::SugarScale,
        phrase("Solved for B between 0 and {0} °Bx: the sucrose solution at 20 °C with this index.", Figure{highestBrix, 0}));
    step.range = phrase("A scale made for 20 °C, without temperature compensation.");
    step.uncertainty =
        phrase("0.1 °Bx for sugars in water, and 0.004 °Bx more for each kelvin above 20 °C; alcohol, milk and salts read "
               "as sugar.");
}

/// Compensation moves the scale as a sucrose solution would need it.
void recordCompensated(Working& working, double index, Celsius temperature, std::optional<double> shown)
{
    if (!shown) {
        working.giveUp();
        return;
    }
    const Symbol at{"t", "read", temperature.value, "°C", phrase("temperature of the drop")};
    const Symbol brix{"B", "", *shown, "°Bx", phrase("what the refractometer shows")};
    if (*shown <= 0.0) {
        working.found(brix, Number{0.0, "°Bx"}, Source::SugarScale).range =
            phrase("The index is not above that of water: the scale shows 0.");
        return;
    }
    WorkingStep& step = working.solved(brix, indexOfSucrose({brix, at}), indexSymbol(index), Source::SugarScale,
        phrase("Solved for B between 0 and {0} °Bx: the sucrose solution at the drop's temperature with this index.",
            Figure{highestBrix, 0}));
    step.range = phrase("An instrument with temperature compensation, from {0} to {1} °C.", Figure{compensatedFrom.value, 0},
        Figure{compensatedTo.value, 0});
}

/// Back from what was read to the index of the liquid.
void recordIndexAt(Working& working, const Refractometer& instrument, double brix, Celsius temperature, double index)
{
    const Symbol shown{"B", "", brix, "°Bx", phrase("what the refractometer shows")};
    const Symbol at{"t", "read", temperature.value, "°C", phrase("temperature of the drop")};
    if (instrument.compensates) {
        working.found(indexSymbol(index), indexOfSucrose({shown, at}), Source::SugarScale).range =
            phrase("An instrument with temperature compensation.");
        return;
    }
    const Symbol seen = seenSymbol(refractiveIndexOfBrix(brix));
    working.found(seen, indexOfSucrose({shown, Number{20.0, "°C"}}), Source::SugarScale).range =
        phrase("A scale made for 20 °C, without temperature compensation.");
    working.found(indexSymbol(index), seen / (1.0 - prismSymbol() * (at - Number{20.0, "°C"})), Source::Prism).uncertainty =
        phrase("Another prism, as in digital instruments, may differ by as much as this step is worth.");
}

double kelvinsOutside(Celsius temperature)
{
    return std::max({0.0, compensatedFrom.value - temperature.value, temperature.value - compensatedTo.value});
}

}  // namespace

std::span<const Refractometer> commonRefractometers()
{
    // Common practice, no source.
    static constexpr std::array scales{Refractometer{0.0, 32.0, false, 0.2}, Refractometer{28.0, 62.0, false, 0.2},
        Refractometer{45.0, 82.0, false, 0.5}, Refractometer{58.0, 90.0, false, 0.5}, Refractometer{0.0, 90.0, false, 0.5},
        Refractometer{0.0, 95.0, false, 0.1}};
    return scales;
}

double refractiveIndexSeen(double index, Celsius temperature)
{
    return index * (1.0 - prismPerKelvin * (temperature.value - 20.0));
}

std::optional<double> brixShown(double index, Celsius temperature, Working* working)
{
    const std::optional<double> shown = brixOfRefractiveIndex(refractiveIndexSeen(index, temperature));
    if (working) [[unlikely]]
        recordScale(*working, index, temperature, shown);
    return shown;
}

double refractiveIndexAt(const Refractometer& instrument, double brix, Celsius temperature, Working* working)
{
    const double index = instrument.compensates ? refractiveIndexOfBrix(brix, temperature)
                                                : refractiveIndexOfBrix(brix) / refractiveIndexSeen(1.0, temperature);
    if (working) [[unlikely]]
        recordIndexAt(*working, instrument, brix, temperature, index);
    return index;
}

std::optional<ScaleReading> read(const Refractometer& instrument, const Mix& mix, Celsius temperature, Working* working)
{
    const auto index = refractiveIndexOf(mix, temperature, working);
    if (!index)
        return std::nullopt;
    ScaleReading reading{OnScale::Yes, {}, errorsOf(instrument, mix, temperature)};
    constexpr double rounding = 1e-12;
    if (*index < refractiveIndexAt(instrument, instrument.from_brix, temperature) - rounding)
        reading.onScale = OnScale::Below;
    else if (*index > refractiveIndexAt(instrument, instrument.to_brix, temperature) + rounding)
        reading.onScale = OnScale::Above;
    else
        reading.value =
            instrument.compensates ? brixOfRefractiveIndex(*index, temperature) : brixShown(*index, temperature, working);
    if (working && !reading.value)
        working->giveUp();
    else if (working && instrument.compensates)
        recordCompensated(*working, *index, temperature, reading.value);
    return reading;
}

std::vector<ErrorPart> errorsOf(const Refractometer& instrument, const Mix& mix, Celsius temperature)
{
    std::vector<ErrorPart> errors;
    const auto add = [&](Sentence reason, double sd_brix) {
        if (sd_brix > 0.0)
            errors.push_back({std::move(reason), sd_brix});
    };
    add(phrase("the eye tells half a division"), instrument.division_brix / 2.0);  // common practice, no source
    if (instrument.compensates) {
        // Common practice, no source.
        add(phrase("compensation is good to about 0.2 °Bx"), 0.2);
        add(phrase("compensation ends at {0} and {1} °C", Figure{compensatedFrom.value, 0}, Figure{compensatedTo.value, 0}),
            brixPerKelvin * kelvinsOutside(temperature));
    } else {
        add(phrase("the drop's temperature is known to 1 °C"), brixPerKelvin);
        // Against the OIV's table to 0.035 °Bx below 20 °C. Above, the prism alone could be wrong by 0.003 °Bx a kelvin.
        add(phrase("the temperature correction"), 0.02 + 0.004 * std::max(0.0, temperature.value - 20.0));
    }
    // The index is within 0.00006 for sucrose, 0.0001 for other solutes and 0.0003 for ethanol: over 0.0016 a °Bx.
    add(phrase("the refractive index of the sugars and acids"), 0.04);
    const double alcohol = shareOf(mix[Constituent::Ethanol], mix).value;
    add(phrase("the refractive index of the alcohol"), std::min(0.2, 2.0 * alcohol));
    const bool isMilky = mix.milkSolidsNotFat.value > 0.01 * mix.mass().value || mix[Constituent::Fat] > mix.mass() * 0.01;
    add(phrase("milk or fat blurs the line"), isMilky ? 0.5 : 0.0);  // half of the degree that is common practice
    return errors;
}

}  // namespace firn
