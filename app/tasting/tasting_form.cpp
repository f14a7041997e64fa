#include "tasting/tasting_form.h"

#include "bench/field_grid.h"
#include "bench/fields.h"
#include "bench/questions.h"
#include "document/tasting_edits.h"
#include "document/typed_edit.h"
#include "document/version_edits.h"
#include "gauges/temperature_unit.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "measure/measure_wording.h"
#include "recipe/blind_sheet.h"
#include "recipe/versions.h"
#include "tasting/kept_number.h"
#include "tasting/photo_view.h"
#include "tasting/score_lines.h"
#include "tasting/tasting_wording.h"
#include "tasting/typed_line.h"

#include <QComboBox>
#include <QDateEdit>
#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QSignalBlocker>

namespace firn::app {

namespace {

constexpr double target_px = 26.0;
constexpr int words_lines = 4;
constexpr double longest_h = 1e6;  // of the file
const QDate notNoted(1900, 1, 1);

QPushButton* button(const QString& name, const QString& text)
{
    auto* made = new QPushButton(text);
    made->setObjectName(name);
    return made;
}

/// The name of a field that is several lines high, beside its first.
QLabel* nameOfTall(const QString& text, QWidget* field)
{
    auto* label = new QLabel(text);
    label->setBuddy(field);
    label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    label->setContentsMargins(0, gridStep, 0, 0);
    return label;
}

/// What a choice of the list stands for.
QStringList choiceOfVersion(const std::string& version, const std::string& code)
{
    return {QString::fromStdString(version), QString::fromStdString(code)};
}

}  // namespace

TastingForm::TastingForm(Document& document, Questions& questions, QWidget* parent)
    : QWidget(parent)
    , m_document(document)
    , m_questions(questions)
    , m_day(new QDateEdit)
    , m_tasted(choiceOf(QStringLiteral("tasted"), tr("What was tasted"), {}))
    , m_tasters(new TypedLine(QStringLiteral("tasters"), tr("Who tasted")))
    , m_scores(new ScoreLines(document))
    , m_words(new TypedParagraph(QStringLiteral("tastingWords"), tr("In words")))
    , m_next(new TypedLine(QStringLiteral("nextChange"), tr("One thing to change next")))
    , m_readings(new InkLabel(InkLabel::Plain, this))
    , m_measure(button(QStringLiteral("measureTasted"), tr("&Measure…")))
    , m_photoFile(new InkLabel(InkLabel::Quiet, this))
    , m_removePhoto(button(QStringLiteral("removePhoto"), tr("Take it out")))
    , m_photo(new PhotoView)
{
    auto* grid = new FieldGrid(this);
    grid->setHorizontalSpacing(closeSpace);
    grid->setVerticalSpacing(closeSpace);
    buildWhat(*grid);
    addText(*grid, tr("Who tasted"), m_tasters, &Tasting::tasters);
    const auto servedAt = [](std::string_view text) {
        return servedAtFromText(text, shownTemperatureUnit()).map([](Celsius temperature) { return temperature.value; });
    };
    m_served = addNumber(*grid, tr("Served at"),
        degreesFieldFor(QStringLiteral("servedAt"), tr("Temperature when it was served"), {}, servedAt), &Tasting::servedAt_c);
    NumberField* frozen = fieldFor(QStringLiteral("frozenFor"), tr("Hours in the freezer"), tr("h"), {}, {0.0, longest_h});
    m_frozen = addNumber(*grid, tr("In the freezer for"), frozen, &Tasting::frozen_h);
    grid->addRow(nameOfTall(tr("Scores"), m_scores), m_scores);
    m_scores->followInTabOrder(frozen);
    m_words->setFixedHeight(words_lines * lineHeight(m_words->font()) + closeSpace);
    grid->addRow(nameOfTall(tr("In words"), m_words), m_words);
    connect(m_words, &TypedParagraph::typed, this, [this](const std::string& text, Gesture gesture) {
        changeTastingText(m_document, m_place, &Tasting::words, text, gesture);
    });
    addText(*grid, tr("Change next"), m_next, &Tasting::next);
    m_readings->setObjectName(QStringLiteral("tastingReadings"));
    connect(m_measure, &QPushButton::clicked, this, &TastingForm::measuringWanted);
    auto* readings = new QWidget;
    auto* readingsLayout = new QHBoxLayout(readings);
    readingsLayout->setContentsMargins(0, 0, 0, 0);
    readingsLayout->addWidget(m_readings, 1);
    readingsLayout->addWidget(m_measure, 0, Qt::AlignTop);
    grid->addRow(nameOfTall(tr("Readings"), m_measure), readings);
    buildPhoto(*grid);
    grid->setRowStretch(grid->rowCount(), 1);
    for (QWidget* widget : QList<QWidget*>{m_day, m_tasters, m_next, m_measure, m_removePhoto})
        widget->setMinimumHeight(qRound(besideText(font(), target_px)));
}

void TastingForm::buildWhat(FieldGrid& grid)
{
    m_day->setObjectName(QStringLiteral("tastingDay"));
    m_day->setAccessibleName(tr("Day"));
    m_day->setCalendarPopup(true);
    m_day->setDisplayFormat(QLocale().dateFormat(QLocale::ShortFormat));
    m_day->setMinimumDate(notNoted);
    m_day->setSpecialValueText(tr("not noted"));
    connect(m_day, &QDateEdit::dateChanged, this, &TastingForm::takeDay);
    grid.addRow(tr("Day"), inOneRow({m_day}));
    m_tasted->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    connect(m_tasted, &QComboBox::activated, this, &TastingForm::takeTasted);
    m_loose = new QWidget;
    auto* row = new QVBoxLayout(m_loose);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(gridStep);
    auto* why = new InkLabel(InkLabel::Quiet, m_loose);
    why->setText(tr("No version holds what is on the bench. Keep it, and the tasting stays with it when you go on."));
    auto* keep = button(QStringLiteral("keepTasted"), tr("&Keep this version"));
    keep->setMinimumHeight(qRound(besideText(font(), target_px)));
    connect(keep, &QPushButton::clicked, this, &TastingForm::keepBench);
    row->addWidget(why);
    row->addWidget(keep, 0, Qt::AlignLeft);
    auto* what = new QWidget;
    auto* column = new QVBoxLayout(what);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gridStep);
    column->addWidget(m_tasted);
    column->addWidget(m_loose);
    grid.addRow(nameOfTall(tr("Tasted"), m_tasted), what);
}

