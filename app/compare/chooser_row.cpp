#include "compare/chooser_row.h"

#include "bench/fields.h"
#include "gauges/type_and_space.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>

namespace firn::app {

namespace {

constexpr int charactersOfName = 16;

enum PlaceData { ChoiceKind = Qt::UserRole, ChoiceKey };

Choice choiceAt(const QComboBox& box, int index)
{
    return {static_cast<Choice::Kind>(box.itemData(index, ChoiceKind).toInt()), box.itemData(index, ChoiceKey).toString()};
}

void addItem(QComboBox& box, const QString& name, int kind, const QString& key = {})
{
    box.addItem(name);
    box.setItemData(box.count() - 1, kind, ChoiceKind);
    box.setItemData(box.count() - 1, key, ChoiceKey);
}

void fill(QComboBox& box, const Choices& choices, const Choice& chosen, bool mayBeEmpty)
{
    const QSignalBlocker quietly(&box);
    box.clear();
    int current = -1;
    const auto add = [&](const QString& name, const Choice& choice) {
        if (choice == chosen)
            current = box.count();
        addItem(box, name, choice.kind, choice.key);
    };
    if (mayBeEmpty)
        add(ChooserRow::tr("nothing more"), {});
    for (const Choice& choice : choices.all())
        add(choices.nameOf(choice), choice);
    box.setCurrentIndex(current);
}

}  // namespace

ChooserRow::ChooserRow(QWidget* parent)
    : QWidget(parent)
{
    const std::array<QString, mostCompared> words{tr("Compare"), tr("with"), tr("and"), tr("and")};
    const std::array<QString, mostCompared> spoken{
        tr("What the others are compared with"), tr("The second one"), tr("The third one"), tr("The fourth one")};
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        QComboBox* box = m_places[i] = choiceOf(QStringLiteral("place%1").arg(i + 1), spoken[i], {});
        box->setPlaceholderText(tr("choose one"));
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(charactersOfName);
        connect(box, &QComboBox::activated, this, [this, i] { tell(i); });
        layout->addWidget(new QLabel(words[i]));
        layout->addWidget(box, 1);
    }
    // Not one of the items, since the arrow keys would open a file on their way.
    auto* opening = new QPushButton(tr("&Open a file…"));
    opening->setObjectName(QStringLiteral("openFile"));
    opening->setMinimumHeight(m_places.front()->minimumHeight());
    connect(opening, &QPushButton::clicked, this, &ChooserRow::fileWanted);
    layout->addWidget(opening);
}

void ChooserRow::show(const Choices& choices, const Places& chosen)
{
    for (std::size_t i = 0; i < m_places.size(); ++i)
        fill(*m_places[i], choices, chosen[i], i >= fewestCompared);
}

void ChooserRow::takeFocus() { m_places.front()->setFocus(); }

void ChooserRow::tell(std::size_t place)
{
    const QComboBox& box = *m_places[place];
    emit chosen(place, choiceAt(box, box.currentIndex()));
}

}  // namespace firn::app
