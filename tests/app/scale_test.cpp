#include "bench.h"

#include "bench/scale_panel.h"
#include "exchange/recipe_text.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

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
    bool canApply() { return find<QPushButton>("scaleApply").isEnabled(); }
    double amount(std::size_t row) { return document.recipe().components.front().rows.at(row).amount.value; }

    static QString plain(QString text) { return text.replace(QChar(0x202F), u' '); }

    Document document;
    ScalePanel panel;
};

TEST_F(Scale, ByMassIsOneStepAndUndoRestores)
{
    lay("250 g water\n100 g sugar\n150 g pears");
    const Recipe before = document.recipe();
    choose("scaleWay", "a total mass");
    write("scaleMass", "1,2 kg");
    EXPECT_TRUE(result().startsWith("× 2.40: 1,200 g, ")) << result().toStdString();
    EXPECT_EQ(sentence(), "Rounding moves neither the sugars nor the freezing point.");
    click();
    EXPECT_DOUBLE_EQ(amount(0), 600.0);
    EXPECT_DOUBLE_EQ(amount(1), 240.0);
    EXPECT_DOUBLE_EQ(amount(2), 360.0);
    EXPECT_EQ(document.undoStack().count(), 1);
    EXPECT_EQ(document.undoStack().undoText(), "Scale recipe");
    EXPECT_TRUE(result().startsWith("× 1.00: 1,200 g, ")) << result().toStdString();
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
    EXPECT_EQ(sentence(), "Write how much is wanted, and see here what it makes.");
    write("scaleFactor", "2");
    EXPECT_EQ(sentence(), "Nothing in the recipe has a weight yet: give it rows with amounts first.");
    EXPECT_EQ(result(), QString());
    EXPECT_FALSE(canApply());
    choose("scaleWay", "what there is of an ingredient");
    write("scaleAvailable", "740");
    EXPECT_EQ(sentence(), "Nothing in the recipe has a weight yet: give it rows with amounts first.");
}

TEST_F(Scale, WrongTextIsASentenceAndChangesNothing)
{
    lay("250 g water\n100 g sugar");
    choose("scaleWay", "a total mass");
    write("scaleMass", "2 cups");
    EXPECT_EQ(sentence(), "“2 cups” is no mass: write grams, kilograms, ounces or pounds, such as 740 g.");
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
    EXPECT_TRUE(result().startsWith("× 2.00: 1,000 g, ")) << result().toStdString();
    choose("scaleWay", "what there is of an ingredient");
    find<QComboBox>("scaleIngredient").setCurrentIndex(2);
    write("scaleAvailable", "75 g");
    EXPECT_TRUE(result().startsWith("× 0.500: 250 g, ")) << result().toStdString();
}

TEST_F(Scale, RoundingIsChosenAndTold)
{
    lay("250 g water\n101 g sugar\n1 tsp lemon juice");
    write("scaleFactor", "0.1");
    choose("scaleStep", find<QComboBox>("scaleStep").itemText(3));
    EXPECT_TRUE(sentence().startsWith("Rounding moves sugars by ")) << sentence().toStdString();
    EXPECT_TRUE(sentence().contains("the freezing point by ")) << sentence().toStdString();
    find<QCheckBox>("scaleSpoons").setChecked(false);
    click();
    EXPECT_DOUBLE_EQ(amount(1), 10.0);
    EXPECT_DOUBLE_EQ(amount(2), 0.1);
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

}  // namespace
}  // namespace firn::app
