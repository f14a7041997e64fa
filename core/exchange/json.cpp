#include "exchange/json.h"

#include "exchange/plain_text.h"
#include "units/text.h"

#include <iterator>
#include <unordered_set>

namespace firn {

namespace {

/// Walks over the text and tells how far the parser has read, which the parser itself does not say.
class CountingIterator {
public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    CountingIterator(const char* at, const char** furthest)
        : m_at(at)
        , m_furthest(furthest)
    {
    }
    reference operator*() const { return *m_at; }
    CountingIterator& operator++()
    {
        *m_furthest = ++m_at;
        return *this;
    }
    friend bool operator==(const CountingIterator& a, const CountingIterator& b) { return a.m_at == b.m_at; }

private:
    const char* m_at;
    const char** m_furthest;
};

/// Builds the value, and stops the parser at the first thing that would be silently lost or would exhaust the stack.
class Builder final : public nlohmann::json_sax<Json> {
public:
    Builder(std::string_view text, const char** furthest)
        : m_text(text)
        , m_furthest(furthest)
    {
    }

    Json root;
    std::optional<Sentence> fault;

    bool null() override { return put(nullptr); }
    bool boolean(bool value) override { return put(value); }
    bool number_integer(number_integer_t value) override { return put(value); }
    bool number_unsigned(number_unsigned_t value) override { return put(value); }
    bool number_float(number_float_t value, const string_t&) override { return put(value); }
    bool string(string_t& value) override { return put(std::move(value)); }
    bool binary(binary_t&) override { return false; }  // JSON text has none

    bool start_object(std::size_t) override
    {
        m_keys.emplace_back();
        return open(Json::object());
    }
    bool end_object() override
    {
        m_keys.pop_back();
        m_open.pop_back();
        return true;
    }
    bool start_array(std::size_t) override { return open(Json::array()); }
    bool end_array() override
    {
        m_open.pop_back();
        return true;
    }

    bool key(string_t& name) override
    {
        if (!m_keys.back().insert(name).second) {
            fault = phrase(
                "“{0}” stands twice in one object, the second time in line {1}. Keep one of them.", shortened(name), line(read()));
            return false;
        }
        m_key = std::move(name);
        return true;
    }

    bool parse_error(std::size_t position, const std::string&, const nlohmann::detail::exception& error) override
    {
        const bool isCutShort = position > m_text.size();  // the parser counts the end of the text as one more character
        const std::size_t at = isCutShort ? m_text.size() : position - 1;
        if (dynamic_cast<const nlohmann::detail::out_of_range*>(&error) != nullptr)
            fault = phrase("The number that ends at line {0}, column {1} is too large. Correct it.", line(at), column(at));
        else if (isCutShort)
            fault = phrase("The file is not valid JSON at line {0}, column {1}: it may have been cut short. Open a backup of it, "
                           "or correct it there.",
                line(at), column(at));
        else
            fault = phrase(
                "The file is not valid JSON at line {0}, column {1}. Correct it there, or open a backup.", line(at), column(at));
        return false;
    }

private:
    std::string_view m_text;
    const char** m_furthest;
    std::vector<Json*> m_open;  // the objects and arrays around the next value, outermost first
    std::vector<std::unordered_set<std::string>> m_keys;
    std::string m_key;

    std::size_t read() const { return static_cast<std::size_t>(*m_furthest - m_text.data()); }
    Figure line(std::size_t at) const { return wholeNumber(positionOf(m_text, at).line); }
    Figure column(std::size_t at) const { return wholeNumber(positionOf(m_text, at).column); }

    template <class Value>
    Json* add(Value&& value)
    {
        if (m_open.empty()) {
            root = std::forward<Value>(value);
            return &root;
        }
        if (m_open.back()->is_array())
            return &m_open.back()->get_ref<Json::array_t&>().emplace_back(std::forward<Value>(value));
        // Past the map's own insertion, which would look through all earlier keys again.
        Json::object_t::Container& members = m_open.back()->get_ref<Json::object_t&>();
        return &members.emplace_back(std::move(m_key), std::forward<Value>(value)).second;
    }

    template <class Value>
    bool put(Value&& value)
    {
        add(std::forward<Value>(value));
        return true;
    }

    bool open(Json&& container)
    {
        if (m_open.size() == static_cast<std::size_t>(deepestJson)) {
            fault = phrase("The file is nested deeper than {0} levels at line {1}, column {2}: Firn's files never are.",
                Figure{deepestJson, 0}, line(read() - 1), column(read() - 1));
            return false;
        }
        m_open.push_back(add(std::move(container)));
        return true;
    }
};

}  // namespace

Result<Json> jsonFromText(std::string_view text)
{
    text = withoutByteOrderMark(text);
    if (auto fault = faultOfText(text))
        return failure(std::move(*fault));
    if (text.find_first_not_of(" \t\r\n") == text.npos)
        return failure(phrase("The file is empty. Open a backup of it if there is one."));
    const char* furthest = text.data();
    Builder builder(text, &furthest);
    const CountingIterator begin(text.data(), &furthest);
    const CountingIterator end(text.data() + text.size(), &furthest);
    if (!Json::sax_parse(begin, end, &builder))
        return failure(std::move(*builder.fault));
    return std::move(builder.root);
}

std::string jsonString(std::string_view text) { return Json(text).dump(-1, ' ', false, Json::error_handler_t::replace); }

}  // namespace firn
