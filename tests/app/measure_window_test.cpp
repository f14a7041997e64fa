// Measuring as a cook does it: real widgets, typed at.
#include "measure/measure_window.h"

#include "bench.h"

#include "analysis/recorded_reading.h"
#include "bench/message_bar.h"
#include "correction/correction.h"
#include "document/edits.h"
#include "document/instruments.h"
#include "document/places.h"
#include "exchange/recipe_text.h"
#include "gauges/figure_button.h"
#include "gauges/readings_panel.h"
#include "gauges/sugar_scale.h"
#include "gauges/wording.h"
#include "teach/figure_link.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>

namespace firn::app {
namespace {

class Measure : public testing::Test {
protected:
    Measure()
        : document(shippedCatalogue())
    {
        settings().remove(QStringLiteral("instruments"));
        state().remove(QStringLiteral("measure"));
        bench.resize(200, 100);
        bench.show();
        lay("520 g water\n250 g orange juice\n170 g sugar\n120 g sweet vermouth");
        open();
    }

    void open()
    {
        showMeasuring(document, bench);
        window = bench.findChild<MeasureWindow*>();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window));
    }
    /// As after a start: a new window that remembers what it can.
    void startAgain()
    {
        delete window;
        open();
    }
    /// What the derivation of the measured sugars comes to; -1 where it does not open.
    double openedSugars()
    {
        double value = -1.0;
        const auto once =
            QObject::connect(window, &MeasureWindow::figureWanted, window, [&](const QString& figure, const SharedFigures& set) {
                if (const Working* working = set->workings.find(figure.toStdString()))
                    value = working->steps().back().result.value;
            });
        for (FigureButton* button : window->findChildren<FigureButton*>()) {
            if (button->isVisible() && button->figure() == "measured.sugars_percent")
                QTest::mouseClick(button, Qt::LeftButton);
        }
        QObject::disconnect(once);
        return value;
    }
    void lay(const std::string& lines) { document.startWith(recipeFromText(lines).value()); }

    template <class Widget>
    Widget& find(const char* name)
    {
        return *window->findChild<Widget*>(QString::fromLatin1(name));
    }
    void choose(const char* combo, const QString& text)
    {
        auto& choice = find<QComboBox>(combo);
        for (int i = 0; i < choice.count(); ++i) {
            if (plain(choice.itemText(i)) == text)
                return choice.setCurrentIndex(i);
        }
        ADD_FAILURE() << combo << " has no " << text.toStdString();
    }
    void write(const char* field, const QString& text)
    {
        auto& line = find<QLineEdit>(field);
        line.setFocus();
        line.selectAll();
        if (text.isEmpty())
            QTest::keyClick(&line, Qt::Key_Delete);
        QTest::keyClicks(&line, text);
    }
    void click(const char* button) { QTest::mouseClick(&find<QPushButton>(button), Qt::LeftButton); }
    QString message() { return window->findChild<MessageBar*>()->sentence(); }
    QString text(const char* label) { return plain(find<QLabel>(label).text()); }
    QString found() { return text("found"); }

    /// "18.8 ± 0.2 % sugars" as two numbers.
    double foundSugar() { return found().section(u' ', 0, 0).toDouble(); }
    double foundBand() { return found().section(u' ', 2, 2).toDouble(); }

    QRect placeOf(const char* field)
    {
        QApplication::processEvents();
        auto& widget = find<QWidget>(field);
        return {widget.mapTo(window, QPoint()), widget.size()};
    }
    QTableWidget& choices() { return find<QTableWidget>("choices"); }
    QString cell(int row, int column) { return plain(choices().item(row, column)->text()); }
    double amount(int row) { return cell(row, 1).section(u' ', 0, 0).toDouble(); }
    std::vector<Row> rows() { return document.recipe().components.front().rows; }

    /// What core says about a reading of the recipe on the bench.
    MixEstimate asSolved(const ReadingRecord& record)
    {
        return foundBy({&record, 1}, {}, document.analysis().mix).value().mixes.front();
    }
    static QString plain(QString text) { return text.replace(QChar(0x202F), u' ').replace(QChar(0x2212), u'-'); }

