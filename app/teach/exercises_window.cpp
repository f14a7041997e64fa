#include "teach/exercises_window.h"

#include "bench/close_front.h"
#include "bench/hairline.h"
#include "bench/ink_label.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "print/print_outlet.h"
#include "teach/figure_wording.h"
#include "teach/sheet_choice.h"
#include "teach/sources_window.h"
#include "teach/step_view.h"

#include <QAccessible>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QShowEvent>
#include <QSplitter>
#include <QVBoxLayout>

namespace firn::app {

namespace {

constexpr QSize usualSize{1100, 660};
constexpr int listWidth_px = 300;
constexpr int narrowestList_px = 220;
constexpr int narrowestPage_px = 480;
constexpr int targetHeight_px = 28;
constexpr int numberWidth_px = 90;

bool isSame(const Exercise& a, const Exercise& b)
{
    return a.kind == b.kind && a.question == b.question && a.answer.value == b.answer.value;
}

/// Rows as the recipe has them, and what they hold together.
QString rowsOf(const ExerciseSheet& sheet)
{
    QString text;
    for (std::size_t i = 0; i < sheet.lines.size(); ++i) {
        const std::string& name = sheet.recipe.components[i].name;
        if (!name.empty() && sheet.lines.size() > 1)
            text += plain(name) + QStringLiteral(":\n");
        for (const std::string& line : sheet.lines[i])
            text += rowText(line) + u'\n';
    }
    return text + ExercisesWindow::tr("\nIn it: %1.", "what the mix holds").arg(contentsOf(sheet.mix));
}

}  // namespace

ExercisesWindow::ExercisesWindow(const Document& document, Questions& questions, QWidget* parent)
    : QWidget(parent, Qt::Window)
    , m_document(document)
    , m_number(new QLineEdit(QStringLiteral("0")))
    , m_list(new QListWidget)
    , m_rows(new InkLabel(InkLabel::Quiet))
    , m_pane(new ExercisePane)
    , m_page(new QScrollArea)
    , m_choice(new SheetChoice)
    , m_message(new InkLabel(InkLabel::Caution))
{
    setObjectName(QStringLiteral("exercises"));
    setWindowTitle(tr("Exercises"));
    resize(usualSize);
    m_message->setObjectName(QStringLiteral("message"));
    layOut();

    connect(m_list, &QListWidget::currentRowChanged, this, [this](int row) {
        if (row >= 0)
            showExercise();
    });
    connect(m_list, &QListWidget::itemActivated, m_pane, &ExercisePane::takeFocus);
    connect(m_pane, &ExercisePane::progressed, this, [this] {
        m_message->setText({});
        listExercises();
    });
    connect(m_pane, &ExercisePane::sourceChosen, this, &ExercisesWindow::sourceChosen);
    auto* outlet = new PrintOutlet(*this, document, questions);
    connect(outlet, &PrintOutlet::said, this, &ExercisesWindow::say);
    connect(m_choice, &SheetChoice::printWanted, outlet, [this, outlet] { outlet->print(handout()); });
    connect(m_choice, &SheetChoice::pdfWanted, outlet, [this, outlet] { outlet->savePdf(handout()); });
    connect(new QShortcut(Qt::Key_Escape, this), &QShortcut::activated, this, [this] { closeFront(*this); });
    connect(&m_document, &Document::changed, this, [this] {
        if (isVisible())
            follow();
    });
}

/// A field that loses the focus may still have something to say: the window hides while it is whole, and can hear it.
ExercisesWindow::~ExercisesWindow() { hide(); }

QLayout* ExercisesWindow::buildHead()
{
    m_number->setObjectName(QStringLiteral("sheetNumber"));
    m_number->setFixedWidth(numberWidth_px);
    m_number->setMinimumHeight(targetHeight_px);
    auto* label = new QLabel(tr("Sheet &number"));
    label->setBuddy(m_number);
    auto* another = new QPushButton(tr("An&other sheet"));
    another->setObjectName(QStringLiteral("another"));
    another->setMinimumHeight(targetHeight_px);
    auto* meaning = new InkLabel(InkLabel::Quiet, this);
    meaning->setText(tr("Sheet 0 uses your recipe; other numbers vary the amounts."));
    meaning->setWordWrap(false);
    connect(m_number, &QLineEdit::editingFinished, this, &ExercisesWindow::readNumber);
    connect(another, &QPushButton::clicked, this, [this] { openSheet(m_sheet.seed + 1); });
    auto* row = new QHBoxLayout;
    row->setSpacing(closeSpace);
    row->addWidget(label);
    row->addWidget(m_number);
    row->addWidget(another);
    row->addSpacing(closeSpace);
    row->addWidget(meaning);
    row->addStretch();
    return row;
}

QWidget* ExercisesWindow::buildList()
{
    m_list->setObjectName(QStringLiteral("exerciseList"));
    m_list->setAccessibleName(tr("Exercises"));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->viewport()->setBackgroundRole(QPalette::Window);
    m_list->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_rows->setObjectName(QStringLiteral("rows"));
    m_rows->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    auto* scrolled = new QScrollArea;
    scrolled->setAccessibleName(tr("The recipe of this sheet"));
    scrolled->setWidget(m_rows);
    scrolled->setWidgetResizable(true);
    scrolled->setFrameShape(QFrame::NoFrame);
    scrolled->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* column = new QWidget;
    column->setMinimumWidth(narrowestList_px);
    auto* layout = new QVBoxLayout(column);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(m_list);
    layout->addWidget(new Hairline);
    layout->addWidget(scrolled, 1);
    return column;
}

void ExercisesWindow::layOut()
{
    m_page->setWidget(m_pane);
    m_page->setWidgetResizable(true);
    m_page->setMinimumWidth(narrowestPage_px);
    m_page->setFrameShape(QFrame::NoFrame);
    m_page->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_page->setAccessibleName(tr("Exercise"));
    auto* columns = new QSplitter;
    columns->addWidget(buildList());
    columns->addWidget(m_page);
    columns->setChildrenCollapsible(false);
    columns->setStretchFactor(1, 1);
    columns->setSizes({listWidth_px, usualSize.width() - listWidth_px});
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(groupSpace, closeSpace, groupSpace, closeSpace);
    layout->setSpacing(closeSpace);
    layout->addLayout(buildHead());
    layout->addWidget(m_message);
    layout->addWidget(columns, 1);
    layout->addWidget(new Hairline);
    layout->addWidget(m_choice);
}

void ExercisesWindow::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (!event->spontaneous()) {
        follow();
        m_pane->takeFocus();
    }
}

