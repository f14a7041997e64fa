// Reading single fields of a recipe's JSON. Only the files of this folder include it.
#pragma once

#include "exchange/json.h"
#include "exchange/plain_text.h"
#include "recipe/recipe.h"

#include <optional>
#include <string>
#include <string_view>

namespace firn {

using Fault = std::optional<Sentence>;

/// Collects the fields that this version does not know, as the text of one object.
class UnknownFieldsReader {
public:
    void keep(std::string_view key, const Json& value)
    {
        m_text += m_text.empty() ? "{" : ",";
        m_text += jsonString(key) + ":" + value.dump();
    }
    UnknownFields text() const { return m_text.empty() ? "" : m_text + "}"; }

private:
    std::string m_text;
};

inline Fault missing(std::string_view key) { return phrase("\"{0}\" is missing.", std::string(key)); }

inline Fault readText(const std::string& key, const Json& value, std::string& text)
{
    if (!value.is_string())
        return phrase("\"{0}\" must be text.", key);
    text = value.get<std::string>();
    return std::nullopt;
}

template <class Number>
Fault readNumber(const std::string& key, const Json& value, double least, double most, Number& number)
{
    if (!value.is_number() || value.get<double>() < least || value.get<double>() > most)
        return phrase("\"{0}\" must be a number from {1} to {2}.", key, Figure{least, 0}, Figure{most, 0});
    number = value.get<double>() + 0.0;  // makes zero of minus zero
    return std::nullopt;
}

}  // namespace firn
