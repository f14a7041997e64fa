#include "tasting/triangle_view.h"

#include "bench/field_grid.h"
#include "bench/fields.h"
#include "bench/ink_label.h"
#include "document/typed_numbers.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "tasting/triangle_test.h"
#include "teach/figure_link.h"
#include "teach/figure_wording.h"

#include <QVBoxLayout>
#include <cmath>

namespace firn::app {

namespace {

NumberField* countField(const QString& name, const QString& spoken)
{
    const auto read = [](std::string_view text) -> Result<double> {
        const auto number = numberFromText(text);
        if (number && (*number < 0.0 || *number > double(mostTasters) || *number != std::floor(*number)))
            return failure(phrase("A whole number is needed, from 0 to {0}.", Figure{double(mostTasters), 0}));
        return number;
    };
    auto* field = new NumberField(read, [](double number) { return figure(number, 0); });
    field->setObjectName(name);
    field->setAccessibleName(spoken);
    constexpr double target_px = 26.0;
    field->setMinimumHeight(qRound(besideText(field->font(), target_px)));
    field->setFixedWidth(field->fontMetrics().horizontalAdvance(QStringLiteral("0000000")));
    return field;
}

}  // namespace

TriangleView::TriangleView(QWidget* parent)
    : QWidget(parent)
    , m_tasters(countField(QStringLiteral("triangleTasters"), tr("Tasters")))
    , m_right(countField(QStringLiteral("triangleRight"), tr("Found the odd cup")))
    , m_verdict(new InkLabel(InkLabel::Plain, this))
    , m_chance(new FigureLink(tr("Explain the chance of guessing"), QString::fromLatin1(figureOfChance), this))
    , m_needed(new FigureLink(tr("How many right answers are needed, and why"), QString::fromLatin1(figureOfLeastRight), this))
{
    m_verdict->setObjectName(QStringLiteral("triangleVerdict"));
    auto* hint = new InkLabel(InkLabel::Quiet, this);
    hint->setText(
        tr("Is there any difference at all? Give each taster three cups, two of them from the same batch, in random order, and ask "
           "for the odd one. Each must answer, by guessing if need be. It works where every spoonful is alike: stir a granita "
           "and give large, equal portions."));
    auto* fields = new QWidget;
    auto* grid = new FieldGrid(fields);
    grid->setHorizontalSpacing(closeSpace);
    grid->addRow(tr("&Tasters"), inOneRow({m_tasters}));
    grid->addRow(tr("Found the &odd cup"), inOneRow({m_right}));
    auto* layout = new QVBoxLayout(this);
    layout->setSpacing(closeSpace);
    layout->addWidget(hint);
    layout->addWidget(fields);
    layout->addWidget(m_verdict);
    layout->addWidget(m_chance);
    layout->addWidget(m_needed);
    layout->addStretch();
    for (FigureLink* link : {m_chance, m_needed}) {
        link->hide();
        connect(link, &FigureLink::chosen, this, &TriangleView::explain);
    }
    for (NumberField* field : {m_tasters, m_right}) {
        connect(field, &NumberField::numberTyped, this, &TriangleView::judge);
        connect(field, &NumberField::problemChanged, this, &TriangleView::judge);
    }
}

Result<Sentence> TriangleView::verdict(Workings* workings) const
{
    return triangleTest(std::size_t(*m_tasters->number()), std::size_t(*m_right->number()), workings);
}

void TriangleView::explain(const QString& key)
{
    FigureSet set{{}, tr("Triangle test: %1 of %2 right").arg(figure(*m_right->number(), 0), figure(*m_tasters->number(), 0))};
    if (!verdict(&set.workings))
        return;
    for (const auto& [each, working] : set.workings.all()) {
        const QString shown = QString::fromStdString(each);
        set.shown.insert(shown, onBench(shown, working.steps().back().result));
    }
    emit figureWanted(key, std::make_shared<const FigureSet>(std::move(set)));
}

void TriangleView::judge()
{
    for (FigureLink* link : {m_chance, m_needed})
        link->hide();
    for (const NumberField* field : {m_tasters, m_right})
        if (!field->problem().isEmpty()) {
            m_verdict->setInk(InkLabel::Caution);
            m_verdict->setText(field->problem());
            return;
        }
    if (!m_tasters->number() || !m_right->number()) {
        m_verdict->setText({});
        return;
    }
    const auto said = verdict();
    m_verdict->setInk(said ? InkLabel::Plain : InkLabel::Caution);
    m_verdict->setText(translated(said ? *said : said.error()));
    for (FigureLink* link : {m_chance, m_needed})
        link->setVisible(said.has_value());
}

}  // namespace firn::app
