#include "exchange/component_json.h"

#include "exchange/step_json.h"

namespace firn {

namespace {

constexpr double largestBrix = 100.0;

Fault readAmount(const std::string& key, const Json& value, double& amount)
{
    if (!value.is_number())
        return phrase("\"{0}\" must be a number.", key);
    amount = value.get<double>() + 0.0;
    return faultOfAmount(amount);
}

Fault readUnit(const std::string& key, const Json& value, Unit& unit)
{
    if (!value.is_string())
        return phrase("\"{0}\" must be text.", key);
    const auto found = unitNamed(value.get<std::string>());
    if (!found)
        return unknownUnit(value.get<std::string>());
    unit = *found;
    return std::nullopt;
}

Result<Row> rowFrom(const Json& json)
{
    if (!json.is_object())
        return failure(phrase("A row must be an object with \"ingredient\", \"amount\" and \"unit\"."));
    Row row;
    UnknownFieldsReader unknown;
    for (const std::string_view needed : {"ingredient", "amount", "unit"}) {
        if (!json.contains(needed))
            return failure(*missing(needed));
    }
    for (const auto& [key, value] : json.items()) {
        Fault fault;
        if (key == "ingredient")
            fault = readText(key, value, row.ingredient);
        else if (key == "amount")
            fault = readAmount(key, value, row.amount.value);
        else if (key == "unit")
            fault = readUnit(key, value, row.amount.unit);
        else if (key == "note")
            fault = readText(key, value, row.note);
        else if (key == "reads_brix")
            fault = readNumber(key, value, 0.0, largestBrix, row.measuredBrix);
        else
            unknown.keep(key, value);
        if (fault)
            return failure(std::move(*fault));
    }
    row.unknown = unknown.text();
    return row;
}

Fault readRows(const Json& value, std::size_t component, std::vector<Row>& rows)
{
    if (!value.is_array())
        return phrase("Component {0}: \"rows\" must be a list.", wholeNumber(component));
    for (const Json& json : value) {
        auto row = rowFrom(json);
        if (!row)
            return phrase(
                "Component {0}, row {1}: {2}", wholeNumber(component), wholeNumber(rows.size() + 1), english(row.error()));
        rows.push_back(std::move(*row));
    }
    return std::nullopt;
}

Fault readSteps(const Json& value, std::size_t component, std::vector<Step>& steps)
{
    if (!value.is_array())
        return phrase("Component {0}: \"steps\" must be a list.", wholeNumber(component));
    for (const Json& json : value) {
        auto step = stepFromJson(json);
        if (!step)
            return phrase(
                "Component {0}, step {1}: {2}", wholeNumber(component), wholeNumber(steps.size() + 1), english(step.error()));
        steps.push_back(std::move(*step));
    }
    return std::nullopt;
}

/// The fault with the component it is in.
Fault placed(const Fault& fault, std::size_t component)
{
    return fault ? Fault(phrase("Component {0}: {1}", wholeNumber(component), english(*fault))) : std::nullopt;
}

}  // namespace

Result<Component> componentFromJson(const Json& json, std::size_t number)
{
    if (!json.is_object() || !json.contains("rows"))
        return failure(phrase("Component {0} must be an object with \"rows\".", wholeNumber(number)));
    Component component;
    UnknownFieldsReader unknown;
    for (const auto& [key, value] : json.items()) {
        Fault fault;
        if (key == "name")
            fault = placed(readText(key, value, component.name), number);
        else if (key == "process")
            fault = placed(readProcess(key, value, component.process), number);
        else if (key == "overrun_percent")
            fault = placed(readNumber(key, value, 0.0, largestOverrun_percent, component.overrun_percent), number);
        else if (key == "rows")
            fault = readRows(value, number, component.rows);
        else if (key == "steps")
            fault = readSteps(value, number, component.steps);
        else
            unknown.keep(key, value);
        if (fault)
            return failure(std::move(*fault));
    }
    component.unknown = unknown.text();
    return component;
}

Fault readProcess(const std::string& key, const Json& value, std::optional<Process>& process)
{
    process = value.is_string() ? processNamed(value.get<std::string>()) : std::nullopt;
    if (!process)
        return phrase("\"{0}\" must be \"still\", \"scraped\", \"churned\", \"folded\" or \"unfrozen\".", key);
    return std::nullopt;
}

}  // namespace firn
