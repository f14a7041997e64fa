// A number of the recipe in a field. While the text cannot be taken, the recipe holds what it held before the typing began, and a sentence under
// the field says why.
#pragma once

#include <QObject>
#include <functional>
#include <optional>

namespace firn::app {

class Document;
class InkLabel;
class NumberField;

class KeptNumber : public QObject {
    Q_OBJECT

public:
    using Read = std::function<std::optional<double>()>;
    using Write = std::function<void(std::optional<double> number)>;

    /// Belongs to the field. `read` yields what the recipe holds, `write` puts a number there; see typeInto().
    KeptNumber(Document& document, NumberField* field, Read read, const Write& write);

    /// Says why the text cannot be taken; to be put under the field.
    InkLabel* fault() { return m_fault; }

    /// Shows what the recipe holds. Text that cannot be taken stays, unless it belongs to something else.
    void show(bool isSomethingElse);

private:
    void showProblem();

    NumberField* m_field;
    Read m_read;
    InkLabel* m_fault;
};

}  // namespace firn::app
