#include "teach/derivation_window.h"

#include "bench/ink_label.h"
#include "exchange/derivation.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "print/chosen_paper.h"
#include "print/print_outlet.h"
#include "teach/derivation_handout.h"
#include "teach/derivation_page.h"
#include "teach/figure_link.h"
#include "teach/figure_list.h"
#include "teach/figure_wording.h"
#include "teach/step_view.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QShowEvent>
#include <QSplitter>
#include <QToolBar>
#include <QVBoxLayout>

namespace firn::app {

namespace {

constexpr QSize usualSize{1110, 660};
constexpr int listWidth_px = 450;
constexpr int narrowestPage_px = 480;
constexpr double pictureScale = 2.0;  // sharp on paper, too

}  // namespace

DerivationWindow::DerivationWindow(const Document& document, Questions& questions, QWidget* parent)
    : QWidget(parent, Qt::Window)
    , m_document(document)
    , m_open(new QAction(tr("&Explain a number…"), this))
    , m_message(new InkLabel(InkLabel::Caution))
    , m_outlet(new PrintOutlet(*this, document, questions))
    , m_figures(new FigureList)
    , m_page(new QScrollArea)
{
    setWindowTitle(tr("Explain a number"));
    resize(usualSize);
    m_open->setShortcut(tr("Ctrl+E"));
    connect(m_open, &QAction::triggered, this, &DerivationWindow::openFocused);

    connect(m_figures, &FigureList::chosen, this, &DerivationWindow::leafTo);
    const auto stay = [this] { m_browsing.stay(); };
    connect(m_figures, &QTreeWidget::itemClicked, this, stay);
    connect(m_figures, &QTreeWidget::itemActivated, this, stay);

    m_page->setWidgetResizable(true);
    m_page->setMinimumWidth(narrowestPage_px);
    m_page->setFrameShape(QFrame::NoFrame);
    m_page->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_page->setFocusPolicy(Qt::StrongFocus);
    m_page->setAccessibleName(tr("Derivation"));

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(closeSpace, gridStep, closeSpace, closeSpace);
    layout->setSpacing(gridStep);
    buildBar(*layout);
    m_message->setObjectName(QStringLiteral("message"));
    connect(m_outlet, &PrintOutlet::said, m_message, [this](const QString& sentence, bool isTrouble) {
        m_message->setInk(isTrouble ? InkLabel::Caution : InkLabel::Plain);
        m_message->setText(sentence);
    });
    layout->addWidget(m_message);
    auto* columns = new QSplitter;
    columns->addWidget(m_figures);
    columns->addWidget(m_page);
    columns->setChildrenCollapsible(false);
    columns->setStretchFactor(1, 1);
    columns->setSizes({listWidth_px, usualSize.width() - listWidth_px});
    layout->addWidget(columns, 1);

    connect(new QShortcut(Qt::Key_Escape, this), &QShortcut::activated, this, &QWidget::close);
    connect(&m_document, &Document::changed, this, [this] {
        if (isVisible())
            evaluate();
    });
}

void DerivationWindow::buildBar(QVBoxLayout& layout)
{
    auto* bar = new QToolBar(tr("Browse"));
    bar->setToolButtonStyle(Qt::ToolButtonTextOnly);
    const auto add = [&](const QString& name, const QKeySequence& keys, auto method) {
        QAction* action = bar->addAction(name, this, method);
        action->setShortcut(keys);
        action->setToolTip(tr("%1 (%2)", "an action and its keys").arg(name, keys.toString(QKeySequence::NativeText)));
        return action;
    };
    m_back = add(tr("← Back"), QKeySequence(tr("Alt+Left")), &DerivationWindow::goBack);
    m_forward = add(tr("Forward →"), QKeySequence(tr("Alt+Right")), &DerivationWindow::goForward);
    bar->addSeparator();
    m_copyText = add(tr("Copy as text"), QKeySequence::Copy, &DerivationWindow::copyText);
    m_copyPicture = add(tr("Copy as a picture"), QKeySequence(tr("Ctrl+Shift+C")), &DerivationWindow::copyPicture);
    bar->addSeparator();
    m_print = add(tr("Print…"), QKeySequence::Print, [this] { m_outlet->print(handout()); });
    m_savePdf = bar->addAction(tr("Save as PDF…"), this, [this] { m_outlet->savePdf(handout()); });
    bar->addSeparator();
    bar->addWidget(namedPaperChoice());
    layout.addWidget(bar);
}

void DerivationWindow::open(const QString& figure) { visit({figure}); }

void DerivationWindow::openAnswer(const QString& figure, const Workings& workings)
{
    visit({figure, std::make_shared<const FigureSet>(FigureSet{workings})});
}

void DerivationWindow::openOf(const QString& figure, const SharedFigures& set) { visit({figure, set}); }

void DerivationWindow::visit(const PlacedFigure& place)
{
    m_browsing.visit(place);
    come();
    m_page->setFocus();
}

/// From a page to a figure that stands in it: of the same set, or of one of its sides.
void DerivationWindow::follow(const QString& figure)
{
    static const QRegularExpression ofSide(QStringLiteral("^sides\\[(\\d+)\\]\\.(.+)$"));
    const SharedFigures set = m_browsing.here().set;
    const QRegularExpressionMatch match = ofSide.match(figure);
    if (match.hasMatch() && set)
        visit({match.captured(2), set->sides.at(match.captured(1).toUInt())});
    else
        visit({figure, set});
}

SharedFigures DerivationWindow::named() const
{
    const SharedFigures set = m_browsing.here().set;
    return set && !set->whose.isEmpty() ? set : nullptr;
}

/// Whatever stands for a figure says so in its property.
void DerivationWindow::openFocused()
{
    const QWidget* focused = QApplication::focusWidget();
    const QString figure = focused ? focused->property("figure").toString() : QString();
    if (figure.isEmpty())
        openList();
    else
        open(figure);
}

void DerivationWindow::openList()
{
    if (figure().isEmpty() || named())
        m_browsing.visit({QStringLiteral("percent.sugars")});
    come();
    m_figures->setFocus();
}

/// The focus stays in the list, so that the arrow keys go on.
void DerivationWindow::leafTo(const QString& figure)
{
    m_browsing.leafTo({figure, named()});
    m_unfolded.clear();
    showPage(false);
}

void DerivationWindow::goBack()
{
    m_browsing.back();
    come();
}

void DerivationWindow::goForward()
{
    m_browsing.forward();
    come();
}

/// To the page that is being browsed.
void DerivationWindow::come()
{
    m_unfolded.clear();
    if (isVisible()) {
        listFigures();
        showPage(false);
    } else {
        m_page->verticalScrollBar()->setValue(0);
        show();
    }
    raise();
    activateWindow();
}

void DerivationWindow::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (!event->spontaneous())
        evaluate();
}

