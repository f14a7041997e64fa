#include "units/sentence.h"

#include "units/number.h"

#include <fmt/format.h>

namespace firn {

namespace {

std::string written(const Sentence::Value& value)
{
    if (const auto* figure = std::get_if<Figure>(&value)) {
        std::string text = fmt::format("{:.{}f}", roundedTo(figure->decimals, figure->value), figure->decimals);
        // "-0.0" is a rounding artefact, not a figure.
        if (text.find_first_not_of("-0.") == std::string::npos && text.front() == '-')
            text.erase(0, 1);
        switch (figure->kind) {
        case FigureKind::Temperature:
            return text + " °C";
        case FigureKind::TemperatureDifference:
            return text + " K";
        case FigureKind::Number:
            break;
        }
        return text;
    }
    return std::get<std::string>(value);
}

}  // namespace

std::string english(const Sentence& sentence)
{
    std::string text;
    text.reserve(sentence.pattern.size() + 32);
    for (std::size_t i = 0; i < sentence.pattern.size(); ++i) {
        const bool isPlace = sentence.pattern[i] == '{' && i + 2 < sentence.pattern.size() && sentence.pattern[i + 2] == '}';
        const auto index = isPlace ? static_cast<std::size_t>(sentence.pattern[i + 1] - '0') : sentence.values.size();
        if (index < sentence.values.size()) {
            text += written(sentence.values[index]);
            i += 2;
        } else {
            text += sentence.pattern[i];
        }
    }
    return text;
}

}  // namespace firn
