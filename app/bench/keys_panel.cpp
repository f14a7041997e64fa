#include "bench/keys_panel.h"

#include "gauges/type_and_space.h"

#include <QGridLayout>
#include <QLabel>

namespace firn::app {

KeysPanel::KeysPanel(QWidget* parent)
    : QWidget(parent)
{
    const std::vector<std::pair<QString, QString>> keys{
        {tr("Typing"), tr("starts an ingredient, as in \"250 g water\"")},
        {tr("Enter"), tr("takes the marked suggestion; goes to the amount, or to the next row")},
        {tr("Down"), tr("marks the next suggestion")},
        {tr("Tab"), tr("goes to the next cell")},
        {tr("F2"), tr("edits the cell")},
        {tr("Escape"), tr("puts back what was there")},
        {tr("Alt+Up, Alt+Down"), tr("changes the amount, with Shift in fine steps")},
        {tr("Ctrl+Up, Ctrl+Down"), tr("moves the row")},
        {tr("Insert"), tr("opens an empty row above")},
        {tr("Ctrl+D"), tr("duplicates the rows")},
        {tr("Delete"), tr("deletes the rows")},
        {tr("Ctrl+I"), tr("opens the catalogue, where Enter puts an ingredient in the recipe")},
        {tr("Ctrl+L"), tr("looks in the notebook, where Enter opens a recipe")},
        {tr("Ctrl+B"), tr("opens the syrups: mix, make, boil down, dilute, dissolve, convert")},
        {tr("Ctrl+M"), tr("measures the mix and puts it right")},
        {tr("Ctrl+K"), tr("keeps this version, to come back to")},
        {tr("Ctrl+Shift+D"), tr("compares versions and recipes")},
        {tr("Ctrl+T"), tr("opens the tastings: scores, words, tasting blind")},
        {tr("Ctrl+E"), tr("explains the focused number: a cell, a gauge reached by Tab, or an entry of the list")},
        {tr("Ctrl+Shift+T"), tr("sets the two methods for the freezing point side by side")},
        {tr("Ctrl+Shift+E"), tr("opens exercises on the recipe")},
        {tr("Ctrl+Shift+P"), tr("projects the recipe for a class")},
        {tr("Drag an amount sideways"), tr("changes it, with Shift in fine steps")},
    };
    constexpr int columnPairs = 2;
    auto* layout = new QGridLayout(this);
    layout->setContentsMargins(groupSpace, closeSpace, groupSpace, closeSpace);
    layout->setHorizontalSpacing(groupSpace);
    layout->setVerticalSpacing(gridStep);
    const int rows = (int(keys.size()) + columnPairs - 1) / columnPairs;
    for (int i = 0; i < int(keys.size()); ++i) {
        const auto& [key, what] = keys[std::size_t(i)];
        auto* name = new QLabel(key);
        QFont bold = name->font();
        bold.setBold(true);
        name->setFont(bold);
        layout->addWidget(name, i % rows, 2 * (i / rows));
        auto* meaning = new QLabel(what);
        meaning->setWordWrap(true);
        layout->addWidget(meaning, i % rows, 2 * (i / rows) + 1);
        layout->setColumnStretch(2 * (i / rows) + 1, 1);
    }
    layout->setRowStretch(rows, 1);
}

}  // namespace firn::app
