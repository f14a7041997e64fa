#include "catalogue/constituents_editor.h"

#include "bench/ink_label.h"
#include "catalogue/ingredient_wording.h"
#include "catalogue/number_line.h"
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
    , m_others(new QComboBox)
    , m_total(new QLabel)
    , m_restIsWater(new QPushButton(tr("Rest is water")))
    , m_fault(new InkLabel(InkLabel::Caution))
{
    m_ribbon->setAccessibleName(tr("What 100 g of the ingredient hold"));
    m_others->setObjectName(QStringLiteral("addConstituent"));
    m_others->setAccessibleName(tr("Add a constituent"));
    m_total->setObjectName(QStringLiteral("total"));
    m_fault->setObjectName(QStringLiteral("compositionFault"));
    m_restIsWater->setObjectName(QStringLiteral("restIsWater"));
    m_restIsWater->setToolTip(tr("Takes what is missing to 100 g as water"));
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
    layout->addWidget(m_ribbon);
    layout->addLayout(m_grid);
    layout->addWidget(m_others, 0, Qt::AlignLeft);
    layout->addLayout(totalLine);
    layout->addWidget(m_fault);
}

void ConstituentsEditor::show(const Amounts& per100g)
{
    for (const auto& [constituent, line] : m_lines)
        delete line;
    qDeleteAll(m_names);
    m_lines.clear();
    m_names.clear();
    m_amounts = per100g;
    for (const ConstituentFacts& facts : allConstituents())
        if (facts.constituent == Constituent::Water || per100g[facts.constituent].value > 0.0)
            addLine(facts.constituent);
    offerOthers();
    say({});
    follow();
}

NumberLine* ConstituentsEditor::addLine(Constituent constituent)
{
    const auto& facts = allConstituents().at(static_cast<std::size_t>(constituent));
    const QString name = translatedName(facts.label);
    auto* label = new QLabel(name);
    auto* line = new NumberLine(tr("%1 in 100 g").arg(name), partOf100gFromText, tr("g"));
    line->field()->setObjectName(QString::fromUtf8(facts.key.data(), qsizetype(facts.key.size())));
    if (const Grams grams = m_amounts[constituent]; grams.value > 0.0)
        line->showNumber(grams.value);
    connect(line, &NumberLine::changed, this, [this, constituent, line] {
        m_amounts[constituent] = Grams{line->number().value_or(0.0)};
        follow();
        emit changed();
    });
    const int row = int(m_lines.size());
    m_grid->addWidget(label, row, 0);
    m_grid->addWidget(line, row, 1);
    // The order of the lines is that of the keyboard.
    if (!m_lines.empty())
        setTabOrder(m_lastLine, line->field());
    m_lastLine = line->field();
    setTabOrder(line->field(), m_others);
    m_lines.emplace(constituent, line);
    m_names.push_back(label);
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
    return isReadable;
}

void ConstituentsEditor::say(const QString& fault) { m_fault->setText(fault); }

}  // namespace firn::app
