#include "teach/derivation_page.h"

#include "bench/hairline.h"
#include "gauges/type_and_space.h"
#include "teach/step_view.h"

#include <QVBoxLayout>

namespace firn::app {

DerivationPage::DerivationPage(const Derivation& derivation, const FigureHead& head, const QSet<int>& unfolded, QWidget* parent)
    : QWidget(parent)
    , m_lines(new QVBoxLayout(this))
{
    m_lines->setContentsMargins(groupSpace, closeSpace, groupSpace, groupSpace);
    m_lines->setSpacing(closeSpace);
    const QString figure = QString::fromStdString(derivation.figure);
    addLine(head.title, "title", titleFont(font()));
    if (!head.whose.isEmpty())
        addLine(head.whose, "whose", titleFont(font()));
    addLine(shownText(head, figure, derivation.result()), "value", figureFont(font()));
    addSteps(derivation.steps, unfolded);
    m_lines->addWidget(new Hairline);
    addLine(lastLine(head, figure, derivation.result()), "lastLine", titleFont(font()));
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
