// The window that says how a figure comes about: what opens it, what it shows, and that it keeps up with the recipe.
#include "bench.h"
#include "derivation/formula_text.h"
#include "document/built_in.h"
#include "document/edits.h"
#include "exchange/derivation.h"
#include "exchange/recipe_text.h"
#include "formulas/formula_picture.h"
#include "gauges/figure_button.h"
#include "gauges/figures_panel.h"
#include "gauges/sugar_scale.h"
#include "gauges/wording.h"
#include "teach/derivation_window.h"
#include "teach/figure_link.h"
#include "teach/figure_wording.h"
#include "teach/step_content.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QRegularExpression>
#include <QTest>
#include <QTreeWidget>

namespace firn::app {

namespace {

const QString sugarsFigure = QStringLiteral("percent.sugars");
const std::string simpleSorbet = "500 g raspberries\n150 g sucrose\n30 g glucose\n200 g water\n40 g gin\n1 g salt";

class DerivationWindowTest : public Bench {
protected:
    DerivationWindow& derivations = *window.findChild<DerivationWindow*>();
    FiguresPanel& figures = *window.findChild<FiguresPanel*>();

    void click(const QString& figure)
    {
        ASSERT_TRUE(figures.buttonOf(figure)) << figure.toStdString();
        QTest::mouseClick(figures.buttonOf(figure), Qt::LeftButton);
        awaitDerivations();
    }
    /// A window whose parent is active counts as active for qWaitForWindowActive.
    void awaitDerivations()
    {
        EXPECT_TRUE(QTest::qWaitFor([this] { return QApplication::activeWindow() == &derivations; }));
    }
    QString label(const char* name) const
    {
        const auto* found = derivations.findChild<QLabel*>(QString::fromLatin1(name));
        return found ? found->text() : QString();
    }
    QStringList labels() const
    {
        QStringList texts;
        for (const QLabel* each : derivations.findChildren<QLabel*>())
            texts << each->text();
        return texts;
    }
    FigureLink* link(const QString& figure) const
    {
        for (FigureLink* each : derivations.findChildren<FigureLink*>()) {
            if (each->figure() == figure)
                return each;
        }
        return nullptr;
    }
    ExplainedAnalysis explained()
    {
        return analyseWithWorkings(recipe(), shippedCatalogue(), window.document().analysis().conditions, std::size_t{0});
    }
};

/// Marks that share more than a hair, or stand outside of their box.
std::string faultOf(const FormulaBox& box)
{
    constexpr double hair = 0.01;
    const QRectF whole = QRectF(0.0, -box.ascent, box.width, box.height()).adjusted(-hair, -hair, hair, hair);
    for (std::size_t i = 0; i < box.marks.size(); ++i) {
        const QRectF& place = box.marks[i].bounds;
        if (!whole.contains(place))
            return "outside: " + box.marks[i].text.toStdString();
        for (std::size_t j = i + 1; j < box.marks.size(); ++j) {
            const QRectF shared = place.intersected(box.marks[j].bounds);
            if (shared.width() > hair && shared.height() > hair)
                return "overlap: '" + box.marks[i].text.toStdString() + "' and '" + box.marks[j].text.toStdString() + "'";
        }
    }
    return {};
}

}  // namespace

TEST_F(DerivationWindowTest, AClickOnAFigureOpensItAndItsLastLineIsTheFigure)
{
    lay(simpleSorbet);
    EXPECT_FALSE(derivations.isVisible());
    click(sugarsFigure);
    EXPECT_TRUE(derivations.isVisible());
    EXPECT_EQ(derivations.figure(), sugarsFigure);
    const QString shown = percentText(window.document().analysis().shares.sugars);
    EXPECT_TRUE(figures.valueText().contains(shown));
    EXPECT_EQ(label("value"), shown);
    EXPECT_TRUE(label("lastLine").endsWith(shown));
    press(Qt::Key_Tab);
    EXPECT_TRUE(qobject_cast<FigureLink*>(QApplication::focusWidget()));
}

TEST_F(DerivationWindowTest, EveryFigureOfThePanelOpensAndReadsAsThere)
{
    lay(simpleSorbet + "\n100 g whole milk");
    const QStringList spoken = figures.valueText().split(u'\n');
    const QStringList keys{"mass_g", "volume_ml_20c", "percent.total_solids", "percent.sugars", "percent.fat", "percent.protein",
        "freezing_point_c", "freezing_point_textbook_c", "percent.alcohol", "percent.alcohol_by_volume",
        "sweetness_percent_sucrose", "lactose_g_per_100_g_water"};
    ASSERT_EQ(spoken.size(), keys.size());
    for (qsizetype i = 0; i < keys.size(); ++i) {
        click(keys[i]);
        EXPECT_EQ(derivations.figure(), keys[i]);
        EXPECT_TRUE(spoken[i].endsWith(": " + label("value"))) << spoken[i].toStdString() << " / " << label("value").toStdString();
    }
}

TEST_F(DerivationWindowTest, AClickOnTheFigureOfTheSugarScaleOpensIt)
{
    lay(simpleSorbet);
    auto* scale = window.findChild<SugarScale*>();
    QTest::mouseClick(scale, Qt::LeftButton, {}, scale->scale().bottomLeft().toPoint());
    EXPECT_FALSE(derivations.isVisible());
    QTest::mouseClick(scale->buttonOf(sugarsFigure), Qt::LeftButton);
    EXPECT_EQ(derivations.figure(), sugarsFigure);
    QTest::mouseClick(scale->buttonOf("instruments.refractometer_brix"), Qt::LeftButton);
    EXPECT_EQ(derivations.figure(), "instruments.refractometer_brix");
    EXPECT_EQ(label("value"), brixText(*window.document().analysis().readings->refractometer_brix));
}

TEST_F(DerivationWindowTest, ASymbolThatIsAFigureOpensAndBackAndForwardReturn)
{
    lay(simpleSorbet);
    click(sugarsFigure);
    ASSERT_TRUE(link("mass_g"));
    QTest::mouseClick(link("mass_g"), Qt::LeftButton);
    EXPECT_EQ(derivations.figure(), "mass_g");
    QTest::keyClick(&derivations, Qt::Key_Left, Qt::AltModifier);
    EXPECT_EQ(derivations.figure(), sugarsFigure);
    QTest::keyClick(&derivations, Qt::Key_Right, Qt::AltModifier);
    EXPECT_EQ(derivations.figure(), "mass_g");
    QTest::keyClick(&derivations, Qt::Key_Left, Qt::AltModifier);
    ASSERT_TRUE(link("mass_g"));
    QTest::keyClick(link("mass_g"), Qt::Key_Return);
    EXPECT_EQ(derivations.figure(), "mass_g");
    QTest::keyClick(&derivations, Qt::Key_Escape);
    EXPECT_FALSE(derivations.isVisible());
}

TEST_F(DerivationWindowTest, TheMenuOpensAListOfAllFigures)
{
    lay(simpleSorbet);
    derivations.openAction()->trigger();
    awaitDerivations();
    const auto* list = derivations.findChild<QTreeWidget*>("allFigures");
    EXPECT_TRUE(derivations.isVisible());
    EXPECT_EQ(QApplication::focusWidget(), list);
    ASSERT_GT(list->topLevelItemCount(), 20);
    for (int steps = 0; steps < 2; ++steps)
        press(Qt::Key_Down);
    press(Qt::Key_Return);
    EXPECT_EQ(derivations.figure(), "freezing_point_c");
}

TEST_F(DerivationWindowTest, KeysLeafThroughTheListAndOnlyWhereOneStayedIsRemembered)
{
    lay(simpleSorbet);
    derivations.open("mass_g");
    derivations.openAction()->trigger();
    awaitDerivations();
    auto* list = derivations.findChild<QTreeWidget*>("allFigures");
    list->setFocus();
    const auto keyOf = [list](int row) { return list->topLevelItem(row)->data(0, Qt::UserRole).toString(); };
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualItemRect(list->topLevelItem(5)).center());
    EXPECT_EQ(derivations.figure(), keyOf(5));
    EXPECT_EQ(QApplication::focusWidget(), list);
    press(Qt::Key_Home);
    EXPECT_EQ(derivations.figure(), keyOf(0));
    for (int row = 1; row <= 3; ++row) {
        press(Qt::Key_Down);
        EXPECT_EQ(derivations.figure(), keyOf(row));
    }
    EXPECT_EQ(label("value"), list->topLevelItem(3)->text(1));
    press(Qt::Key_Return);
    press(Qt::Key_Down);
    EXPECT_EQ(derivations.figure(), keyOf(4));
    EXPECT_EQ(QApplication::focusWidget(), list);
    for (const QString& before : {keyOf(3), keyOf(5), QStringLiteral("mass_g")}) {
        derivations.goBack();
        EXPECT_EQ(derivations.figure(), before);
    }
    for (const QString& after : {keyOf(5), keyOf(3), keyOf(4)}) {
        derivations.goForward();
        EXPECT_EQ(derivations.figure(), after);
    }
}

