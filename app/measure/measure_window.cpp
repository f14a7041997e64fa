#include "measure/measure_window.h"

#include "bench/close_front.h"
#include "bench/fields.h"
#include "bench/hairline.h"
#include "bench/message_bar.h"
#include "bench/save_shortcut.h"
#include "bench/undo_shortcut.h"
#include "document/instruments.h"
#include "document/measure_edits.h"
#include "document/places.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "measure/correction_view.h"
#include "measure/found_view.h"
#include "measure/instrument_form.h"
#include "measure/kept_readings.h"
#include "teach/derivation_window.h"

#include <QDateTime>
#include <QLabel>
#include <QScrollArea>
#include <QShortcut>
#include <QVBoxLayout>

namespace firn::app {

namespace {

const QString geometryKey = QStringLiteral("measure/geometry");
constexpr QSize usualSize{980, 640};

std::string now() { return QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-ddTHH:mm")).toStdString(); }

QVBoxLayout* under(const QString& title, QWidget* content)
{
    auto* column = new QVBoxLayout;
    column->setSpacing(closeSpace);
    column->addWidget(titleLabel(title));
    column->addWidget(content, 1);
    return column;
}

}  // namespace

MeasureWindow::MeasureWindow(Document& document, QWidget* parent)
    : QWidget(parent, Qt::Window)
    , m_document(document)
    , m_messages(new MessageBar)
    , m_instruments(new InstrumentForm)
    , m_found(new FoundView)
    , m_kept(new KeptReadings(document))
    , m_correction(new CorrectionView(document))
{
    setObjectName(QStringLiteral("measureWindow"));
    layOut();
    connect(new QShortcut(Qt::Key_Escape, this), &QShortcut::activated, this, [this] { closeFront(*this); });
    takeRecipesUndo(*this, m_document, *m_messages);
    if (parent)
        takeRecipesSave(*this, *parent, m_document, *m_messages);
    connect(&document, &Document::changed, this, &MeasureWindow::refresh);
    connect(&document, &Document::replaced, this, &MeasureWindow::startWithOtherRecipe);
    connect(m_instruments, &InstrumentForm::changed, this, &MeasureWindow::refresh);
    connect(m_found, &FoundView::mixChosen, this, &MeasureWindow::refresh);
    connect(m_found, &FoundView::keepingAsked, this, &MeasureWindow::keep);
    connect(m_found, &FoundView::figureChosen, this, &MeasureWindow::explain);
    connect(m_correction, &CorrectionView::derivationWanted, this, &MeasureWindow::derivationWanted);
    connect(m_correction, &CorrectionView::recipeChanged, this, &MeasureWindow::say);
    connect(m_correction, &CorrectionView::batchCorrected, this, &MeasureWindow::correctBatch);
    resize(usualSize);
    restoreGeometry(state().value(geometryKey).toByteArray());
}

/// A field that loses the focus may still have something to say: the window hides while it is whole, and can hear it.
MeasureWindow::~MeasureWindow() { hide(); }

void MeasureWindow::layOut()
{
    auto* top = new QHBoxLayout;
    top->setSpacing(groupSpace + closeSpace);
    top->addLayout(under(tr("What the instrument shows"), m_instruments), 0);
    top->addLayout(under(tr("What is in the mix"), m_found), 3);
    top->addWidget(m_kept, 2);
    m_body = new QWidget;
    auto* column = new QVBoxLayout(m_body);
    column->setContentsMargins(groupSpace, groupSpace, groupSpace, groupSpace);
    column->setSpacing(groupSpace);
    column->addLayout(top);
    column->addWidget(new Hairline);
    column->addWidget(m_correction, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(scrolled(m_body), 1);
    layout->addWidget(m_messages);
}

void MeasureWindow::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    refresh();
    m_instruments->focusReading();
}

void MeasureWindow::hideEvent(QHideEvent* event)
{
    QWidget::hideEvent(event);
    state().setValue(geometryKey, saveGeometry());
}

void MeasureWindow::refresh()
{
    // Nobody looks while it is hidden, and typing an amount should not wait for it.
    if (!isVisible())
        return;
    m_document.setInstruments(rememberedInstruments());
    const QString problem = m_instruments->problem();
    const Measuring measured = measuring(m_document.recipe(), m_document.catalogue(), m_document.component(),
        m_instruments->instruments(), problem.isEmpty() && m_instruments->isRead(), m_instruments->known());
    m_instruments->showFillingWith(measured.computed);
    m_found->show(measured, problem);
    m_kept->show(measured.computed);
    m_correction->show(measured, m_found->measured(), !problem.isEmpty() || measured.problem);
    // A layout asks for the height of wrapped lines, but does not insist on it.
    m_body->setMinimumHeight(m_body->layout()->minimumHeightForWidth(m_body->width()));
    nameWindow();
}

/// Calculated again with its workings, which nobody needs while typing.
void MeasureWindow::explain(const QString& figure, const QString& shown)
{
    const Analysis& analysis = m_document.analysis();
    Workings workings = workingsOfMeasuring(m_document.recipe(), m_document.catalogue(), m_document.component(),
        analysis.conditions, m_instruments->instruments(), m_instruments->problem().isEmpty() && m_instruments->isRead(),
        m_instruments->known(), m_found->chosen());
    emit figureWanted(figure, std::make_shared<const FigureSet>(FigureSet{std::move(workings),
                                  tr("“%1” in Measure and correct").arg(measuredName()), analysis, {{figure, shown}}}));
}

QString MeasureWindow::measuredName() const
{
    const QString component = QString::fromStdString(m_document.recipe().components.at(m_document.component()).name);
    return component.isEmpty() ? m_document.displayName() : component;
}

std::vector<ReadingRecord> MeasureWindow::recordsOfToday(const QString& note) const
{
    std::vector<ReadingRecord> readings = m_instruments->instruments();
    for (ReadingRecord& reading : readings) {
        reading.date = now();
        reading.component = m_document.recipe().components.at(m_document.component()).name;
        reading.note = note.toStdString();
    }
    return readings;
}

void MeasureWindow::keep(const QString& note) { keepReadings(m_document, recordsOfToday(note)); }

void MeasureWindow::correctBatch(const CorrectionChoice& choice, MassFraction sugarsBefore)
{
    const bool isMeasured = m_found->measured().has_value();
    const std::vector<ReadingRecord> readings = isMeasured ? recordsOfToday({}) : std::vector<ReadingRecord>{};
    // The mix that was read is another one once this is in it.
    m_instruments->forgetReadings();
    addToBatch(m_document, m_document.component(), choice, sugarsBefore, readings, now());
    say(tr("Add %1 of %2 to this batch: from %3 to %4 sugars. It is on record here, and the recipe stays as it is. Read again when "
           "all is "
           "mixed and cool.")
            .arg(gramsText(choice.added), QString::fromStdString(choice.name), percentText(sugarsBefore),
                percentText(choice.after.sugars)));
}

/// Nothing that was read, wanted or said of one recipe holds for another.
void MeasureWindow::startWithOtherRecipe()
{
    m_messages->dismiss();
    m_correction->forgetTarget();
    m_found->forgetNote();
    m_instruments->startAgain();
}

void MeasureWindow::say(const QString& sentence) { m_messages->note(sentence); }

void MeasureWindow::nameWindow()
{
    setWindowTitle(tr("Measure and correct: %1").arg(measuredName().replace(QLatin1String("[*]"), QLatin1String("[*][*]"))));
}

void showMeasuring(Document& document, QWidget& bench)
{
    auto* window = bench.findChild<MeasureWindow*>(QString(), Qt::FindDirectChildrenOnly);
    if (!window) {
        window = new MeasureWindow(document, &bench);
        if (auto* derivations = bench.findChild<DerivationWindow*>(QString(), Qt::FindDirectChildrenOnly)) {
            QObject::connect(window, &MeasureWindow::derivationWanted, derivations, &DerivationWindow::openAnswer);
            QObject::connect(window, &MeasureWindow::figureWanted, derivations, &DerivationWindow::openOf);
        }
    }
    window->show();
    window->raise();
    window->activateWindow();
}

}  // namespace firn::app
