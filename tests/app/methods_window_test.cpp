// The two methods side by side, and the page of sources.
#include "bench.h"
#include "document/built_in.h"
#include "document/edits.h"
#include "explain/methods.h"
#include "explain/sources.h"
#include "formulas/formula_picture.h"
#include "gauges/wording.h"
#include "locales.h"
#include "teach/derivation_window.h"
#include "teach/figure_link.h"
#include "teach/methods_window.h"
#include "teach/sources_window.h"
#include "teach/step_view.h"

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QScrollArea>
#include <QTableWidget>
#include <QTest>

namespace firn::app {

namespace {

const std::string spirited = "500 g raspberries\n150 g sucrose\n30 g glucose\n200 g water\n60 g gin\n2 g salt\n100 g whole milk";

class MethodsWindowTest : public Bench {
protected:
    MethodsWindowTest()
    {
        lay(spirited);
        QTest::keyClick(&window, Qt::Key_T, Qt::ControlModifier | Qt::ShiftModifier);
        methods = window.findChild<MethodsWindow*>();
        EXPECT_TRUE(methods);
    }

    QList<QLabel*> labels(const char* name) const { return methods->findChildren<QLabel*>(QLatin1String(name)); }
    QWidget* column(const char* name) const { return methods->findChild<QScrollArea*>(QLatin1String(name))->widget(); }
    static double numberIn(const QString& difference)
    {
        QString text = difference.section(QChar(0x202F), 0, 0);
        return text.replace(QChar(0x2212), '-').toDouble();
    }
    QString valueIn(const char* name) const { return column(name)->findChild<QLabel*>("value")->text(); }

