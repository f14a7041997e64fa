#include "tasting/blind_view.h"

#include "bench/field_grid.h"
#include "bench/fields.h"
#include "document/tasting_edits.h"
#include "document/version_edits.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "measure/measure_wording.h"
#include "print/chosen_paper.h"
#include "print/print_outlet.h"
#include "recipe/blind_sheet.h"
#include "recipe/versions.h"
#include "tasting/blind_pages.h"
#include "tasting/taster_cautions.h"
#include "tasting/tasting_wording.h"

#include <QListWidget>
#include <QPushButton>
#include <QRandomGenerator>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <cmath>

namespace firn::app {

namespace {

constexpr double target_px = 26.0;
constexpr double usualTasters = 4.0;
constexpr double mostTasters = 60.0;  // a page each

/// The codes, and what is in the cups once it may be known.
QString sheetText(const BlindSheet& sheet, const Recipe& recipe)
{
    QStringList cups;
    for (const CodedSample& sample : sheet.samples)
        cups.append(sheet.isRevealed ? cupText(sample.code) + QStringLiteral(": ") + nameOfVersion(recipe, sample.version)
                                     : cupText(sample.code));
    const QString day = sheet.date.empty() ? QString() : dateText(sheet.date) + u'\n';
    return day + cups.join(sheet.isRevealed ? QStringLiteral("\n") : QStringLiteral(", "));
}

}  // namespace

BlindView::BlindView(Document& document, Questions& questions, QWidget* parent)
    : QWidget(parent)
    , m_document(document)
    , m_outlet(new PrintOutlet(*this, document, questions))
    , m_versions(new QListWidget)
    , m_make(buttonOf(QStringLiteral("makeCodes"), tr("Make &codes"), tr("Gives each chosen version a code of three digits")))
    , m_sheets(new QListWidget)
    , m_tasters(fieldFor(QStringLiteral("tasterCount"), tr("Tasters"), {}, usualTasters, {1.0, mostTasters}))
    , m_actions(new QWidget)
    , m_reveal(buttonOf(
          QStringLiteral("reveal"), tr("Reveal…"), tr("Says which version was in which cup; the scores then count for them")))
    , m_asking(new QWidget)
    , m_noScales(new InkLabel(InkLabel::Quiet, this))
{
    m_versions->setObjectName(QStringLiteral("blindVersions"));
    m_versions->setAccessibleName(tr("Versions to taste blind"));
    m_sheets->setObjectName(QStringLiteral("blindSheets"));
    m_sheets->setAccessibleName(tr("Blind sheets"));
    m_sheets->setWordWrap(true);
    m_sheets->setSpacing(gridStep / 2);
    auto* layout = new QVBoxLayout(this);
    layout->setSpacing(closeSpace);
    auto* hint = new InkLabel(InkLabel::Quiet, this);
    hint->setText(
        tr("Choose two to six versions. The cups get codes, and the scores are entered by code; which is which stays hidden until "
           "you reveal it."));
    layout->addWidget(hint);
    layout->addWidget(m_versions, 1);
    layout->addWidget(m_make, 0, Qt::AlignLeft);
    m_sheetsTitle = titleLabel(tr("Sheets"));
    layout->addWidget(m_sheetsTitle);
    layout->addWidget(m_sheets, 1);
    layout->addWidget(sheetButtons());
    m_noScales->setText(tr("The pages have no lines to mark yet. Choose scales first."));
    layout->addWidget(m_noScales);
    connect(m_versions, &QListWidget::itemChanged, this, &BlindView::enable);
    connect(m_sheets, &QListWidget::currentRowChanged, this, &BlindView::enable);
    connect(m_make, &QPushButton::clicked, this, &BlindView::makeCodes);
    connect(m_reveal, &QPushButton::clicked, this, [this] { ask(true); });
    connect(m_outlet, &PrintOutlet::said, this, &BlindView::said);
}

QWidget* BlindView::sheetButtons()
{
    auto* printing = buttonOf(QStringLiteral("printSheet"), tr("P&rint…"), tr("A page for each taster, without the key"));
    auto* saving = buttonOf(QStringLiteral("saveSheet"), tr("Save as P&DF…"), tr("A page for each taster, without the key"));
    auto* key = buttonOf(QStringLiteral("saveKey"), tr("Save the ke&y…"), tr("For whoever fills the cups and does not taste"));
    const auto pages = [this] { return tasterPages(m_document, *sheet(), tasters(), cautions()); };
    connect(printing, &QPushButton::clicked, this, [this, pages] { m_outlet->print(pages()); });
    connect(saving, &QPushButton::clicked, this, [this, pages] { m_outlet->savePdf(pages()); });
    connect(key, &QPushButton::clicked, this, [this] { m_outlet->savePdf(keyPage(m_document, *sheet(), tasters())); });
    m_tasters->setAlignment(Qt::AlignRight);
    m_tasters->setFixedWidth(m_tasters->fontMetrics().horizontalAdvance(QStringLiteral("000000")));
    auto* column = new QVBoxLayout(m_actions);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gridStep);
    auto* count = new QLabel(tr("&Tasters"));
    count->setBuddy(m_tasters);
    column->addWidget(inOneRow({count, m_tasters, namedPaperChoice()}));
    column->addWidget(inOneRow({printing, saving, key}));
    column->addSpacing(groupSpace);
    column->addWidget(inOneRow({m_reveal}));
    column->addWidget(question());
    return m_actions;
}

