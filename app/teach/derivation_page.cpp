#include "teach/derivation_page.h"

#include "gauges/palette.h"
#include "gauges/type_and_space.h"
#include "teach/figure_wording.h"
#include "teach/step_view.h"

#include <QFrame>
#include <QVBoxLayout>

namespace firn::app {

namespace {

QFrame* hairline()
{
    auto* line = new QFrame;
    line->setFrameShape(QFrame::HLine);
    line->setFrameShadow(QFrame::Plain);
    QPalette faint = line->palette();
    faint.setColor(QPalette::WindowText, gaugeColours(faint).hairline);
    line->setPalette(faint);
    return line;
}

}  // namespace

DerivationPage::DerivationPage(const Derivation& derivation, const QString& title, const QSet<int>& unfolded, QWidget* parent)
    : QWidget(parent)
    , m_lines(new QVBoxLayout(this))
{
    m_lines->setContentsMargins(groupSpace, closeSpace, groupSpace, groupSpace);
    m_lines->setSpacing(closeSpace);
    const Symbol& result = derivation.result();
    const QString exact = valueInLocale(result), shown = onBench(QString::fromStdString(derivation.figure), result);
    addLine(title, "title", titleFont(font()));
    addLine(shown, "value", figureFont(font()));
    addSteps(derivation.steps, unfolded);
    m_lines->addWidget(hairline());
    addLine(exact == shown ? exact : tr("%1, on the bench %2", "an exact value, and as rounded").arg(exact, shown), "lastLine",
        titleFont(font()));
    m_lines->addStretch(1);
}

void DerivationPage::addLine(const QString& text, const char* name, const QFont& font)
{
    QWidget* line = plainLabel(text);
    line->setObjectName(QLatin1String(name));
    line->setFont(font);
    m_lines->addWidget(line);
}

void DerivationPage::addSteps(const std::vector<WorkingStep>& steps, const QSet<int>& unfolded)
{
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const int number = int(i) + 1;
        const bool isRepeated = i > 0 && steps[i - 1].source == steps[i].source && steps[i - 1].origin == steps[i].origin;
        auto* step = new StepView(steps[i], {number, isRepeated, !unfolded.contains(number)});
        connect(step, &StepView::figureChosen, this, &DerivationPage::figureChosen);
        connect(step, &StepView::foldingChosen, this, [this, number](bool isFolded) { emit foldingChosen(number, isFolded); });
        m_lines->addWidget(hairline());
        m_lines->addWidget(step);
    }
}

}  // namespace firn::app
