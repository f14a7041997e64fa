#include "catalogue/ingredient_form.h"

#include "bench/ink_label.h"
#include "bench/typed_text.h"
#include "catalogue/constituents_editor.h"
#include "catalogue/measures_editor.h"
#include "catalogue/number_line.h"
#include "document/typed_numbers.h"
#include "gauges/wording.h"
#include "solution/estimated_density.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>

namespace firn::app {

namespace {

/// None where nothing is typed.
std::optional<double> shownIfAny(Grams grams) { return grams.value > 0.0 ? std::optional(grams.value) : std::nullopt; }

Grams gramsOf(const NumberLine& line) { return {line.number().value_or(0.0)}; }

std::string typedIn(const QLineEdit& line) { return line.text().simplified().toStdString(); }

std::vector<std::string> listTypedIn(const QLineEdit& line)
{
    std::vector<std::string> list;
    for (const QString& part : line.text().split(u',', Qt::SkipEmptyParts))
        if (const QString text = part.simplified(); !text.isEmpty())
            list.push_back(text.toStdString());
    return list;
}

constexpr int allergenColumns = 4;
constexpr int hazardColumns = 3;

}  // namespace

IngredientForm::IngredientForm(QWidget* parent)
    : QWidget(parent)
    , m_fields(new QGridLayout)
    , m_area(new QScrollArea)
    , m_title(new QLabel)
    , m_problem(new InkLabel(InkLabel::Caution))
{
    m_title->setObjectName(QStringLiteral("formTitle"));
    m_title->setTextFormat(Qt::PlainText);
    m_title->setFont(titleFont(font()));
    m_problem->setObjectName(QStringLiteral("formProblem"));
    m_fields->setContentsMargins(0, 0, groupSpace, 0);
    m_fields->setHorizontalSpacing(groupSpace);
    m_fields->setVerticalSpacing(closeSpace);
    m_fields->setColumnStretch(1, 1);
    addNames();
    addComposition();
    addRest();

    auto* content = new QWidget;
    m_fields->setRowStretch(m_fields->rowCount(), 1);
    content->setLayout(m_fields);
    m_area->setWidget(content);
    m_area->setWidgetResizable(true);
    m_area->setFrameShape(QFrame::NoFrame);
    m_area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);

    auto* keep = new QPushButton(tr("&Keep"));
    keep->setObjectName(QStringLiteral("keep"));
    // A shortcut of the button itself would take the place of the underlined letter.
    auto* save = new QShortcut(QKeySequence::Save, this);
    connect(save, &QShortcut::activated, keep, &QPushButton::click);
    keep->setToolTip(tr("Keeps the ingredient (%1)").arg(save->key().toString(QKeySequence::NativeText)));
    auto* leave = new QPushButton(tr("Cancel"));
    leave->setObjectName(QStringLiteral("leave"));
    connect(keep, &QPushButton::clicked, this, &IngredientForm::keepWanted);
    connect(leave, &QPushButton::clicked, this, &IngredientForm::leaveWanted);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(closeSpace);
    buttons->addWidget(keep);
    buttons->addWidget(leave);
    buttons->addWidget(m_problem, 1);
    buttons->addStretch();

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(m_title);
    layout->addWidget(m_area, 1);
    layout->addLayout(buttons);
}

/// Not a form layout: those of Qt 6.4 write beyond their rows where some are hidden and others wrap their text.
void IngredientForm::addRow(const QString& title, QWidget* field)
{
    const int row = m_fields->rowCount();
    auto* label = new QLabel(title);
    label->setMinimumHeight(label->fontMetrics().height() + closeSpace);  // beside the first line of a taller field
    m_fields->addWidget(label, row, 0, Qt::AlignTop);
    m_fields->addWidget(field, row, 1);
}

QLineEdit* IngredientForm::addText(const char* name, const QString& title)
{
    auto* line = new QLineEdit;
    line->setObjectName(QLatin1String(name));
    line->setAccessibleName(title);
    connect(line, &QLineEdit::textEdited, this, &IngredientForm::follow);
    addRow(title, line);
    return line;
}

