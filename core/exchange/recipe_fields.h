// Reading single fields of a recipe's JSON. Only the files of this folder include it.
#pragma once

#include "exchange/json.h"
#include "exchange/plain_text.h"
#include "recipe/recipe.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

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

inline Fault readTruth(const std::string& key, const Json& value, bool& truth)
{
    if (!value.is_boolean())
        return phrase("\"{0}\" must be true or false.", key);
    truth = value.get<bool>();
    return std::nullopt;
}

inline Fault readDate(const std::string& key, const Json& value, std::string& date)
{
    if (auto fault = readText(key, value, date))
        return fault;
    return faultOfDate(date);
}

/// A list of things that `from` reads one by one. `name` is what sentences call one: "Reading".
template <class Thing, class From>
Fault readList(const std::string& key, const Json& value, const std::string& name, From from, std::vector<Thing>& things)
{
    if (!value.is_array())
        return phrase("\"{0}\" must be a list.", key);
    for (const Json& json : value) {
        auto thing = from(json);
        if (!thing)
            return phrase("{0} {1}: {2}", name, wholeNumber(things.size() + 1), english(thing.error()));
        things.push_back(std::move(*thing));
    }
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
