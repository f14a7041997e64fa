#include "compare/comparing_window.h"

#include "bench/close_front.h"
#include "bench/fields.h"
#include "bench/message_bar.h"
#include "bench/questions.h"
#include "bench/save_shortcut.h"
#include "bench/undo_shortcut.h"
#include "compare/attribution_view.h"
#include "compare/chooser_row.h"
#include "compare/compared_curves.h"
#include "compare/comparison_handout.h"
#include "compare/comparison_table.h"
#include "compare/conditions_row.h"
#include "compare/fairness_lines.h"
#include "compare/output_row.h"
#include "document/document.h"
#include "document/file_work.h"
#include "document/places.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "print/print_outlet.h"
#include "teach/derivation_window.h"

#include <QApplication>
#include <QClipboard>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QLabel>
#include <QMimeData>
#include <QShortcut>
#include <QSplitter>
#include <QVBoxLayout>
#include <algorithm>

namespace firn::app {

namespace {

const QString geometryKey = QStringLiteral("compare/geometry");
constexpr QSize usualSize{1240, 680};

QString namesIn(const Comparison& comparison)
{
    QStringList names;
    for (const ComparedSide& side : comparison.sides)
        names << QString::fromStdString(side.name);
    return names.join(QStringLiteral(", "));
}

}  // namespace

ComparingWindow::ComparingWindow(Document& document, Questions& questions, QWidget* parent)
    : QWidget(parent, Qt::Window)
    , m_document(document)
    , m_questions(questions)
    , m_choices(document)
    , m_messages(new MessageBar)
    , m_outlet(new PrintOutlet(*this, document, questions))
    , m_places(new ChooserRow)
    , m_conditions(new ConditionsRow)
    , m_output(new OutputRow)
    , m_hint(plainLabel(QStringLiteral("compareHint")))
    , m_fairness(new FairnessLines)
    , m_table(new ComparisonTable)
    , m_curves(new ComparedCurves)
    , m_attribution(new AttributionView)
{
    setObjectName(QStringLiteral("comparingWindow"));
    setWindowTitle(tr("Compare"));
    setAcceptDrops(true);
    m_hint->setInk(InkLabel::Quiet);
    layOut();

    const auto onKey = [this](const QKeySequence& keys, auto action) {
        connect(new QShortcut(keys, this), &QShortcut::activated, this, action);
    };
    onKey(Qt::Key_Escape, [this] { closeFront(*this); });
    onKey(QKeySequence::Print, [this] { print(); });
    onKey(tr("Ctrl+Shift+C"), [this] { copyPicture(); });
    onKey(tr("Ctrl+E"),
        [this] { m_attribution->isAncestorOf(focusWidget()) ? m_attribution->openFigure() : m_table->openCurrent(); });
    takeRecipesUndo(*this, m_document, *m_messages);
    if (parent)
        takeRecipesSave(*this, *parent, m_document, *m_messages);
    connect(&document, &Document::changed, this, &ComparingWindow::refresh);
    connect(m_places, &ChooserRow::chosen, this, &ComparingWindow::place);
    connect(m_places, &ChooserRow::fileWanted, this, &ComparingWindow::openFile);
    connect(m_table, &ComparisonTable::figureChosen, this, &ComparingWindow::explain);
    connect(m_attribution, &AttributionView::figureChosen, this,
        [this](const QString& figure, std::size_t side) { explain(figure, side, true); });
    connect(m_conditions, &ConditionsRow::changed, this, &ComparingWindow::refresh);
    connect(m_output, &OutputRow::textWanted, this, &ComparingWindow::copyText);
    connect(m_output, &OutputRow::pictureWanted, this, &ComparingWindow::copyPicture);
    connect(m_output, &OutputRow::printWanted, this, &ComparingWindow::print);
    connect(m_output, &OutputRow::pdfWanted, this, &ComparingWindow::savePdf);
    connect(m_outlet, &PrintOutlet::said, m_messages, &MessageBar::tell);
    resize(usualSize);
    restoreGeometry(state().value(geometryKey).toByteArray());
}

/// A field that loses the focus may still have something to say: the window hides while it is whole, and can hear it.
ComparingWindow::~ComparingWindow() { hide(); }

QWidget* ComparingWindow::pictures()
{
    auto* result = new QWidget;
    auto* layout = new QVBoxLayout(result);
    layout->setContentsMargins(groupSpace, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(titleLabel(tr("Freezing curves")));
    layout->addWidget(m_curves, 1);
    layout->addSpacing(closeSpace);
    layout->addWidget(m_attribution, 1);
    return result;
}

void ComparingWindow::layOut()
{
    auto* split = new QSplitter;
    split->setObjectName(QStringLiteral("compareSplit"));
    split->addWidget(m_table);
    split->addWidget(pictures());
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    split->setChildrenCollapsible(false);
    split->setSizes({3 * usualSize.width() / 5, 2 * usualSize.width() / 5});
    m_body = new QWidget;
    auto* body = new QVBoxLayout(m_body);
    body->setContentsMargins(0, 0, 0, 0);
    body->setSpacing(closeSpace);
    body->addWidget(m_fairness);
    body->addWidget(split, 1);
    auto* row = new QHBoxLayout;
    row->addWidget(m_conditions);
    row->addStretch();
    row->addWidget(m_output);
    auto* inner = new QWidget;
    auto* column = new QVBoxLayout(inner);
    column->setContentsMargins(groupSpace, groupSpace, groupSpace, groupSpace);
    column->setSpacing(closeSpace);
    column->addWidget(m_places);
    column->addLayout(row);
    column->addWidget(m_hint);
    column->addWidget(m_body, 1);
    column->addStretch();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(inner, 1);
    layout->addWidget(m_messages);
}

void ComparingWindow::choose(const QStringList& versions)
{
    m_chosen = m_choices.sensible(versions);
    refresh();
}

void ComparingWindow::place(std::size_t place, const Choice& choice)
{
    m_chosen[place] = choice;
    refresh();
}

void ComparingWindow::addFile(const QString& path)
{
    const auto add = [this](Result<OpenedFile> file) {
        if (!file) {
            m_messages->say(translated(file.error()));
            return;
        }
        m_messages->dismiss();
        const auto free = std::ranges::find(m_chosen, Choice::Nothing, &Choice::kind);
        place(free == m_chosen.end() ? m_chosen.size() - 1 : std::size_t(free - m_chosen.begin()), m_choices.add(std::move(*file)));
    };
    sharedFileWork().run(
        path, this, [path](const Disk&) { return openedFile(path); }, add);
}

void ComparingWindow::compareWith(const QString& path, const Recipe& onDisk)
{
    m_chosen = {m_choices.add(openedFile(path, onDisk)), Choice{Choice::Bench}};
    refresh();
}

void ComparingWindow::openFile()
{
    const QString folder = m_document.path().isEmpty() ? QString() : QFileInfo(m_document.path()).path();
    if (const QString path = m_questions.fileToOpen(this, tr("Compare with a recipe"), folder); !path.isEmpty())
        addFile(path);
}

ComparingWishes ComparingWindow::wishes() const
{
    ComparingWishes wishes;
    wishes.basis = m_conditions->basis();
    wishes.serveAt = m_conditions->serveAt();
    wishes.readAt = m_document.analysis().conditions.readAt;
    wishes.instruments = m_document.analysis().conditions.instruments;
    return wishes;
}

void ComparingWindow::refresh()
{
    // Nobody looks while it is hidden, and typing an amount should not wait for it.
    if (!isVisible())
        return;
    for (Choice& choice : m_chosen)
        if (!m_choices.has(choice))
            choice = {};
    m_places->show(m_choices, m_chosen);
    m_comparison.reset();
    m_figures.forget();
    const std::vector<Candidate> candidates = m_choices.candidatesOf(m_chosen);
    QString hint;
    if (candidates.size() < fewestCompared) {
        hint = m_document.recipe().versions.empty()
                   ? tr("There is one recipe here so far. Open a file or drop one here, or keep a version before you change the "
                        "recipe.")
                   : tr("Choose what to compare: a version, what is on the bench, or a file. A file can be dropped here, too.");
    } else if (auto comparison = compare(candidates, m_document.catalogue(), wishes())) {
        m_comparison = std::move(*comparison);
    } else {
        hint = translated(comparison.error());
    }
    m_hint->setText(hint);
    m_body->setVisible(m_comparison.has_value());
    m_output->setEnabled(m_comparison.has_value());
    if (m_comparison) {
        m_fairness->show(m_comparison->fairness);
        m_table->show(*m_comparison);
        m_curves->show(*m_comparison);
        m_attribution->show(*m_comparison);
    }
    setWindowTitle(title().replace(QLatin1String("[*]"), QLatin1String("[*][*]")));
}

QString ComparingWindow::title() const
{
    const QString recipe = m_document.displayName();
    return m_comparison ? tr("Compare: %1 (%2)").arg(recipe, namesIn(*m_comparison)) : tr("Compare: %1").arg(recipe);
}

QString ComparingWindow::printedTitle() const
{
    return tr("%1: %2", "a recipe's title and the names of what is compared").arg(nameOnPaper(m_document), namesIn(*m_comparison));
}

void ComparingWindow::explain(const QString& figure, std::size_t side, bool isDifference)
{
    const Catalogue& catalogue = m_document.catalogue();
    emit derivationWanted(figure, isDifference ? m_figures.differences(*m_comparison, side, catalogue)
                                               : m_figures.having(figure, *m_comparison, side, catalogue));
}

void ComparingWindow::copyText() const
{
    if (m_comparison)
        QApplication::clipboard()->setText(tabbedText(*m_comparison));
}

void ComparingWindow::copyPicture()
{
    if (m_comparison)
        QApplication::clipboard()->setPixmap(m_body->grab());
}

void ComparingWindow::print()
{
    if (m_comparison)
        m_outlet->print(handoutOf(*m_comparison, printedTitle()));
}

void ComparingWindow::savePdf()
{
    if (m_comparison)
        m_outlet->savePdf(handoutOf(*m_comparison, printedTitle()));
}

void ComparingWindow::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    refresh();
    m_places->takeFocus();
}

void ComparingWindow::hideEvent(QHideEvent* event)
{
    QWidget::hideEvent(event);
    state().setValue(geometryKey, saveGeometry());
}

void ComparingWindow::dragEnterEvent(QDragEnterEvent* event)
{
    const QList<QUrl> urls = event->mimeData()->urls();
    if (!urls.isEmpty() && urls.front().isLocalFile())
        event->acceptProposedAction();
}

void ComparingWindow::dropEvent(QDropEvent* event)
{
    event->acceptProposedAction();
    for (const QUrl& url : event->mimeData()->urls())
        addFile(url.toLocalFile());
}

namespace {

/// The window of this bench; true if it was made just now.
std::pair<ComparingWindow*, bool> comparingWindow(Document& document, Questions& questions, QWidget& near)
{
    if (auto* window = near.findChild<ComparingWindow*>(QString(), Qt::FindDirectChildrenOnly))
        return {window, false};
    auto* window = new ComparingWindow(document, questions, &near);
    if (auto* derivations = near.findChild<DerivationWindow*>(QString(), Qt::FindDirectChildrenOnly))
        QObject::connect(window, &ComparingWindow::derivationWanted, derivations, &DerivationWindow::openOf);
    return {window, true};
}

void bringForward(QWidget& window)
{
    window.show();
    window.raise();
    window.activateWindow();
}

}  // namespace

void showComparing(Document& document, Questions& questions, QWidget& near, const QStringList& versions)
{
    const auto [window, isNew] = comparingWindow(document, questions, near);
    if (isNew || !versions.isEmpty())
        window->choose(versions);
    bringForward(*window);
}

void showComparingWith(Document& document, Questions& questions, QWidget& near, const QString& path, const Recipe& onDisk)
{
    ComparingWindow* window = comparingWindow(document, questions, near).first;
    window->compareWith(path, onDisk);
    bringForward(*window);
}

}  // namespace firn::app