NumberLine* IngredientForm::addNumber(const char* name, const QString& title, NumberField::Reader reader, const QString& unit)
{
    auto* line = new NumberLine(title, std::move(reader), unit);
    line->field()->setObjectName(QLatin1String(name));
    connect(line, &NumberLine::changed, this, &IngredientForm::follow);
    addRow(title, line);
    return line;
}

void IngredientForm::addNames()
{
    m_name = addText("name", tr("Name"));
    m_nameFault = new InkLabel(InkLabel::Caution);
    m_nameFault->setObjectName(QStringLiteral("nameFault"));
    m_fields->addWidget(m_nameFault, m_fields->rowCount(), 1);
    m_synonyms = addText("synonyms", tr("Also called"));
    m_synonyms->setPlaceholderText(tr("other names, with commas between them"));
    m_group = new QComboBox;
    m_group->setObjectName(QStringLiteral("formGroup"));
    m_group->setAccessibleName(tr("Group"));
    m_group->setEditable(true);
    connect(m_group, &QComboBox::editTextChanged, this, &IngredientForm::follow);
    addRow(tr("Group"), m_group);
}

void IngredientForm::addComposition()
{
    m_constituents = new ConstituentsEditor;
    connect(m_constituents, &ConstituentsEditor::changed, this, &IngredientForm::follow);
    connect(m_constituents, &ConstituentsEditor::syrupStarted, this, [this](double brix) {
        if (m_name->text().trimmed().isEmpty())
            m_name->setText(tr("Syrup, %1 °Bx").arg(typedText(brix, {})));
    });
    addRow(tr("Per 100 g"), m_constituents);
    m_milkFat = addNumber("milkFat", tr("of which milk fat"), partOf100gFromText, tr("g"));
    m_milkSolidsNotFat = addNumber("milkSolidsNotFat", tr("Milk solids not fat"), partOf100gFromText, tr("g"));
    m_yolkSolids = addNumber("yolkSolids", tr("Egg yolk solids"), partOf100gFromText, tr("g"));
}

void IngredientForm::addRest()
{
    m_allergens = new AllergenGrid(allergenColumns, [this] { follow(); });
    addRow(tr("Allergens"), m_allergens);
    m_hazards = new HazardGrid(hazardColumns, [this] { follow(); });
    addRow(tr("Warnings"), m_hazards);
    m_measures = new MeasuresEditor;
    connect(m_measures, &MeasuresEditor::changed, this, &IngredientForm::follow);
    addRow(tr("Kitchen measures"), m_measures);
    m_density = addNumber("density", tr("Density"), densityFromText, tr("g/mL"));
    m_densitySource = addText("densitySource", tr("Source of the density"));
    m_waterSpread = addNumber("waterSpread", tr("Water varies by ±"), partOf100gFromText, tr("g"));
    m_sugarsSpread = addNumber("sugarsSpread", tr("Sugars vary by ±"), partOf100gFromText, tr("g"));
    m_isEstimate = new QCheckBox(tr("estimated"));
    m_isEstimate->setObjectName(QStringLiteral("isEstimate"));
    connect(m_isEstimate, &QCheckBox::clicked, this, &IngredientForm::follow);
    addRow({}, m_isEstimate);
    m_energy = addNumber("energy", tr("Energy on the label"), energyFromText, tr("kcal"));
    m_source = addText("source", tr("Source"));
    m_source->setPlaceholderText(tr("label, table or measurement that the figures come from"));
}

void IngredientForm::offerGroups(const std::vector<std::string>& groups)
{
    m_group->clear();
    for (const std::string& group : groups)
        m_group->addItem(fromCore(group));
}