/// In a place of its own, so that a double click reveals nothing.
QWidget* BlindView::question()
{
    auto* why = new InkLabel(InkLabel::Caution, m_asking);
    why->setText(tr("Have all finished? Undo hides the names again, but not from those who have read them."));
    auto* now = buttonOf(QStringLiteral("revealNow"), tr("Reveal now"), m_reveal->toolTip());
    auto* later = buttonOf(QStringLiteral("revealLater"), tr("Not yet"), {});
    connect(now, &QPushButton::clicked, this, &BlindView::reveal);
    connect(later, &QPushButton::clicked, this, [this] { ask(false); });
    auto* column = new QVBoxLayout(m_asking);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gridStep);
    column->addWidget(why);
    column->addWidget(inOneRow({now, later}));
    return m_asking;
}

void BlindView::ask(bool isAsked)
{
    m_asking->setVisible(isAsked);
    m_reveal->setEnabled(!isAsked && sheet() && !sheet()->isRevealed);
}

void BlindView::show()
{
    calm(*m_versions);
    calm(*m_sheets);
    fillVersions();
    fillSheets();
    m_noScales->setVisible(m_document.recipe().scales.empty());
    enable();
}

void BlindView::fillVersions()
{
    const QStringList before = ticked();
    const QSignalBlocker blocker(m_versions);
    const Recipe& recipe = m_document.recipe();
    m_versions->clear();
    const auto add = [&](const std::string& id) {
        auto* item = new QListWidgetItem(nameOfVersion(recipe, id).simplified(), m_versions);
        item->setData(Qt::UserRole, QString::fromStdString(id));
        item->setSizeHint({0, qRound(besideText(font(), target_px))});
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(before.contains(QString::fromStdString(id)) ? Qt::Checked : Qt::Unchecked);
    };
    for (const Version& version : recipe.versions)
        add(version.id);
    if (!isAsKept(recipe))
        add({});
}

void BlindView::fillSheets()
{
    const int before = m_sheets->currentRow();
    const qsizetype count = m_sheets->count();
    const QSignalBlocker blocker(m_sheets);
    m_sheets->clear();
    const auto& sheets = m_document.recipe().blindSheets;
    for (auto sheet = sheets.rbegin(); sheet != sheets.rend(); ++sheet)
        m_sheets->addItem(sheetText(*sheet, m_document.recipe()));
    // A new one is what a person goes on with.
    m_sheets->setCurrentRow(count == m_sheets->count() ? before : std::min(0, m_sheets->count() - 1));
    for (QWidget* widget : QList<QWidget*>{m_sheetsTitle, m_sheets, m_actions})
        widget->setVisible(m_sheets->count() > 0);
}

void BlindView::enable()
{
    const auto count = std::size_t(ticked().size());
    m_make->setEnabled(count >= fewestCups && count <= mostCups);
    m_actions->setEnabled(sheet());
    ask(false);
}

QStringList BlindView::ticked() const
{
    QStringList ids;
    for (int i = 0; i < m_versions->count(); ++i)
        if (m_versions->item(i)->checkState() == Qt::Checked)
            ids.append(m_versions->item(i)->data(Qt::UserRole).toString());
    return ids;
}

const BlindSheet* BlindView::sheet() const
{
    const auto& sheets = m_document.recipe().blindSheets;
    const int row = m_sheets->currentRow();
    return row < 0 || std::size_t(row) >= sheets.size() ? nullptr : &sheets[sheets.size() - 1 - std::size_t(row)];
}

std::size_t BlindView::tasters() const { return std::size_t(std::lround(m_tasters->number().value_or(usualTasters))); }

std::vector<Sentence> BlindView::cautions() const
{
    std::vector<std::string> versions;
    for (const CodedSample& sample : sheet()->samples)
        versions.push_back(sample.version);
    return tasterCautions(m_document.recipe(), m_document.catalogue(), versions);
}

void BlindView::makeCodes()
{
    std::vector<std::string> versions;
    for (const QString& id : ticked())
        versions.push_back(id.toStdString());
    for (int i = 0; i < m_versions->count(); ++i) {
        const QSignalBlocker blocker(m_versions);
        m_versions->item(i)->setCheckState(Qt::Unchecked);
    }
    addBlindSheet(m_document, std::move(versions), QRandomGenerator::system()->generate64());
    emit said(tr("The cups have their codes. Print the pages, and give the key only to whoever fills the cups."), false);
}

void BlindView::reveal()
{
    const auto place = std::size_t(sheet() - m_document.recipe().blindSheets.data());
    revealBlindSheet(m_document, place);
    emit said(tr("Revealed: the scores by code now count for their versions."), false);
}

}  // namespace firn::app