TEST_F(DerivationWindowTest, ADefinitionHasNoSourceToTellMoreAbout)
{
    lay(simpleSorbet);
    std::size_t definitions = 0, others = 0;
    for (const char* figure : {"mass_g", "percent.sugars", "freezing_point_c"}) {
        derivations.open(QString::fromLatin1(figure));
        const auto derivation = explain(figure, explained().workings);
        ASSERT_TRUE(derivation);
        std::size_t links = 0, published = 0;
        for (const FigureLink* each : derivations.findChildren<FigureLink*>())
            links += each->figure().isEmpty() ? 1 : 0;
        for (std::size_t i = 0; i < derivation->steps.size(); ++i) {
            const bool isDefinition = derivation->steps[i].source == Source::Definition;
            definitions += isDefinition ? 1 : 0;
            published += isDefinition || isSourceRepeated(derivation->steps, i) ? 0 : 1;
        }
        EXPECT_EQ(links, published) << figure;
        others += published;
    }
    EXPECT_GT(definitions, 0u);
    EXPECT_GT(others, 0u);
}

TEST_F(DerivationWindowTest, FollowsEditsWhileOpen)
{
    lay(simpleSorbet);
    click(sugarsFigure);
    const QString before = label("value");
    changeAmount(window.document(), RowPlace{0, 1}, Amount{300.0});
    const QString shown = percentText(window.document().analysis().shares.sugars);
    EXPECT_NE(before, shown);
    EXPECT_EQ(label("value"), shown);
}

