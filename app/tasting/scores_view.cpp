#include "tasting/scores_view.h"

#include "bench/fields.h"
#include "bench/ink_label.h"
#include "document/version_edits.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "tasting/scales.h"
#include "tasting/score_chart.h"
#include "tasting/tasting_wording.h"

#include <QComboBox>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace firn::app {

ScoresView::ScoresView(const Document& document, QWidget* parent)
    : QWidget(parent)
    , m_document(document)
    , m_scale(choiceOf(QStringLiteral("chartScale"), tr("Scale"), {}))
    , m_chart(new ScoreChart)
    , m_waiting(new InkLabel(InkLabel::Quiet, this))
    , m_unfair(new InkLabel(InkLabel::Caution, this))
{
    m_waiting->setObjectName(QStringLiteral("waitingTastings"));
    m_unfair->setObjectName(QStringLiteral("unfair"));
    auto* layout = new QVBoxLayout(this);
    layout->setSpacing(closeSpace);
    layout->addWidget(m_scale);
    layout->addWidget(m_chart);
    layout->addWidget(m_unfair);
    layout->addWidget(m_waiting);
    layout->addStretch();
    connect(m_scale, &QComboBox::activated, this, &ScoresView::show);
    connect(m_chart, &Gauge::figureChosen, this, &ScoresView::explain);
}

void ScoresView::fillScales()
{
    const QString before = m_scale->currentText();
    const QSignalBlocker blocker(m_scale);
    m_scale->clear();
    for (const TastingScale& scale : m_document.recipe().scales)
        m_scale->addItem(QString::fromStdString(scale.name));
    m_scale->setCurrentIndex(std::max(0, m_scale->findText(before, Qt::MatchExactly | Qt::MatchCaseSensitive)));
    m_scale->setVisible(m_scale->count() > 0);
}

void ScoresView::show()
{
    fillScales();
    const Recipe& recipe = m_document.recipe();
    const TastingScale* scale = scaleNamed(recipe, m_scale->currentText().toStdString());
    const ScoresOnScale scores = scale ? scoresOn(recipe, scale->name) : ScoresOnScale();
    QStringList names, unfair;
    for (const VersionScores& version : scores.versions)
        names.append(nameOfVersion(recipe, version.version));
    for (const Sentence& reason : scores.unfair)
        unfair.append(translated(reason));
    if (names.isEmpty())
        m_chart->showNothing(scale ? tr("Scores on this scale are drawn here, one line a version.")
                                   : tr("Choose scales first: what tasters give a number for."));
    else
        m_chart->show(*scale, scores, names);
    m_unfair->setText(unfair.join(u'\n'));
    const int hidden = int(scores.hiddenTastings);
    m_waiting->setText(hidden == 0   ? QString()
                       : hidden == 1 ? tr("One blind tasting is left out until its sheet is revealed.")
                                     : tr("%n blind tastings are left out until their sheet is revealed.", nullptr, hidden));
}

void ScoresView::explain(const QString& figure)
{
    const Recipe& recipe = m_document.recipe();
    Workings workings;
    const ScoresOnScale scores = scoresOn(recipe, m_scale->currentText().toStdString(), &workings);
    for (std::size_t i = 0; i < scores.versions.size(); ++i) {
        if (const std::string key = figureOfMean(i); figure == QString::fromStdString(key)) {
            FigureSet set{{}, tr("“%1” as tasted").arg(nameOfVersion(recipe, scores.versions[i].version)), {},
                {{figure, meanText(scores.versions[i])}}};
            set.workings.of(key) = workings.of(key);
            emit figureWanted(figure, std::make_shared<const FigureSet>(std::move(set)));
        }
    }
}

}  // namespace firn::app