void ExercisesWindow::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange && isVisible())
        listExercises();
}

/// The exercises as the recipe is now. Where they have changed, what was answered before is about something else.
void ExercisesWindow::follow()
{
    ExerciseSheet now = exercisesFor(m_document.recipe(), m_document.catalogue(), m_document.analysis().conditions, m_sheet.seed);
    const bool isFirst = m_progress.empty();
    const bool isUnchanged =
        !isFirst && std::ranges::equal(now.exercises, m_sheet.exercises, isSame) && now.reason == m_sheet.reason;
    m_sheet = std::move(now);
    m_rows->setText(rowsOf(m_sheet));
    if (isUnchanged)
        return;
    showSheet();
    if (!isFirst) {
        say(tr("The recipe changed, so the exercises were restarted."), false);
        QAccessibleEvent told(m_message, QAccessible::Alert);
        QAccessible::updateAccessibility(&told);
    }
}

void ExercisesWindow::openSheet(quint64 number)
{
    m_sheet.seed = number;
    m_progress.clear();
    m_number->setText(QString::number(number));
    m_message->setText({});
    follow();
}

void ExercisesWindow::readNumber()
{
    bool isNumber = false;
    const quint64 number = m_number->text().trimmed().toULongLong(&isNumber);
    if (!isNumber)
        say(tr("Enter a sheet number, for example 7."), true);
    else if (number != m_sheet.seed)
        openSheet(number);
    else
        m_message->setText({});
}

void ExercisesWindow::showSheet()
{
    const int row = std::max(0, m_list->currentRow());
    m_progress.assign(m_sheet.exercises.size(), {});
    m_choice->follow(m_sheet.seed);
    {
        const QSignalBlocker blocker(m_list);
        m_list->clear();
        for (std::size_t i = 0; i < m_sheet.exercises.size(); ++i)
            m_list->addItem(QString());
        m_list->setCurrentRow(std::min(row, m_list->count() - 1));
    }
    listExercises();
    showExercise();
}

void ExercisesWindow::listExercises()
{
    for (int i = 0; i < m_list->count(); ++i) {
        const QString name = translatedName(nameOf(m_sheet.exercises[std::size_t(i)].kind));
        m_list->item(i)->setText(m_progress[std::size_t(i)].isRight() ? tr("%1 ✓", "an exercise that was solved").arg(name) : name);
        m_list->item(i)->setSizeHint({0, std::max(targetHeight_px, fontMetrics().height())});
    }
    m_list->setFixedHeight(m_list->count() * std::max(targetHeight_px, fontMetrics().height()) + gridStep);
}

void ExercisesWindow::showExercise()
{
    const int row = m_list->currentRow();
    if (row < 0)
        m_pane->showNone(
            m_sheet.reason ? plain(*m_sheet.reason) : tr("There is nothing to ask about yet. Put water and sugar in the recipe."));
    else
        m_pane->show(m_sheet.exercises[std::size_t(row)], m_progress[std::size_t(row)]);
    m_page->verticalScrollBar()->setValue(0);
}

Result<Handout> ExercisesWindow::handout() const
{
    const auto chosen = m_choice->sheets();
    if (!chosen)
        return failure(chosen.error());
    std::vector<ExerciseSheet> sheets;
    const auto& [first, last] = *chosen;
    for (std::uint64_t i = 0; i <= last - first; ++i) {
        sheets.push_back(exercisesFor(m_document.recipe(), m_document.catalogue(), m_document.analysis().conditions, first + i));
        if (sheets.back().reason)
            return failure(*sheets.back().reason);
    }
    return handoutOf(sheets, nameOnPaper(m_document), m_choice->solutions());
}

void ExercisesWindow::say(const QString& sentence, bool isTrouble)
{
    m_message->setInk(isTrouble ? InkLabel::Caution : InkLabel::Plain);
    m_message->setText(sentence);
}

ExercisesWindow& showExercises(const Document& document, Questions& questions, QWidget& bench)
{
    auto* window = bench.findChild<ExercisesWindow*>();
    if (!window) {
        window = new ExercisesWindow(document, questions, &bench);
        QObject::connect(window, &ExercisesWindow::sourceChosen, &bench, [&bench](Source source) { showSources(bench, source); });
    }
    window->show();
    window->raise();
    window->activateWindow();
    return *window;
}

}  // namespace firn::app
