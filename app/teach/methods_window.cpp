#include "teach/methods_window.h"

#include "bench/close_front.h"
#include "bench/hairline.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "teach/derivation_page.h"
#include "teach/derivation_window.h"
#include "teach/figure_wording.h"
#include "teach/sources_window.h"
#include "teach/step_view.h"

#include <QFrame>
#include <QGridLayout>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QShowEvent>
#include <QSplitter>
#include <QVBoxLayout>
#include <cmath>

namespace firn::app {

namespace {

constexpr QSize usualSize{1290, 690};
constexpr int narrowestColumn_px = 400;
constexpr int reasons_px = 260;
constexpr int decimals = 2;

QScrollArea* scrolledPage(const char* name, const QString& spoken)
{
    auto* page = new QScrollArea;
    page->setObjectName(QLatin1String(name));
    page->setAccessibleName(spoken);
    page->setWidgetResizable(true);
    page->setMinimumWidth(narrowestColumn_px);
    page->setFrameShape(QFrame::NoFrame);
    page->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    page->setFocusPolicy(Qt::StrongFocus);
    return page;
}

void putPage(QScrollArea& area, QWidget* page)
{
    const int scrolled = area.verticalScrollBar()->value();
    area.setWidget(page);  // deletes the page before
    area.verticalScrollBar()->setValue(scrolled);
}

/// In units of the last digit that is shown.
double rounded(KelvinDifference difference) { return std::round(difference.value * std::pow(10.0, decimals)); }

QString withSign(KelvinDifference difference)
{
    const QString sign = rounded(difference) > 0.0 ? QStringLiteral("+") : QString();
    return sign + degreesApart(difference, decimals);
}

/// Whether the figures as shown add up to the whole as shown.
bool addsUp(const MethodComparison& found)
{
    double sum = 0.0;
    for (const Parting& parting : found.partings)
        sum += rounded(parting.difference);
    return sum == rounded(found.difference);
}

}  // namespace

MethodsWindow::MethodsWindow(const Document& document, QWidget* parent)
    : QWidget(parent, Qt::Window)
    , m_document(document)
    , m_textbook{scrolledPage("textbook", tr("By sucrose equivalents")), tr("By sucrose equivalents, as the textbook does")}
    , m_curve{scrolledPage("waterActivity", tr("By water activity")), tr("By water activity, as Firn's curve does")}
    , m_reasons(scrolledPage("reasons", tr("Where they differ, and why")))
{
    setObjectName(QStringLiteral("methods"));
    setWindowTitle(tr("Two methods for the freezing point"));
    resize(usualSize);
    layOut();
    connect(new QShortcut(Qt::Key_Escape, this), &QShortcut::activated, this, [this] { closeFront(*this); });
    connect(&m_document, &Document::changed, this, [this] {
        if (isVisible())
            evaluate();
    });
}

void MethodsWindow::layOut()
{
    auto* columns = new QSplitter;
    columns->addWidget(m_textbook.page);
    columns->addWidget(m_curve.page);
    columns->setSizes({1, 1});
    auto* rows = new QSplitter(Qt::Vertical);
    rows->addWidget(columns);
    rows->addWidget(m_reasons);
    rows->setStretchFactor(0, 1);
    rows->setSizes({usualSize.height() - reasons_px, reasons_px});
    for (QSplitter* splitter : {columns, rows})
        splitter->setChildrenCollapsible(false);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(closeSpace, gridStep, closeSpace, closeSpace);
    layout->addWidget(rows);
}

void MethodsWindow::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (!event->spontaneous())
        evaluate();
}

void MethodsWindow::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (isVisible() && (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange))
        evaluate();
}

void MethodsWindow::evaluate()
{
    auto found = compareMethods(analyseWithWorkings(m_document.recipe(), m_document.catalogue(), m_document.analysis().conditions,
        m_document.component(), m_document.stepsDone()));
    if (!found) {
        m_found.reset();
        showNothing(plain(found.error()));
        return;
    }
    m_found = std::move(*found);
    showColumn(m_textbook, m_found->textbook);
    showColumn(m_curve, m_found->waterActivity);
    showReasons(*m_found);
}

void MethodsWindow::showColumn(Column& column, const Derivation& derivation)
{
    auto* page = new DerivationPage(derivation, {column.title}, column.unfolded);
    connect(page, &DerivationPage::figureChosen, this, &MethodsWindow::figureChosen);
    connect(page, &DerivationPage::sourceChosen, this, &MethodsWindow::sourceChosen);
    connect(page, &DerivationPage::foldingChosen, this, [this, &column, &derivation](int step, bool isFolded) {
        if (isFolded)
            column.unfolded.remove(step);
        else
            column.unfolded.insert(step);
        showColumn(column, derivation);
    });
    putPage(*column.page, page);
}

void MethodsWindow::showReasons(const MethodComparison& found)
{
    auto* page = new QWidget;
    auto* table = new QGridLayout(page);
    table->setContentsMargins(groupSpace, closeSpace, groupSpace, closeSpace);
    table->setHorizontalSpacing(groupSpace);
    table->setVerticalSpacing(gridStep);
    table->setColumnStretch(1, 1);
    const auto addRow = [&](const QString& value, const QString& text, const char* name) {
        const int row = table->rowCount();
        auto* shown = new QLabel(value);
        shown->setTextFormat(Qt::PlainText);
        shown->setObjectName(QLatin1String(name));
        shown->setAlignment(Qt::AlignRight | Qt::AlignTop);
        table->addWidget(shown, row, 0);
        QWidget* reason = plainLabel(text);
        table->addWidget(reason, row, 1);
        return std::pair{shown, reason};
    };
    QWidget* summary = plainLabel(plain(found.summary));
    summary->setObjectName(QStringLiteral("summary"));
    summary->setFont(titleFont(font()));
    table->addWidget(summary, 0, 0, 1, 2);
    // The whole stands before its parts, where no list of them is too long for it.
    const QString whole = tr("The freezing point by water activity minus that by sucrose equivalents. It comes from:");
    const auto [value, text] = addRow(withSign(found.difference),
        addsUp(found) ? whole : tr("%1 (rounded separately, so the sum may differ in the last digit)").arg(whole), "difference");
    QFont bold = font();
    bold.setBold(true);
    value->setFont(bold);
    text->setFont(bold);
    table->addWidget(new Hairline, table->rowCount(), 0, 1, 2);
    for (const Parting& parting : found.partings)
        addRow(withSign(parting.difference), plain(parting.reason), "parting");
    if (found.advice)
        table->addWidget(plainLabel(plain(*found.advice)), table->rowCount(), 0, 1, 2);
    table->setRowStretch(table->rowCount(), 1);
    putPage(*m_reasons, page);
}

void MethodsWindow::showNothing(const QString& why)
{
    for (QScrollArea* area : {m_textbook.page, m_curve.page})
        putPage(*area, new QWidget);
    QWidget* sentence = plainLabel(why);
    sentence->setContentsMargins(groupSpace, closeSpace, groupSpace, closeSpace);
    putPage(*m_reasons, sentence);
}

MethodsWindow& showMethods(const Document& document, QWidget& bench)
{
    auto* window = bench.findChild<MethodsWindow*>();
    if (!window) {
        window = new MethodsWindow(document, &bench);
        QObject::connect(window, &MethodsWindow::sourceChosen, &bench, [&bench](Source source) { showSources(bench, source); });
        QObject::connect(window, &MethodsWindow::figureChosen, bench.findChild<DerivationWindow*>(), &DerivationWindow::open);
    }
    window->show();
    window->raise();
    window->activateWindow();
    return *window;
}

}  // namespace firn::app