    Document document;
    QWidget bench;
    MeasureWindow* window = nullptr;
};

TEST_F(Measure, ARefractometerInAMixWithVermouthSaysTheSugarAndWhatToAddFor26Percent)
{
    EXPECT_EQ(found(), "Nothing read yet");
    write("refractometerReading", "19");
    write("sampleTemperature", "31");
    ReadingRecord record;
    record.value = 19.0;
    record.temperature_c = 31.0;
    record.division = 0.1;
    const MixEstimate expected = asSolved(record);
    EXPECT_NEAR(foundSugar(), percent(expected.sugar), 0.051) << found().toStdString();
    EXPECT_NEAR(foundBand(), percent(expected.sugar_sd), 0.051);
    EXPECT_GT(foundBand(), 0.0);
    write("target", "26");
    // Sugar: what is missing over what a gram brings, (0.26 - s) m / (1 - 0.26).
    const double mass_g = document.analysis().mass.value;
    const double needed_g = (0.26 - expected.sugar.value) * mass_g / 0.74;
    EXPECT_EQ(cell(1, 0), "Sugar (sucrose)");
    EXPECT_NEAR(amount(1), needed_g, 0.6);
    EXPECT_EQ(cell(1, 3), "26.0 %");
    EXPECT_NE(cell(0, 3), "26.0 %");  // as it is now
    EXPECT_FALSE(text("diagnosis").isEmpty());
}

TEST_F(Measure, WhatWasFoundAndWhatToAddOpenToTheirDerivation)
{
    QString opened;
    Workings workings;
    QObject::connect(window, &MeasureWindow::derivationWanted, window, [&](const QString& figure, const Workings& of) {
        opened = figure;
        workings = of;
    });
    QObject::connect(window, &MeasureWindow::figureWanted, window, [&](const QString& figure, const SharedFigures& set) {
        opened = figure;
        workings = set->workings;
    });
    const auto lastValue = [&] {
        const Working* working = workings.find(opened.toStdString());
        return working ? working->steps().back().result.value : -1.0;
    };
    FigureButton* sugars = nullptr;
    for (FigureButton* button : window->findChildren<FigureButton*>())
        sugars = button->figure() == "measured.sugars_percent" ? button : sugars;
    ASSERT_TRUE(sugars);
    EXPECT_FALSE(sugars->isVisible());
    write("refractometerReading", "22");
    ASSERT_TRUE(sugars->isVisible());
    QTest::mouseClick(sugars, Qt::LeftButton);
    EXPECT_EQ(opened, "measured.sugars_percent");
    EXPECT_EQ(QString::number(lastValue(), 'f', 1), found().section(u' ', 0, 0));
    opened.clear();
    QTest::keyClick(sugars, Qt::Key_Space);
    EXPECT_EQ(opened, "measured.sugars_percent");

    write("target", "26");
    auto* why = window->findChild<FigureLink*>();
    ASSERT_TRUE(why && why->isVisible());
    QTest::keyClick(why, Qt::Key_Return);
    EXPECT_EQ(opened, "correction.added_g");
    EXPECT_EQ(find<QPushButton>("addChoice").text(), "&Add to this batch: " + gramsText({lastValue()}));
}

TEST_F(Measure, ABoilingPointOpensToItsDerivation)
{
    lay("500 g water\n500 g sugar");
    choose("instrument", "thermometer at the boil");
    write("boilingReading", "102,0");
    EXPECT_EQ(QString::number(openedSugars(), 'f', 0), found().section(u' ', 0, 0));
}