void DerivationWindow::hideEvent(QHideEvent* event)
{
    QWidget::hideEvent(event);
    if (!event->spontaneous())
        m_workings = {};
}

void DerivationWindow::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (isVisible() && (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange))
        showPage(true);
}

/// Under the very conditions that the figures of the bench were calculated with.
void DerivationWindow::evaluate()
{
    m_workings = analyseWithWorkings(m_document.recipe(), m_document.catalogue(), m_document.analysis().conditions,
        m_document.component(), m_document.stepsDone())
                     .workings;
    listFigures();
    showPage(true);
}

void DerivationWindow::listFigures()
{
    const SharedFigures set = named();
    m_figures->show(
        set ? set->workings : m_workings, [this](const QString& figure, const Symbol& result) { return headOf(figure, result); });
}

Result<Derivation> DerivationWindow::derivation() const
{
    const auto [figure, set] = m_browsing.here();
    const std::string key = figure.toStdString();
    return explain(key, named() || (set && set->workings.find(key)) ? set->workings : m_workings);
}

FigureHead DerivationWindow::headOf(const QString& figure, const Symbol& result) const
{
    const SharedFigures set = named();
    if (!set)
        return {titleInLocale(figure, result, m_document.analysis())};
    return {titleInLocale(figure, result, set->analysis), set->whose, set->shown.value(figure, onBench(figure, result))};
}

/// Built again; on the same page the reader stays at the same place, with the focus on the same figure.
void DerivationWindow::showPage(bool isSamePage)
{
    const int scrolled = isSamePage ? m_page->verticalScrollBar()->value() : 0;
    const auto* focused = qobject_cast<FigureLink*>(QApplication::focusWidget());
    const QString focusedFigure = isSamePage && focused && isAncestorOf(focused) ? focused->figure() : QString();
    const auto shown = derivation();
    QWidget* page = shown ? pageOf(*shown) : plainLabel(plain(shown.error()));
    const bool hadFocus = m_page->widget() && m_page->isAncestorOf(QApplication::focusWidget());
    m_page->setWidget(page);  // deletes the page before
    m_page->verticalScrollBar()->setValue(scrolled);
    if (hadFocus)
        m_page->setFocus();
    for (FigureLink* link : page->findChildren<FigureLink*>()) {
        if (!focusedFigure.isEmpty() && link->figure() == focusedFigure) {
            link->setFocus();
            break;
        }
    }

    m_figures->choose(figure());
    const SharedFigures set = named();
    setWindowTitle(set ? tr("Explain a number: %1").arg(QString(set->whose).replace(QLatin1String("[*]"), QLatin1String("[*][*]")))
                       : tr("Explain a number"));
    m_back->setEnabled(m_browsing.canGoBack());
    m_forward->setEnabled(m_browsing.canGoForward());
    m_copyText->setEnabled(shown.has_value());
    for (QAction* action : {m_copyPicture, m_print, m_savePdf})
        action->setEnabled(shown.has_value());
    m_message->setText({});
}

QWidget* DerivationWindow::pageOf(const Derivation& derivation)
{
    auto* page = new DerivationPage(derivation, headOf(figure(), derivation.result()), m_unfolded);
    connect(page, &DerivationPage::figureChosen, this, &DerivationWindow::follow);
    connect(page, &DerivationPage::sourceChosen, this, &DerivationWindow::sourceChosen);
    connect(page, &DerivationPage::foldingChosen, this, [this](int step, bool isFolded) {
        if (isFolded)
            m_unfolded.remove(step);
        else
            m_unfolded.insert(step);
        showPage(true);
    });
    return page;
}

void DerivationWindow::copyText()
{
    if (const auto shown = derivation())
        QApplication::clipboard()->setText(
            QString::fromStdString(derivationText(*shown, headOf(figure(), shown->result()).whose.toStdString())));
}

void DerivationWindow::copyPicture()
{
    QWidget* page = m_page->widget();
    QImage image(page->size() * pictureScale, QImage::Format_RGB32);
    image.setDevicePixelRatio(pictureScale);
    image.fill(palette().color(QPalette::Window));
    page->render(&image);
    QApplication::clipboard()->setImage(image);
}

Result<Handout> DerivationWindow::handout() const
{
    return derivation().map(
        [this](const Derivation& shown) { return handoutOf(shown, headOf(figure(), shown.result()), nameOnPaper(m_document)); });
}

}  // namespace firn::app
