// Handouts on paper: how many pages, what stands on them, that nothing is outside of the margins, and what is said where they cannot be kept.
#include "bench.h"
#include "printed_pages.h"

#include "document/built_in.h"
#include "exchange/recipe_text.h"
#include "gauges/wording.h"
#include "print/printing.h"
#include "teach/derivation_handout.h"
#include "teach/exercise_sheet.h"

#include <QPrinter>

namespace firn::app {

namespace {

std::vector<ExerciseSheet> sheetsOf(const Recipe& recipe, std::uint64_t first, std::uint64_t last)
{
    std::vector<ExerciseSheet> sheets;
    for (std::uint64_t seed = first; seed <= last; ++seed)
        sheets.push_back(exercisesFor(recipe, shippedCatalogue(), {}, seed));
    return sheets;
}

Handout derivationOf(const char* figure, const Recipe& recipe)
{
    return handoutOf(
        explain(figure, recipe, shippedCatalogue(), {}).value(), {QStringLiteral("A figure")}, QStringLiteral("A recipe"));
}

Recipe longRecipe()
{
    std::string rows;
    for (int i = 1; i <= 20; ++i)
        rows += std::to_string(10 * i) + " g sucrose\n";
    Recipe recipe = recipeFromText(rows + "900 g water\n400 g whole milk").value();
    Ingredient syrup = *shippedCatalogue().find("sucrose");
    syrup.id = "syrup-of-its-own";
    syrup.name = "<b>syrup</b> <img src=x> " + std::string(300, 'w') + " " + std::string(2000, 'n');
    recipe.ingredients.push_back(syrup);
    recipe.components.front().rows.front().ingredient = syrup.name;
    recipe.title = "<h1>Title</h1> of a recipe with a name that is longer than the line of a page has room for, as some names are";
    return recipe;
}

}  // namespace

class PrintingTest : public Bench {
protected:
    /// Below a file, where not even root can write.
    QString unwritable(const char* name) { return written("file", "no folder") + u'/' + QLatin1String(name); }
};

TEST_F(PrintingTest, APdfHasAsManyPagesAsTheSheets)
{
    const auto sheets = sheetsOf(greetingSample(), 1, 3);
    const Handout handout = handoutOf(sheets, "Pear", Solutions::None);
    const std::size_t pages = pagesOf(handout, a4).size();
    EXPECT_GE(pages, 3u);
    EXPECT_LE(pages, 6u);
    const QString path = inFolder("sheets.pdf");
    ASSERT_TRUE(writePdf(handout, QPageSize(QPageSize::A4), path));
    const QByteArray pdf = contentsOf(path);
    EXPECT_TRUE(pdf.startsWith("%PDF"));
    EXPECT_EQ(pagesIn(pdf), qsizetype(pages));
}

TEST_F(PrintingTest, EachSheetCountsItsOwnPagesAndHasItsNumbers)
{
    const auto sheets = sheetsOf(greetingSample(), 1, 2);
    const auto pages = pagesOf(handoutOf(sheets, "Pear", Solutions::None), a4);
    const QString text = textOf(pages);
    EXPECT_TRUE(textOf(pages.front()).contains(QRegularExpression("Page 1 of [12]\n")));
    EXPECT_TRUE(text.contains("Sheet 1\n") && text.contains("Sheet 2\n"));
    EXPECT_EQ(text.count("Name\n"), 2);
    EXPECT_EQ(text.count("Answer\n"), qsizetype(sheets[0].exercises.size() + sheets[1].exercises.size()));
    EXPECT_NE(sheets[0].exercises[0].answer.value, sheets[1].exercises[0].answer.value);
}

TEST_F(PrintingTest, SolutionsStandOnPagesOfTheirOwnAtTheEndOrNowhere)
{
    const auto sheets = sheetsOf(greetingSample(), 1, 2);
    const QString answer = answerText(sheets[1].exercises[0].answer);
    const auto without = pagesOf(handoutOf(sheets, "Pear", Solutions::None), a4);
    EXPECT_FALSE(textOf(without).contains("Solutions"));
    const auto withAnswers = pagesOf(handoutOf(sheets, "Pear", Solutions::Answers), a4);
    EXPECT_EQ(withAnswers.size(), without.size() + 1);
    EXPECT_TRUE(textOf(withAnswers.back()).contains(answer));
    const auto workedOut = pagesOf(handoutOf(sheets, "Pear", Solutions::WorkedOut), a4);
    EXPECT_GE(workedOut.size(), without.size() + 2) << "a page of solutions for each sheet at least";
    for (std::size_t i = 0; i < without.size(); ++i)
        EXPECT_EQ(textOf(workedOut[i]), textOf(without[i]));
    EXPECT_TRUE(textOf(workedOut).contains("Answer: " + answer));
}

TEST_F(PrintingTest, NothingLeavesTheMarginsOrStandsOnEachOther)
{
    for (const QPageSize::PageSizeId size : {QPageSize::A4, QPageSize::Letter, QPageSize::A6}) {
        const Paper paper = upright(size);
        std::vector<Recipe> recipes = builtInSamples();
        recipes.push_back(longRecipe());
        for (const Recipe& recipe : recipes) {
            const QString title = QString::fromStdString(recipe.title);
            EXPECT_EQ(faultOf(pagesOf(handoutOf(sheetsOf(recipe, 0, 1), title, Solutions::WorkedOut), paper), paper), "");
            EXPECT_EQ(faultOf(pagesOf(handoutOf(sheetsOf(recipe, 7, 7), title, Solutions::Answers), paper), paper), "");
            for (const char* figure : {"freezing_point_c", "freezing_point_textbook_c", "sugars_g.sucrose", "percent.sugars"})
                EXPECT_EQ(faultOf(pagesOf(derivationOf(figure, recipe), paper), paper), "") << figure;
        }
    }
}

TEST_F(PrintingTest, HostileNamesArePrintedLetterByLetter)
{
    const Recipe recipe = longRecipe();
    const QString sheet =
        textOf(pagesOf(handoutOf(sheetsOf(recipe, 0, 0), QString::fromStdString(recipe.title), Solutions::None), a4));
    EXPECT_TRUE(sheet.contains("<b>syrup</b> <img src=x>")) << sheet.left(600).toStdString();
    EXPECT_TRUE(sheet.contains("<h1>Title</h1>"));
    EXPECT_TRUE(textOf(pagesOf(derivationOf("sugars_g.sucrose", recipe), a4)).simplified().contains("<b>syrup</b> <img"));
}

TEST_F(PrintingTest, AHandoutOfADerivationHasAllStepsUnfoldedWithTheirSources)
{
    const Recipe recipe = longRecipe();
    const auto derivation = explain("sugars_g.sucrose", recipe, shippedCatalogue(), {}).value();
    const auto pages = pagesOf(derivationOf("sugars_g.sucrose", recipe), a4);
    const QString text = textOf(pages);
    EXPECT_FALSE(text.contains("more"));
    EXPECT_GE(text.count("sucrose", Qt::CaseInsensitive), 19) << text.toStdString();
    EXPECT_TRUE(text.contains("Source: "));
    EXPECT_TRUE(text.contains(QStringLiteral("Page 1 of %1\n").arg(pages.size())));
    const QString curve = textOf(pagesOf(derivationOf("freezing_point_c", recipe), a4)).simplified();
    for (const char* word : {"Valid for: ", "Uncertain: ", "How: ", "Norrish"})
        EXPECT_TRUE(curve.contains(word)) << word;
}

TEST_F(PrintingTest, WhatCannotBeWrittenIsSaidInOneSentence)
{
    const Handout handout = derivationOf("percent.sugars", greetingSample());
    const QString path = unwritable("handout.pdf");
    const auto notWritten = writePdf(handout, QPageSize(QPageSize::A4), path);
    ASSERT_FALSE(notWritten);
    EXPECT_TRUE(english(notWritten.error()).starts_with(path.toStdString() + " could not be saved because "))
        << english(notWritten.error());
    QPrinter printer;
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(path);
    const auto printed = printOn(printer, handout);
    ASSERT_FALSE(printed);
    EXPECT_EQ(
        english(printed.error()), "Nothing could be printed on " + path.toStdString() + ". Choose another printer, or save a PDF.");
}

TEST_F(PrintingTest, APrinterToAFilePrintsTheChosenPages)
{
    const Handout handout = handoutOf(sheetsOf(greetingSample(), 1, 3), "Pear", Solutions::None);
    QPrinter printer;
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setPageSize(QPageSize(QPageSize::A4));
    printer.setOutputFileName(inFolder("printed.pdf"));
    printer.setPrintRange(QPrinter::PageRange);
    printer.setFromTo(2, 3);
    EXPECT_EQ(printOn(printer, handout).value(), inFolder("printed.pdf"));
    EXPECT_EQ(pagesIn(contentsOf(inFolder("printed.pdf"))), 2);
}

/// Rows that fill several pages, some of them of several lines.
TableBlock longTable()
{
    TableBlock table{"Figures", {{"What"}, {"How much", 1.0, true, TextStyle::Strong}}, {}};
    for (int row = 0; row < 150; ++row)
        table.rows.push_back(
            {{QStringLiteral("row%1 ").arg(row) + QString("word ").repeated(row % 40)}, {QString::number(row), 1.0, true}});
    return table;
}

TEST_F(PrintingTest, ATableGoesOnOverleafUnderItsHeadingAndNames)
{
    for (const QPageSize::PageSizeId size : {QPageSize::A4, QPageSize::A6}) {
        const Paper paper = upright(size);
        const Handout handout{"Title", {{"Head", {}, {{TextBlock{"Title", TextStyle::Title}}, {longTable()}}}}};
        const auto pages = pagesOf(handout, paper);
        ASSERT_GT(pages.size(), 3U);
        EXPECT_EQ(faultOf(pages, paper), "");
        for (const PrintedPage& page : pages) {
            QStringList lines = linesOf(page);
            lines.removeAll("Title");
            ASSERT_GE(lines.size(), 4);
            EXPECT_EQ(lines.first(3), QStringList({"Figures", "What", "How much"}));
            EXPECT_TRUE(lines[3].startsWith("row")) << lines[3].toStdString();
        }
        for (int row = 0; row < 150; ++row)
            EXPECT_EQ(
                textOf(pages).count(QStringLiteral("row%1 ").arg(row)) + textOf(pages).count(QStringLiteral("row%1\n").arg(row)), 1)
                << row;
    }
}

TEST_F(PrintingTest, TheHeadOfATableIsNotLeftAloneAtAPagesEnd)
{
    for (int before = 0; before < 60; ++before) {
        std::vector<Block> blocks(std::size_t(before), Block{TextBlock{"line"}});
        blocks.push_back({longTable()});
        for (const PrintedPage& page : pagesOf({"Title", {{"Head", {}, std::move(blocks)}}}, a4)) {
            const QString text = textOf(page);
            EXPECT_EQ(text.contains("How much\n"), text.contains(QRegularExpression("row\\d"))) << before << text.toStdString();
        }
    }
}

TEST_F(PrintingTest, AScaleHasAMarkAtBothEndsAndAtEachStep)
{
    const Handout handout{"Title", {{{}, {}, {{RowBlock{{{"cup"}, {ScaleLine{4}, 3.0}}}}}}}};
    const auto pages = pagesOf(handout, a4);
    EXPECT_EQ(faultOf(pages, a4), "");
    std::vector<double> marks;
    for (const PrintMark& mark : pages.front().marks)
        if (std::holds_alternative<std::monostate>(mark.ink) && mark.place.height() > mark.place.width())
            marks.push_back(mark.place.left());
    ASSERT_EQ(marks.size(), 5U);
    for (std::size_t i = 1; i < marks.size(); ++i)
        EXPECT_NEAR(marks[i] - marks[i - 1], (marks.back() - marks.front()) / 4.0, 1.0);
}

TEST_F(PrintingTest, WideHandoutsLieAcrossThePaper)
{
    const Handout handout{"Title", {{"Head", {}, {{TextBlock{"text"}}}}}, true};
    ASSERT_TRUE(writePdf(handout, QPageSize(QPageSize::Letter), inFolder("wide.pdf")));
    EXPECT_EQ(paperOf(contentsOf(inFolder("wide.pdf"))), letter_pt.transposed());
}

}  // namespace firn::app
