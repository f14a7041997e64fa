#include "exchange/reading_json.h"

#include "exchange/object_writer.h"
#include "exchange/recipe_fields.h"

namespace firn {

namespace {

constexpr double coldest_c = -100.0;
constexpr double hottest_c = 400.0;
constexpr double largestReading = 1000.0;  // mm, °C, °Bx, SG or °Bé

Fault readInstrument(const Json& value, Instrument& instrument)
{
    const auto named = value.is_string() ? instrumentNamed(value.get<std::string>()) : std::nullopt;
    if (!named)
        return phrase(
            "\"instrument\" must be \"refractometer\", \"hydrometer-brix\", \"hydrometer-sg\", \"hydrometer-baume\", \"egg\" or "
            "\"boiling-point\".");
    instrument = *named;
    return std::nullopt;
}

template <class Unit>
Fault readQuantity(const std::string& key, const Json& value, double least, double most, std::optional<Quantity<Unit>>& quantity)
{
    return readNumber(key, value, least, most, quantity.emplace().value);
}

template <class Unit>
std::optional<double> valueOf(std::optional<Quantity<Unit>> quantity)
{
    return quantity ? std::optional(quantity->value) : std::nullopt;
}

}  // namespace

Result<ReadingRecord> readingFromJson(const Json& json)
{
    if (!json.is_object() || !json.contains("instrument") || !json.contains("value"))
        return failure(phrase("A reading must be an object with \"instrument\" and \"value\"."));
    ReadingRecord reading;
    UnknownFieldsReader unknown;
    for (const auto& [key, value] : json.items()) {
        Fault fault;
        if (key == "date")
            fault = readDate(key, value, reading.date);
        else if (key == "instrument")
            fault = readInstrument(value, reading.instrument);
        else if (key == "value")
            fault = readNumber(key, value, -largestReading, largestReading, reading.value);
        else if (key == "temperature_c")
            fault = readNumber(key, value, coldest_c, hottest_c, reading.temperature_c);
        else if (key == "component")
            fault = readText(key, value, reading.component);
        else if (key == "compensates")
            fault = readTruth(key, value, reading.compensates);
        else if (key == "made_for_60_f")
            fault = readTruth(key, value, reading.isMadeFor60F);
        else if (key == "scale_from")
            fault = readNumber(key, value, -largestReading, largestReading, reading.from);
        else if (key == "scale_to")
            fault = readNumber(key, value, -largestReading, largestReading, reading.to);
        else if (key == "division")
            fault = readNumber(key, value, 0.0, largestReading, reading.division);
        else if (key == "egg_g")
            fault = readQuantity(key, value, 10.0, 200.0, reading.eggMass);  // from a quail's to a goose's
        else if (key == "egg_density_g_ml")
            fault = readQuantity(key, value, 0.0, 2.0, reading.eggDensity);
        else if (key == "pressure_hpa")
            fault = readQuantity(key, value, 100.0, 1200.0, reading.pressure);
        else if (key == "note")
            fault = readText(key, value, reading.note);
        else if (key == "version")
            fault = readText(key, value, reading.version);
        else
            unknown.keep(key, value);
        if (fault)
            return failure(std::move(*fault));
    }
    reading.unknown = unknown.text();
    return reading;
}

std::string readingToJson(const ReadingRecord& reading)
{
    ObjectWriter out;
    out.text("date", reading.date);
    out.json("instrument", jsonString(keyOf(reading.instrument)));
    out.number("value", reading.value);
    out.number("temperature_c", reading.temperature_c);
    out.text("component", reading.component);
    out.truth("compensates", reading.compensates);
    out.truth("made_for_60_f", reading.isMadeFor60F);
    out.number("scale_from", reading.from);
    out.number("scale_to", reading.to);
    out.number("division", reading.division);
    out.number("egg_g", valueOf(reading.eggMass));
    out.number("egg_density_g_ml", valueOf(reading.eggDensity));
    out.number("pressure_hpa", valueOf(reading.pressure));
    out.text("note", reading.note);
    out.text("version", reading.version);
    out.unknown(reading.unknown);
    return out.object();
}

}  // namespace firn
