// Versions as a cook keeps them: real widgets, typed at and clicked.
#include "compare/comparing_window.h"
#include "versions/versions_panel.h"

#include "bench.h"

#include "analysis/analysis.h"
#include "bench/message_bar.h"
#include "bench/row_clipboard.h"
#include "document/edits.h"
#include "document/tasting_edits.h"
#include "document/version_edits.h"
#include "exchange/recipe_text.h"
#include "gauges/wording.h"
#include "recipe/versions.h"
#include "versions/version_model.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QDateEdit>
#include <QDockWidget>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTreeView>

namespace firn::app {
namespace {

class VersionsOfRecipe : public Bench {
protected:
    VersionsOfRecipe()
        : panel(*window.findChild<VersionsPanel*>())
        , list(*panel.findChild<QTreeView*>())
        , tester(list.model(), QAbstractItemModelTester::FailureReportingMode::Fatal)
    {
        lay("300 g rhubarb\n190 g sugar\n500 g water");
    }

    /// Ctrl+K, a name, Tab, a note, Enter.
    void keepAs(const QString& name, const QString& note = {})
    {
        press(Qt::Key_K, Qt::ControlModifier);
        type(name);
        press(Qt::Key_Tab);
        type(note);
        press(Qt::Key_Return);
    }
    void sugar(double grams) { changeAmount(window.document(), {0, 1}, {grams, Unit::Gram}); }
    double sugar() { return recipe().components.front().rows.at(1).amount.value; }
    QString shown(int row, int column) { return plain(list.model()->index(row, column).data().toString()); }
    void choose(int row) { list.setCurrentIndex(list.model()->index(row, 0)); }
    void click(const char* name) { QTest::mouseClick(&button(name), Qt::LeftButton); }
    QPushButton& button(const char* name) { return *panel.findChild<QPushButton*>(QString::fromLatin1(name)); }
    static QString plain(QString text) { return text.replace(QChar(0x202F), u' ').replace(QChar(0x2212), u'-'); }

    /// What undo takes back is just what was there, and redo brings the edit back.
    template <class Edit>
    void expectOneStep(Edit edit)
    {
        const Recipe before = recipe();
        const int steps = history().index();
        edit();
        const Recipe after = recipe();
        EXPECT_FALSE(after == before);
        EXPECT_EQ(history().index(), steps + 1);
        history().undo();
        EXPECT_TRUE(recipe() == before);
        history().redo();
        EXPECT_TRUE(recipe() == after);
    }