void TastingForm::buildPhoto(FieldGrid& grid)
{
    auto* choose = button(QStringLiteral("choosePhoto"), tr("Choose a &photo…"));
    choose->setMinimumHeight(qRound(besideText(font(), target_px)));
    connect(choose, &QPushButton::clicked, this, &TastingForm::choosePhoto);
    connect(m_removePhoto, &QPushButton::clicked, this, [this] { changeTastingText(m_document, m_place, &Tasting::photo, {}); });
    auto* photo = new QWidget;
    auto* column = new QVBoxLayout(photo);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gridStep);
    column->addWidget(inOneRow({choose, m_removePhoto}));
    column->addWidget(m_photoFile);
    column->addWidget(m_photo);
    grid.addRow(nameOfTall(tr("Photo"), choose), photo);
}

KeptNumber* TastingForm::addNumber(
    FieldGrid& grid, const QString& label, NumberField* field, std::optional<double> Tasting::*member)
{
    auto* kept = new KeptNumber(
        m_document, field, [this, member] { return tasting().*member; },
        [this, member](std::optional<double> number) { changeTastingNumber(m_document, m_place, member, number); });
    auto* both = new QWidget;
    auto* row = new QHBoxLayout(both);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(field);
    row->addWidget(kept->fault(), 1);
    row->addStretch();
    grid.addRow(label, both);
    return kept;
}

void TastingForm::addText(FieldGrid& grid, const QString& label, TypedLine* field, std::string Tasting::*member)
{
    grid.addRow(label, field);
    connect(field, &TypedLine::typed, this, [this, member](const std::string& text, Gesture gesture) {
        changeTastingText(m_document, m_place, member, text, gesture);
    });
}

