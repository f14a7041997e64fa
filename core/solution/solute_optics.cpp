#include "solution/solute_optics.h"

#include <algorithm>
#include <array>

namespace firn {

double StrengthSeries::at(MassFraction strength) const
{
    const double w = std::min(strength.value, measuredTo);
    return c0 + w * (c1 + w * c2);
}

std::span<const DissolvedSolid> dissolvedSolids()
{
    // Least squares to densities (4 decimals) and refractive indices (4 decimals) at 20 °C of the CRC Handbook of Chemistry and Physics,
    // 102nd ed. (2021), "Concentrative properties of aqueous solutions"; sucrose's index also to OIV-MA-AS2-02 Table II (5 decimals).
    // Largest errors, g/mL and index: glucose 0.0005, 0.0001; fructose 0.0001, 0.0001; lactose 0.0007, 0.0001; citric acid 0.0002, 0.0001;
    // salt 0.0001, 0.0001; potassium chloride 0.0001, 0.0001; mannitol 0.0003, 0.0001; glycerol 0.0001, 0.0001; sucrose's index 0.00006;
    // maltose, whose volume is taken to be sucrose's, 0.0009, 0.0002.
    constexpr StrengthSeries none{0.0, 0.0, 0.0, 0.0};
    constexpr StrengthSeries sucroseRefraction{0.206734, -0.001605, -0.001272, 0.84};
    constexpr StrengthSeries glucoseVolume{0.618486, 0.02815, 0.0, 0.60};
    constexpr StrengthSeries glucoseRefraction{0.207507, -0.003152, 0.0, 0.60};
    // Mannitol stands for the other sugar alcohols.
    constexpr StrengthSeries polyolVolume{0.653305, 0.021547, 0.0, 0.15};
    constexpr StrengthSeries polyolRefraction{0.216433, -0.022993, 0.0, 0.15};
    using C = Constituent;
    static constexpr std::array solids{
        DissolvedSolid{C::Sucrose, none, sucroseRefraction, true},
        DissolvedSolid{C::Maltose, none, {0.208884, -0.003587, 0.0, 0.58}, true},
        DissolvedSolid{C::Trehalose, none, sucroseRefraction, true},
        DissolvedSolid{C::Maltitol, none, sucroseRefraction, true},
        DissolvedSolid{C::Oligosaccharides, none, sucroseRefraction, true},
        DissolvedSolid{C::Dextrins, none, sucroseRefraction, true},
        DissolvedSolid{C::Hydrocolloid, none, sucroseRefraction, true},
        DissolvedSolid{C::Lactose, {0.606090, 0.018682, 0.0, 0.18}, {0.207622, 0.000625, 0.0, 0.18}, false},
        DissolvedSolid{C::Glucose, glucoseVolume, glucoseRefraction, false},
        DissolvedSolid{C::Galactose, glucoseVolume, glucoseRefraction, false},
        DissolvedSolid{C::Fructose, {0.609359, 0.030699, 0.0, 0.48}, {0.204947, -0.001867, 0.0, 0.48}, false},
        DissolvedSolid{C::Sorbitol, polyolVolume, polyolRefraction, false},
        DissolvedSolid{C::Xylitol, polyolVolume, polyolRefraction, false},
        DissolvedSolid{C::Erythritol, polyolVolume, polyolRefraction, false},
        DissolvedSolid{C::Glycerol, {0.773409, -0.000181, 0.0, 0.40}, {0.223719, -0.001339, 0.0, 0.40}, false},
        DissolvedSolid{C::Acid, {0.594234, 0.019334, 0.0, 0.30}, {0.193004, -0.007690, 0.0, 0.30}, false},
        DissolvedSolid{C::Salt, {0.290893, 0.359633, -0.341484, 0.26}, {0.158655, -0.007009, 0.0, 0.26}, false},
        // Potassium chloride stands for the minerals of fruit and milk.
        DissolvedSolid{C::Minerals, {0.364017, 0.271187, -0.289602, 0.24}, {0.150941, 0.002032, 0.0, 0.24}, false},
    };
    return solids;
}

}  // namespace firn