TEST_F(DerivationWindowTest, AFigureThatGoesSaysWhyAndComesBack)
{
    lay(simpleSorbet);
    click("freezing_point_c");
    window.document().startWith(Recipe{});
    EXPECT_TRUE(label("value").isEmpty());
    EXPECT_TRUE(labels().join(u'\n').contains("no water"));
    lay(simpleSorbet);
    EXPECT_FALSE(label("value").isEmpty());
}

TEST_F(DerivationWindowTest, ReckonsNothingWhileClosed)
{
    lay(simpleSorbet);
    const auto* list = derivations.findChild<QTreeWidget*>("allFigures");
    EXPECT_EQ(list->topLevelItemCount(), 0);
    changeAmount(window.document(), RowPlace{0, 1}, Amount{300.0});
    EXPECT_EQ(list->topLevelItemCount(), 0);
    click(sugarsFigure);
    EXPECT_GT(list->topLevelItemCount(), 0);
}

TEST_F(DerivationWindowTest, AHostileNameIsShownLetterByLetter)
{
    const QString name = QStringLiteral("<img src=x> & <b>syrup</b>");
    Recipe hostile = recipeFromText("100 g water\n50 g sucrose\n10 g sucrose").value();
    Ingredient syrup = *shippedCatalogue().find("sucrose");
    syrup.id = "syrup-of-its-own";
    syrup.name = name.toStdString();
    syrup.source = "<a href=x>nobody</a>";
    hostile.ingredients.push_back(syrup);
    hostile.components.front().rows.back().ingredient = syrup.name;
    window.document().startWith(hostile);
    derivations.open("sugars_g.sucrose");
    bool isShown = false;
    for (const QLabel* each : derivations.findChildren<QLabel*>()) {
        EXPECT_EQ(each->textFormat(), Qt::PlainText) << each->text().toStdString();
        isShown = isShown || each->text().contains(name);
    }
    for (const FigureLink* each : derivations.findChildren<FigureLink*>())
        isShown = isShown || each->accessibleName().contains(name);
    EXPECT_TRUE(isShown) << labels().join(u'\n').toStdString();
}

