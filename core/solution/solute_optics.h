// How much room a dissolved solid takes in water, and how it bends light: apparent specific volume and specific refraction.
#pragma once

#include "ingredients/composition.h"

#include <span>

namespace firn {

/// c[0] + c[1] W + c[2] W^2 of the mass fraction W, held constant beyond the strongest solution measured.
struct StrengthSeries {
    double c0, c1, c2;
    double measuredTo;

    double at(MassFraction strength) const;
};

/// A dissolved constituent at 20 °C.
struct DissolvedSolid {
    Constituent constituent;
    StrengthSeries volume_mL_g;      // unused for those that take sucrose's volume by ICUMSA
    StrengthSeries refraction_mL_g;  // Lorentz-Lorenz: (n^2 - 1)/(n^2 + 2) times volume, per gram
    bool hasVolumeOfSucrose;
};

std::span<const DissolvedSolid> dissolvedSolids();

}  // namespace firn