    MethodsWindow* methods = nullptr;
};

}  // namespace

TEST_F(MethodsWindowTest, EachColumnEndsWithItsOwnFreezingPoint)
{
    const Analysis& analysis = window.document().analysis();
    EXPECT_EQ(valueIn("textbook"), degrees(analysis.textbook->freezingPoint));
    EXPECT_EQ(valueIn("waterActivity"), degrees(analysis.freezing.freezingPoint->temperature));
    EXPECT_GT(column("textbook")->findChildren<StepView*>().size(), 2);
    EXPECT_GT(column("waterActivity")->findChildren<StepView*>().size(), 2);
}

TEST_F(MethodsWindowTest, ThePartingsAddUpToTheDifferenceShown)
{
    const QList<QLabel*> partings = labels("parting"), differences = labels("difference");
    ASSERT_EQ(differences.size(), 1);
    ASSERT_GE(partings.size(), 4);
    double sum_k = 0.0;
    for (const QLabel* parting : partings)
        sum_k += numberIn(parting->text());
    const double difference_k = numberIn(differences.front()->text());
    EXPECT_NE(difference_k, 0.0);
    EXPECT_NEAR(sum_k, difference_k, 0.005 * double(partings.size() + 1));
    const Analysis& analysis = window.document().analysis();
    EXPECT_NEAR(difference_k, (analysis.freezing.freezingPoint->temperature - analysis.textbook->freezingPoint).value, 0.0051);
}

TEST_F(MethodsWindowTest, TheWholeDifferenceIsInSightWithSevenParts)
{
    lay("200 g sucrose\n500 g whole milk\n10 g salt\n10 g citric acid\n50 g vodka\n100 g water");
    methods->resize(1366, 690);
    QApplication::processEvents();
    ASSERT_GE(labels("parting").size(), 7);
    QLabel* whole = labels("difference").front();
    const auto* pane = methods->findChild<QScrollArea*>("reasons");
    const QRect shown(whole->mapTo(pane->viewport(), QPoint()), whole->size());
    EXPECT_TRUE(pane->viewport()->rect().contains(shown)) << shown.bottom() << " of " << pane->viewport()->height();
}

// Formulas are in °C and K, and so is all that belongs to them; heads, which show what the gauges show, and sentences are in the shown unit.
TEST_F(MethodsWindowTest, SentencesAreInTheShownUnitAndFormulasInCelsius)
{
    const TemperaturesIn fahrenheit(TemperatureUnit::Fahrenheit);
    changeAmount(window.document(), RowPlace{0, 1}, Amount{160.0});
    const Analysis& analysis = window.document().analysis();
    EXPECT_EQ(valueIn("textbook"), degrees(analysis.textbook->freezingPoint));
    EXPECT_TRUE(valueIn("textbook").endsWith("°F"));
    for (const QLabel* each : methods->findChild<QScrollArea*>("reasons")->widget()->findChildren<QLabel*>()) {
        EXPECT_FALSE(each->text().contains("°C")) << each->text().toStdString();
        EXPECT_FALSE(each->text().contains(QStringLiteral("\u202fK"))) << each->text().toStdString();
    }
    for (const char* name : {"textbook", "waterActivity"}) {
        for (const StepView* step : column(name)->findChildren<StepView*>()) {
            for (const QLabel* each : step->findChildren<QLabel*>())
                EXPECT_FALSE(each->text().contains("°F")) << each->text().toStdString();
        }
    }
    const QString last = column("waterActivity")->findChild<QLabel*>("lastLine")->text();
    EXPECT_TRUE(last.contains("°C, shown as ") && last.endsWith("°F")) << last.toStdString();
}

TEST_F(MethodsWindowTest, FollowsEditsAndSaysWhyThereIsNothing)
{
    const QString before = valueIn("textbook");
    changeAmount(window.document(), RowPlace{0, 1}, Amount{300.0});
    EXPECT_NE(valueIn("textbook"), before);
    EXPECT_EQ(valueIn("textbook"), degrees(window.document().analysis().textbook->freezingPoint));
    EXPECT_EQ(valueIn("waterActivity"), degrees(window.document().analysis().freezing.freezingPoint->temperature));
    window.document().startWith(Recipe{});
    EXPECT_TRUE(labels("parting").isEmpty());
    bool isSaid = false;
    for (const QLabel* each : methods->findChildren<QLabel*>())
        isSaid = isSaid || each->text().startsWith("There is no water to freeze");
    EXPECT_TRUE(isSaid);
}

TEST_F(MethodsWindowTest, AFigureOfAStepOpensItsDerivation)
{
    auto* link = column("textbook")->findChild<FigureLink*>();
    ASSERT_TRUE(link);
    while (link->figure().isEmpty())
        link = qobject_cast<FigureLink*>(link->nextInFocusChain());
    link->click();
    EXPECT_EQ(window.findChild<DerivationWindow*>()->figure(), link->figure());
}

TEST_F(MethodsWindowTest, NoFormulaIsCutOffOnASmallScreen)
{
    methods->resize(1366, 700);
    for (const Recipe& sample : builtInSamples()) {
        window.document().startWith(sample);
        QApplication::processEvents();
        for (const FormulaPicture* each : methods->findChildren<FormulaPicture*>())
            EXPECT_GE(each->height(), each->heightForWidth(each->width())) << each->valueText().toStdString();
    }
}

TEST_F(Bench, SourcesAreAllThereAreSearchedAndCopied)
{
    SourcesWindow& sources = showSources(window);
    const auto* listed = sources.findChild<QTableWidget*>();
    ASSERT_EQ(listed->rowCount(), int(allSources().size()));
    const auto shown = [&] {
        int count = 0;
        for (int row = 0; row < listed->rowCount(); ++row)
            count += listed->isRowHidden(row) ? 0 : 1;
        return count;
    };
    EXPECT_EQ(shown(), listed->rowCount());
    auto* search = sources.findChild<QLineEdit*>();
    search->setText("NORRISH activity");
    EXPECT_EQ(shown(), 1);
    search->setText("no such word");
    EXPECT_EQ(shown(), 0);
    sources.choose(Source::Textbook);
    EXPECT_EQ(search->text(), "");
    EXPECT_EQ(listed->item(listed->currentRow(), 0)->text(), "Sucrose equivalents");
    ASSERT_TRUE(QTest::qWaitFor([&] { return sources.isActiveWindow(); }));
    const int code = listed->columnCount() - 1;
    EXPECT_TRUE(listed->isColumnHidden(code));
    QTest::keyClick(sources.findChild<QTableWidget*>(), Qt::Key_C, Qt::ControlModifier);
    EXPECT_FALSE(QApplication::clipboard()->text().contains("core/")) << "a column that is hidden was copied";
    sources.findChild<QCheckBox*>("code")->click();
    EXPECT_FALSE(listed->isColumnHidden(code));
    QTest::keyClick(sources.findChild<QTableWidget*>(), Qt::Key_C, Qt::ControlModifier);
    const QString copied = QApplication::clipboard()->text();
    EXPECT_TRUE(copied.contains("Goff") && copied.contains("core/freezing/textbook")) << copied.toStdString();
}

TEST_F(Bench, SmallNumbersOfSourcesAreWrittenOut)
{
    const auto* listed = showSources(window).findChild<QTableWidget*>();
    const QRegularExpression power(QStringLiteral("\\de-\\d"));
    QString all;
    for (int row = 0; row < listed->rowCount(); ++row) {
        for (int column = 0; column < listed->columnCount(); ++column)
            all += listed->item(row, column)->text() + u'\n';
    }
    EXPECT_FALSE(all.contains(power)) << power.match(all).captured().toStdString();
    EXPECT_TRUE(all.contains("0.000006 a kelvin"));
}

TEST_F(Bench, TheSourceOfAStepLeadsToThePageOfSources)
{
    lay(spirited);
    auto& derivations = *window.findChild<DerivationWindow*>();
    derivations.open("readings.baume");
    FigureLink* about = nullptr;
    for (FigureLink* each : derivations.findChildren<FigureLink*>())
        about = each->figure().isEmpty() ? each : about;
    ASSERT_TRUE(about);
    about->click();
    const auto* listed = window.findChild<SourcesWindow*>()->findChild<QTableWidget*>();
    EXPECT_EQ(listed->item(listed->currentRow(), 0)->text(), "Degrees Baumé");
}

}  // namespace firn::app
