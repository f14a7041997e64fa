// One JSON object on one line, field by field. Only the files of this folder include it.
#pragma once

#include "exchange/json.h"
#include "units/number.h"

#include <optional>
#include <string>
#include <string_view>

namespace firn {

/// Leaves out what is empty, false or not there.
class ObjectWriter {
public:
    /// `value` is JSON itself.
    void json(std::string_view key, std::string_view value)
    {
        m_text += (m_text.size() > 1 ? ", " : "") + jsonString(key) + ": " + std::string(value);
    }
    void text(std::string_view key, std::string_view value)
    {
        if (!value.empty())
            json(key, jsonString(value));
    }
    void number(std::string_view key, std::optional<double> value)
    {
        if (value)
            json(key, exactNumber(*value));
    }
    void truth(std::string_view key, bool value)
    {
        if (value)
            json(key, "true");
    }
    /// The fields that this version of Firn does not know, as the text of one object.
    void unknown(const std::string& fields)
    {
        if (fields.empty())
            return;
        const auto object = jsonFromText(fields);
        for (const auto& [key, value] : object->items())
            json(key, value.dump());
    }
    std::string object() const { return m_text + "}"; }

private:
    std::string m_text = "{";
};

}  // namespace firn