TEST_F(Measure, AHydrometerSaysItToo)
{
    choose("instrument", "hydrometer");
    choose("hydrometerScale", "specific gravity");
    write("hydrometerReading", "1.078");
    write("sampleTemperature", "31");
    ReadingRecord record;
    record.instrument = Instrument::HydrometerGravity;
    record.value = 1.078;
    record.temperature_c = 31.0;
    const MixEstimate expected = asSolved(record);
    EXPECT_NEAR(foundSugar(), percent(expected.sugar), 0.051) << found().toStdString();
    write("target", "26");
    EXPECT_NEAR(amount(1), (0.26 - expected.sugar.value) * document.analysis().mass.value / 0.74, 0.6);
    EXPECT_TRUE(text("filling").startsWith("needs ")) << text("filling").toStdString();
    EXPECT_TRUE(find<QLineEdit>("hydrometerReading").isVisible());
    EXPECT_GT(placeOf("hydrometerReading").top(), placeOf("instrument").bottom());
    EXPECT_GT(placeOf("madeFor").top(), placeOf("hydrometerReading").bottom());
    write("jarDepth", "60");
    EXPECT_FALSE(text("filling").startsWith("needs ")) << text("filling").toStdString();
}

TEST_F(Measure, AnEggSaysARange)
{
    lay("500 g water\n250 g sugar\n30 g sweet vermouth");
    choose("instrument", "egg that floats");
    write("eggReading", "25");
    write("eggMass", "57");
    choose("eggAge", "of unknown age");
    const auto range = text("explanation");
    EXPECT_TRUE(range.startsWith("An egg says no more than between ")) << range.toStdString();
    EXPECT_EQ(QString::number(openedSugars(), 'f', 0), found().section(u' ', 0, 0));
    EXPECT_GT(foundBand(), 2.0);
    write("target", "40");
    EXPECT_GT(amount(1), 0.0);
    const double wide = foundBand();
    choose("eggAge", "laid today");
    EXPECT_LT(foundBand(), wide);
}

TEST_F(Measure, BothTogetherFindTheAlcohol)
{
    choose("instrument", "refractometer and hydrometer");
    write("refractometerReading", "20.7");
    EXPECT_EQ(found(), "Nothing read yet");
    write("hydrometerReading", "19.7");
    EXPECT_TRUE(found().contains("alcohol")) << found().toStdString();
    write("known", "1.4");
    EXPECT_FALSE(found().contains("alcohol")) << found().toStdString();
}

TEST_F(Measure, FieldsComeBackWhateverWasChosenBefore)
{
    auto& choice = find<QComboBox>("instrument");
    constexpr int both = 2;
    for (const int before : {0, 1, 3, 4, 1, 4, 0, 3}) {
        choice.setCurrentIndex(before);
        choice.setCurrentIndex(both);
        QTest::qWait(1);
        for (const char* field :
            {"refractometerReading", "refractometerScale", "hydrometerReading", "jarDiameter", "sampleTemperature"}) {
            const auto& shown = find<QWidget>(field);
            EXPECT_TRUE(shown.isVisible() && shown.height() > 10 && !shown.visibleRegion().isEmpty())
                << field << " after " << before;
        }
        EXPECT_FALSE(find<QWidget>("eggReading").isVisible());
        EXPECT_FALSE(find<QWidget>("boilingReading").isVisible());
    }
    choose("instrument", "egg that floats");
    EXPECT_FALSE(find<QWidget>("filling").isVisible());
}

TEST_F(Measure, AJarThatIsNoneIsNotRemembered)
{
    choose("instrument", "hydrometer");
    write("jarDiameter", "1.083");
    write("jarDiameter", "");
    EXPECT_EQ(plain(find<QLineEdit>("jarDiameter").placeholderText()), "38 mm");
    startAgain();
    choose("instrument", "hydrometer");
    EXPECT_EQ(find<QLineEdit>("jarDiameter").text(), "");
}

TEST_F(Measure, EscapeClosesAnOpenListFirst)
{
    auto& choice = find<QComboBox>("instrument");
    choice.showPopup();
    ASSERT_TRUE(QTest::qWaitFor([] { return QApplication::activePopupWidget() != nullptr; }));
    QTest::keyClick(QApplication::activePopupWidget(), Qt::Key_Escape);
    EXPECT_TRUE(window->isVisible());
}

