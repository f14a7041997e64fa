// The fields of one JSON object, read strictly. Only the files of this folder include it.
#pragma once

#include "exchange/json.h"
#include "units/quantity.h"

#include <algorithm>
#include <initializer_list>
#include <optional>
#include <string>
#include <vector>

namespace firn {

/// Takes fields out of one JSON object and remembers the first thing that is wrong with them. After that its values mean nothing.
class Fields {
public:
    /// `place` names the object in sentences.
    Fields(const Json& object, std::string place)
        : m_object(object)
        , m_place(std::move(place))
    {
        if (!object.is_object()) {
            refuse(phrase("{0}: write an object in braces here.", m_place));
        }
    }

    const std::optional<Sentence>& problem() const { return m_problem; }
    const std::string& place() const { return m_place; }

    void refuse(Sentence problem)
    {
        if (!m_problem) {
            m_problem = std::move(problem);
        }
    }
    void refuse(const Fields& part)
    {
        if (part.m_problem) {
            refuse(*part.m_problem);
        }
    }

    /// Refuses a key that is none of these.
    void allow(std::initializer_list<std::string_view> known)
    {
        if (!m_object.is_object()) {
            return;
        }
        for (const auto& [key, value] : m_object.items()) {
            if (std::ranges::find(known, std::string_view(key)) == known.end()) {
                refuse(phrase("{0}: the field \"{1}\" is not known. Remove it or correct its spelling.", m_place, key));
            }
        }
    }

    const Json* field(const char* key) { return m_object.is_object() && m_object.contains(key) ? &m_object.at(key) : nullptr; }

    std::string text(const char* key)
    {
        const Json* value = field(key);
        if (value != nullptr && !value->is_string()) {
            refuse(phrase("{0}: \"{1}\" must be a text in quotation marks.", m_place, std::string(key)));
            return {};
        }
        return value == nullptr ? std::string{} : value->get<std::string>();
    }

    std::string textThatMustBeThere(const char* key)
    {
        std::string value = text(key);
        if (value.empty()) {
            refuse(phrase("{0}: \"{1}\" is missing or empty. Add it.", m_place, std::string(key)));
        }
        return value;
    }

    std::optional<double> number(const char* key)
    {
        const Json* value = field(key);
        if (value == nullptr) {
            return std::nullopt;
        }
        if (!value->is_number() || value->get<double>() < 0.0) {
            refuse(phrase("{0}: \"{1}\" must be a number, and not negative.", m_place, std::string(key)));
            return std::nullopt;
        }
        return value->get<double>();
    }

    Grams grams(const char* key) { return {number(key).value_or(0.0)}; }

    bool truth(const char* key)
    {
        const Json* value = field(key);
        if (value != nullptr && !value->is_boolean()) {
            refuse(phrase("{0}: \"{1}\" must be true or false.", m_place, std::string(key)));
            return false;
        }
        return value != nullptr && value->get<bool>();
    }

    /// Calls `take` with every element of a list.
    template <class Take>
    void forEach(const char* key, Take take)
    {
        const Json* list = field(key);
        if (list != nullptr && !list->is_array()) {
            refuse(phrase("{0}: \"{1}\" must be a list in square brackets.", m_place, std::string(key)));
        } else if (list != nullptr) {
            for (const auto& element : *list) {
                take(element);
            }
        }
    }

    std::vector<std::string> texts(const char* key)
    {
        std::vector<std::string> result;
        forEach(key, [&](const Json& element) {
            if (element.is_string()) {
                result.push_back(element.get<std::string>());
            } else {
                refuse(phrase("{0}: \"{1}\" must hold texts in quotation marks.", m_place, std::string(key)));
            }
        });
        return result;
    }

    /// A list of words, each the key of something that `named` knows.
    template <class Named>
    auto keys(const char* key, Named named)
    {
        std::vector<typename decltype(named(std::string_view{}))::value_type> result;
        for (const auto& word : texts(key)) {
            if (const auto known = named(word)) {
                result.push_back(*known);
            } else {
                refuse(phrase(
                    "{0}: \"{1}\" in \"{2}\" is not known. Remove it or correct its spelling.", m_place, word, std::string(key)));
            }
        }
        return result;
    }

private:
    const Json& m_object;
    std::string m_place;
    std::optional<Sentence> m_problem;
};

}  // namespace firn
