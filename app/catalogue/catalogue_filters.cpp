#include "catalogue/catalogue_filters.h"

#include "catalogue/ingredient_wording.h"
#include "gauges/type_and_space.h"

#include <QAction>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QSignalBlocker>
#include <QToolButton>

namespace firn::app {

namespace {

std::vector<Allergen> chosenIn(const QToolButton& button)
{
    std::vector<Allergen> chosen;
    for (const QAction* action : button.menu()->actions())
        if (action->isChecked())
            chosen.push_back(static_cast<Allergen>(action->data().toInt()));
    return chosen;
}

/// As much as a button should say before it says how many.
constexpr std::size_t mostNamed = 2;

}  // namespace

CatalogueFilters::CatalogueFilters(QWidget* parent)
    : QWidget(parent)
    , m_search(new QLineEdit)
    , m_group(new QComboBox)
    , m_contains(allergenButton(QStringLiteral("contains"), tr("Contains these allergens")))
    , m_freeOf(allergenButton(QStringLiteral("freeOf"), tr("Free of these allergens")))
    , m_count(new QLabel)
    , m_clear(new QToolButton)
{
    m_search->setObjectName(QStringLiteral("search"));
    m_search->setAccessibleName(tr("Search the catalogue"));
    m_search->setPlaceholderText(tr("Type a name, such as strawberry"));
    m_search->setClearButtonEnabled(true);
    m_search->setAcceptDrops(false);
    connect(m_search, &QLineEdit::textChanged, this, &CatalogueFilters::changed);

    m_group->setObjectName(QStringLiteral("group"));
    m_group->setAccessibleName(tr("Group"));
    m_group->addItem(tr("All groups"));
    connect(m_group, &QComboBox::currentIndexChanged, this, &CatalogueFilters::changed);

    m_count->setObjectName(QStringLiteral("count"));
    m_clear->setObjectName(QStringLiteral("clearFilters"));
    m_clear->setText(tr("Show all"));
    m_clear->setAutoRaise(true);
    connect(m_clear, &QToolButton::clicked, this, &CatalogueFilters::clear);

    auto* layout = new QGridLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(m_search, 0, 0, 1, 2);
    layout->addWidget(m_group, 1, 0, 1, 2);
    layout->addWidget(m_freeOf, 2, 0);
    layout->addWidget(m_contains, 2, 1);
    layout->addWidget(m_count, 3, 0);
    layout->addWidget(m_clear, 3, 1, Qt::AlignRight);
    layout->setColumnStretch(0, 1);
    layout->setColumnStretch(1, 1);
    wordAllergens();
}

QToolButton* CatalogueFilters::allergenButton(const QString& name, const QString& spoken)
{
    auto* button = new QToolButton;
    button->setObjectName(name);
    button->setAccessibleName(spoken);
    button->setPopupMode(QToolButton::InstantPopup);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    auto* menu = new QMenu(button);
    for (std::size_t i = 0; i < allergenCount; ++i) {
        QAction* action = menu->addAction(nameOf(static_cast<Allergen>(i)));
        action->setCheckable(true);
        action->setData(int(i));
        connect(action, &QAction::toggled, this, [this] {
            wordAllergens();
            emit changed();
        });
    }
    button->setMenu(menu);
    return button;
}

void CatalogueFilters::wordAllergens()
{
    const auto chosenText = [](const QToolButton& button) {
        const std::vector<Allergen> chosen = chosenIn(button);
        return chosen.size() > mostNamed ? tr("%n allergens", nullptr, int(chosen.size())) : namesOf(chosen);
    };
    const QString contained = chosenText(*m_contains), avoided = chosenText(*m_freeOf);
    m_contains->setText(contained.isEmpty() ? tr("Contains any") : tr("Contains %1").arg(contained));
    m_freeOf->setText(avoided.isEmpty() ? tr("Free of …") : tr("Free of %1").arg(avoided));
}

CatalogueFilter CatalogueFilters::filter() const
{
    return {m_search->text().toStdString(), m_group->currentData().toString().toStdString(), chosenIn(*m_contains),
        chosenIn(*m_freeOf)};
}

void CatalogueFilters::offerGroups(const std::vector<std::string>& groups)
{
    const QString chosen = m_group->currentData().toString();
    const QSignalBlocker blocker(m_group);
    while (m_group->count() > 1)
        m_group->removeItem(1);
    for (const std::string& group : groups)
        m_group->addItem(fromCore(group), fromCore(group));
    m_group->setCurrentIndex(chosen.isEmpty() ? 0 : std::max(0, m_group->findData(chosen)));
}

void CatalogueFilters::showCount(int found, int all)
{
    m_count->setText(tr("%1 of %2").arg(found).arg(all));
    m_clear->setVisible(filter() != CatalogueFilter());
}

void CatalogueFilters::clear()
{
    {
        const QSignalBlocker blocker(this);
        m_search->clear();
        m_group->setCurrentIndex(0);
        for (const QToolButton* button : {m_contains, m_freeOf})
            for (QAction* action : button->menu()->actions())
                action->setChecked(false);
    }
    emit changed();
    m_search->setFocus();
}

}  // namespace firn::app