TEST_F(Measure, BothDecimalMarksAndEveryKeystrokeCount)
{
    write("refractometerReading", "19.5");
    const QString withPoint = found();
    write("refractometerReading", "19,5");
    EXPECT_EQ(found(), withPoint);
    write("refractometerReading", "19,");
    EXPECT_NE(found(), withPoint);
    write("refractometerReading", "");
    EXPECT_EQ(found(), "Nothing read yet");
    EXPECT_FALSE(find<QPushButton>("keepReading").isEnabled());
}

TEST_F(Measure, AnImpossibleReadingIsASentenceAndNothingCanBeKept)
{
    write("refractometerReading", "90");
    EXPECT_FALSE(text("explanation").isEmpty());
    EXPECT_EQ(found(), "No mix matches these readings");
    EXPECT_FALSE(find<QPushButton>("keepReading").isEnabled());
    write("refractometerReading", "-3");
    EXPECT_EQ(found(), "No mix matches these readings");
    write("refractometerReading", "nan");
    EXPECT_TRUE(text("explanation").contains("“nan”")) << text("explanation").toStdString();
    choose("refractometerScale", "0 to 32 °Bx");
    write("refractometerReading", "19");
    EXPECT_GT(foundSugar(), 10.0);
}

TEST_F(Measure, ABatchIsCorrectedOnTheRecordAndTheRecipeStays)
{
    const Recipe before = document.recipe();
    write("refractometerReading", "19");
    write("target", "26");
    const double found_percent = foundSugar();
    const double toAdd_g = std::round(amount(1));
    click("addChoice");
    EXPECT_EQ(rows(), before.components.front().rows);
    ASSERT_EQ(document.recipe().batchCorrections.size(), 1U);
    const BatchCorrection& correction = document.recipe().batchCorrections.front();
    ASSERT_EQ(correction.added.size(), 1U);
    EXPECT_EQ(correction.added.front(), (AddedIngredient{"sugar", {toAdd_g}}));
    EXPECT_NEAR(correction.sugarsBefore_percent, found_percent, 0.051);
    EXPECT_NEAR(correction.sugarsAfter_percent, 26.0, 1e-6);
    ASSERT_EQ(document.recipe().readings.size(), 1U) << "the reading is kept with it";
    EXPECT_EQ(document.recipe().readings.front().value, 19.0);
    EXPECT_EQ(document.recipe().readings.front().date, correction.date);
    EXPECT_EQ(document.undoStack().count(), 1);
    EXPECT_TRUE(message().contains("the recipe stays as it is")) << message().toStdString();
    EXPECT_EQ(found(), "Nothing read yet") << "the mix that was read is another now";

    auto& record = find<QListWidget>("keptReadings");
    ASSERT_EQ(record.count(), 2);
    EXPECT_TRUE(plain(record.item(0)->text()).contains("Added to the batch: ")) << record.item(0)->text().toStdString();
    record.setCurrentRow(0);
    click("deleteReading");
    EXPECT_TRUE(document.recipe().batchCorrections.empty());
    EXPECT_EQ(document.recipe().readings.size(), 1U);

    document.undoStack().setIndex(0);
    EXPECT_EQ(document.recipe(), before);
}