TEST_F(DerivationWindowTest, ALongSumFoldsAndUnfolds)
{
    std::string rows;
    for (int i = 1; i <= 14; ++i)
        rows += std::to_string(10 * i) + " g sucrose\n";
    lay(rows + "500 g water");
    derivations.open("sugars_g.sucrose");
    const auto fold = [this] {
        const QList<QPushButton*> found = derivations.findChildren<QPushButton*>(QRegularExpression("^fold"));
        return found.isEmpty() ? nullptr : found.first();
    };
    const auto linksToRows = [this] {
        int count = 0;
        for (const FigureLink* each : derivations.findChildren<FigureLink*>())
            count += each->figure().startsWith("rows[") ? 1 : 0;
        return count;
    };
    ASSERT_TRUE(fold());
    EXPECT_EQ(fold()->text(), "And 11 more");
    EXPECT_EQ(linksToRows(), 3);
    fold()->click();
    EXPECT_EQ(linksToRows(), 14);
    ASSERT_TRUE(fold());
    fold()->click();
    EXPECT_EQ(linksToRows(), 3);
}

TEST_F(DerivationWindowTest, CopiesTheTextOfCoreAndAPicture)
{
    lay(simpleSorbet);
    click(sugarsFigure);
    QTest::keyClick(&derivations, Qt::Key_C, Qt::ControlModifier);
    const auto expected = explain("percent.sugars", explained().workings);
    ASSERT_TRUE(expected);
    EXPECT_EQ(QApplication::clipboard()->text(), QString::fromStdString(derivationText(*expected)));
    derivations.copyPicture();
    const QImage picture = QApplication::clipboard()->image();
    EXPECT_GT(picture.width(), 600);
    EXPECT_NE(picture.pixelColor(picture.width() / 2, 1), QColor(Qt::black));
}

TEST_F(DerivationWindowTest, FormulasOfAllFiguresOfTheSamplesFitTheirBoxes)
{
    std::size_t laid = 0;
    const QFont font = window.font();
    for (const Recipe& sample : builtInSamples()) {
        window.document().startWith(sample);
        const Workings workings = explained().workings;
        for (const auto& [key, working] : workings.all()) {
            if (key.starts_with("freezing_curve[") && !key.starts_with("freezing_curve[5]"))
                continue;
            for (const WorkingStep& step : working.steps()) {
                for (const Formula& formula : {step.formula, withValues(step.formula, &step.result)}) {
                    for (const double room : {1e6, 560.0}) {
                        EXPECT_EQ(faultOf(laidOut(formula, font, room, room < 1e6)), "") << key << ": " << textOf(formula);
                        ++laid;
                    }
                }
            }
        }
    }
    EXPECT_GT(laid, 1000u);
}

TEST_F(DerivationWindowTest, NoLineOfAFormulaIsCutOffInANarrowWindow)
{
    derivations.resize(derivations.minimumSizeHint().width(), 500);
    std::size_t inSeveralLines = 0;
    for (const Recipe& sample : builtInSamples()) {
        window.document().startWith(sample);
        for (const char* figure : {"freezing_point_textbook_c", "freezing_point_c", "glass_limit_c", "water_g"}) {
            derivations.open(QString::fromLatin1(figure));
            QApplication::processEvents();
            for (const FormulaPicture* each : derivations.findChildren<FormulaPicture*>()) {
                EXPECT_GE(each->height(), each->heightForWidth(each->width())) << figure << ": " << each->valueText().toStdString();
                inSeveralLines += each->sizeHint().width() > each->width() ? 1 : 0;
            }
        }
    }
    EXPECT_GT(inSeveralLines, 20u);
}

