#include "analysis/instrument_readings.h"

namespace firn {

std::optional<InstrumentReadings> instrumentReadings(
    const Instruments& instruments, const Mix& mix, Celsius temperature, Workings* workings)
{
    const auto workingOf = [workings](const char* figure) { return workings ? &workings->of(figure) : nullptr; };
    const auto shownBy = [&](HydrometerScale scale, const char* figure) {
        return read(wholeScale(scale, instruments.hydrometer), mix, temperature, workingOf(figure));
    };
    auto refractometer = read(instruments.refractometer, mix, temperature, workingOf("instruments.refractometer_brix"));
    auto brix = shownBy(HydrometerScale::Brix, "instruments.hydrometer_brix");
    auto gravity = shownBy(HydrometerScale::SpecificGravity, "instruments.hydrometer_gravity");
    auto baume = shownBy(HydrometerScale::Baume, "instruments.hydrometer_baume");
    if (!refractometer || !brix || !gravity || !baume)
        return std::nullopt;
    return InstrumentReadings{
        instruments.refractometer, std::move(*refractometer), std::move(*brix), std::move(*gravity), std::move(*baume)};
}

}  // namespace firn