/// "Correct the recipe" asks what amounts would have been right: the recipe itself arrives at the target, whatever was read.
TEST_F(Measure, TheRecipeIsBroughtToTheTargetWhereThatIsChosen)
{
    const Recipe before = document.recipe();
    write("refractometerReading", "19");
    choose("subject", "Correct the recipe");
    write("target", "26");
    const double sugar = document.analysis().shares.sugars.value;
    EXPECT_NEAR(amount(1), (0.26 - sugar) * document.analysis().mass.value / 0.74, 0.6);
    click("addChoice");
    EXPECT_NEAR(percent(document.analysis().shares.sugars), 26.0, 0.1);
    EXPECT_EQ(rows().size(), before.components.front().rows.size()) << "more of the same row";
    EXPECT_TRUE(document.recipe().batchCorrections.empty());
    EXPECT_EQ(document.undoStack().undoText(), "Add Sugar (sucrose)");
    EXPECT_EQ(document.undoStack().count(), 1);
    EXPECT_NE(found(), "Nothing read yet") << "the batch in the bowl is the same";
    QTest::keyClick(&find<QPushButton>("addChoice"), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(document.recipe(), before);
}

TEST_F(Measure, WithoutAReadingABatchStartsFromTheRecipe)
{
    write("target", "26");
    const double sugar = document.analysis().shares.sugars.value;
    EXPECT_NEAR(amount(1), (0.26 - sugar) * document.analysis().mass.value / 0.74, 0.6);
    click("addChoice");
    ASSERT_EQ(document.recipe().batchCorrections.size(), 1U);
    EXPECT_NEAR(document.recipe().batchCorrections.front().sugarsBefore_percent, 100.0 * sugar, 1e-9);
    EXPECT_TRUE(document.recipe().readings.empty());
}

/// A cause put into the recipe and what it then takes: the amounts that would have been right with this fruit.
TEST_F(Measure, TheRecipeIsCorrectedByACause)
{
    const Recipe before = document.recipe();
    write("refractometerReading", "19");
    write("sampleTemperature", "31");
    ASSERT_GT(find<QListWidget>("causes").count(), 0) << text("diagnosis").toStdString();
    auto& causes = find<QListWidget>("causes");
    for (int row = 0; row < causes.count(); ++row)
        if (causes.item(row)->text().contains("too little"))
            causes.setCurrentRow(row);
    ASSERT_TRUE(causes.currentItem()->text().contains("too little"));
    click("applyCause");
    EXPECT_NE(document.recipe(), before);
    EXPECT_EQ(document.undoStack().undoText(), "Apply correction");
    EXPECT_NEAR(percent(document.analysis().shares.sugars), foundSugar(), 0.3);
    document.undoStack().undo();
    EXPECT_EQ(document.recipe(), before);
}

/// The first digits of a pressure are one of no kitchen.
TEST_F(Measure, AHalfTypedPressureOfTheAirWaitsForItsLastDigit)
{
    lay("500 g water\n200 g sugar");
    choose("instrument", "thermometer at the boil");
    write("boilingReading", "101");
    choose("pressureBy", "air pressure");
    const QString before = found();
    for (const char* typed : {"1", "10", "0", "99", "1300"}) {
        write("pressure", typed);
        EXPECT_TRUE(text("explanation").contains("1200")) << typed << ": " << text("explanation").toStdString();
    }
    write("pressure", "1013.25");
    EXPECT_EQ(found(), before);
    EXPECT_FALSE(text("explanation").contains("1200"));
}

/// What the mix is found to be takes one line or five: the button is where the hand left it.
TEST_F(Measure, TheButtonThatSavesAReadingStaysWhereItIs)
{
    for (const QSize size : {QSize(980, 640), QSize(1366, 768), QSize(900, 420)}) {
        window->resize(size);
        for (const char* instrument : {"refractometer", "hydrometer", "refractometer and hydrometer"}) {
            choose("instrument", instrument);
            const QString reading = QString::fromLatin1(instrument).startsWith(u'r') ? "refractometerReading" : "hydrometerReading";
            write(qPrintable(reading), "2");
            const QRect place = placeOf("keepReading");
            for (const char* typed : {"19", "24", "0", "95", "1x", "-4", "45"}) {
                write(qPrintable(reading), typed);
                EXPECT_EQ(placeOf("keepReading"), place) << instrument << ' ' << typed << ' ' << size.height();
            }
            write("sampleTemperature", "900");
            EXPECT_EQ(placeOf("keepReading"), place) << instrument;
            write("sampleTemperature", "");
        }
    }
}

TEST_F(Measure, NothingIsCarriedFromOneRecipeToTheNext)
{
    write("sampleTemperature", "28");
    write("known", "2");
    write("readingNote", "after straining");
    write("target", "30");
    write("refractometerReading", "19");
    click("addChoice");
    ASSERT_FALSE(message().isEmpty());
    write("refractometerReading", "20");
    write("target", "31");
    lay("400 g water\n100 g sugar");
    EXPECT_EQ(message(), QString());
    for (const char* field : {"sampleTemperature", "known", "readingNote", "target", "refractometerReading"})
        EXPECT_EQ(find<QLineEdit>(field).text(), QString()) << field;
    EXPECT_EQ(find<QListWidget>("keptReadings").count(), 0);
}

TEST_F(Measure, AReadingThatCannotBeIsSaidWhereTheMixIsCorrected)
{
    write("refractometerReading", "90");
    EXPECT_TRUE(text("diagnosis").startsWith("Correct the reading first")) << text("diagnosis").toStdString();
    write("refractometerReading", "19");
    EXPECT_FALSE(text("diagnosis").startsWith("Correct the reading first")) << text("diagnosis").toStdString();
}

TEST_F(Measure, KeptReadingsComeBackFromTheFileAndCanBeDeleted)
{
    write("refractometerReading", "19");
    write("sampleTemperature", "31");
    write("readingNote", "after straining");
    click("keepReading");
    ASSERT_EQ(document.recipe().readings.size(), 1U);
    EXPECT_FALSE(faultOfDate(document.recipe().readings.front().date).has_value());
    EXPECT_EQ(document.undoStack().undoText(), "Save reading");
    const QTemporaryDir folder;
    ASSERT_TRUE(document.saveAs(folder.filePath("kept.firn")));
    const auto kept = document.recipe().readings;
    lay("100 g water");
    ASSERT_TRUE(document.open(folder.filePath("kept.firn")));
    EXPECT_EQ(document.recipe().readings, kept);
    auto& list = find<QListWidget>("keptReadings");
    ASSERT_EQ(list.count(), 1);
    const QString line = plain(list.item(0)->text());
    EXPECT_TRUE(line.contains("19.0 °Bx at 31 °C, calculated 19.8") && line.contains("after straining")) << line.toStdString();
    list.setCurrentRow(0);
    click("deleteReading");
    EXPECT_TRUE(document.recipe().readings.empty());
    document.undoStack().undo();
    EXPECT_EQ(document.recipe().readings, kept);
}

TEST_F(Measure, ReadingsFollowTheirComponentToItsNewName)
{
    Recipe recipe = document.recipe();
    recipe.components.front().name = "ice";
    recipe.components.push_back({"sauce", recipe.components.front().rows, {}});
    document.startWith(recipe);
    write("refractometerReading", "19");
    click("keepReading");
    ASSERT_EQ(document.recipe().readings.front().component, "ice");
    renameComponent(document, 0, "granita");
    EXPECT_EQ(document.recipe().readings.front().component, "granita");
    EXPECT_EQ(find<QListWidget>("keptReadings").count(), 1);
    document.showComponent(1);
    EXPECT_EQ(find<QListWidget>("keptReadings").count(), 0);
    document.undoStack().undo();
    EXPECT_EQ(document.recipe().readings.front().component, "ice");
}

TEST_F(Measure, GaugesShowMeasuredBesideComputed)
{
    ReadingsPanel panel;
    SugarScale scale;
    const auto showAll = [&] {
        panel.show(document.analysis());
        scale.show(document.analysis());
    };
    showAll();
    const int unmeasured = scale.sizeHint().height();
    EXPECT_FALSE(panel.valueText().contains("measured") || scale.valueText().contains("measured"));
    write("refractometerReading", "19");
    write("sampleTemperature", "31");
    click("keepReading");
    showAll();
    EXPECT_TRUE(plain(panel.valueText()).contains("refractometer: measured 19.0 °Bx at 31 °C")) << panel.valueText().toStdString();
    EXPECT_TRUE(plain(scale.valueText()).contains("measured 18.8 ± 0.1 %, 0.8 less than the recipe"))
        << scale.valueText().toStdString();
    EXPECT_GT(scale.sizeHint().height(), unmeasured);
}

TEST_F(Measure, InstrumentsAreRememberedAndReadTheGauges)
{
    choose("refractometerScale", "0 to 32 °Bx");
    find<QAbstractButton>("compensates").click();
    choose("instrument", "hydrometer");
    choose("hydrometerScale", "°Bé");
    choose("madeFor", "60 °F");
    EXPECT_TRUE(document.analysis().instruments->refractometer.compensates);
    EXPECT_EQ(document.analysis().instruments->refractometer.to_brix, 32.0);
    lay("100 g water\n100 g sugar");
    EXPECT_EQ(document.analysis().instruments->brix.onScale, OnScale::Above);
    startAgain();
    EXPECT_EQ(find<QComboBox>("instrument").currentText(), "hydrometer");
    EXPECT_EQ(find<QComboBox>("hydrometerScale").currentText(), "°Bé");
    EXPECT_EQ(find<QComboBox>("madeFor").currentText(), "60 °F");
    EXPECT_TRUE(find<QAbstractButton>("compensates").isChecked());
    EXPECT_EQ(plain(find<QComboBox>("refractometerScale").currentText()), "0 to 32 °Bx");
    EXPECT_EQ(rememberedInstruments().hydrometer, Calibration::At60F);
}

TEST_F(Measure, AHostileNameStaysText)
{
    Recipe recipe = recipeFromText("500 g water\n120 g sugar").value();
    Ingredient own = *shippedCatalogue().find("sucrose");
    own.id = "own-b";
    own.name = "<b>big</b><img src=x>";
    own.synonyms.clear();
    recipe.ingredients = {own};
    recipe.components.front().rows.back().ingredient = "own-b";
    document.startWith(recipe);
    write("target", "30");
    EXPECT_EQ(cell(1, 0), "<b>big</b><img src=x>");
    const QString tip = choices().item(1, 0)->toolTip();
    EXPECT_FALSE(tip.contains("<b>")) << tip.toStdString();
    click("addChoice");
    EXPECT_TRUE(window->findChild<MessageBar*>()->sentence().contains("<b>big</b>"));
    for (const QLabel* label : window->findChildren<QLabel*>())
        EXPECT_TRUE(label->textFormat() == Qt::PlainText || !Qt::mightBeRichText(label->text())) << label->text().toStdString();
}

TEST_F(Measure, EscapeClosesAndTheBenchStays)
{
    QTest::keyClick(window, Qt::Key_Escape);
    EXPECT_FALSE(window->isVisible());
    EXPECT_TRUE(bench.isVisible());
    open();
    EXPECT_EQ(bench.findChildren<MeasureWindow*>().size(), 1);
}

TEST_F(Measure, EveryFieldHasANameForAScreenReader)
{
    for (const QWidget* field : window->findChildren<QWidget*>()) {
        if (qobject_cast<const QLineEdit*>(field) || qobject_cast<const QComboBox*>(field)) {
            EXPECT_FALSE(field->accessibleName().isEmpty()) << field->objectName().toStdString();
        }
    }
}

class MeasureFromBench : public Bench {};

TEST_F(MeasureFromBench, TheMenusShortcutOpensItAndItFollowsTheComponent)
{
    lay("500 g water\n120 g sugar");
    press(Qt::Key_M, Qt::ControlModifier);
    auto* measure = window.findChild<MeasureWindow*>();
    ASSERT_TRUE(measure && measure->isVisible());
    Recipe recipe = window.document().recipe();
    recipe.components.front().name = "ice";
    recipe.components.push_back({"sauce", recipe.components.front().rows, {}});
    window.document().startWith(recipe);
    window.document().showComponent(1);
    EXPECT_TRUE(measure->windowTitle().contains("sauce")) << measure->windowTitle().toStdString();
}

}  // namespace
}  // namespace firn::app
