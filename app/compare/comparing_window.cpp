#include "compare/comparing_window.h"

#include "bench/close_front.h"
#include "bench/fields.h"
#include "bench/message_bar.h"
#include "bench/questions.h"
#include "compare/attribution_view.h"
#include "compare/chooser_row.h"
#include "compare/compared_curves.h"
#include "compare/comparison_document.h"
#include "compare/comparison_table.h"
#include "document/document.h"
#include "document/places.h"
#include "gauges/marked_lines.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QVBoxLayout>
#include <algorithm>

namespace firn::app {

namespace {

const QString geometryKey = QStringLiteral("compare/geometry");
constexpr QSize usualSize{1240, 680};
constexpr double usualPortion_g = 80.0;
constexpr int mostFairnessLines = 4;

QPushButton* button(const QString& name, const QString& text, QComboBox& beside)
{
    auto* result = new QPushButton(text);
    result->setObjectName(name);
    result->setMinimumHeight(beside.minimumHeight());
    result->setAutoDefault(false);
    return result;
}

QString namesIn(const Comparison& comparison)
{
    QStringList names;
    for (const ComparedSide& side : comparison.sides)
        names << QString::fromStdString(side.name);
    return names.join(QStringLiteral(", "));
}

}  // namespace

ComparingWindow::ComparingWindow(Document& document, QWidget* parent)
    : QWidget(parent, Qt::Window)
    , m_document(document)
    , m_choices(document)
    , m_messages(new MessageBar)
    , m_places(new ChooserRow)
    , m_basis(choiceOf(
          QStringLiteral("basis"), tr("What the masses are of"), {tr("in 100 g"), tr("in the whole batch"), tr("in a portion")}))
    , m_portion(fieldFor(QStringLiteral("portion"), tr("Mass of a portion"), tr("g"), usualPortion_g, {0.1, largestAmount}))
    , m_serving(fieldFor(QStringLiteral("servingAll"), tr("Serving temperature for all"), tr("°C"), {}, {-60.0, 60.0}))
    , m_hint(plainLabel(QStringLiteral("compareHint")))
    , m_fairness(new MarkedLines)
    , m_table(new ComparisonTable)
    , m_curves(new ComparedCurves)
    , m_attribution(new AttributionView)
{
    setObjectName(QStringLiteral("comparingWindow"));
    setWindowTitle(tr("Compare"));
    setAcceptDrops(true);
    m_serving->setPlaceholderText(tr("as each says"));
    m_hint->setInk(InkLabel::Quiet);
    m_fairness->setObjectName(QStringLiteral("fairness"));
    m_fairness->setAccessibleName(tr("Is the comparison fair?"));
    m_fairness->setFocusPolicy(Qt::TabFocus);
    layOut();

    const auto onKey = [this](const QKeySequence& keys, auto action) {
        connect(new QShortcut(keys, this), &QShortcut::activated, this, action);
    };
    onKey(Qt::Key_Escape, [this] { closeFront(*this); });
    onKey(QKeySequence::Print, [this] { askAndPrint(); });
    onKey(tr("Ctrl+Shift+C"), [this] { copyPicture(); });
    onKey(QKeySequence::Undo, [this] { m_document.undoStack().undo(); });
    onKey(QKeySequence::Redo, [this] { m_document.undoStack().redo(); });
    connect(&document, &Document::changed, this, &ComparingWindow::refresh);
    connect(m_places, &ChooserRow::chosen, this, &ComparingWindow::place);
    connect(m_places, &ChooserRow::fileWanted, this, &ComparingWindow::openFile);
    connect(m_basis, &QComboBox::currentIndexChanged, this, &ComparingWindow::refresh);
    connect(m_portion, &QLineEdit::textChanged, this, &ComparingWindow::refresh);
    connect(m_serving, &QLineEdit::textChanged, this, &ComparingWindow::refresh);
    resize(usualSize);
    restoreGeometry(state().value(geometryKey).toByteArray());
}

ComparingWindow::~ComparingWindow()
{
    // A field that loses the focus as the window goes writes its number anew, when nobody is left to hear of it.
    for (NumberField* field : {m_portion, m_serving})
        field->disconnect(this);
}

QWidget* ComparingWindow::conditions()
{
    auto* copying = button(QStringLiteral("copyText"), tr("&Copy as text"), *m_basis);
    auto* picturing = button(QStringLiteral("copyPicture"), tr("Copy as pict&ure"), *m_basis);
    auto* printing = button(QStringLiteral("print"), tr("&Print…"), *m_basis);
    connect(copying, &QPushButton::clicked, this, &ComparingWindow::copyText);
    connect(picturing, &QPushButton::clicked, this, &ComparingWindow::copyPicture);
    connect(printing, &QPushButton::clicked, this, &ComparingWindow::askAndPrint);
    auto* line = new QWidget;
    auto* layout = new QHBoxLayout(line);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(new QLabel(tr("Masses")));
    layout->addWidget(m_basis);
    layout->addWidget(m_portion);
    layout->addSpacing(groupSpace);
    layout->addWidget(new QLabel(tr("Served at")));
    layout->addWidget(m_serving);
    layout->addStretch();
    layout->addWidget(copying);
    layout->addWidget(picturing);
    layout->addWidget(printing);
    return line;
}

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
    auto* inner = new QWidget;
    auto* column = new QVBoxLayout(inner);
    column->setContentsMargins(groupSpace, groupSpace, groupSpace, groupSpace);
    column->setSpacing(closeSpace);
    column->addWidget(m_places);
    column->addWidget(conditions());
    column->addWidget(m_hint);
    column->addWidget(m_body, 1);
    column->addStretch();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(m_messages);
    layout->addWidget(inner, 1);
}

