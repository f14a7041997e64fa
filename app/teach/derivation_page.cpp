#include "teach/derivation_page.h"

#include "bench/hairline.h"
#include "gauges/type_and_space.h"
#include "teach/figure_wording.h"
#include "teach/step_view.h"

#include <QVBoxLayout>

namespace firn::app {

DerivationPage::DerivationPage(const Derivation& derivation, const QString& title, const QSet<int>& unfolded, QWidget* parent)
    : QWidget(parent)
    , m_lines(new QVBoxLayout(this))
{
    m_lines->setContentsMargins(groupSpace, closeSpace, groupSpace, groupSpace);
    m_lines->setSpacing(closeSpace);
    const Symbol& result = derivation.result();
    const QString shown = onBench(QString::fromStdString(derivation.figure), result);
    addLine(title, "title", titleFont(font()));
    addLine(shown, "value", figureFont(font()));
    addSteps(derivation.steps, unfolded);
    m_lines->addWidget(new Hairline);
    addLine(exactAndShown(result, shown), "lastLine", titleFont(font()));
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
        auto* step = new StepView(steps[i], {number, isSourceRepeated(steps, i), !unfolded.contains(number)});
        connect(step, &StepView::figureChosen, this, &DerivationPage::figureChosen);
        connect(step, &StepView::sourceChosen, this, &DerivationPage::sourceChosen);
        connect(step, &StepView::foldingChosen, this, [this, number](bool isFolded) { emit foldingChosen(number, isFolded); });
        m_lines->addWidget(new Hairline);
        m_lines->addWidget(step);
    }
}

}  // namespace firn::app
