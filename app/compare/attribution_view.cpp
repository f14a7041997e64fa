#include "compare/attribution_view.h"

#include "bench/fields.h"
#include "compare/attribution_bars.h"
#include "compare/comparison_workings.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "teach/figure_link.h"

#include <QComboBox>
#include <QLabel>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

namespace firn::app {

namespace {

constexpr int charactersOfName = 12;

}  // namespace

AttributionView::AttributionView(QWidget* parent)
    : QWidget(parent)
    , m_figure(choiceOf(QStringLiteral("attributedFigure"), tr("Which figure is explained"), {}))
    , m_other(choiceOf(QStringLiteral("attributedTo"), tr("Which one is explained"), {}))
    , m_sentence(plainLabel(QStringLiteral("attributionSentence")))
    , m_why(new FigureLink(tr("Explain this number"), {}))
    , m_bars(new AttributionBars)
{
    for (const AttributedKind& kind : attributedKinds())
        m_figure->addItem(translatedName(kind.label));
    m_other->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_other->setMinimumContentsLength(charactersOfName);
    auto* choosing = new QHBoxLayout;
    choosing->setSpacing(closeSpace);
    choosing->addWidget(titleLabel(tr("What did it")));
    choosing->addSpacing(closeSpace);
    choosing->addWidget(m_figure);
    choosing->addWidget(new QLabel(tr("of", "a figure of a recipe")));
    choosing->addWidget(m_other, 1);
    auto* area = new QScrollArea;
    area->setWidget(m_bars);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setAccessibleName(tr("What did it"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addLayout(choosing);
    layout->addWidget(m_sentence);
    layout->addWidget(m_why);
    layout->addWidget(area, 1);
    connect(m_why, &FigureLink::chosen, this, &AttributionView::openFigure);
    connect(m_other, &QComboBox::currentIndexChanged, this, &AttributionView::showChosen);
    connect(m_figure, &QComboBox::currentIndexChanged, this, &AttributionView::showChosen);
}

void AttributionView::show(const Comparison& comparison)
{
    m_comparison = &comparison;
    QStringList others;
    for (std::size_t i = 1; i < comparison.sides.size(); ++i)
        others << QString::fromStdString(comparison.sides[i].name);
    {
        const QSignalBlocker quietly(m_other);
        const int before = m_other->currentIndex();
        m_other->clear();
        m_other->addItems(others);
        m_other->setCurrentIndex(std::clamp(before, 0, int(others.size()) - 1));
    }
    showChosen();
}

void AttributionView::showChosen()
{
    if (!m_comparison || m_other->currentIndex() < 0 || m_figure->currentIndex() < 0)
        return;
    const auto index = std::size_t(m_other->currentIndex());
    const AttributedKind& kind = attributedKinds()[std::size_t(m_figure->currentIndex())];
    const Attribution& attribution = m_comparison->attributions[index];
    m_sentence->setText(
        translated(inASentence(attribution, kind, m_comparison->sides.front().name, m_comparison->sides[index + 1].name)));
    m_bars->show(attribution, kind);
    m_why->setVisible(!(attribution.*kind.figure).parts.empty());
}

void AttributionView::openFigure()
{
    if (m_why->isHidden())
        return;
    const AttributedKind& kind = attributedKinds()[std::size_t(m_figure->currentIndex())];
    emit figureChosen(QString::fromStdString(figureOfAttribution(kind)), std::size_t(m_other->currentIndex()) + 1);
}

}  // namespace firn::app
