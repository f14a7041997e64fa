#include "catalogue/ingredient_details.h"

#include "catalogue/composition_table.h"
#include "catalogue/ingredient_wording.h"
#include "gauges/ribbon.h"
#include "gauges/type_and_space.h"

#include <QGridLayout>
#include <QLabel>

namespace firn::app {

namespace {

QLabel* plainLabel(const char* name)
{
    auto* label = new QLabel;
    label->setObjectName(QLatin1String(name));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

}  // namespace

IngredientDetails::IngredientDetails(QWidget* parent)
    : QWidget(parent)
    , m_name(plainLabel("detailName"))
    , m_origin(plainLabel("detailOrigin"))
    , m_hint(plainLabel("detailHint"))
    , m_whole(new QWidget)
    , m_ribbon(new RibbonBar)
    , m_table(new CompositionTable)
    , m_facts(new QGridLayout)
{
    m_name->setFont(titleFont(font()));
    m_origin->setForegroundRole(QPalette::PlaceholderText);
    m_hint->setForegroundRole(QPalette::PlaceholderText);
    m_ribbon->setAccessibleName(tr("What 100 g of the ingredient hold"));
    m_synonyms = addFact("detailSynonyms", tr("Also called"));
    m_allergens = addFact("detailAllergens", tr("Allergens"));
    m_hazards = addFact("detailHazards", tr("Warnings"));
    m_measures = addFact("detailMeasures", tr("Kitchen measures"));
    m_density = addFact("detailDensity", tr("Density"));
    m_spread = addFact("detailSpread", tr("Varies by"));
    m_energy = addFact("detailEnergy", tr("Energy"));
    m_source = addFact("detailSource", tr("Source"));
    m_facts->setContentsMargins(0, 0, 0, 0);
    m_facts->setHorizontalSpacing(groupSpace);
    m_facts->setVerticalSpacing(closeSpace);
    m_facts->setColumnStretch(1, 1);

    auto* whole = new QVBoxLayout(m_whole);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(closeSpace);
    whole->addWidget(m_name);
    whole->addWidget(m_origin);
    whole->addSpacing(closeSpace);
    whole->addWidget(m_ribbon);
    whole->addSpacing(closeSpace);
    whole->addWidget(m_table);
    whole->addSpacing(closeSpace);
    whole->addLayout(m_facts);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, closeSpace, 0);
    layout->addWidget(m_hint);
    layout->addWidget(m_whole);
    layout->addStretch();
}

IngredientDetails::Fact IngredientDetails::addFact(const char* name, const QString& title)
{
    const Fact fact{new QLabel(title), plainLabel(name)};
    fact.caption->setForegroundRole(QPalette::PlaceholderText);
    const int row = m_facts->rowCount();
    m_facts->addWidget(fact.caption, row, 0, Qt::AlignTop);
    m_facts->addWidget(fact.text, row, 1, Qt::AlignTop);
    return fact;
}

void IngredientDetails::setFact(const Fact& fact, const QString& text)
{
    fact.text->setText(text);
    fact.text->setVisible(!text.isEmpty());
    fact.caption->setVisible(!text.isEmpty());
}

void IngredientDetails::show(const Ingredient* ingredient, bool isOwn, const QString& hint)
{
    m_hint->setText(hint);
    m_hint->setVisible(!ingredient);
    m_whole->setVisible(ingredient);
    if (!ingredient)
        return;
    m_name->setText(fromCore(ingredient->name));
    const QString group = ingredient->group.empty() ? tr("no group") : fromCore(ingredient->group);
    m_origin->setText(isOwn ? tr("own · %1").arg(group) : group);
    m_ribbon->show(ribbonOf(ingredient->composition.per100g));
    m_table->show(ingredient->composition);

    QStringList synonyms;
    for (const std::string& synonym : ingredient->synonyms)
        synonyms << fromCore(synonym);
    for (const std::string& word : ingredient->defaultFor)
        synonyms << tr("%1 (default)").arg(fromCore(word));
    setFact(m_synonyms, synonyms.join(QStringLiteral(", ")));
    setFact(m_allergens,
        ingredient->allergens.empty() ? tr("none listed; the label on the packet decides") : namesOf(ingredient->allergens));
    setFact(m_hazards, namesOf(ingredient->hazards));
    setFact(m_measures, measuresText(ingredient->measures));
    setFact(m_density, densityText(*ingredient));
    setFact(m_spread, spreadText(ingredient->spread));
    setFact(m_energy, energyText(*ingredient));
    setFact(m_source, ingredient->source.empty() ? tr("not said") : fromCore(ingredient->source));
}

}  // namespace firn::app
