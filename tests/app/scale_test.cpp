#include "bench.h"

#include "bench/amount_question.h"
#include "bench/scale_panel.h"
#include "bench/scale_preview.h"
#include "exchange/recipe_text.h"
#include "gauges/freezing_chart.h"

#include <QAbstractScrollArea>
#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <algorithm>

namespace firn::app {
namespace {

class Scale : public testing::Test {
protected:
    Scale()
        : document(shippedCatalogue())
        , panel(document)
    {
        panel.show();
    }

    void lay(const std::string& lines) { document.startWith(recipeFromText(lines).value()); }
    template <class Widget>
    Widget& find(const char* name)
    {
        return *panel.findChild<Widget*>(QString::fromLatin1(name));
    }
    void choose(const char* combo, const QString& text) { find<QComboBox>(combo).setCurrentText(text); }
    void write(const char* field, const QString& text)
    {
        find<QLineEdit>(field).clear();
        QTest::keyClicks(&find<QLineEdit>(field), text);
    }
    void click() { QTest::mouseClick(&find<QPushButton>("scaleApply"), Qt::LeftButton); }
    QString result() { return find<QLabel>("scaleResult").isVisible() ? plain(find<QLabel>("scaleResult").text()) : QString(); }
    QString sentence() { return plain(find<QLabel>("scaleSentence").text()); }
    QString previewed(int row, ScalePreview::Column column)
    {
        const auto* cell = find<ScalePreview>("scalePreview").item(row, column);
        return cell ? plain(cell->text()) : QString();
    }
    bool canApply() { return find<QPushButton>("scaleApply").isEnabled(); }
    double amount(std::size_t row) { return document.recipe().components.front().rows.at(row).amount.value; }

    static QString plain(QString text) { return text.replace(QChar(0x202F), u' '); }

