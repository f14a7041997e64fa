#include "analysis/instrument_readings.h"

namespace firn {

std::optional<InstrumentReadings> instrumentReadings(const Instruments& instruments, const Mix& mix, Celsius temperature)
{
    const auto shownBy = [&](HydrometerScale scale) { return read(wholeScale(scale, instruments.hydrometer), mix, temperature); };
    auto refractometer = read(instruments.refractometer, mix, temperature);
    auto brix = shownBy(HydrometerScale::Brix);
    auto gravity = shownBy(HydrometerScale::SpecificGravity);
    auto baume = shownBy(HydrometerScale::Baume);
    if (!refractometer || !brix || !gravity || !baume)
        return std::nullopt;
    return InstrumentReadings{
        instruments.refractometer, std::move(*refractometer), std::move(*brix), std::move(*gravity), std::move(*baume)};
}

}  // namespace firn
