#include "bench.h"
#include "printed_pages.h"

#include "bench/message_bar.h"
#include "compare/attribution_bars.h"
#include "compare/compared_curves.h"
#include "compare/comparing_window.h"
#include "compare/comparison_handout.h"
#include "compare/comparison_table.h"
#include "document/edits.h"
#include "exchange/recipe_json.h"
#include "gauges/marked_lines.h"
#include "recipe/versions.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QTest>
#include <stdexcept>

namespace firn::app {
namespace {

Row row(const std::string& ingredient, double grams) { return {ingredient, {grams, Unit::Gram}, "", ""}; }

/// 150 g of sucrose in the first version, 180 in the second, 200 and glucose on the bench.
Recipe threeTrials()
{
    Recipe recipe;
    recipe.title = "Pear granita";
    recipe.process = Process::Scraped;
    recipe.components.front().rows = {row("water", 800.0), row("sucrose", 150.0), row("lemon juice", 20.0)};
    recipe = withVersionKept(recipe, {"lean", "", "2026-04-03"});
    recipe.components.front().rows[1].amount.value = 180.0;
    recipe = withVersionKept(recipe, {"", "", "2026-04-04"});
    recipe.components.front().rows[1].amount.value = 200.0;
    recipe.components.front().rows.push_back(row("glucose", 30.0));
    return recipe;
}

class Comparing : public testing::Test {
protected:
    Comparing()
        : document(shippedCatalogue())
        , window(document, answers, nullptr)
    {
        document.startWith(threeTrials());
        window.choose({QStringLiteral("1"), QStringLiteral("2")});
        window.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));  // keys go to the window in front
    }

    void add(const QString& file)
    {
        window.addFile(file);
        settle();
    }

    template <class Widget>
    Widget& find(const char* name)
    {
        auto* found = window.findChild<Widget*>(QString::fromLatin1(name));
        if (!found)
            throw std::runtime_error(name);
        return *found;
    }
    ComparisonTable& table() { return find<ComparisonTable>("compareTable"); }
    QString textIn(const QString& label, int column)
    {
        for (int line = 0; line < table().rowCount(); ++line)
            if (table().item(line, 0)->text() == label && table().item(line, column))
                return table().item(line, column)->text().replace(QChar(0x202F), u' ').replace(QChar(0x2212), u'-');
        return QStringLiteral("no such cell");
    }
    void choose(const char* place, const QString& name)
    {
        auto& box = find<QComboBox>(place);
        const int index = box.findText(name);
        ASSERT_GE(index, 0) << name.toStdString();
        box.setCurrentIndex(index);
        emit box.activated(index);
    }
    void write(const char* field, const QString& text)
    {
        auto& line = find<QLineEdit>(field);
        line.setFocus();
        line.selectAll();
        QTest::keyClicks(&line, text);
    }
    QString fairness() { return find<MarkedLines>("fairness").spokenText(); }
    std::size_t sides() { return window.comparison() ? window.comparison()->sides.size() : 0; }
    QString written(const QString& name, const QByteArray& contents)
    {
        QFile file(folder.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(contents) == contents.size());
        return file.fileName();
    }

    QTemporaryDir folder;
    Answers answers;
    Document document;
    ComparingWindow window;
};

TEST_F(Comparing, VersionsStandSideBySideWithWhatDiffers)
{
    ASSERT_EQ(sides(), 2u);
    EXPECT_EQ(table().horizontalHeaderItem(1)->text(), "lean");
    EXPECT_EQ(table().horizontalHeaderItem(2)->text(), "Version 2");
    EXPECT_EQ(textIn("sucrose", 2), "18.0 g (180 g)");
    EXPECT_EQ(textIn("sucrose", 3), QStringLiteral("▲ more"));
    EXPECT_EQ(textIn("water", 3), "");
    EXPECT_EQ(textIn("Texture", 3), QString());
    EXPECT_TRUE(textIn("Freezing point", 3).startsWith("-0."));
    EXPECT_TRUE(find<QLabel>("attributionSentence").text().contains("sucrose"));
    EXPECT_TRUE(find<ComparedCurves>("comparedCurves").valueText().contains("Version 2: freezes from"));
}