    Document document;
    ScalePanel panel;
};

TEST_F(Scale, AnAmountThatMayBeTwoIsAskedAboutWithBothAsButtons)
{
    struct Case {
        const char* way;
        const char* field;
        const char* typed;
        const char* thousands;
    };
    lay("250 g water\n100 g sugar\n150 g pears");
    for (const Case& each : {Case{"a total mass", "scaleMass", "1.015", "1015"},
             Case{"a finished volume", "scaleVolume", "1,250 ml", "1250 ml"}, Case{"portions", "scalePortion", "1.015 g", "1015 g"},
             Case{"amount available of one ingredient", "scaleAvailable", "2.500", "2500"}}) {
        choose("scaleWay", each.way);
        if (QString(each.field) == "scalePortion")
            write("scalePortions", "2");
        write(each.field, each.typed);
        auto& question = *panel.findChild<AmountQuestion*>();
        ASSERT_TRUE(question.isVisible()) << each.way;
        EXPECT_FALSE(canApply()) << each.way;
        question.findChildren<QPushButton*>().front()->click();
        EXPECT_EQ(plain(find<QLineEdit>(each.field).text()), QString::fromLatin1(each.thousands));
        EXPECT_FALSE(question.isVisible()) << each.way;
        EXPECT_TRUE(canApply()) << each.way;
        find<QLineEdit>(each.field).clear();
    }
    // Elsewhere three digits are decimals.
    choose("scaleWay", "a factor");
    write("scaleFactor", "1.015");
    EXPECT_FALSE(panel.findChild<AmountQuestion*>()->isVisible());
    EXPECT_TRUE(canApply());
}

TEST_F(Scale, ByMassIsOneStepAndUndoRestores)
{
    lay("250 g water\n100 g sugar\n150 g pears");
    const Recipe before = document.recipe();
    choose("scaleWay", "a total mass");
    write("scaleMass", "1,2 kg");
    EXPECT_TRUE(result().startsWith("× 2.40: 1200 g, ")) << result().toStdString();
    EXPECT_EQ(sentence(), "Rounding changes neither sugars nor freezing point.");
    click();
    EXPECT_DOUBLE_EQ(amount(0), 600.0);
    EXPECT_DOUBLE_EQ(amount(1), 240.0);
    EXPECT_DOUBLE_EQ(amount(2), 360.0);
    EXPECT_EQ(document.undoStack().count(), 1);
    EXPECT_EQ(document.undoStack().undoText(), "Scale recipe");
    EXPECT_TRUE(result().startsWith("× 1.00: 1200 g, ")) << result().toStdString();
    document.undoStack().undo();
    EXPECT_EQ(document.recipe(), before);
}

TEST_F(Scale, EnterScalesByAFactorOnce)
{
    lay("250 g water\n100 g sugar");
    write("scaleFactor", "1.5");
    QTest::keyClick(&find<QLineEdit>("scaleFactor"), Qt::Key_Return);
    QTest::keyClick(&find<QLineEdit>("scaleFactor"), Qt::Key_Return);
    EXPECT_DOUBLE_EQ(amount(0), 375.0);
    EXPECT_EQ(document.undoStack().count(), 1);
}

TEST_F(Scale, EmptyRecipeIsASentence)
{
    document.startWith(Recipe{});
    EXPECT_EQ(sentence(), "Enter the amount you want to see the scaled batch.");
    write("scaleFactor", "2");
    EXPECT_EQ(sentence(), "Nothing in the recipe has a weight yet. Give it rows with amounts first.");
    EXPECT_EQ(result(), QString());
    EXPECT_FALSE(canApply());
    choose("scaleWay", "amount available of one ingredient");
    write("scaleAvailable", "740");
    EXPECT_EQ(sentence(), "Nothing in the recipe has a weight yet. Give it rows with amounts first.");
}

TEST_F(Scale, WrongTextIsASentenceAndChangesNothing)
{
    lay("250 g water\n100 g sugar");
    choose("scaleWay", "a total mass");
    write("scaleMass", "2 cups");
    EXPECT_EQ(sentence(), "“2 cups” is not a mass. Write grams, kilograms, ounces or pounds, such as 740 g.");
    QTest::keyClick(&find<QLineEdit>("scaleMass"), Qt::Key_Return);
    EXPECT_EQ(document.undoStack().count(), 0);
    write("scaleMass", "700");
    EXPECT_TRUE(canApply());
}

TEST_F(Scale, FillsAPan)
{
    lay("250 g water\n100 g sugar");
    choose("scaleWay", "a pan");
    write("scaleLength", "53");
    write("scaleWidth", "32.5 cm");
    EXPECT_FALSE(canApply());
    write("scaleDepth", "20 mm");
    EXPECT_TRUE(result().endsWith(" 3.44 L") || result().endsWith(" 3.45 L")) << result().toStdString();
    click();
    EXPECT_NEAR(document.analysis().volume_20c.value, 3445.0, 2.0);
}

TEST_F(Scale, ByPortionsAndByWhatThereIs)
{
    lay("250 g water\n100 g sugar\n150 g pears");
    choose("scaleWay", "portions");
    write("scalePortions", "20");
    write("scalePortion", "50 g");
    EXPECT_TRUE(result().startsWith("× 2.00: 1000 g, ")) << result().toStdString();
    choose("scaleWay", "amount available of one ingredient");
    find<QComboBox>("scaleIngredient").setCurrentIndex(2);
    write("scaleAvailable", "75 g");
    EXPECT_TRUE(result().startsWith("× 0.500: 250 g, ")) << result().toStdString();
}

TEST_F(Scale, RoundingIsChosenAndTold)
{
    lay("250 g water\n101 g sugar\n1 tsp lemon juice");
    write("scaleFactor", "0.1");
    choose("scaleStep", find<QComboBox>("scaleStep").itemText(4));
    EXPECT_TRUE(sentence().startsWith("Rounding changes sugars by ")) << sentence().toStdString();
    EXPECT_TRUE(sentence().contains("the freezing point by ")) << sentence().toStdString();
    find<QCheckBox>("scaleSpoons").setChecked(false);
    click();
    EXPECT_DOUBLE_EQ(amount(1), 10.0);
    EXPECT_DOUBLE_EQ(amount(2), 0.1);
}

// Nothing was shown of the rows before: a pinch of salt became a teaspoon unseen.
TEST_F(Scale, ShowsEveryRowBeforeAnythingIsApplied)
{
    lay("1 kg water\n250 g sugar\n1 pinch salt\n7 moonbeams");
    EXPECT_TRUE(find<ScalePreview>("scalePreview").isHidden());
    write("scaleFactor", "2.1");
    EXPECT_EQ(find<ScalePreview>("scalePreview").rowCount(), 4);
    EXPECT_EQ(previewed(1, ScalePreview::IngredientColumn), "sugar");
    EXPECT_EQ(previewed(1, ScalePreview::BeforeColumn), "250 g");
    EXPECT_EQ(previewed(1, ScalePreview::AfterColumn), "525 g");
    EXPECT_EQ(previewed(1, ScalePreview::DeviationColumn), "exact");
    EXPECT_EQ(previewed(2, ScalePreview::BeforeColumn), "1 pinch");
    EXPECT_EQ(previewed(3, ScalePreview::AfterColumn), "14 1/2 pieces");
    EXPECT_EQ(previewed(3, ScalePreview::DeviationColumn), "\u22121.4 %");
    EXPECT_DOUBLE_EQ(amount(1), 250.0);
    click();
    EXPECT_DOUBLE_EQ(amount(1), 525.0);
}

TEST_F(Scale, SaysInWordsWhichRowsAreOff)
{
    lay("1 kg water\n250 g sugar\n3 moonbeams");
    write("scaleFactor", "1.1");
    EXPECT_EQ(previewed(2, ScalePreview::AfterColumn), "3 1/2 pieces");
    EXPECT_EQ(previewed(2, ScalePreview::DeviationColumn), "+6.1 %: off by more than 2 %");
    EXPECT_TRUE(sentence().endsWith(" One row is off by more than 2 %.")) << sentence().toStdString();
}

TEST_F(Scale, WithoutRoundingNothingIsRounded)
{
    lay("1 kg water\n101 g sugar\n1 tsp lemon juice\n3 eggs");
    choose("scaleStep", "no rounding");
    find<QCheckBox>("scaleSpoons").setChecked(false);
    write("scaleFactor", "0.123");
    for (int row = 0; row < 4; ++row)
        EXPECT_EQ(previewed(row, ScalePreview::DeviationColumn), "exact");
    click();
    EXPECT_DOUBLE_EQ(amount(1), 101.0 * 0.123);
    EXPECT_DOUBLE_EQ(amount(3), 3 * 0.123);
}

// An unnamed component was once quoted as “”.
TEST_F(Scale, NamesEveryComponentAsTheTabsDo)
{
    Recipe recipe = recipeFromText("250 g water\n100 g sugar").value();
    recipe.components.push_back(recipeFromText("100 g cream-36").value().components.front());
    recipe.components.back().name = "cream";
    document.startWith(recipe);
    write("scaleFactor", "2");
    EXPECT_EQ(sentence(), "All components are scaled. In “Component 1”: Rounding changes neither sugars nor freezing point.");
    EXPECT_EQ(previewed(0, ScalePreview::IngredientColumn), "Component 1: Water");
    EXPECT_TRUE(previewed(2, ScalePreview::IngredientColumn).startsWith("cream: "));
}

TEST_F(Scale, CanBeReachedByKeysAndIsNamed)
{
    for (const QWidget* widget : panel.findChildren<QWidget*>()) {
        if (qobject_cast<const QLineEdit*>(widget) || qobject_cast<const QComboBox*>(widget)) {
            EXPECT_FALSE(widget->accessibleName().isEmpty()) << widget->objectName().toStdString();
        }
    }
    QApplication::setActiveWindow(&panel);
    find<QComboBox>("scaleWay").setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), &find<QLineEdit>("scaleFactor"));
}