void IngredientForm::edit(const Ingredient& ingredient, const QString& title, bool isTyped)
{
    m_beginning = ingredient;
    m_title->setText(title);
    m_name->setText(fromCore(ingredient.name));
    QStringList synonyms;
    for (const std::string& synonym : ingredient.synonyms)
        synonyms << fromCore(synonym);
    m_synonyms->setText(synonyms.join(QStringLiteral(", ")));
    m_group->setEditText(fromCore(ingredient.group));
    m_constituents->show(ingredient.composition.per100g);
    m_milkFat->showNumber(shownIfAny(ingredient.composition.milkFat));
    m_milkSolidsNotFat->showNumber(shownIfAny(ingredient.composition.milkSolidsNotFat));
    m_yolkSolids->showNumber(shownIfAny(ingredient.composition.yolkSolids));
    m_allergens->show(ingredient.allergens);
    m_hazards->show(ingredient.hazards);
    m_measures->show(ingredient.measures);
    m_density->showNumber(ingredient.density ? std::optional(ingredient.density->value) : std::nullopt);
    m_densitySource->setText(fromCore(ingredient.densitySource));
    m_waterSpread->showNumber(ingredient.spread.water_sd);
    m_sugarsSpread->showNumber(ingredient.spread.sugars_sd);
    m_isEstimate->setChecked(ingredient.spread.isEstimate);
    m_energy->showNumber(ingredient.energy_kcalPer100g);
    m_source->setText(fromCore(ingredient.source));
    m_nameFault->setText({});
    m_problem->setText({});
    showEstimatedDensity();
    m_isChanged = isTyped;
    m_area->verticalScrollBar()->setValue(0);
    m_name->setFocus();
    m_name->selectAll();
}

Ingredient IngredientForm::ingredient() const
{
    Ingredient typed;
    typed.id = m_beginning.id;
    typed.name = typedIn(*m_name);
    typed.synonyms = listTypedIn(*m_synonyms);
    typed.group = m_group->currentText().simplified().toStdString();
    typed.composition = {m_constituents->amounts(), gramsOf(*m_milkFat), gramsOf(*m_milkSolidsNotFat), gramsOf(*m_yolkSolids)};
    if (const auto density_g_ml = m_density->number())
        typed.density = GramsPerMillilitre{*density_g_ml};
    typed.densitySource = typedIn(*m_densitySource);
    typed.measures = m_measures->measures();
    typed.spread = {m_waterSpread->number(), m_sugarsSpread->number(), m_isEstimate->isChecked()};
    typed.allergens = m_allergens->chosen();
    typed.hazards = m_hazards->chosen();
    typed.source = typedIn(*m_source);
    typed.energy_kcalPer100g = m_energy->number();
    if (typed.energy_kcalPer100g == m_beginning.energy_kcalPer100g)
        typed.energyNote = m_beginning.energyNote;
    return typed;
}

void IngredientForm::follow()
{
    m_isChanged = true;
    m_nameFault->setText({});
    m_problem->setText({});
    showEstimatedDensity();
}

/// Rows in mL go by it where no density is typed.
void IngredientForm::showEstimatedDensity()
{
    const auto estimate = estimatedDensity(ingredient(), Filling::Poured);
    m_density->showUsual(estimate ? std::optional(estimate->value) : std::nullopt);
    m_densitySource->setPlaceholderText(estimate ? tr("estimated from the composition, ±2 %") : QString());
}

bool IngredientForm::check()
{
    bool isReadable = m_constituents->checkTyping();
    isReadable = m_measures->checkTyping() && isReadable;
    for (NumberLine* line : {m_milkFat, m_milkSolidsNotFat, m_yolkSolids, m_density, m_waterSpread, m_sugarsSpread, m_energy})
        isReadable = line->checkTyping() && isReadable;
    const std::vector<IngredientFault> faults = faultsOf(ingredient());
    for (const IngredientFault& fault : faults) {
        const QString sentence = translated(fault.sentence);
        switch (fault.field) {
        case IngredientField::Name:
            m_nameFault->setText(sentence);
            break;
        case IngredientField::Composition:
            m_constituents->say(sentence);
            break;
        case IngredientField::MilkFat:
            m_milkFat->say(sentence);
            break;
        case IngredientField::MilkSolidsNotFat:
            m_milkSolidsNotFat->say(sentence);
            break;
        case IngredientField::YolkSolids:
            m_yolkSolids->say(sentence);
            break;
        }
    }
    const bool isGood = isReadable && faults.empty();
    m_problem->setText(isGood ? QString() : tr("Please correct the marked fields."));
    return isGood;
}

void IngredientForm::sayNameFault(const QString& fault)
{
    m_nameFault->setText(fault);
    m_name->setFocus();
    m_area->ensureWidgetVisible(m_name);
}

void IngredientForm::sayProblem(const QString& problem) { m_problem->setText(problem); }

}  // namespace firn::app
