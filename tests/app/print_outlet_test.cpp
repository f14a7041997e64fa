// The doors to paper and PDF of all windows: the names they suggest, the paper they take, and what they say.
#include "bench.h"
#include "printed_pages.h"

#include "bench/message_bar.h"
#include "compare/comparing_window.h"
#include "document/edits.h"
#include "document/file_name.h"
#include "document/places.h"
#include "document/tasting_edits.h"
#include "document/version_edits.h"
#include "exchange/recipe_text.h"
#include "print/chosen_paper.h"
#include "tasting/tasting_window.h"
#include "teach/derivation_window.h"
#include "teach/exercises_window.h"

#include <QAction>
#include <QApplication>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QTest>

namespace firn::app {
namespace {

/// A button that saves pages, and what is said then.
struct Door {
    const char* name;
    QWidget* window;
    std::function<void()> save;
    std::function<QString()> said;
};

class PrintOutlets : public Bench {
protected:
    PrintOutlets()
    {
        settings().remove(QStringLiteral("paper"));
        Document& document = window.document();
        document.startWith(recipeFromText("500 g water\n150 g sucrose").value());
        keepVersion(document, "lean", {});
        changeAmount(document, {0, 1}, {180.0, Unit::Gram});
        addScale(document, {"iciness", 0.0, 10.0, "smooth", "crushed ice"});
        addBlindSheet(document, {"1", {}}, 5);
        EXPECT_TRUE(document.saveAs(inFolder("granita.firn")));
    }
    ~PrintOutlets() override { settings().remove(QStringLiteral("paper")); }

