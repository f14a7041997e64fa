#include "catalogue/constituents_editor.h"

#include "bench/ink_label.h"
#include "catalogue/alcohol_line.h"
#include "catalogue/ingredient_wording.h"
#include "catalogue/number_line.h"
#include "document/typed_composition.h"
#include "document/typed_numbers.h"
#include "gauges/ribbon.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "ingredients/own_ingredient.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>

namespace firn::app {

ConstituentsEditor::ConstituentsEditor(QWidget* parent)
    : QWidget(parent)
    , m_ribbon(new RibbonBar)
    , m_grid(new QGridLayout)
    , m_syrupStrength(new NumberLine(tr("Strength of the syrup"), syrupStrengthFromText, tr("°Bx")))
    , m_others(new QComboBox)
    , m_total(new QLabel)
    , m_restIsWater(new QPushButton(tr("Rest is water")))
    , m_fault(new InkLabel(InkLabel::Caution))
{
    m_ribbon->setAccessibleName(tr("Composition per 100 g"));
    m_others->setObjectName(QStringLiteral("addConstituent"));
    m_others->setAccessibleName(tr("Add a constituent"));
    m_total->setObjectName(QStringLiteral("total"));
    m_fault->setObjectName(QStringLiteral("compositionFault"));
    m_restIsWater->setObjectName(QStringLiteral("restIsWater"));
    m_restIsWater->setToolTip(tr("Counts the remainder up to 100 g as water"));
    connect(m_restIsWater, &QPushButton::clicked, this, &ConstituentsEditor::takeRestAsWater);
    connect(m_others, &QComboBox::activated, this, [this](int choice) {
        if (choice <= 0)
            return;
        NumberLine* line = addLine(static_cast<Constituent>(m_others->itemData(choice).toInt()));
        offerOthers();
        line->field()->setFocus();
    });

    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(groupSpace);
    m_grid->setVerticalSpacing(gridStep);
    m_grid->setColumnStretch(1, 1);
    auto* totalLine = new QHBoxLayout;
    totalLine->setSpacing(closeSpace);
    totalLine->addWidget(m_total);
    totalLine->addWidget(m_restIsWater);
    totalLine->addStretch();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addLayout(syrupLine());
    layout->addWidget(m_ribbon);
    layout->addLayout(m_grid);
    layout->addWidget(m_others, 0, Qt::AlignLeft);
    layout->addLayout(totalLine);
    layout->addWidget(m_fault);
}

void ConstituentsEditor::show(const Amounts& per100g)
{
    qDeleteAll(m_shown);
    m_shown.clear();
    m_lines.clear();
    m_alcohol = nullptr;
    m_syrupStrength->showNumber(std::nullopt);
    m_amounts = per100g;
    for (const ConstituentFacts& facts : allConstituents())
        if (facts.constituent == Constituent::Water || per100g[facts.constituent].value > 0.0)
            addLine(facts.constituent);
    offerOthers();
    say({});
    follow();
}

QLayout* ConstituentsEditor::syrupLine()
{
    auto* start = new QPushButton(tr("Start from a syrup of"));
    start->setObjectName(QStringLiteral("startFromSyrup"));
    start->setToolTip(tr("Fills in water and sucrose in place of what is there"));
    m_syrupStrength->field()->setObjectName(QStringLiteral("syrupStrength"));
    connect(start, &QPushButton::clicked, this, &ConstituentsEditor::startFromSyrup);
    connect(m_syrupStrength->field(), &QLineEdit::returnPressed, this, &ConstituentsEditor::startFromSyrup);
    auto* layout = new QHBoxLayout;
    layout->setSpacing(closeSpace);
    layout->addWidget(start);
    layout->addWidget(m_syrupStrength, 1);
    return layout;
}

void ConstituentsEditor::startFromSyrup()
{
    const auto brix = m_syrupStrength->number();
    if (!m_syrupStrength->checkTyping())
        return;
    if (!brix) {
        m_syrupStrength->say(tr("Enter its strength first, such as 60."));
        m_syrupStrength->setFocus();
        return;
    }
    show(syrupPer100g(*brix));
    emit syrupStarted(*brix);
    emit changed();
}

/// Alcohol may be typed in % vol, all else is in grams. `shown` takes what stands in the form.
NumberLine* ConstituentsEditor::newLine(const ConstituentFacts& facts, QWidget*& shown)
{
    const QString spoken = tr("%1 in 100 g").arg(translatedName(facts.label));
    const Grams grams = m_amounts[facts.constituent];
    if (facts.constituent == Constituent::Ethanol) {
        shown = m_alcohol = new AlcoholLine(spoken);
        m_alcohol->showGrams(grams);
        connect(m_alcohol, &AlcoholLine::changed, this, [this] {
            follow();
            emit changed();
        });
        return m_alcohol->number();
    }
    auto* line = new NumberLine(spoken, partOf100gFromText, tr("g"));
    if (grams.value > 0.0)
        line->showNumber(grams.value);
    connect(line, &NumberLine::changed, this, [this, constituent = facts.constituent, line] {
        m_amounts[constituent] = Grams{line->number().value_or(0.0)};
        follow();
        emit changed();
    });
    shown = line;
    return line;
}

NumberLine* ConstituentsEditor::addLine(Constituent constituent)
{
    const auto& facts = allConstituents().at(static_cast<std::size_t>(constituent));
    auto* label = new QLabel(translatedName(facts.label));
    QWidget* shown = nullptr;
    NumberLine* line = newLine(facts, shown);
    line->field()->setObjectName(QString::fromUtf8(facts.key.data(), qsizetype(facts.key.size())));
    const int row = int(m_lines.size());
    m_grid->addWidget(label, row, 0);
    m_grid->addWidget(shown, row, 1);
    // The order of the lines is that of the keyboard.
    if (!m_lines.empty())
        setTabOrder(m_lastLine, line->field());
    m_lastLine = line->field();
    setTabOrder(line->field(), m_others);
    m_lines.emplace(constituent, line);
    m_shown.insert(m_shown.end(), {label, shown});
    return line;
}

void ConstituentsEditor::offerOthers()
{
    m_others->clear();
    m_others->addItem(tr("Add a constituent …"));
    for (const ConstituentFacts& facts : allConstituents())
        if (!m_lines.contains(facts.constituent))
            m_others->addItem(translatedName(facts.label), int(facts.constituent));
    m_others->setEnabled(m_others->count() > 1);
}

void ConstituentsEditor::takeRestAsWater()
{
    m_amounts = withRestAsWater(m_amounts);
    m_lines.at(Constituent::Water)->showNumber(m_amounts[Constituent::Water].value);
    follow();
    emit changed();
}

void ConstituentsEditor::follow()
{
    m_fault->setText({});
    // What a strength weighs depends on all else.
    if (m_alcohol)
        m_amounts[Constituent::Ethanol] = m_alcohol->gramsBeside(m_amounts);
    m_ribbon->show(ribbonOf(m_amounts));
    m_ribbon->setVisible(m_amounts != Amounts());
    m_total->setText(translated(closureSentence(m_amounts)));
    m_restIsWater->setEnabled(withRestAsWater(m_amounts) != m_amounts);
}

bool ConstituentsEditor::checkTyping()
{
    bool isReadable = true;
    for (const auto& [constituent, line] : m_lines)
        isReadable = line->checkTyping() && isReadable;
    return (!m_alcohol || m_alcohol->checkTyping()) && isReadable;
}

void ConstituentsEditor::say(const QString& fault) { m_fault->setText(fault); }

}  // namespace firn::app
