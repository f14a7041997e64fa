// The kinds of fields that jobs with syrups are made of.
#pragma once

#include "syrups/syrup_job.h"

namespace firn::app {

/// On any of the scales for syrups, °Bx first.
Field strengthField(const QString& name, const QString& label, MassFraction example);
Field massField(const QString& name, const QString& label, Grams example);
Field volumeField(const QString& name, const QString& label, Millilitres example);
Field temperatureField(const QString& name, const QString& label, Celsius example);

/// A mass of one of the solutes whose solubility is known.
Field soluteField(const QString& name, const QString& label, Grams example);

/// A strength, or the mass that is left.
Field endOfBoilingField(const QString& name, const QString& label, MassFraction strength, Grams left);

}  // namespace firn::app
