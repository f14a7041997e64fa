// Handouts on paper: how many pages, what stands on them, that nothing is outside of the margins, and what is said where they cannot be kept.
#include "bench.h"
#include "document/built_in.h"
#include "exchange/recipe_text.h"
#include "gauges/wording.h"
#include "print/pages.h"
#include "print/print_outlet.h"
#include "print/printing.h"
#include "teach/derivation_handout.h"
#include "teach/derivation_window.h"
#include "teach/exercise_sheet.h"

#include <QLabel>
#include <QPrinter>
#include <QRegularExpression>
#include <QTest>

namespace firn::app {

namespace {

const Paper a4{QPageSize(QPageSize::A4)};

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
        explain(figure, recipe, shippedCatalogue(), {}).value(), QStringLiteral("A figure"), QStringLiteral("A recipe"));
}

QString textOf(const PrintedPage& page)
{
    QString text;
    for (const PrintMark& mark : page.marks) {
        if (const auto* line = std::get_if<PrintText>(&mark.ink))
            text += line->text + u'\n';
    }
    return text;
}

QString textOf(const std::vector<PrintedPage>& pages)
{
    QString text;
    for (const PrintedPage& page : pages)
        text += textOf(page);
    return text;
}

/// Ink that leaves the margins, or texts that stand on each other.
std::string faultOf(const std::vector<PrintedPage>& pages, const Paper& paper)
{
    constexpr double hair = 1.0;
    const QRectF inside = paper.inside.adjusted(-hair, -hair, hair, hair);
    for (const PrintedPage& page : pages) {
        for (std::size_t i = 0; i < page.marks.size(); ++i) {
            const QRectF place = page.marks[i].place.adjusted(hair, hair, -hair, -hair);
            if (!inside.contains(page.marks[i].place))
                return "outside of the margins on a page with " + textOf(page).left(200).toStdString();
            for (std::size_t j = i + 1; j < page.marks.size(); ++j) {
                if (place.intersects(page.marks[j].place.adjusted(hair, hair, -hair, -hair)))
                    return "overlap on a page with " + textOf(page).left(200).toStdString();
            }
        }
    }
    return {};
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

qsizetype pagesIn(const QByteArray& pdf) { return QString::fromLatin1(pdf).count(QRegularExpression("/Type /Page\\b")); }

QByteArray contentsOf(const QString& path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
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
    EXPECT_GT(workedOut.size(), withAnswers.size() + 2);
    for (std::size_t i = 0; i < without.size(); ++i)
        EXPECT_EQ(textOf(workedOut[i]), textOf(without[i]));
    EXPECT_TRUE(textOf(workedOut).contains("Answer: " + answer));
}

TEST_F(PrintingTest, NothingLeavesTheMarginsOrStandsOnEachOther)
{
    for (const QPageSize::PageSizeId size : {QPageSize::A4, QPageSize::Letter, QPageSize::A6}) {
        const Paper paper{QPageSize(size)};
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
    for (const char* word : {"Holds: ", "Uncertain: ", "How: ", "Norrish"})
        EXPECT_TRUE(curve.contains(word)) << word;
}

TEST_F(PrintingTest, WhatCannotBeWrittenIsSaidInOneSentence)
{
    const Handout handout = derivationOf("percent.sugars", greetingSample());
    const QString path = unwritable("handout.pdf");
    const auto notWritten = writePdf(handout, usualPaper(), path);
    ASSERT_FALSE(notWritten);
    EXPECT_TRUE(english(notWritten.error()).starts_with(path.toStdString() + " could not be written ("))
        << english(notWritten.error());
    QPrinter printer;
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(path);
    const auto printed = printOn(printer, handout);
    ASSERT_FALSE(printed);
    EXPECT_EQ(
        english(printed.error()), "Nothing could be printed on " + path.toStdString() + ": choose another printer, or save a PDF.");
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
    ASSERT_TRUE(printOn(printer, handout));
    EXPECT_EQ(pagesIn(contentsOf(inFolder("printed.pdf"))), 2);
}

TEST_F(PrintingTest, TheDerivationWindowKeepsItsHandoutOrSaysWhyNot)
{
    window.document().startWith(greetingSample());
    auto& derivations = *window.findChild<DerivationWindow*>();
    derivations.open("percent.sugars");
    const auto message = [&] { return derivations.findChild<QLabel*>("message")->text(); };
    derivations.findChild<PrintOutlet*>()->savePdf(inFolder("sugars.pdf"));
    EXPECT_TRUE(message().contains("sugars.pdf")) << message().toStdString();
    EXPECT_GE(pagesIn(contentsOf(inFolder("sugars.pdf"))), 1);
    derivations.findChild<PrintOutlet*>()->savePdf(unwritable("no.pdf"));
    EXPECT_TRUE(message().startsWith(unwritable("no.pdf") + " could not be written")) << message().toStdString();
    derivations.open("mass_g");
    EXPECT_EQ(message(), "");
}

}  // namespace firn::app