    VersionsPanel& panel;
    QTreeView& list;
    QAbstractItemModelTester tester;
};

TEST_F(VersionsOfRecipe, ATypedNameWaitsWithItsFileUntilItIsKept)
{
    const QString first = inFolder("rhubarb.firn"), second = inFolder("pear.firn");
    ASSERT_TRUE(window.document().saveAs(first));
    press(Qt::Key_K, Qt::ControlModifier);
    type("less sweet");
    press(Qt::Key_Tab);
    type("for Mara");
    auto& name = *panel.findChild<QLineEdit*>("versionName");
    auto& note = *panel.findChild<QLineEdit*>("versionNote");

    lay("500 g pear");
    EXPECT_EQ(name.text() + note.text(), "");
    ASSERT_TRUE(window.document().saveAs(second));
    ASSERT_TRUE(window.document().open(first));
    EXPECT_EQ(name.text(), "less sweet");
    EXPECT_EQ(note.text(), "for Mara");

    sugar(150.0);
    name.setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(recipe().versions.back().name, "less sweet");
    ASSERT_TRUE(window.document().open(second));
    ASSERT_TRUE(window.document().open(first));
    EXPECT_EQ(name.text() + note.text(), "");
}

TEST_F(VersionsOfRecipe, KeptGoneBackToAndForthNothingIsLost)
{
    keepAs("first try", "too sweet?");
    ASSERT_EQ(recipe().versions.size(), 1u);
    EXPECT_EQ(recipe().versions.front().name, "first try");
    EXPECT_EQ(recipe().versions.front().note, "too sweet?");
    EXPECT_EQ(faultOfDate(recipe().versions.front().date), std::nullopt);
    EXPECT_EQ(shown(0, VersionModel::NameColumn), "first try");
    EXPECT_EQ(shown(0, VersionModel::BenchColumn), "as kept");

    sugar(160.0);
    EXPECT_EQ(shown(0, VersionModel::BenchColumn), "changed since");
    choose(0);
    click("goBack");
    EXPECT_EQ(sugar(), 190.0);
    ASSERT_EQ(recipe().versions.size(), 2u);
    EXPECT_EQ(shown(0, VersionModel::BenchColumn), "as kept");
    EXPECT_EQ(shown(1, VersionModel::BenchColumn), "");
    EXPECT_TRUE(list.model()->index(1, 0).data(Qt::ToolTipRole).toString().contains("made from “first try”"));
    EXPECT_EQ(messageShown(), "“first try” is on the bench. What was there before is kept as “Version 2”; undo puts it back.");
    EXPECT_EQ(recipe().versions.back().note, "Kept before going back to “first try”.");

    const std::vector<Version> versions = recipe().versions;
    choose(1);
    click("goBack");
    EXPECT_EQ(sugar(), 160.0);
    EXPECT_EQ(recipe().versions, versions);
    EXPECT_EQ(messageShown(), "“Version 2” is on the bench.");
    choose(0);
    click("goBack");
    EXPECT_EQ(sugar(), 190.0);
    EXPECT_EQ(recipe().versions, versions);
}

TEST_F(VersionsOfRecipe, EachEditIsOneStepThatUndoTakesBackExactly)
{
    expectOneStep([this] { keepAs("first"); });
    sugar(150.0);
    expectOneStep([this] { keepAs("second"); });
    sugar(120.0);
    expectOneStep([this] {
        choose(0);
        click("goBack");
    });
    const auto edit = [this](int row, int column, const QVariant& value) {
        return list.model()->setData(list.model()->index(row, column), value);
    };
    expectOneStep([&] { edit(1, VersionModel::NameColumn, QStringLiteral("less sugar")); });
    expectOneStep([&] { edit(1, VersionModel::NoteColumn, QStringLiteral("for Sunday")); });
    const std::string time = recipe().versions[1].date.substr(10);
    expectOneStep([&] { edit(1, VersionModel::DateColumn, QDate(2026, 4, 3)); });
    EXPECT_EQ(recipe().versions[1].date, "2026-04-03" + time);
    EXPECT_EQ(shown(1, VersionModel::DateColumn).left(10), "03/04/2026");
    expectOneStep([&] {
        choose(1);
        click("deleteVersion");
    });
    EXPECT_EQ(recipe().versions.size(), 2u);
}

TEST_F(VersionsOfRecipe, TheListSaysWhatCoreSays)
{
    keepAs("first");
    const Analysis analysis = analyse(recipe().versions.front().recipe, window.document().catalogue(), {});
    EXPECT_EQ(shown(0, VersionModel::SugarsColumn), plain(percentText(analysis.shares.sugars)));
    EXPECT_EQ(shown(0, VersionModel::FreezingColumn), plain(degrees(analysis.freezing.freezingPoint->temperature)));
    EXPECT_EQ(list.model()->headerData(VersionModel::FreezingColumn, Qt::Horizontal).toString(), "Freezes from");
}

TEST_F(VersionsOfRecipe, KeptTwiceWithoutAChangeIsSaidAndNotDone)
{
    keepAs("first");
    keepAs("again");
    EXPECT_EQ(recipe().versions.size(), 1u);
    EXPECT_TRUE(messageShown().contains("Nothing has changed since")) << messageShown().toStdString();
}

TEST_F(VersionsOfRecipe, WhatIsBeingTypedIsKeptToo)
{
    goTo(1, IngredientModel::AmountColumn);
    type("175");
    keepAs("typed");
    EXPECT_EQ(recipe().versions.front().recipe.components.front().rows.at(1).amount.value, 175.0);
}

TEST_F(VersionsOfRecipe, ItsRowsCanBeCopiedAndPasted)
{
    keepAs("first");
    sugar(10.0);
    choose(0);
    click("copyVersion");
    const auto copied = recipeOnClipboard().recipe;
    ASSERT_TRUE(copied);
    EXPECT_EQ(copied->components.front().rows, recipe().versions.front().recipe.components.front().rows);
    EXPECT_EQ(messageShown(), "3 rows of “first” are on the clipboard: paste them into the recipe.");
}

TEST_F(VersionsOfRecipe, HostileNamesStayText)
{
    keepAs("<b>bold</b> & [*]");
    EXPECT_EQ(shown(0, 0), "<b>bold</b> & [*]");
    EXPECT_TRUE(list.model()->index(0, 0).data(Qt::ToolTipRole).toString().contains(QStringLiteral("&lt;b&gt;")));
    choose(0);
    sugar(1.0);
    click("goBack");
    EXPECT_TRUE(messageShown().startsWith("“<b>bold</b> & [*]” is on the bench."));
    keepAs("");
    EXPECT_EQ(recipe().versions.size(), 2u);
}

TEST_F(VersionsOfRecipe, TwoToFourAreCompared)
{
    for (const double grams : {100.0, 110.0, 120.0, 130.0, 140.0}) {
        sugar(grams);
        keepAs("");
    }
    QSignalSpy compare(&panel, &VersionsPanel::compareWanted);
    choose(1);
    EXPECT_FALSE(button("compareVersions").isEnabled());
    list.selectionModel()->select(QItemSelection(list.model()->index(1, 0), list.model()->index(3, 0)),
        QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    click("compareVersions");
    ASSERT_EQ(compare.count(), 1);
    EXPECT_EQ(compare.first().first().toStringList(), (QStringList{"2", "3", "4"}));
    const auto* comparing = window.findChild<ComparingWindow*>();
    ASSERT_TRUE(comparing);
    EXPECT_TRUE(comparing->isVisible());
    list.selectAll();
    EXPECT_FALSE(button("compareVersions").isEnabled());
}

TEST_F(VersionsOfRecipe, AVersionBehindACodeIsNotDeleted)
{
    keepAs("first");
    sugar(1.0);
    keepAs("second");
    addBlindSheet(window.document(), {"1", "2"}, 1);
    choose(0);
    click("deleteVersion");
    EXPECT_EQ(recipe().versions.size(), 2u);
    EXPECT_TRUE(messageShown().contains("blind sheet"));
    revealBlindSheet(window.document(), 0);
    click("deleteVersion");
    EXPECT_EQ(recipe().versions.size(), 1u);
}

TEST_F(VersionsOfRecipe, SavedAndOpenedAgainTheyAreAllThereAndTheBenchIsAsKept)
{
    keepAs("first", "note <i>");
    sugar(160.0);
    keepAs("second");
    choose(0);
    click("goBack");
    const Recipe before = recipe();
    ASSERT_TRUE(window.document().saveAs(inFolder("kept.firn")));
    EXPECT_TRUE(isAsKept(recipe()));
    lay("1 g water");
    ASSERT_TRUE(window.document().open(inFolder("kept.firn")));
    EXPECT_TRUE(recipe() == before);
    EXPECT_TRUE(isAsKept(recipe()));
    EXPECT_EQ(list.model()->rowCount(), 2);
}

TEST_F(VersionsOfRecipe, AnOwnIngredientMakesNoDifferenceBetweenKeptAndSaved)
{
    Ingredient own = *shippedCatalogue().find("water");
    own.id = "well-water";
    own.name = "well water";
    own.synonyms.clear();
    ASSERT_TRUE(pantry.keep(own));
    lay("100 g well water\n20 g sugar");
    keepAs("first");
    ASSERT_TRUE(window.document().saveAs(inFolder("own.firn")));
    EXPECT_TRUE(isAsKept(recipe()));
    ASSERT_TRUE(window.document().open(inFolder("own.firn")));
    EXPECT_TRUE(isAsKept(recipe()));
}

TEST_F(VersionsOfRecipe, NoKeyPressesAButtonBehindAnotherPanel)
{
    keepAs("first");
    ASSERT_TRUE(button("deleteVersion").isEnabled());
    window.findChild<QDockWidget*>(QStringLiteral("steps"))->raise();
    QApplication::processEvents();
    table.setFocus();
    press(Qt::Key_D, Qt::AltModifier);
    EXPECT_EQ(recipe().versions.size(), 1u);
    for (const char* name : {"versions", "steps", "scale"})
        for (const auto* each :
            window.findChild<QDockWidget*>(QString::fromLatin1(name))->widget()->findChildren<QAbstractButton*>())
            EXPECT_TRUE(each->shortcut().isEmpty()) << each->text().toStdString();
}

TEST_F(VersionsOfRecipe, UndoInTheNameTakesBackTheRecipesLastStep)
{
    sugar(160.0);
    press(Qt::Key_K, Qt::ControlModifier);
    ASSERT_EQ(QApplication::focusWidget()->objectName(), "versionName");
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(sugar(), 190.0);
    press(Qt::Key_Tab);
    press(Qt::Key_Y, Qt::ControlModifier);
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(sugar(), 160.0);
}

TEST_F(VersionsOfRecipe, WhenItWasKeptHasNoSeconds)
{
    keepAs("first");
    EXPECT_EQ(shown(0, VersionModel::DateColumn).count(u':'), 1);
}

TEST_F(VersionsOfRecipe, AnEditorInTheListHidesWhatIsUnderIt)
{
    keepAs("first");
    for (const int column : {VersionModel::NameColumn, VersionModel::DateColumn}) {
        list.setCurrentIndex(list.model()->index(0, column));
        list.edit(list.currentIndex());
        const QWidget* editor = list.indexWidget(list.currentIndex());
        ASSERT_TRUE(editor);
        EXPECT_EQ(editor->palette().color(QPalette::Base).alpha(), 255);
        list.setCurrentIndex({});
    }
}

}  // namespace
}  // namespace firn::app