    std::vector<Door> doors()
    {
        Document& document = window.document();
        auto* derivations = window.findChild<DerivationWindow*>();
        derivations->open("rows[1].grams");
        ExercisesWindow* exercises = &showExercises(document, answers, window);
        showComparing(document, answers, window);
        auto* comparing = window.findChild<ComparingWindow*>();
        showTasting(document, answers, window);
        auto* tasting = window.findChild<TastingWindow*>();
        tasting->findChild<QTabWidget*>()->setCurrentIndex(2);  // tasting blind
        const auto clicking = [](QWidget* in, const char* name) {
            return [in, name] { in->findChild<QPushButton*>(name)->click(); };
        };
        const auto inLabel = [](QWidget* in) { return [in] { return in->findChild<QLabel*>("message")->text(); }; };
        const auto inBar = [](QWidget* in) { return [in] { return in->findChild<MessageBar*>()->sentence(); }; };
        const auto savePdf = [derivations] {
            for (QAction* action : derivations->findChildren<QAction*>())
                if (action->text() == "Save as PDF…")
                    action->trigger();
        };
        return {{"derivation", derivations, savePdf, inLabel(derivations)},
            {"exercises", exercises, clicking(exercises, "pdf"), inLabel(exercises)},
            {"comparing", comparing, clicking(comparing, "pdf"), inBar(comparing)},
            {"blind pages", tasting, clicking(tasting, "saveSheet"), inBar(tasting)},
            {"key", tasting, clicking(tasting, "saveKey"), inBar(tasting)}};
    }
    static PaperChoice& paperIn(QWidget& window) { return *window.findChild<PaperChoice*>(); }
    static void choose(PaperChoice& choice, const QString& paper)
    {
        choice.setCurrentIndex(choice.findText(paper));
        emit choice.activated(choice.currentIndex());
    }
};

TEST_F(PrintOutlets, EachSaysWhereThePagesAre)
{
    for (const Door& door : doors()) {
        answers.page = inFolder(QString(door.name) + ".pdf");
        door.save();
        EXPECT_EQ(door.said(), "The pages are in " + answers.page + ".") << door.name;
        EXPECT_GE(pagesIn(contentsOf(answers.page)), 1) << door.name;
        EXPECT_EQ(paperOf(contentsOf(answers.page)), a4_pt) << door.name;
    }
}

TEST_F(PrintOutlets, EachSaysInOneSentenceThatAFileCannotBeWritten)
{
    answers.page = inFolder("granita.firn") + "/no.pdf";  // below a file, where not even root can write
    for (const Door& door : doors()) {
        door.save();
        const QString said = door.said();
        EXPECT_EQ(said, answers.page + " could not be saved because its folder is missing. Create the folder, or save elsewhere.")
            << door.name;
    }
}

TEST_F(PrintOutlets, NothingHappensWhereThePersonThinksBetterOfIt)
{
    for (const Door& door : doors()) {
        answers.page = {};
        const QString before = door.said();
        door.save();
        EXPECT_FALSE(answers.pageSuggested.isEmpty()) << door.name;
        EXPECT_EQ(door.said(), before) << door.name;
        answers.pageSuggested = {};
    }
}

TEST_F(PrintOutlets, HostileTitlesMakeCleanNamesBesideTheRecipe)
{
    const std::string hostile = "../a\\b: \"pear\" <1>|? * \x07\xE2\x80\xAE ice " + std::string(300, 'x');
    changeTitle(window.document(), hostile);
    Ingredient named = *shippedCatalogue().find("sucrose");
    Recipe recipe = window.document().recipe();
    named.id = "hostile";
    named.name = hostile;
    recipe.ingredients.push_back(named);
    recipe.components.front().rows[1].ingredient = hostile;
    window.document().startWith(recipe);
    ASSERT_TRUE(window.document().saveAs(inFolder("granita.firn")));
    const QRegularExpression refused("[\\\\/:*?\"<>|\\p{C}]");
    for (const Door& door : doors()) {
        door.save();
        ASSERT_TRUE(answers.pageSuggested.startsWith(folder.path() + '/')) << door.name << answers.pageSuggested.toStdString();
        const QString name = answers.pageSuggested.mid(folder.path().size() + 1);
        EXPECT_FALSE(name.contains(refused)) << door.name << ": " << name.toStdString();
        EXPECT_TRUE(name.contains("pear 1 ice x")) << door.name << ": " << name.toStdString();
        EXPECT_TRUE(name.endsWith(".pdf") && name.size() <= 84) << door.name << ": " << name.toStdString();
        answers.pageSuggested = {};
    }
}

TEST_F(PrintOutlets, ThePaperIsChosenOnceForAllAndRemembered)
{
    EXPECT_EQ(chosenPaper(), QPageSize(QPageSize::A4));  // in this locale
    const std::vector<Door> all = doors();
    choose(paperIn(*all.front().window), "Letter");
    EXPECT_EQ(chosenPaper(), QPageSize(QPageSize::Letter));
    for (const Door& door : all) {
        door.window->activateWindow();
        EXPECT_TRUE(QTest::qWaitFor([&] { return QApplication::activeWindow() == door.window; })) << door.name;
        EXPECT_EQ(paperIn(*door.window).currentText(), "Letter") << door.name;
        answers.page = inFolder(QString(door.name) + ".pdf");
        door.save();
        EXPECT_EQ(paperOf(contentsOf(answers.page)), letter_pt) << door.name;
    }
    choose(paperIn(*all.back().window), "A4");
    EXPECT_EQ(PaperChoice().currentText(), "A4");
    settings().setValue("paper", "papyrus");
    EXPECT_EQ(chosenPaper(), QPageSize(QPageSize::A4));
}

TEST_F(PrintOutlets, APrinterGetsTheChosenPaperAndItsNameIsSaid)
{
    auto& derivations = *window.findChild<DerivationWindow*>();
    derivations.open("percent.sugars");
    choose(paperIn(derivations), "Letter");
    answers.printTo = inFolder("printed.pdf");
    for (QAction* action : derivations.findChildren<QAction*>())
        if (action->shortcut() == QKeySequence(QKeySequence::Print))
            action->trigger();
    EXPECT_EQ(derivations.findChild<QLabel*>("message")->text(), "The pages went to " + answers.printTo + ".");
    EXPECT_EQ(paperOf(contentsOf(answers.printTo)), letter_pt);
    derivations.open("mass_g");
    EXPECT_EQ(derivations.findChild<QLabel*>("message")->text(), "");
}

TEST_F(PrintOutlets, AnEndingIsAddedAndNothingIsOverwrittenUnasked)
{
    const Door exercises = doors()[1];
    answers.page = inFolder("pages");
    exercises.save();
    EXPECT_TRUE(contentsOf(inFolder("pages.pdf")).startsWith("%PDF"));
    written("pages.pdf", "other");
    exercises.save();
    EXPECT_EQ(answers.pageSuggested, inFolder("pages.pdf"));  // asked again, with the name that is taken
    EXPECT_EQ(contentsOf(inFolder("pages.pdf")), "other");
}

TEST(FileNames, EveryFileSystemTakesThem)
{
    EXPECT_EQ(fileNameFrom("Pear granita: lean, Version 2"), "Pear granita lean, Version 2");
    EXPECT_EQ(fileNameFrom(" a/b\\c*d?e\"f<g>h|i\tj "), "a b c d e f g h i j");
    EXPECT_EQ(fileNameFrom(QString(500, u'x')).size(), 80);
    EXPECT_EQ(fileNameFrom(QString(79, u'x') + QStringLiteral("🍐")), QString(79, u'x'));  // no half of a pear
    EXPECT_EQ(fileNameFrom(QStringLiteral("Pêra 🍐")), QStringLiteral("Pêra 🍐"));
    for (const char* nothing : {"", " ", "??", "/\\"})
        EXPECT_EQ(fileNameFrom(nothing), "Untitled") << nothing;
}

TEST_F(Bench, ARecipesFileIsNamedAfterItsTitleWithoutRefusedSigns)
{
    changeTitle(window.document(), "Pear: <lean>/fat?");
    QTest::keyClick(&window, Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(QFileInfo(answers.suggested).fileName(), "Pear lean fat.firn");
}

}  // namespace
}  // namespace firn::app
