#include "syrups/syrups_window.h"

#include "bench/close_front.h"
#include "bench/message_bar.h"
#include "bench/save_shortcut.h"
#include "document/document.h"
#include "document/edits.h"
#include "gauges/type_and_space.h"
#include "syrups/syrup_form.h"
#include "teach/derivation_window.h"

#include <QAction>
#include <QEvent>
#include <QHBoxLayout>
#include <QListWidget>
#include <QShortcut>
#include <QStackedWidget>
#include <algorithm>

namespace firn::app {

namespace {

constexpr QSize usualSize{760, 520};
constexpr double jobHeight_px = 32.0;

/// At the end of the component in view.
void putInRecipe(Document& document, const std::vector<Row>& rows)
{
    const std::size_t component = document.component();
    insertRows(document, {component, document.recipe().components.at(component).rows.size()}, rows);
}

}  // namespace

SyrupsWindow::SyrupsWindow(Document& document, QWidget* parent)
    : QDialog(parent)
    , m_jobs(new QListWidget)
    , m_forms(new QStackedWidget)
{
    setObjectName(QStringLiteral("syrups"));
    setWindowTitle(tr("Syrups"));
    m_jobs->setObjectName(QStringLiteral("jobs"));
    m_jobs->setAccessibleName(tr("Jobs with syrups"));
    m_jobs->setFrameShape(QFrame::NoFrame);
    m_jobs->viewport()->setBackgroundRole(QPalette::Window);
    m_jobs->setSpacing(gridStep / 2);
    for (SyrupJob& job : syrupJobs()) {
        m_jobs->addItem(job.name);
        auto* form = new SyrupForm(std::move(job));
        connect(form, &SyrupForm::rowsWanted, this, [&document](const std::vector<Row>& rows) { putInRecipe(document, rows); });
        connect(form, &SyrupForm::derivationWanted, this, &SyrupsWindow::derivationWanted);
        m_forms->addWidget(form);
    }
    connect(m_jobs, &QListWidget::currentRowChanged, m_forms, &QStackedWidget::setCurrentIndex);
    connect(m_jobs, &QListWidget::itemActivated, this, [this] { form()->takeFocus(); });
    m_jobs->setCurrentRow(0);
    // Once the recipe has changed again, what was put there may be gone.
    connect(&document, &Document::changed, this, [this] {
        if (isVisible())
            form()->work();
    });
    // A number that is being typed would keep the key for itself.
    connect(new QShortcut(QKeySequence(Qt::Key_Escape), this), &QShortcut::activated, this, [this] { closeFront(*this); });

    auto* messages = new MessageBar;
    if (parent)
        takeRecipesSave(*this, *parent, document, *messages);
    auto* columns = new QHBoxLayout;
    columns->setSpacing(0);
    columns->addWidget(m_jobs);
    columns->addWidget(m_forms, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addLayout(columns, 1);
    layout->addWidget(messages);
    fitToFont();
    resize(usualSize);
}

SyrupForm* SyrupsWindow::form() const { return qobject_cast<SyrupForm*>(m_forms->currentWidget()); }

void SyrupsWindow::showEvent(QShowEvent* event)
{
    QDialog::showEvent(event);
    form()->takeFocus();
}

void SyrupsWindow::changeEvent(QEvent* event)
{
    QDialog::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        fitToFont();
}

void SyrupsWindow::fitToFont()
{
    for (int i = 0; i < m_jobs->count(); ++i)
        m_jobs->item(i)->setSizeHint({0, qRound(besideText(font(), jobHeight_px))});
    int widest = 0;
    for (int i = 0; i < m_jobs->count(); ++i)
        widest = std::max(widest, fontMetrics().horizontalAdvance(m_jobs->item(i)->text()));
    m_jobs->setFixedWidth(widest + 3 * groupSpace);
}

void showSyrups(Document& document, QWidget& mainWindow)
{
    auto* window = mainWindow.findChild<SyrupsWindow*>();
    if (!window) {
        window = new SyrupsWindow(document, &mainWindow);
        if (auto* derivations = mainWindow.findChild<DerivationWindow*>(QString(), Qt::FindDirectChildrenOnly))
            QObject::connect(window, &SyrupsWindow::derivationWanted, derivations, &DerivationWindow::openAnswer);
        // What was put in the recipe can be taken back from here; in a field, undo is for its letters.
        window->addActions(
            {mainWindow.findChild<QAction*>(QStringLiteral("undo")), mainWindow.findChild<QAction*>(QStringLiteral("redo"))});
    }
    window->show();
    window->raise();
    window->activateWindow();
}

}  // namespace firn::app
