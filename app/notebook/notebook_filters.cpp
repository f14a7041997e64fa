#include "notebook/notebook_filters.h"

#include "bench/ink_label.h"
#include "gauges/temperature_unit.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QSignalBlocker>
#include <QTimer>
#include <QToolButton>

namespace firn::app {

namespace {

constexpr int pauseInTyping_ms = 500;
constexpr int leastWidthInCharacters = 8;

/// A choice that gives way to a narrow dock.
QComboBox* narrowChoice(const QString& name, const QString& spoken)
{
    auto* choice = new QComboBox;
    choice->setObjectName(name);
    choice->setAccessibleName(spoken);
    choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    choice->setMinimumContentsLength(leastWidthInCharacters);
    return choice;
}

}  // namespace

NotebookFilters::NotebookFilters(QWidget* parent)
    : QWidget(parent)
    , m_search(new QLineEdit)
    , m_fault(new InkLabel(InkLabel::Caution))
    , m_complaint(new QTimer(this))
    , m_shelf(narrowChoice(QStringLiteral("notebookShelf"), tr("Which recipes")))
    , m_order(narrowChoice(QStringLiteral("notebookOrder"), tr("Order of the recipes")))
    , m_count(new QLabel)
    , m_clear(new QToolButton)
{
    m_search->setObjectName(QStringLiteral("notebookSearch"));
    m_search->setAccessibleName(tr("Search the notebook"));
    m_search->setAccessibleDescription(tr("Words, or ranges such as sugar 24..28"));
    m_search->setPlaceholderText(tr("pear, sugar 24..28, alcohol > 0"));
    m_search->setToolTip(tr("Words of title, ingredients, notes, tags and texture; \"quotes\" hold words together.\n"
                            "Ranges of sugar, fat, alcohol, freezes, ice and sweetness:\n"
                            "sugar 24..28, alcohol > 0, fat < 5, freezes < -3, ice 58"));
    m_search->setClearButtonEnabled(true);
    m_search->setAcceptDrops(false);
    m_fault->setObjectName(QStringLiteral("notebookFault"));
    m_complaint->setSingleShot(true);
    m_complaint->setInterval(pauseInTyping_ms);
    connect(m_search, &QLineEdit::textChanged, this, &NotebookFilters::read);

    m_shelf->addItem(tr("All recipes"), int(Shelf::All));
    m_shelf->addItem(tr("Favourites"), int(Shelf::Favourites));
    m_shelf->addItem(tr("Archived"), int(Shelf::Archived));
    connect(m_shelf, &QComboBox::currentIndexChanged, this, &NotebookFilters::read);
    connect(&ShownTemperatureUnit::instance(), &ShownTemperatureUnit::changed, this, &NotebookFilters::read);
    m_order->addItem(tr("By title"), int(CardOrder::Title));
    m_order->addItem(tr("Changed last"), int(CardOrder::ChangedLast));
    m_order->addItem(tr("Most sugar"), int(CardOrder::MostSugar));
    m_order->addItem(tr("Most alcohol"), int(CardOrder::MostAlcohol));
    m_order->addItem(tr("Freezes coldest"), int(CardOrder::FreezesColdest));
    connect(m_order, &QComboBox::currentIndexChanged, this, &NotebookFilters::changed);

    m_count->setObjectName(QStringLiteral("notebookCount"));
    m_clear->setObjectName(QStringLiteral("notebookShowAll"));
    m_clear->setText(tr("Show all"));
    m_clear->setAutoRaise(true);
    QSizePolicy keepsPlace = m_clear->sizePolicy();
    keepsPlace.setRetainSizeWhenHidden(true);
    m_clear->setSizePolicy(keepsPlace);
    connect(m_clear, &QToolButton::clicked, this, &NotebookFilters::clear);

    auto* layout = new QGridLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setHorizontalSpacing(closeSpace);
    layout->setVerticalSpacing(gridStep);
    layout->addWidget(m_search, 0, 0, 1, 2);
    layout->addWidget(m_fault, 1, 0, 1, 2);
    layout->addWidget(m_shelf, 2, 0);
    layout->addWidget(m_order, 2, 1);
    layout->addWidget(m_count, 3, 0);
    layout->addWidget(m_clear, 3, 1, Qt::AlignRight);
    layout->setColumnStretch(0, 1);
    layout->setColumnStretch(1, 1);
    showCount(0, 0);
}

CardOrder NotebookFilters::order() const { return static_cast<CardOrder>(m_order->currentData().toInt()); }

void NotebookFilters::offerTags(const std::vector<std::string>& tags)
{
    constexpr int fixedShelves = 3;
    const QString chosen = m_shelf->currentText();
    const QSignalBlocker blocker(m_shelf);
    while (m_shelf->count() > fixedShelves)
        m_shelf->removeItem(fixedShelves);
    for (const std::string& tag : tags) {
        const QString name = QString::fromStdString(tag).simplified();
        m_shelf->addItem(tr("Tag: %1").arg(name), QString::fromStdString(tag));
    }
    // A tag that nothing has any more stays as long as it is chosen, so that the list does not change under the person's hands.
    if (m_shelf->findText(chosen) < 0)
        m_shelf->addItem(chosen, QString::fromStdString(m_filter.tag));
    m_shelf->setCurrentIndex(m_shelf->findText(chosen));
}

void NotebookFilters::showCount(int found, int all)
{
    const QLocale locale;
    const bool isWhole = m_filter == NotebookFilter() && m_search->text().isEmpty();
    const QString whole = found == 1 ? tr("1 recipe") : tr("%1 recipes").arg(locale.toString(found));
    m_count->setText(isWhole ? whole : tr("%1 of %2").arg(locale.toString(found), locale.toString(all)));
    m_clear->setVisible(!isWhole);
}

void NotebookFilters::clear()
{
    {
        const QSignalBlocker search(m_search);
        const QSignalBlocker shelf(m_shelf);
        m_search->clear();
        m_shelf->setCurrentIndex(0);
    }
    read();
    m_search->setFocus();
}

void NotebookFilters::read()
{
    const QVariant shelf = m_shelf->currentData();
    const bool isTag = shelf.userType() == QMetaType::QString;
    m_filter.shelf = isTag ? Shelf::All : static_cast<Shelf>(shelf.toInt());
    m_filter.tag = isTag ? shelf.toString().toStdString() : std::string();
    m_complaint->disconnect(this);
    auto query = queryFrom(m_search->text().toStdString(), shownTemperatureUnit());
    m_isUnderstood = query.has_value();
    if (query) {
        m_filter.query = std::move(*query);
        m_complaint->stop();
        m_fault->setText({});
    } else {
        connect(m_complaint, &QTimer::timeout, this, [this, why = translated(query.error())] { m_fault->setText(why); });
        m_complaint->start();
    }
    emit changed();
}

}  // namespace firn::app