void ComparingWindow::choose(const QStringList& versions)
{
    m_chosen = {};
    const std::vector<Choice> chosen = m_choices.sensible(versions);
    std::copy_n(chosen.begin(), std::min(chosen.size(), m_chosen.size()), m_chosen.begin());
    refresh();
}

void ComparingWindow::place(std::size_t place, const Choice& choice)
{
    m_chosen[place] = choice;
    refresh();
}

void ComparingWindow::addFile(const QString& path)
{
    const auto choice = m_choices.open(path);
    if (!choice) {
        m_messages->say(translated(choice.error()));
        return;
    }
    m_messages->dismiss();
    const auto free = std::ranges::find(m_chosen, Choice::Nothing, &Choice::kind);
    place(free == m_chosen.end() ? m_chosen.size() - 1 : std::size_t(free - m_chosen.begin()), *choice);
}

void ComparingWindow::openFile()
{
    const QString folder = m_document.path().isEmpty() ? QString() : QFileInfo(m_document.path()).path();
    if (const QString path = Questions().fileToOpen(this, tr("Compare with a recipe"), folder); !path.isEmpty())
        addFile(path);
}

ComparingWishes ComparingWindow::wishes() const
{
    ComparingWishes wishes;
    wishes.basis.per = static_cast<Basis::Per>(m_basis->currentIndex());
    wishes.basis.portion = {m_portion->number().value_or(usualPortion_g)};
    if (m_serving->number() && m_serving->problem().isEmpty())
        wishes.serveAt = Celsius{*m_serving->number()};
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
    m_portion->setVisible(m_basis->currentIndex() == Basis::Portion);
    m_comparison.reset();
    std::vector<Candidate> candidates;
    for (const Choice& choice : m_chosen)
        if (choice.kind != Choice::Nothing)
            if (auto candidate = m_choices.candidateOf(choice))
                candidates.push_back(std::move(*candidate));
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
    for (const char* name : {"copyText", "copyPicture", "print"})
        findChild<QPushButton*>(QLatin1String(name))->setEnabled(m_comparison.has_value());
    if (m_comparison)
        showAll(*m_comparison);
    setWindowTitle(title().replace(QLatin1String("[*]"), QLatin1String("[*][*]")));
}

void ComparingWindow::showAll(const Comparison& comparison)
{
    showFairness(comparison);
    m_table->show(comparison);
    m_curves->show(comparison);
    m_attribution->show(comparison);
}

void ComparingWindow::showFairness(const Comparison& comparison)
{
    std::vector<MarkedLine> lines;
    for (const Sentence& sentence : comparison.fairness)
        lines.push_back({Mark::Note, translated(sentence)});
    m_fairness->setVisible(!lines.empty());
    m_fairness->setLines(std::move(lines));
    const int needed = m_fairness->topsFor(qMax(1, width() - 2 * groupSpace)).back();
    m_fairness->setFixedHeight(qMin(needed, mostFairnessLines * (lineHeight(font()) + gridStep / 2)));
}

QString ComparingWindow::title() const
{
    const QString recipe = m_document.displayName();
    return m_comparison ? tr("Compare: %1 (%2)").arg(recipe, namesIn(*m_comparison)) : tr("Compare: %1").arg(recipe);
}

QString ComparingWindow::printedTitle() const
{
    const std::string& title = m_document.recipe().title;
    return tr("%1: %2", "a recipe's title and the names of what is compared")
        .arg(title.empty() ? m_document.displayName() : QString::fromStdString(title), namesIn(*m_comparison));
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

void ComparingWindow::askAndPrint()
{
    if (m_comparison)
        firn::app::askAndPrint(*this, printedTitle(), *m_comparison);
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

void showComparing(Document& document, QWidget& near, const QStringList& versions)
{
    auto* window = near.findChild<ComparingWindow*>(QString(), Qt::FindDirectChildrenOnly);
    const bool isNew = !window;
    if (isNew)
        window = new ComparingWindow(document, &near);
    if (isNew || !versions.isEmpty())
        window->choose(versions);
    window->show();
    window->raise();
    window->activateWindow();
}

}  // namespace firn::app