class ScaleOnTheBench : public Bench {
protected:
    QAction& action(const char* text)
    {
        const auto actions = window.findChildren<QAction*>();
        return **std::ranges::find(actions, QString::fromLatin1(text), &QAction::text);
    }
};

// Scale once took no focus, so that a typed 2.5 went nowhere, and handed it to the notebook's search, where undo means letters.
TEST_F(ScaleOnTheBench, TakesTheFocusAndUndoTakesItBack)
{
    window.resize(1900, 1000);
    lay("250 g water\n100 g sugar");
    action("&Notebook").trigger();  // whose search box once took the focus
    action("S&cale").trigger();
    auto* factor = window.findChild<QLineEdit*>(QStringLiteral("scaleFactor"));
    ASSERT_EQ(QApplication::focusWidget(), factor);
    QTest::keyClicks(QApplication::focusWidget(), "2.5");
    auto* apply = window.findChild<QPushButton*>(QStringLiteral("scaleApply"));
    apply->setFocus();
    QTest::keyClick(apply, Qt::Key_Space);
    EXPECT_DOUBLE_EQ(recipe().components.front().rows.front().amount.value, 625.0);
    EXPECT_EQ(QApplication::focusWidget(), factor);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_DOUBLE_EQ(recipe().components.front().rows.front().amount.value, 250.0);
}

TEST_F(ScaleOnTheBench, LeavesTheFreezingCurveInSight)
{
    window.resize(1366, 768);
    lay("250 g water\n100 g sugar");
    action("S&cale").trigger();
    QTest::qWait(0);
    EXPECT_TRUE(window.findChild<ScalePanel*>()->isVisible());
    EXPECT_FALSE(window.findChild<FreezingChart*>()->findChild<QAbstractScrollArea*>()->viewport()->visibleRegion().isEmpty());
}

}  // namespace
}  // namespace firn::app