TEST_F(Comparing, FollowsTheBench)
{
    choose("place3", "On the bench");
    ASSERT_EQ(sides(), 3u);
    EXPECT_EQ(textIn("glucose", 5), "+ added");
    EXPECT_TRUE(fairness().contains("Two things changed at once"));
    changeAmount(document, {0, 1}, {150.0, Unit::Gram});
    EXPECT_EQ(textIn("sucrose", 5), "");
    EXPECT_FALSE(fairness().contains("Two things changed at once"));
    QTest::keyClick(&window, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(textIn("sucrose", 5), QStringLiteral("▲ more"));
}

TEST_F(Comparing, FourAtOnceAndBackToTwo)
{
    add(written("other.txt", "sorbet:\n\n500 g water\n<b>unicorn</b> 3 g\n120 g sucrose\n"));
    choose("place4", "On the bench");
    ASSERT_EQ(sides(), 4u);
    EXPECT_EQ(table().columnCount(), 8);
    EXPECT_EQ(table().horizontalHeaderItem(4)->text(), "other.txt");
    EXPECT_TRUE(fairness().contains("<b>unicorn</b>"));
    choose("place4", "nothing more");
    choose("place3", "nothing more");
    EXPECT_EQ(sides(), 2u);
}

TEST_F(Comparing, BasisAndServingTemperature)
{
    choose("basis", "in the whole batch");
    EXPECT_EQ(textIn("sucrose", 2), "180 g");
    choose("basis", "in a portion");
    ASSERT_TRUE(find<QLineEdit>("portion").isVisible());
    write("portion", "50");
    EXPECT_EQ(textIn("sucrose", 2), "9.0 g (180 g)");
    write("servingAll", "-8");
    EXPECT_EQ(window.comparison()->sides[1].analysis.conditions.serveAt, Celsius{-8.0});
    write("servingAll", "cold");
    EXPECT_EQ(window.comparison()->sides[1].analysis.conditions.serveAt, Celsius{-10.0}) << "as scraped ice is usually served";
}

TEST_F(Comparing, GoesWhileANumberIsBeingTyped)
{
    choose("basis", "in a portion");
    write("portion", "50");
    EXPECT_EQ(textIn("sucrose", 2), "9.0 g (180 g)");  // and the window goes with the caret in the field
}

TEST_F(Comparing, BarsAddUp)
{
    choose("place2", "On the bench");
    for (int figure = 0; figure < 3; ++figure) {
        find<QComboBox>("attributedFigure").setCurrentIndex(figure);
        const QString spoken = find<AttributionBars>("attributionBars").valueText();
        EXPECT_TRUE(spoken.contains("glucose added: 30 g")) << spoken.toStdString();
        EXPECT_TRUE(spoken.contains("together: ")) << spoken.toStdString();
    }
}

TEST_F(Comparing, WithoutTwoItSaysWhatToDo)
{
    document.startWith({});
    window.choose({});
    EXPECT_FALSE(window.comparison());
    EXPECT_TRUE(find<QLabel>("compareHint").text().contains("Open a file"));
    for (const char* output : {"copyText", "copyPicture", "print", "pdf"})
        EXPECT_FALSE(find<QPushButton>(output).isEnabled()) << output;
}

TEST_F(Comparing, AnEmptyRecipeIsComparedAllTheSame)
{
    choose("place2", "On the bench");
    document.startWith({});
    add(written("granita.firn", QByteArray::fromStdString(recipeToJson(threeTrials()))));
    add(written("granita2.firn", QByteArray::fromStdString(recipeToJson(threeTrials()))));
    EXPECT_EQ(sides(), 3u);
    EXPECT_TRUE(fairness().contains("has a weight"));
}

TEST_F(Comparing, AMissingFileIsSaidAndChangesNothing)
{
    add(folder.filePath("gone.firn"));
    EXPECT_EQ(sides(), 2u);
    bool isSaid = false;
    for (const QLabel* label : window.findChildren<QLabel*>())
        isSaid |= label->isVisible() && label->text().contains("gone.firn");
    EXPECT_TRUE(isSaid);
}

TEST_F(Comparing, ADeletedVersionLeavesItsPlace)
{
    Recipe without = withoutVersion(document.recipe(), "2");
    document.startWith(without);
    EXPECT_FALSE(window.comparison());
    EXPECT_EQ(find<QComboBox>("place2").currentIndex(), -1);
    EXPECT_EQ(find<QComboBox>("place1").currentText(), "lean");
}

TEST_F(Comparing, CopiesTextWithTabsAndAPicture)
{
    QTest::mouseClick(&find<QPushButton>("copyText"), Qt::LeftButton);
    const QString text = QApplication::clipboard()->text();
    EXPECT_TRUE(text.contains(QStringLiteral("sucrose\t")));
    EXPECT_TRUE(text.contains(QStringLiteral("\t▲ more\n")));
    EXPECT_TRUE(text.contains(QStringLiteral("together\t")));
    QTest::mouseClick(&find<QPushButton>("copyPicture"), Qt::LeftButton);
    EXPECT_GT(QApplication::clipboard()->image().width(), 300);
}

TEST_F(Comparing, CopiesTheChosenRows)
{
    table().selectRow(2);
    QTest::keyClick(&table(), Qt::Key_C, Qt::ControlModifier);
    EXPECT_TRUE(QApplication::clipboard()->text().startsWith("sucrose\t"));
    EXPECT_EQ(QApplication::clipboard()->text().count('\n'), 0);
}

TEST_F(Comparing, PrintsHostileNamesAsTheyStand)
{
    Recipe recipe = document.recipe();
    recipe.components.front().rows[0].ingredient = "<img src=x onerror=y>";
    recipe.versions[0].name = "<b>bold</b>";
    document.startWith(recipe);
    choose("place2", "On the bench");
    ASSERT_EQ(sides(), 2u);
    const auto pages = pagesOf(handoutOf(*window.comparison(), "<i>title</i>"), a4);
    EXPECT_TRUE(textOf(pages).contains("<img src=x onerror=y>"));
    EXPECT_TRUE(textOf(pages).contains("<b>bold</b>"));
    EXPECT_TRUE(textOf(pages).contains("<i>title</i>"));
    EXPECT_EQ(table().horizontalHeaderItem(1)->text(), "<b>bold</b>");
    EXPECT_EQ(faultOf(pages, a4), "");
}

TEST_F(Comparing, HeadingsStayWithWhatTheyStandOver)
{
    choose("place3", "On the bench");
    const Handout handout = handoutOf(*window.comparison(), "Pear granita");
    const QRegularExpression heading("^(Why this|What did it|Figures|Ingredients|Change$)");
    for (double height = 380.0; height < 900.0; height += 7.0) {
        const Paper paper(QPageLayout(QPageSize(QSizeF(520.0, height), QPageSize::Point), QPageLayout::Portrait, {}));
        const auto pages = pagesOf(handout, paper);
        EXPECT_EQ(faultOf(pages, paper), "");
        qsizetype headings = 0;
        for (const PrintedPage& page : pages) {
            const QStringList lines = linesOf(page);
            constexpr qsizetype headAndFoot = 2;  // the title again, and "Page 1 of 2"
            const qsizetype last = lines.size() - headAndFoot - 1;
            headings += lines.filter(heading).size();
            EXPECT_FALSE(lines[last].contains(heading)) << lines[last].toStdString() << " on pages of " << height;
        }
        EXPECT_GE(headings, 7) << height;
    }
}

TEST_F(Comparing, PaperHasTheRecipesTitleAndLiesAcrossForMoreThanTwo)
{
    const QString file = written("7f3a.firn", QByteArray::fromStdString(recipeToJson(threeTrials())));
    ASSERT_TRUE(document.open(file));
    window.choose({QStringLiteral("1"), QStringLiteral("2")});
    EXPECT_EQ(window.printedTitle(), "Pear granita: lean, Version 2");
    answers.page = folder.filePath("two.pdf");
    QTest::mouseClick(&find<QPushButton>("pdf"), Qt::LeftButton);
    EXPECT_EQ(answers.pageSuggested, folder.filePath("Pear granita lean, Version 2.pdf"));
    EXPECT_EQ(window.findChild<MessageBar*>()->sentence(), "The pages are in " + answers.page + ".");
    EXPECT_EQ(paperOf(contentsOf(answers.page)), a4_pt);
    choose("place3", "On the bench");
    QTest::mouseClick(&find<QPushButton>("pdf"), Qt::LeftButton);
    EXPECT_EQ(paperOf(contentsOf(answers.page)), a4_pt.transposed());
    answers.printTo = folder.filePath("printed.pdf");
    QTest::keyClick(&window, Qt::Key_P, Qt::ControlModifier);
    EXPECT_EQ(window.findChild<MessageBar*>()->sentence(), "The pages went to " + answers.printTo + ".");
    EXPECT_EQ(paperOf(contentsOf(answers.printTo)), a4_pt.transposed());
}

TEST_F(Comparing, ChangesMatchTheFiguresBesideThem)
{
    const auto numberIn = [this](const QString& label, int column) { return textIn(label, column).section(u' ', 0, 0).toDouble(); };
    for (const char* label : {"Freezing point", "Sugars", "Refractometer", "Sweet as sucrose of", "Water"})
        EXPECT_NEAR(numberIn(label, 1) + numberIn(label, 3), numberIn(label, 2), 1e-9) << label;
    EXPECT_EQ(textIn("Freezing point", 1).section(u' ', 0, 0).section(u'.', 1).size(), 2);
    EXPECT_EQ(textIn("Sugars", 1).count(QStringLiteral("± 0.0")), 0);
}

TEST_F(Comparing, WhatTheFreezerSetsHasNoNumber)
{
    changeAmount(document, {0, 1}, {330.0, Unit::Gram});
    choose("place2", "On the bench");
    EXPECT_EQ(textIn("Serve no colder than", 2), "straight from the freezer");
    EXPECT_EQ(textIn("Serve no colder than", 3), QStringLiteral("≠"));
}

TEST_F(Comparing, EverythingCanBeReachedByKeyAndHasAName)
{
    for (const char* name :
        {"place1", "place2", "place3", "place4", "basis", "servingAll", "attributedFigure", "attributedTo", "compareTable"}) {
        const auto& widget = find<QWidget>(name);
        EXPECT_TRUE(widget.focusPolicy() & Qt::TabFocus) << name;
        EXPECT_FALSE(widget.accessibleName().isEmpty()) << name;
    }
    QTest::keyClick(&window, Qt::Key_Escape);
    EXPECT_FALSE(window.isVisible());
}

TEST_F(Bench, CompareOpensFromTheMenuOnTheVersionThatTheBenchComesFrom)
{
    window.document().startWith(threeTrials());
    window.show();
    showComparing(window.document(), answers, window);
    auto* comparing = window.findChild<ComparingWindow*>();
    ASSERT_TRUE(comparing);
    ASSERT_TRUE(comparing->comparison());
    EXPECT_EQ(comparing->comparison()->sides[0].name, "Version 2");
    EXPECT_EQ(comparing->comparison()->sides[1].name, "On the bench");
    showComparing(window.document(), answers, window, {"2", "1"});
    EXPECT_EQ(window.findChildren<ComparingWindow*>().size(), 1);
    EXPECT_EQ(comparing->comparison()->sides[1].name, "lean");
}

}  // namespace
}  // namespace firn::app
