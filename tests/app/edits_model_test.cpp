// A hundred thousand edits, undone and redone at random, against a model that keeps whole recipes.
#include "bench.h"

#include "document/edits.h"
#include "document/recipe_file.h"
#include "document/step_edits.h"

#include <QUndoStack>
#include <rapidcheck/gtest.h>

namespace firn::app {
namespace {

constexpr int edits = 1000;  // of one run; rapidcheck makes a hundred runs

/// What to do, and numbers that say where and with what.
struct Deed {
    int kind = 0;
    unsigned where = 0;
    unsigned what = 0;
};

std::ostream& operator<<(std::ostream& out, const Deed& deed)
{
    return out << deed.kind << '(' << deed.where << ", " << deed.what << ')';
}

/// The recipe after each edit, as a plain list, and how far it is undone.
class Model {
public:
    explicit Model(Recipe start)
        : m_states{std::move(start)}
    {
    }
    const Recipe& now() const { return m_states[m_place]; }
    void put(Recipe after)
    {
        if (after == now())
            return;
        m_states.resize(m_place + 1);
        m_states.push_back(std::move(after));
        ++m_place;
    }
    void undo() { m_place -= m_place > 0 ? 1 : 0; }
    void redo() { m_place += m_place + 1 < m_states.size() ? 1 : 0; }

private:
    std::vector<Recipe> m_states;
    std::size_t m_place = 0;
};

const char* const names[] = {"water", "sucrose", "strawberry", "gin", "no such thing", "cream", "<b>", "Granita"};

Row rowFor(unsigned what)
{
    Row row;
    row.ingredient = names[what % std::size(names)];
    row.amount = {(what % 977) / 8.0, what % 3 == 0 ? Unit::Cup : Unit::Gram};
    row.note = what % 5 == 0 ? "chopped" : "";
    return row;
}

void doEdit(const Deed& deed, Document& document, Model& model)
{
    Recipe after = model.now();
    const std::size_t component = deed.where % after.components.size();
    Component& part = after.components[component];
    std::vector<Row>& rows = part.rows;
    const std::size_t row = rows.empty() ? 0 : deed.where / 7 % rows.size();
    const RowPlace place{component, row};
    const std::string word = names[deed.what % std::size(names)];
    const double number = (deed.what % 400) / 4.0;
    const bool isOnlyOne = after.components.size() == 1;

    switch (deed.kind) {
    case 0:
        if (rows.size() < 12) {
            rows.insert(rows.begin() + std::ptrdiff_t(row), {rowFor(deed.what), rowFor(deed.what / 3)});
            insertRows(document, place, {rowFor(deed.what), rowFor(deed.what / 3)});
        }
        break;
    case 1:
        if (!rows.empty()) {
            rows.erase(rows.begin() + std::ptrdiff_t(row));
            removeRows(document, component, {row});
        }
        break;
    case 2:
        if (!rows.empty()) {
            rows[row].amount = rowFor(deed.what).amount;
            changeAmount(document, place, rowFor(deed.what).amount);
        }
        break;
    case 3:
        if (!rows.empty()) {
            rows[row].ingredient = word;
            renameIngredient(document, place, word);
        }
        break;
    case 4:
        if (!rows.empty()) {
            const std::size_t to = deed.what % rows.size();
            const Row moved = rows[row];
            rows.erase(rows.begin() + std::ptrdiff_t(row));
            rows.insert(rows.begin() + std::ptrdiff_t(to), moved);
            moveRow(document, place, to);
        }
        break;
    case 5:
        if (!rows.empty() && rows.size() < 12) {
            rows.insert(rows.begin() + std::ptrdiff_t(row) + 1, Row(rows[row]));
            duplicateRows(document, component, {row});
        }
        break;
    case 6:
        if (!rows.empty()) {
            rows[row].measuredBrix = number;
            changeReading(document, place, number);
        }
        break;
    case 7:
        after.title = word;
        changeTitle(document, word);
        break;
    case 8:
        after.notes = word + "\n" + word;
        changeNotes(document, word + "\n" + word);
        break;
    case 9:
        after.serveAt_c = -number;
        changeServingTemperature(document, Celsius{-number});
        break;
    case 10:
        after.freezerAt_c = std::nullopt;
        changeFreezerTemperature(document, std::nullopt);
        break;
    case 11:
        // A component that is the only one shows the recipe's own air, unless it has kept some of its own.
        if (isOnlyOne && !part.overrun_percent)
            after.overrun_percent = number;
        else
            part.overrun_percent = number;
        changeOverrun(document, component, number);
        break;
    case 12:
        if (after.components.size() < 4) {
            after.components.emplace_back().name = word;
            addComponent(document, word);
        }
        break;
    case 13:
        if (!isOnlyOne)
            after.components.erase(after.components.begin() + std::ptrdiff_t(component));
        removeComponent(document, component);
        break;
    case 14:
        part.name = word;
        renameComponent(document, component, word);
        break;
    case 15:
        if (part.steps.size() < 6) {
            part.steps.emplace_back().kind = StepKind::Chill;
            addStep(document, component, StepKind::Chill);
        }
        break;
    case 16:
        if (!part.steps.empty()) {
            part.steps.erase(part.steps.begin());
            removeSteps(document, component, {0});
        }
        break;
    case 17:
        model.redo();
        document.undoStack().redo();
        return;
    default:
        model.undo();
        document.undoStack().undo();
        return;
    }
    model.put(std::move(after));
}

RC_GTEST_PROP(Edits, EqualAPlainModelThroughUndoAndRedo, ())
{
    const auto numbers = rc::gen::tuple(rc::gen::inRange(0, 20), rc::gen::inRange(0U, 5040U), rc::gen::inRange(0U, 100000U));
    const auto deed = rc::gen::map(rc::gen::resize(rc::kNominalSize, numbers), [](const std::tuple<int, unsigned, unsigned>& one) {
        return Deed{std::get<0>(one), std::get<1>(one), std::get<2>(one)};
    });
    const std::vector<Deed> deeds = *rc::gen::container<std::vector<Deed>>(edits, deed);

    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("start.firn"));
    Document document(shippedCatalogue());
    insertRows(document, {0, 0}, {rowFor(4), rowFor(10)});
    RC_ASSERT(document.saveAs(file).has_value());
    RC_ASSERT(document.open(file).has_value());
    const QByteArray before = contentsFor(document.recipe(), file);

    Model model(document.recipe());
    for (const Deed& one : deeds) {
        doEdit(one, document, model);
        RC_ASSERT(document.recipe() == model.now());
    }
    while (document.undoStack().canUndo())
        document.undoStack().undo();
    RC_ASSERT(contentsFor(document.recipe(), file) == before);
    RC_ASSERT(!document.isModified());
}

}  // namespace
}  // namespace firn::app