TEST(FormulaLayout, AFractionStandsAboveItsBarAndAboveWhatDividesIt)
{
    const Symbol a{"a", "sugars", 1.0, "g", {}}, b{"b", "", 2.0, "g", {}};
    const FormulaBox box = laidOut(Formula(a) / Formula(b), QApplication::font(), 1e6, false);
    ASSERT_EQ(box.marks.size(), 4u);  // bar, a, its subscript, b
    EXPECT_TRUE(box.marks[0].text.isEmpty());
    EXPECT_LT(box.marks[2].bounds.bottom(), box.marks[0].bounds.top());
    EXPECT_GT(box.marks[2].bounds.bottom(), box.marks[1].bounds.bottom());
    EXPECT_GT(box.marks[3].bounds.top(), box.marks[0].bounds.bottom());
    EXPECT_LT(box.marks[2].font.pixelSize(), QFontInfo(box.marks[1].font).pixelSize());
}

TEST(FormulaLayout, BracketsGrowWithWhatTheyHold)
{
    const Symbol a{"a", "", 1.0, "g", {}}, b{"b", "", 2.0, "g", {}};
    const auto bracketHeight = [](const Formula& formula) {
        double height = 0.0;
        for (const FormulaMark& mark : laidOut(formula, QApplication::font(), 1e6, false).marks)
            height = mark.text.isEmpty() || mark.text == "(" ? std::max(height, mark.bounds.height()) : height;
        return height;
    };
    const double small = bracketHeight(Formula(2.0) * (Formula(a) + Formula(b)));
    EXPECT_GT(small, 0.0);
    EXPECT_GT(bracketHeight(Formula(2.0) * (Formula(1.0) + Formula(a) / Formula(b))), 1.5 * small);
}

TEST(FormulaLayout, WhatIsTooWideGoesOnInFurtherLines)
{
    Formula sum = Symbol{"m", "1", 1.0, "g", {}};
    for (int i = 2; i <= 20; ++i)
        sum = std::move(sum) + Formula(Symbol{"m", std::to_string(i), 1.0, "g", {}});
    const FormulaBox wide = laidOut(sum, QApplication::font(), 1e6, false),
                     narrow = laidOut(sum, QApplication::font(), 200.0, false);
    EXPECT_GT(wide.width, 200.0);
    EXPECT_LE(narrow.width, 200.0);
    EXPECT_GT(narrow.height(), 2.0 * wide.height());
}

TEST(FormulaLayout, TheResultOfASumInSeveralLinesStandsBelowTheSum)
{
    Formula sum = Symbol{"m", "1", 1.0, "g", {}};
    for (int i = 2; i <= 20; ++i)
        sum = std::move(sum) + Formula(Symbol{"m", std::to_string(i), 1.0, "g", {}});
    const Formula left = Symbol{"M", "", 20.0, "g", {}};
    const FormulaBox box =
        laidOut(Operation{Operator::Equals, {left, sum, Number{20.0, "kg", true}}}, QApplication::font(), 215.0, false);
    const FormulaMark& result = box.marks.back();
    ASSERT_TRUE(result.text.endsWith("kg"));
    for (const FormulaMark& mark : box.marks) {
        if (mark.text == "m") {
            EXPECT_LT(mark.bounds.bottom(), result.bounds.top());
        }
    }
}

TEST(FormulaPicture, IsSpokenAsCoreWritesIt)
{
    const Formula formula = equation(Symbol{"w", "", 0.5, "", {}}, Formula(Symbol{"m", "sugars", 1.0, "g", {}}) / Formula(2.0));
    const FormulaPicture picture(formula);
    EXPECT_EQ(picture.valueText(), "w = m_sugars / 2");
}

TEST(FormulaPicture, ValuesTakeTheDecimalMarkOfTheLocale)
{
    QLocale::setDefault(QLocale(QLocale::German));
    const QString written = valueInLocale(Number{22.18, "g", true});
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    EXPECT_TRUE(written.startsWith("22,18")) << written.toStdString();
}

}  // namespace firn::app
