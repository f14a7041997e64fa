#include "print/chosen_paper.h"

#include "document/places.h"
#include "gauges/type_and_space.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>

namespace firn::app {

namespace {

const QString paperKey = QStringLiteral("paper");
constexpr double smallestTarget_px = 24.0;
constexpr std::array offered{QPageSize::A4, QPageSize::Letter};

}  // namespace

QPageSize chosenPaper()
{
    const QString chosen = settings().value(paperKey).toString();
    for (const QPageSize::PageSizeId paper : offered)
        if (chosen == QPageSize::key(paper))
            return QPageSize(paper);
    return QPageSize(QLocale().measurementSystem() == QLocale::ImperialUSSystem ? QPageSize::Letter : QPageSize::A4);
}

PaperChoice::PaperChoice(QWidget* parent)
    : QComboBox(parent)
{
    setObjectName(QStringLiteral("paper"));
    setAccessibleName(tr("Paper"));
    setMinimumHeight(qRound(besideText(font(), smallestTarget_px)));
    setToolTip(tr("The paper for printing and for PDF files, in all windows"));
    for (const QPageSize::PageSizeId paper : offered)
        addItem(paper == QPageSize::A4 ? tr("A4") : tr("Letter"), QPageSize::key(paper));
    follow();
    connect(this, &QComboBox::activated, this, [this] { settings().setValue(paperKey, currentData()); });
}

bool PaperChoice::event(QEvent* event)
{
    if (event->type() == QEvent::Show || event->type() == QEvent::WindowActivate)
        follow();
    return QComboBox::event(event);
}

void PaperChoice::follow() { setCurrentIndex(findData(chosenPaper().key())); }

QWidget* namedPaperChoice()
{
    auto* choice = new PaperChoice;
    auto* name = new QLabel(PaperChoice::tr("Pap&er"));
    name->setTextFormat(Qt::PlainText);
    name->setBuddy(choice);
    auto* named = new QWidget;
    auto* layout = new QHBoxLayout(named);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(name);
    layout->addWidget(choice);
    return named;
}

}  // namespace firn::app
