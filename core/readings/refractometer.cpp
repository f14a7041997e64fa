#include "readings/refractometer.h"

#include "solution/refraction.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace firn {

namespace {

/// What one kelvin is worth without compensation: OIV-MA-AS2-02, Table I, about 0.07 °Bx at 15 °C and 10 to 75 °Bx.
constexpr double brixPerKelvin = 0.07;

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
    // Fitted, together with warming() in refraction.cpp, to the OIV's Table I; a glass of index 1.7 whose index grows by 6e-6 a kelvin.
    constexpr double prismPerKelvin = 3.4e-6;
    return index * (1.0 - prismPerKelvin * (temperature.value - 20.0));
}

double refractiveIndexAt(const Refractometer& instrument, double brix, Celsius temperature)
{
    if (instrument.compensates)
        return refractiveIndexOfBrix(brix, temperature);
    return refractiveIndexOfBrix(brix) / refractiveIndexSeen(1.0, temperature);
}

std::optional<ScaleReading> read(const Refractometer& instrument, const Mix& mix, Celsius temperature)
{
    const auto index = refractiveIndexOf(mix, temperature);
    if (!index)
        return std::nullopt;
    ScaleReading reading{OnScale::Yes, {}, errorsOf(instrument, mix, temperature)};
    constexpr double rounding = 1e-12;
    if (*index < refractiveIndexAt(instrument, instrument.from_brix, temperature) - rounding)
        reading.onScale = OnScale::Below;
    else if (*index > refractiveIndexAt(instrument, instrument.to_brix, temperature) + rounding)
        reading.onScale = OnScale::Above;
    else
        reading.value = instrument.compensates ? brixOfRefractiveIndex(*index, temperature)
                                               : brixOfRefractiveIndex(refractiveIndexSeen(*index, temperature));
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