void TastingForm::show(std::size_t place)
{
    const bool isSomethingElse = !m_isShown || place != m_place;
    if (isSomethingElse)
        finishTyping(m_document);
    m_place = place;
    m_isShown = true;
    showDay();
    showTasted();
    m_tasters->showText(tasting().tasters);
    m_served->show(isSomethingElse);
    m_frozen->show(isSomethingElse);
    m_scores->show(place, isSomethingElse);
    m_words->showText(tasting().words);
    m_next->showText(tasting().next);
    showReadings();
    showPhoto();
}

void TastingForm::takeFocus()
{
    m_tasters->setFocus();
    m_tasters->selectAll();
}

void TastingForm::showDay()
{
    const QDate day = QDate::fromString(QString::fromStdString(tasting().date.substr(0, 10)), Qt::ISODate);
    const QSignalBlocker blocker(m_day);
    m_day->setDate(day.isValid() ? day : notNoted);
}

void TastingForm::takeDay()
{
    const std::string day = m_day->date() == notNoted ? "" : m_day->date().toString(Qt::ISODate).toStdString();
    const std::size_t time = tasting().date.find('T');
    changeTastingText(
        m_document, m_place, &Tasting::date, time == std::string::npos || day.empty() ? day : day + tasting().date.substr(time));
}

void TastingForm::showTasted()
{
    const Recipe& recipe = m_document.recipe();
    const QSignalBlocker blocker(m_tasted);
    m_tasted->clear();
    m_tasted->addItem(nameOfVersion(recipe, {}), choiceOfVersion({}, {}));
    for (const Version& version : recipe.versions)
        m_tasted->addItem(nameOf(version), choiceOfVersion(version.id, {}));
    for (const BlindSheet& sheet : recipe.blindSheets)
        for (const CodedSample& sample : sheet.samples)
            if (!sheet.isRevealed)
                m_tasted->addItem(cupText(sample.code), choiceOfVersion({}, sample.code));
    const bool isByCode = !tasting().code.empty();
    const QStringList now = choiceOfVersion(isByCode ? std::string() : tasting().version, tasting().code);
    if (m_tasted->findData(now) < 0)
        m_tasted->addItem(tastedText(tasting(), recipe), now);
    m_tasted->setCurrentIndex(m_tasted->findData(now));
    m_loose->setVisible(tasting().version.empty() && !isByCode);
}

void TastingForm::takeTasted()
{
    const QStringList choice = m_tasted->currentData().toStringList();
    std::string version = choice[0].toStdString();
    if (version.empty() && choice[1].isEmpty())
        version = versionOfBench(m_document.recipe());
    changeTasted(m_document, m_place, version, choice[1].toStdString());
}

void TastingForm::keepBench() { keepVersion(m_document, {}, {}); }

void TastingForm::showReadings()
{
    const Recipe& recipe = m_document.recipe();
    const auto version = versionOf(tasting(), recipe);
    m_measure->setVisible(version && (version->empty() || *version == versionOfBench(recipe)));
    if (isStillHidden(tasting(), recipe)) {
        m_readings->setText(tr("They would say which version it is: shown once the sheet is revealed."));
        return;
    }
    QStringList lines;
    for (const ReadingRecord& reading : recipe.readings)
        if (version && reading.version == *version)
            lines.append(readingText(reading) + QStringLiteral(", ") + instrumentText(reading));
    m_readings->setText(lines.isEmpty() ? tr("None kept of this version.") : lines.join(u'\n'));
}

void TastingForm::showPhoto()
{
    const QString file = QString::fromStdString(tasting().photo);
    const QString folder = m_document.path().isEmpty() ? QString() : QFileInfo(m_document.path()).absolutePath();
    m_photoFile->setText(file.isEmpty() ? QString() : QFileInfo(file).fileName());
    m_removePhoto->setVisible(!file.isEmpty());
    m_photo->show(file.isEmpty() ? QString() : QDir(folder).absoluteFilePath(file));
}

void TastingForm::choosePhoto()
{
    const QString folder = m_document.path().isEmpty() ? QDir::homePath() : QFileInfo(m_document.path()).absolutePath();
    const QString file = m_questions.photoToOpen(window(), folder);
    if (!file.isEmpty())
        changeTastingText(m_document, m_place, &Tasting::photo, QFileInfo(file).absoluteFilePath().toStdString());
}

}  // namespace firn::app
