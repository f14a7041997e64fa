#include "teach/step_view.h"

#include "derivation/formula_text.h"
#include "explain/sources.h"
#include "gauges/palette.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "teach/figure_link.h"
#include "teach/figure_wording.h"
#include "teach/formula_picture.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

namespace firn::app {

namespace {

constexpr int numberColumn_px = 32;
constexpr int meaningStretch = 1;
constexpr int rowHeight_px = 24;

Number numberOf(const Symbol& symbol) { return {symbol.value, symbol.unit, true, symbol.decimals}; }

bool isIn(const std::vector<SeriesTerm>& terms, const Symbol& symbol)
{
    return std::ranges::any_of(terms, [&](const SeriesTerm& term) {
        const std::vector<Symbol> symbols = symbolsOf(term.formula);
        return std::ranges::any_of(symbols, [&](const Symbol& each) { return isSame(each, symbol); });
    });
}

/// The first figure that a term is made of.
std::string figureIn(const SeriesTerm& term)
{
    const std::vector<Symbol> symbols = symbolsOf(term.formula);
    const auto found = std::ranges::find_if(symbols, [](const Symbol& symbol) { return !symbol.figure.empty(); });
    return found == symbols.end() ? std::string() : found->figure;
}

QWidget* picture(Formula formula, bool isFolded, const QFont& font)
{
    auto* formulaPicture = new FormulaPicture(std::move(formula), isFolded);
    formulaPicture->setFont(font);
    return formulaPicture;
}

}  // namespace

QWidget* plainLabel(const QString& text, bool isQuiet)
{
    auto* label = new QLabel;
    label->setTextFormat(Qt::PlainText);
    label->setText(text);
    label->setWordWrap(true);
    label->setMinimumWidth(1);
    if (isQuiet) {
        QPalette quiet = label->palette();
        quiet.setColor(QPalette::WindowText, gaugeColours(quiet).quietInk);
        label->setPalette(quiet);
    }
    return label;
}

StepView::StepView(const WorkingStep& step, const Place& place, QWidget* parent)
    : QWidget(parent)
    , m_place(place)
{
    auto* columns = new QHBoxLayout(this);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(0);
    auto* number = plainLabel(QStringLiteral("%1.").arg(place.number), true);
    number->setFixedWidth(numberColumn_px);
    columns->addWidget(number, 0, Qt::AlignTop);
    m_lines = new QVBoxLayout;
    m_lines->setSpacing(closeSpace);
    columns->addLayout(m_lines, 1);

    m_lines->addWidget(picture(step.formula, place.isFolded, titleFont(font())));
    addSymbols(step);
    addValues(step);
    addNotes(step);
}

void StepView::addValues(const WorkingStep& step)
{
    Formula values = withValues(step.formula, &step.result);
    const Formula result = Number(numberOf(step.result));
    auto* sides = std::get_if<Operation>(&values.node);
    const bool isEquation = sides && sides->op == Operator::Equals;
    const bool isSolved = step.method.has_value() || !isEquation;
    // "m = 5 g" needs no "= 5 g" after it.
    const bool isBareResult = isEquation && textOf(sides->parts.back()) == textOf(result);
    if (!isSolved && !isBareResult)
        sides->parts.push_back(result);
    m_lines->addWidget(picture(values, m_place.isFolded, titleFont(font())));
    if (isSolved)
        m_lines->addWidget(picture(equation(step.result, result), m_place.isFolded, titleFont(font())));
    if (const auto* terms = termsOf(step.formula); terms && !terms->empty())
        addTerms(*terms);
}

QWidget* StepView::meaning(const QString& text, const std::string& figure)
{
    if (figure.empty())
        return plainLabel(text);
    auto* link = new FigureLink(text, QString::fromStdString(figure));
    connect(link, &FigureLink::chosen, this, &StepView::figureChosen);
    return link;
}

void StepView::addRow(QGridLayout* table, QWidget* symbol, QWidget* value, QWidget* what)
{
    const int row = table->rowCount();
    table->addWidget(symbol, row, 0, Qt::AlignVCenter);
    table->addWidget(value, row, 1, Qt::AlignRight | Qt::AlignVCenter);
    table->addWidget(what, row, 2);
    table->setColumnStretch(2, meaningStretch);
    table->setRowMinimumHeight(row, rowHeight_px);
    table->setHorizontalSpacing(groupSpace);
    table->setVerticalSpacing(gridStep / 2);
}

/// The terms of a sum say themselves what stands in them.
void StepView::addSymbols(const WorkingStep& step)
{
    static const std::vector<SeriesTerm> none;
    const auto* found = termsOf(step.formula);
    const std::vector<SeriesTerm>& terms = found ? *found : none;
    auto* table = new QGridLayout;
    const auto add = [&](const Symbol& symbol, const std::string& figure) {
        auto* value = new QLabel(valueInLocale(symbol));
        value->setTextFormat(Qt::PlainText);
        addRow(table, picture(symbol, true, font()), value, meaning(plain(symbol.meaning), figure));
    };
    add(step.result, {});
    const std::vector<Symbol> symbols = symbolsOf(step.formula);
    for (const Symbol& symbol : symbols) {
        if (!isSame(symbol, step.result) && !isIn(terms, symbol))
            add(symbol, symbol.figure);
    }
    m_lines->addLayout(table);
}

void StepView::addTerms(const std::vector<SeriesTerm>& terms)
{
    const bool isLong = terms.size() > mostTermsFolded;
    const std::size_t shown = isLong && m_place.isFolded ? mostTermsFolded - 1 : terms.size();
    const bool hasSources = std::ranges::any_of(terms, [](const SeriesTerm& term) { return !term.source.empty(); });
    auto* table = new QGridLayout;
    for (std::size_t i = 0; i < shown; ++i) {
        const QString label = plain(terms[i].label);
        QWidget* what = meaning(label, figureIn(terms[i]));
        const int row = table->rowCount();
        table->addWidget(what, row, 0);
        table->addWidget(picture(withValues(terms[i].formula), m_place.isFolded, font()), row, 1, Qt::AlignVCenter);
        if (!terms[i].source.empty())
            table->addWidget(plainLabel(plain(terms[i].source), true), row, 2);
    }
    table->setColumnStretch(0, 1);
    table->setColumnStretch(1, 2);
    table->setColumnStretch(2, hasSources ? 2 : 0);
    table->setHorizontalSpacing(groupSpace);
    table->setVerticalSpacing(gridStep);
    m_lines->addLayout(table);
    if (!isLong)
        return;
    auto* fold =
        new QPushButton(m_place.isFolded ? tr("And %n more", "terms of a sum", int(terms.size() - shown)) : tr("Fold the sum"));
    fold->setObjectName(QStringLiteral("fold%1").arg(m_place.number));
    fold->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    connect(fold, &QPushButton::clicked, this, [this] { emit foldingChosen(!m_place.isFolded); });
    m_lines->addWidget(fold);
}

void StepView::addNotes(const WorkingStep& step)
{
    const auto add = [this](const QString& pattern, const std::optional<Sentence>& sentence) {
        if (sentence)
            m_lines->addWidget(plainLabel(pattern.arg(plain(*sentence)), true));
    };
    add(tr("How: %1"), step.method);
    add(tr("Holds: %1"), step.range);
    add(tr("Uncertain: %1"), step.uncertainty);
    if (m_place.isSourceRepeated)
        return;
    const QString publication = translatedName(factsOf(step.source).publication);
    const QString source =
        step.origin ? tr("%1; %2", "a source, and more about it").arg(publication, plain(*step.origin)) : publication;
    m_lines->addWidget(plainLabel(tr("Source: %1").arg(source), true));
}

}  // namespace firn::app
