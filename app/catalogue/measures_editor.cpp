#include "catalogue/measures_editor.h"

#include "catalogue/number_line.h"
#include "document/typed_numbers.h"
#include "gauges/type_and_space.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <algorithm>

namespace firn::app {

namespace {

QComboBox* unitChoice(Unit chosen)
{
    auto* choice = new QComboBox;
    for (const UnitFacts& facts : allUnits())
        if (facts.dimension == Dimension::Volume || facts.dimension == Dimension::Count)
            choice->addItem(QString::fromUtf8(facts.symbol.data(), qsizetype(facts.symbol.size())), int(facts.unit));
    choice->setCurrentIndex(choice->findData(int(chosen)));
    return choice;
}

}  // namespace

MeasuresEditor::MeasuresEditor(QWidget* parent)
    : QWidget(parent)
    , m_layout(new QVBoxLayout)
{
    auto* more = new QPushButton(tr("Add a measure"));
    more->setObjectName(QStringLiteral("addMeasure"));
    connect(more, &QPushButton::clicked, this, [this] {
        addLine({});
        m_lines.back().unit->setFocus();
        emit changed();
    });
    m_layout->setSpacing(gridStep);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(gridStep);
    layout->addLayout(m_layout);
    layout->addWidget(more, 0, Qt::AlignLeft);
}

void MeasuresEditor::show(const std::vector<Measure>& measures)
{
    for (const Line& line : m_lines) {
        line.whole->hide();  // hands the focus on
        delete line.whole;
    }
    m_lines.clear();
    for (const Measure& measure : measures)
        addLine(measure);
}

void MeasuresEditor::addLine(const Measure& measure)
{
    auto* whole = new QWidget;
    Line line{whole, unitChoice(measure.unit), new NumberLine(tr("Weight of the measure"), measureFromText, tr("g")),
        new QLineEdit(QString::fromStdString(measure.note)), measure};
    line.unit->setObjectName(QStringLiteral("measureUnit"));
    line.unit->setAccessibleName(tr("Measure"));
    line.grams->field()->setObjectName(QStringLiteral("measureGrams"));
    line.note->setObjectName(QStringLiteral("measureNote"));
    line.note->setAccessibleName(tr("Preparation (sliced, packed …)"));
    line.note->setPlaceholderText(tr("sliced, large …"));
    if (measure.grams.value > 0.0)
        line.grams->showNumber(measure.grams.value);
    auto* away = new QPushButton(tr("Remove"));
    away->setObjectName(QStringLiteral("removeMeasure"));
    connect(away, &QPushButton::clicked, this, [this, whole] { removeLine(whole); });
    connect(line.unit, &QComboBox::currentIndexChanged, this, &MeasuresEditor::changed);
    connect(line.grams, &NumberLine::changed, this, &MeasuresEditor::changed);
    connect(line.note, &QLineEdit::textEdited, this, &MeasuresEditor::changed);

    auto* layout = new QHBoxLayout(whole);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(new QLabel(tr("1", "one cup, one piece")));
    layout->addWidget(line.unit);
    layout->addWidget(line.note);
    layout->addWidget(new QLabel(tr("weighs", "one cup weighs …")));
    layout->addWidget(line.grams, 1);
    layout->addWidget(away);
    m_layout->addWidget(whole);
    m_lines.push_back(std::move(line));
}

void MeasuresEditor::removeLine(QWidget* whole)
{
    std::erase_if(m_lines, [whole](const Line& line) { return line.whole == whole; });
    whole->hide();
    whole->deleteLater();  // its button is still being clicked
    emit changed();
}

std::vector<Measure> MeasuresEditor::measures() const
{
    std::vector<Measure> measures;
    for (const Line& line : m_lines) {
        Measure measure{static_cast<Unit>(line.unit->currentData().toInt()), Grams{line.grams->number().value_or(0.0)},
            line.note->text().simplified().toStdString(), line.before.source};
        // Its source vouches for this very measure.
        if (measure != line.before)
            measure.source.clear();
        measures.push_back(std::move(measure));
    }
    return measures;
}

bool MeasuresEditor::checkTyping()
{
    bool isReadable = true;
    for (const Line& line : m_lines) {
        if (line.grams->checkTyping() && !line.grams->number())
            line.grams->say(tr("Write how many grams it holds, or remove the measure."));
        isReadable = isReadable && line.grams->checkTyping() && line.grams->number();
    }
    return isReadable;
}

}  // namespace firn::app
