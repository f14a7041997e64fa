// Tasting as a kitchen does it: real widgets, typed at and clicked.
#include "tasting_log.h"

#include "tasting/photo_view.h"
#include "tasting/scales.h"
#include "tasting/score_chart.h"
#include "tasting/tasting_wording.h"

#include <QAction>
#include <QDateEdit>
#include <QDir>
#include <QMenu>
#include <QPlainTextEdit>
#include <QTableWidget>

namespace firn::app {
namespace {

TEST_F(TastingLog, ATastingIsTypedWithADecimalComma)
{
    click("addTasting");
    EXPECT_EQ(tasting().version, "3");
    EXPECT_EQ(tasting().date, QDate::currentDate().toString(Qt::ISODate).toStdString());
    write("tasters", "the kitchen");
    write("servedAt", "-8,5");
    write("frozenFor", "20");
    write("score iciness", "6,5");
    write("nextChange", "less sugar");
    auto& words = find<QPlainTextEdit>("tastingWords");
    words.setFocus();
    QTest::keyClicks(&words, "<b>cold</b>");
    EXPECT_EQ(tasting().tasters, "the kitchen");
    EXPECT_EQ(tasting().servedAt_c, -8.5);
    EXPECT_EQ(tasting().frozen_h, 20.0);
    EXPECT_EQ(scoreOn(tasting(), "iciness"), 6.5);
    EXPECT_EQ(tasting().next, "less sugar");
    EXPECT_EQ(tasting().words, "<b>cold</b>");
    EXPECT_EQ(find<QListWidget>("tastings").item(0)->text().section(u'\n', 0, 0), "little sugar");
}

TEST_F(TastingLog, EachEditIsOneStepThatUndoTakesBackExactly)
{
    // A number is in the history once it is entered.
    const auto enter = [this](const char* field, const QString& number) {
        write(field, number);
        QTest::keyClick(&find<QLineEdit>(field), Qt::Key_Return);
    };
    expectOneStep([this] { click("addTasting"); });
    expectOneStep([this] { write("tasters", "two cooks"); });
    expectOneStep([&] { enter("servedAt", "-8"); });
    expectOneStep([&] { enter("frozenFor", "12.5"); });
    expectOneStep([&] { enter("score iciness", "7"); });
    expectOneStep([&] { enter("score iciness", ""); });
    expectOneStep([this] { write("nextChange", "less"); });
    expectOneStep([this] { find<QDateEdit>("tastingDay").setDate(QDate(2026, 4, 3)); });
    expectOneStep([this] { taste("first try"); });
    answers.photo = QStringLiteral("/nowhere/one.jpg");
    expectOneStep([this] { click("choosePhoto"); });
    expectOneStep([this] { click("removePhoto"); });
    expectOneStep([this] { addBlindSheet(document, {"1", "2", {}}, 3); });
    click("reveal");
    expectOneStep([this] { click("revealNow"); });
    enter("score iciness", "3");
    expectOneStep([this] {
        tabs().setCurrentIndex(1);
        find<QTableWidget>("scales").item(0, 0)->setText(QStringLiteral("crystals"));
    });
    EXPECT_EQ(scoreOn(tasting(), "crystals"), 3.0);
    expectOneStep([this] { click("deleteScale"); });
    expectOneStep([this] { click("deleteTasting"); });
    EXPECT_TRUE(recipe().tastings.empty());
}

TEST_F(TastingLog, AScoreOutsideTheScaleIsSaidAndNotKept)
{
    click("addTasting");
    write("score iciness", "4");
    write("score iciness", "12");
    EXPECT_EQ(text("score icinessFault"), "12 is outside the scale of iciness, which goes from 0 to 10.");
    EXPECT_TRUE(find<QLabel>("score icinessFault").isVisible());
    EXPECT_EQ(find<QLineEdit>("score iciness").text(), "12");
    EXPECT_EQ(scoreOn(tasting(), "iciness"), 4.0);  // not the 1 on the way to 12
    write("score iciness", "9");
    EXPECT_FALSE(find<QLabel>("score icinessFault").isVisible());
    EXPECT_EQ(scoreOn(tasting(), "iciness"), 9.0);
    write("servedAt", "-80");
    EXPECT_EQ(tasting().servedAt_c, std::nullopt);
    EXPECT_FALSE(text("servedAtFault").isEmpty());
}

// A minus is easily left out, and nobody serves an ice at +8 °C by intention.
TEST_F(TastingLog, ATemperatureAboveFreezingNeedsItsSign)
{
    click("addTasting");
    write("servedAt", "8");
    EXPECT_EQ(tasting().servedAt_c, std::nullopt);
    EXPECT_TRUE(text("servedAtFault").contains("8 °C is above freezing.")) << text("servedAtFault").toStdString();
    write("servedAt", "-8");
    EXPECT_EQ(tasting().servedAt_c, -8.0);
    write("servedAt", "+8");
    EXPECT_EQ(tasting().servedAt_c, 8.0);
    write("servedAt", "14 °F");
    EXPECT_NEAR(tasting().servedAt_c.value_or(0.0), -10.0, 1e-9);
    EXPECT_EQ(text("servedAtFault"), "");
}

TEST_F(TastingLog, UndoInAFieldTakesBackTheRecipesLastStep)
{
    click("addTasting");
    write("tasters", "abc");
    QTest::keyClick(&find<QLineEdit>("tasters"), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(tasting().tasters, "");
    EXPECT_EQ(find<QLineEdit>("tasters").text(), "");
}

TEST_F(TastingLog, ScalesAreSuggestedRenamedAndCheckedInPlace)
{
    auto& scales = find<QTableWidget>("scales");
    tabs().setCurrentIndex(1);
    auto* menu = find<QPushButton>("addScale").menu();
    emit menu->aboutToShow();
    QStringList offered;
    for (const QAction* action : menu->actions())
        offered << action->objectName();
    EXPECT_TRUE(offered.contains("melt"));
    EXPECT_FALSE(offered.contains("iciness"));  // the recipe has it
    for (QAction* action : menu->actions())
        if (action->objectName() == QStringLiteral("melt"))
            action->trigger();
    ASSERT_EQ(recipe().scales.size(), 2u);
    EXPECT_EQ(scales.rowCount(), 2);
    EXPECT_EQ(scales.currentRow(), 1);
    scales.item(1, 3)->setText(QStringLiteral("7,5"));
    EXPECT_EQ(recipe().scales[1].to, 7.5);
    scales.item(1, 0)->setText(QStringLiteral("iciness"));
    EXPECT_EQ(text("scaleProblem"), "There is a scale iciness already. Choose another name.");
    EXPECT_EQ(recipe().scales[1].name, "melt");
    scales.item(1, 0)->setText(QStringLiteral("<b>"));
    EXPECT_EQ(recipe().scales[1].name, "<b>");
    scales.item(1, 1)->setText(QStringLiteral("9"));
    EXPECT_EQ(text("scaleProblem"), "The scale of <b> must end above 9, where it begins.");
}

TEST_F(TastingLog, TabGoesOnFromTheCellThatWasTypedOver)
{
    auto& scales = find<QTableWidget>("scales");
    tabs().setCurrentIndex(1);
    scales.setCurrentCell(0, 1);
    scales.editItem(scales.currentItem());
    auto* editor = scales.findChild<QLineEdit*>();
    ASSERT_TRUE(editor);
    EXPECT_EQ(editor->palette().color(QPalette::Base).alpha(), 255);
    editor->selectAll();
    QTest::keyClicks(editor, "1");
    QTest::keyClick(editor, Qt::Key_Tab);
    EXPECT_EQ(recipe().scales.front().from, 1.0);
    EXPECT_EQ(scales.currentRow(), 0);
    EXPECT_EQ(scales.currentColumn(), 2);
    auto* next = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_TRUE(next);
    EXPECT_EQ(next->text(), "smooth");
    QTest::keyClicks(next, "silky");
    QTest::keyClick(next, Qt::Key_Return);
    QApplication::processEvents();  // an editor is read only then
    EXPECT_EQ(recipe().scales.front().low, "silky");
    EXPECT_EQ(recipe().scales.front().name, "iciness");
}

TEST_F(TastingLog, TabComesToTheScoresOfNewScalesInTheirPlace)
{
    click("addTasting");
    addScale(document, {"melt", 0.0, 10.0, "slow", "fast"});
    auto& before = find<QLineEdit>("frozenFor");
    before.setFocus();
    for (const char* next : {"score iciness", "score melt", "tastingWords"}) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        EXPECT_EQ(QApplication::focusWidget()->objectName(), next);
    }
}

TEST_F(TastingLog, SavingIsTheBenchsOwn)
{
    const QString file = folder.filePath("saved.firn");
    ASSERT_TRUE(document.saveAs(file));
    auto* saving = new QAction(&bench);
    saving->setShortcut(QKeySequence::Save);
    bench.addAction(saving);
    QObject::connect(saving, &QAction::triggered, &bench, [this] { EXPECT_TRUE(document.saveAs(document.path())); });
    click("addTasting");
    write("tasters", "two cooks");
    ASSERT_TRUE(document.isModified());
    QTest::keyClick(&find<QLineEdit>("tasters"), Qt::Key_S, Qt::ControlModifier);
    EXPECT_FALSE(document.isModified());
    EXPECT_EQ(find<QLineEdit>("tasters").text(), "two cooks");
}

TEST_F(TastingLog, ALetterWithAltMeansOneButtonAndNoneDeletes)
{
    addBlindSheet(document, {"1", "2"}, 5);
    changeAmount(document, {0, 1}, {99.0, Unit::Gram});
    click("addTasting");
    for (int tab = 0; tab < tabs().count(); ++tab) {
        tabs().setCurrentIndex(tab);
        QStringList letters;
        for (const auto* each : window->findChildren<QPushButton*>())
            if (each->isVisible() && !each->shortcut().isEmpty())
                letters << each->shortcut().toString();
        EXPECT_GE(letters.size(), 3);
        EXPECT_EQ(letters.removeDuplicates(), 0) << letters.join(u' ').toStdString();
    }
    for (const char* name : {"deleteTasting", "deleteScale", "reveal", "revealNow"})
        EXPECT_TRUE(find<QPushButton>(name).shortcut().isEmpty()) << name;
}

TEST_F(TastingLog, AFieldOfSeveralLinesHasAFrameOnADarkGround)
{
    click("addTasting");
    auto& words = find<QPlainTextEdit>("tastingWords");
    QPalette dark = words.palette();
    for (const auto role : {QPalette::Window, QPalette::Base})
        dark.setColor(role, QColor(30, 30, 30));
    for (const auto role : {QPalette::WindowText, QPalette::Text})
        dark.setColor(role, QColor(230, 230, 230));
    words.setPalette(dark);
    ASSERT_FALSE(words.hasFocus());
    const QImage drawn = words.grab().toImage();
    EXPECT_GT(drawn.pixelColor(drawn.width() / 2, 0).lightness(), 80);
    EXPECT_GT(drawn.pixelColor(0, drawn.height() / 2).lightness(), 80);
}

TEST_F(TastingLog, AMeanOfOpenAndBlindTastingsSaysSo)
{
    VersionScores scores{"1", {{0, 4.0, true}, {1, 6.0, false}, {2, 5.0, true}}, 5.0};
    EXPECT_EQ(meanText(scores), "mean 5.0 of 3 tastings, 2 of them blind");
    for (ScoreMark& mark : scores.marks)
        mark.isBlind = true;
    EXPECT_EQ(meanText(scores), "mean 5.0 of 3 tastings");
}

TEST_F(TastingLog, TheChartIsThatOfTheRecipe)
{
    for (const auto& [version, score] : {std::pair("1", 8.0), {"1", 6.0}, {"3", 2.5}}) {
        addTasting(document);
        const std::size_t place = recipe().tastings.size() - 1;
        changeTasted(document, place, version, {});
        changeScore(document, place, "iciness", score);
        changeTastingNumber(document, place, &Tasting::servedAt_c, score - 20.0);
    }
    auto* chart = window->findChild<ScoreChart*>();
    EXPECT_EQ(chart->valueText(), "first try: mean 7.0 of 2 tastings\nlittle sugar: 2.5, one tasting");
    const QPointF zero = chart->placeOf(0, 0.0), ten = chart->placeOf(0, 10.0);
    EXPECT_NEAR(chart->placeOf(0, 7.0).x(), zero.x() + 0.7 * (ten.x() - zero.x()), 1e-9);
    EXPECT_LT(ten.x(), chart->width());
    EXPECT_GT(chart->placeOf(1, 2.5).y(), chart->placeOf(0, 8.0).y());
    EXPECT_EQ(text("unfair"), "Not a fair comparison: they were served between -17.5 °C and -12 °C. Taste them equally cold.");
}

TEST_F(TastingLog, APhotoIsShownOrASentenceSaysWhyNot)
{
    QImage picture(1200, 900, QImage::Format_RGB32);
    picture.fill(Qt::darkGreen);
    ASSERT_TRUE(folder.isValid() && picture.save(folder.filePath("one.png")));
    click("addTasting");
    answers.photo = folder.filePath("one.png");
    click("choosePhoto");
    settle();
    auto& shown = find<QLabel>("photo");
    ASSERT_FALSE(shown.pixmap().isNull());
    EXPECT_LE(shown.pixmap().width(), 320);
    EXPECT_LE(shown.pixmap().height(), 240);

    answers.photo = folder.filePath("gone.png");
    click("choosePhoto");
    settle();
    EXPECT_TRUE(shown.isHidden());
    EXPECT_EQ(text("photoProblem"), QStringLiteral("The photo %1 is not there any more. Choose it again, or restore the file.")
                                        .arg(QDir::toNativeSeparators(answers.photo)));

    QFile broken(folder.filePath("broken.png"));
    ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
    broken.write("\x89PNG\r\n\x1a\n and then nothing");
    broken.close();
    answers.photo = broken.fileName();
    click("choosePhoto");
    settle();
    EXPECT_EQ(text("photoProblem"), "The photo broken.png cannot be read as a picture. Choose another file.");
}

TEST_F(TastingLog, AHugePhotoIsRefusedWithoutTakingTheMemory)
{
    // A header that promises 600 megapixels.
    QFile huge(folder.filePath("huge.ppm"));
    ASSERT_TRUE(huge.open(QIODevice::WriteOnly));
    huge.write("P6\n30000 20000\n255\n");
    huge.close();
    const auto picture = photoFrom(huge.fileName(), {320, 240});
    ASSERT_FALSE(picture);
    EXPECT_EQ(english(picture.error()), "The photo huge.ppm is too large to show. Make a smaller copy and choose that.");
}

TEST_F(TastingLog, APhotoThatCouldKeepAReaderWaitingIsRefusedAtOnce)
{
    const QString pipe = folder.filePath("pipe.png");
    ASSERT_EQ(mkfifo(pipe.toUtf8().constData(), 0600), 0);
    for (const QString& file : {pipe, QStringLiteral("/dev/zero")}) {
        const auto picture = photoFrom(file, {320, 240});
        ASSERT_FALSE(picture) << file.toStdString();
        EXPECT_EQ(english(picture.error()), file.toStdString() + " is a pipe, a socket or a device. Choose an ordinary file.");
    }
    EXPECT_EQ(
        english(photoFrom(folder.path(), {320, 240}).error()), folder.path().toStdString() + " is a folder. Choose a file in it.");
    QFile gigabyte(folder.filePath("gigabyte.png"));
    ASSERT_TRUE(gigabyte.open(QIODevice::WriteOnly) && gigabyte.resize(qint64(1024) * 1024 * 1024));
    EXPECT_NE(english(photoFrom(gigabyte.fileName(), {320, 240}).error()).find("the limit is 256 MB"), std::string::npos);
}

TEST_F(TastingLog, SavedAndOpenedAgainAllIsThereAndThePhotoIsKeptFromTheFolder)
{
    QImage picture(10, 10, QImage::Format_RGB32);
    picture.fill(Qt::red);
    ASSERT_TRUE(QDir(folder.path()).mkdir("photos") && picture.save(folder.filePath("photos/one.png")));
    click("addTasting");
    write("tasters", "the kitchen");
    write("score iciness", "7");
    answers.photo = folder.filePath("photos/one.png");
    click("choosePhoto");
    settle();
    addBlindSheet(document, {"1", "2"}, 5);
    const Recipe before = recipe();
    const QString file = folder.filePath("tasted.firn");
    ASSERT_TRUE(document.saveAs(file));
    QFile written(file);
    ASSERT_TRUE(written.open(QIODevice::ReadOnly));
    EXPECT_TRUE(written.readAll().contains("\"photo\": \"photos/one.png\""));
    document.startWith({});
    EXPECT_EQ(find<QListWidget>("tastings").count(), 0);
    ASSERT_TRUE(document.open(file));
    EXPECT_TRUE(recipe() == before);
    settle();
    EXPECT_FALSE(find<QLabel>("photo").pixmap().isNull());
}

}  // namespace
}  // namespace firn::app
