#include "exchange/reading_json.h"

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

Fault readDate(const Json& value, std::string& date)
{
    if (auto fault = readText("date", value, date))
        return fault;
    return faultOfDate(date);
}

Fault readTruth(const std::string& key, const Json& value, bool& truth)
{
    if (!value.is_boolean())
        return phrase("\"{0}\" must be true or false.", key);
    truth = value.get<bool>();
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
            fault = readDate(value, reading.date);
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
    std::string text = "{";
    const auto field = [&](std::string_view key, const std::string& json) {
        text += (text.size() > 1 ? ", " : "") + jsonString(key) + ": " + json;
    };
    const auto word = [&](std::string_view key, const std::string& value) {
        if (!value.empty())
            field(key, jsonString(value));
    };
    const auto number = [&](std::string_view key, std::optional<double> value) {
        if (value)
            field(key, exactNumber(*value));
    };
    const auto truth = [&](std::string_view key, bool value) {
        if (value)
            field(key, "true");
    };
    word("date", reading.date);
    field("instrument", jsonString(keyOf(reading.instrument)));
    number("value", reading.value);
    number("temperature_c", reading.temperature_c);
    word("component", reading.component);
    truth("compensates", reading.compensates);
    truth("made_for_60_f", reading.isMadeFor60F);
    number("scale_from", reading.from);
    number("scale_to", reading.to);
    number("division", reading.division);
    number("egg_g", valueOf(reading.eggMass));
    number("egg_density_g_ml", valueOf(reading.eggDensity));
    number("pressure_hpa", valueOf(reading.pressure));
    word("note", reading.note);
    if (!reading.unknown.empty()) {
        const auto fields = jsonFromText(reading.unknown);
        for (const auto& [key, value] : fields->items())
            field(key, value.dump());
    }
    return text + "}";
}

}  // namespace firn
