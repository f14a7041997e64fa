#include "bench.h"

#include "document/edits.h"
#include "gauges/figure_button.h"
#include "gauges/gauge.h"
#include "gauges/marked_lines.h"
#include "syrup/scales.h"
#include "syrups/syrups_window.h"

#include "gauges/wording.h"
#include "teach/figure_link.h"
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QStackedWidget>
#include <QTest>
#include <stdexcept>

namespace firn::app {
namespace {

class Syrups : public testing::Test {
protected:
    Syrups()
        : document(shippedCatalogue())
        , window(document)
    {
        window.show();
    }
    ~Syrups() override { QLocale::setDefault(usualLocale); }

    template <class Widget>
    Widget& find(const char* name)
    {
        auto* found = window.findChild<QStackedWidget*>()->currentWidget()->findChild<Widget*>(QString::fromLatin1(name));
        if (!found)
            throw std::runtime_error(name);
        return *found;
    }
    void choose(const QString& job)
    {
        auto& jobs = *window.findChild<QListWidget*>(QStringLiteral("jobs"));
        jobs.setCurrentItem(jobs.findItems(job, Qt::MatchExactly).value(0));
    }
    void write(const char* field, const QString& text)
    {
        find<QLineEdit>(field).setFocus();
        find<QLineEdit>(field).selectAll();
        QTest::keyClicks(&find<QLineEdit>(field), text);
    }
    QString written(const char* field) { return plain(find<QLineEdit>(field).text()); }
    QString answer() { return plain(find<QLabel>("answer").text()); }
    QString figureAt(int row) { return plain(find<QLabel>(qPrintable(QStringLiteral("figure%1").arg(row))).text()); }
    QString lines() { return plain(find<MarkedLines>("lines").spokenText()); }
    QString fault(const char* field)
    {
        const auto& label = find<QLabel>(qPrintable(QString::fromLatin1(field) + QStringLiteral("Fault")));
        return label.isVisible() ? plain(label.text()) : QString();
    }
    bool canPut() { return find<QPushButton>("putInRecipe").isVisible(); }
    void put() { QTest::mouseClick(&find<QPushButton>("putInRecipe"), Qt::LeftButton); }
    const std::vector<Row>& rows() { return document.recipe().components.at(document.component()).rows; }

    static QString plain(QString text) { return text.replace(QChar(0x202F), u' '); }

    const QLocale usualLocale;
    Document document;
    SyrupsWindow window;
};

TEST_F(Syrups, MixDrawsTheSquareAndSaysTheMasses)
{
    choose("Mix two");
    write("first", "60");
    write("second", "20");
    write("wanted", "30");
    write("total", "2 kg");
    EXPECT_EQ(answer(), "500 g syrup of 60.0 °Bx, 1500 g syrup of 20.0 °Bx");
    EXPECT_EQ(plain(window.findChild<Gauge*>()->valueText()),
        "60.0 % and 20.0 % make 30.0 %: 10 parts of the first to 30 parts of the second");
}

TEST_F(Syrups, AnswersOpenToTheirDerivation)
{
    double opened = -1.0;
    QObject::connect(&window, &SyrupsWindow::derivationWanted, &window, [&](const QString& figure, const Workings& workings) {
        opened = workings.find(figure.toStdString())->steps().back().result.value;
    });
    const auto open = [&] {
        for (FigureLink* link : window.findChildren<FigureLink*>()) {
            if (link->isVisible())
                QTest::keyClick(link, Qt::Key_Return);
        }
        return opened;
    };
    choose("Mix two");
    write("first", "60");
    write("second", "20");
    write("wanted", "30");
    write("total", "2 kg");
    EXPECT_DOUBLE_EQ(open(), 1500.0);
    choose("Make");
    EXPECT_TRUE(answer().startsWith(plain(gramsText({open()}))));
    choose("Boil down");
    EXPECT_TRUE(answer().contains(plain(gramsText({open()}))));
    choose("Dilute");
    EXPECT_TRUE(answer().contains(plain(gramsText({open()}))));
    choose("Dissolve");
    write("solute", "900");
    write("water", "300");
    write("warm", "60");
    EXPECT_TRUE(answer().startsWith(plain(gramsText({open()})))) << answer().toStdString();
}

TEST_F(Syrups, EveryFigureOfAListOpensToItsDerivation)
{
    QString key;
    double opened = -1.0;
    QObject::connect(&window, &SyrupsWindow::derivationWanted, &window, [&](const QString& figure, const Workings& workings) {
        key = figure;
        opened = workings.find(figure.toStdString())->steps().back().result.value;
    });
    const auto openAll = [&](const auto& decimalsOf) {
        int row = 0;
        for (FigureButton* button : window.findChildren<FigureButton*>()) {
            if (!button->isVisible() || !button->figure().startsWith("syrup.figures"))
                continue;
            QTest::mouseClick(button, Qt::LeftButton);
            EXPECT_EQ(key, QStringLiteral("syrup.figures[%1]").arg(row));
            EXPECT_TRUE(figureAt(row).startsWith(plain(firn::app::figure(opened, decimalsOf(row)))))
                << figureAt(row).toStdString() << opened;
            ++row;
        }
        return row;
    };
    choose("Dissolve");
    EXPECT_EQ(openAll([](int) { return 1; }), 2);
    choose("Convert");
    EXPECT_EQ(openAll([](int row) { return allSyrupScales()[std::size_t(row)].decimals; }), int(allSyrupScales().size()));
}

TEST_F(Syrups, MixRefusesBesideTheFieldThatIsToBlame)
{
    choose("Mix two");
    write("wanted", "70");
    EXPECT_EQ(fault("wanted"),
        "70.0 % cannot be mixed from 65.0 % and 0.0 %. Ask for a strength between them, or take a weaker or stronger one.");
    EXPECT_EQ(answer(), "");
    EXPECT_FALSE(canPut());
    write("wanted", "40");
    EXPECT_FALSE(answer().isEmpty());
    write("total", "0");
    EXPECT_EQ(fault("total"), "Nothing would be mixed. Ask for more than 0 g.");
    EXPECT_EQ(fault("wanted"), "");
}

TEST_F(Syrups, MakeIsWeighedAndCanBePutInTheRecipeAndTakenBack)
{
    choose("Make");
    // 1.2295 g/mL at 50 °Bx and 20 °C (CRC Handbook, 102nd ed.).
    EXPECT_EQ(answer(), "615 g sugar, 615 g water");
    put();
    ASSERT_EQ(rows().size(), 2U);
    EXPECT_EQ(rows()[0].ingredient, "sucrose");
    EXPECT_DOUBLE_EQ(rows()[0].amount.value, 615.0);
    EXPECT_EQ(rows()[1].ingredient, "water");
    EXPECT_DOUBLE_EQ(rows()[1].amount.value, 615.0);
    EXPECT_NEAR(document.analysis().shares.sugars.value, 0.5, 1e-9);
    EXPECT_EQ(plain(find<QLabel>("toPut").text()), "615 g sugar, 615 g water: in the recipe now.");
    EXPECT_EQ(document.undoStack().count(), 1);
    document.undoStack().undo();
    EXPECT_TRUE(rows().empty());
}

TEST_F(Syrups, RowsGoToTheEndOfTheComponentInView)
{
    insertRows(document, {0, 0}, {{"water", {100.0, Unit::Gram}, {}, {}}});
    addComponent(document, "Sauce");
    document.showComponent(1);
    choose("Dilute");
    put();
    ASSERT_EQ(rows().size(), 1U);
    EXPECT_DOUBLE_EQ(rows()[0].amount.value, 1167.0);
    document.showComponent(0);
    put();
    ASSERT_EQ(rows().size(), 2U);
    EXPECT_DOUBLE_EQ(rows()[1].amount.value, 1167.0);
}

TEST_F(Syrups, NothingMakesNoRow)
{
    choose("Make");
    write("strength", "0");
    put();
    ASSERT_EQ(rows().size(), 1U);
    EXPECT_EQ(rows()[0].ingredient, "water");
    choose("Dilute");
    write("wanted", "65");
    EXPECT_FALSE(canPut());
}

TEST_F(Syrups, MakeRefusals)
{
    choose("Make");
    write("strength", "80");
    EXPECT_EQ(fault("strength"), "The density of a syrup of 80.0 °Bx is not known. Ask for 0 to 75 °Bx.");
    write("strength", "70");
    EXPECT_TRUE(lines().startsWith("Warning: Too much sucrose for 20 °C")) << lines().toStdString();
    write("measuredAt", "120");
    EXPECT_EQ(fault("measuredAt"), "The density of a syrup at 120 °C is not known. Measure its volume at 0 °C to 100 °C.");
    EXPECT_EQ(fault("strength"), "");
    write("measuredAt", "60");
    write("volume", "2 cats");
    EXPECT_FALSE(fault("volume").isEmpty());
    write("volume", "0,5 l");
    EXPECT_EQ(fault("volume"), "");
    EXPECT_FALSE(answer().isEmpty());
}

TEST_F(Syrups, BoilDownToAStrengthOrToWhatIsLeft)
{
    choose("Boil down");
    write("until", "62.5");
    EXPECT_EQ(answer(), "Stop when 800 g is left: 62.5 °Bx");
    EXPECT_TRUE(lines().startsWith("Danger: Boiling syrup")) << lines().toStdString();
    find<QComboBox>("untilMeaning").setCurrentText("Mass that is left");
    EXPECT_EQ(written("until"), "");
    EXPECT_EQ(fault("until"), "Write a number here, such as 800 g.");
    write("until", "500 g");
    EXPECT_EQ(fault("until"), "500 g of it would be candy. Stop at 527 g or more, which is 95.0 %.");
    write("until", "800 g");
    EXPECT_EQ(answer(), "Stop when 800 g is left: 62.5 °Bx");
    write("now", "0");
    EXPECT_EQ(fault("now"), "0.0 % sugar is not a syrup. Enter a strength between 0 and 100 %.");
    EXPECT_EQ(fault("until"), "");
}

TEST_F(Syrups, BoiledTooFarWarnsOfCrystals)
{
    choose("Boil down");
    write("until", "72");
    EXPECT_TRUE(lines().contains("Warning: Too much sucrose for 20 °C")) << lines().toStdString();
}

TEST_F(Syrups, DiluteTakesBothDecimalMarksInEveryLocale)
{
    choose("Dilute");
    write("mass", "500");
    write("now", "62.5");
    write("wanted", "25");
    EXPECT_EQ(answer(), "Add 750 g water");
    write("now", "62,5");
    EXPECT_EQ(answer(), "Add 750 g water");
    QLocale::setDefault(QLocale(QLocale::German));
    write("mass", "1000");
    for (const char* strength : {"62.5", "62,5"}) {
        write("now", strength);
        EXPECT_EQ(answer(), "Add 1500 g water") << strength;
    }
    QTest::keyClick(&find<QLineEdit>("now"), Qt::Key_Return);
    EXPECT_EQ(written("now"), "62,5");
    QTest::keyClick(&find<QLineEdit>("mass"), Qt::Key_Return);
    EXPECT_EQ(written("mass"), "1000 g") << "thousands parted by a mark would be read as decimals";
}

TEST_F(Syrups, DiluteRefusals)
{
    choose("Dilute");
    write("wanted", "70");
    EXPECT_EQ(fault("wanted"), "Water never brings 65.0 % to 70.0 %. Ask for something weaker, or boil it down.");
    write("wanted", "30");
    write("mass", "0");
    EXPECT_EQ(fault("mass"), "The syrup has no mass. Enter more than 0 g.");
    write("mass", "abc");
    EXPECT_FALSE(fault("mass").isEmpty());
    EXPECT_EQ(answer(), "");
}

TEST_F(Syrups, DissolveSaysHowNearSaturationItComes)
{
    choose("Dissolve");
    write("solute", "700");
    write("water", "300");
    EXPECT_EQ(answer(), "Dissolves at 80 °C, not clear at 5 °C");
    // 64.447 + 0.08222 t + 1.6169e-3 t² - 1.558e-6 t³ - 4.63e-8 t⁴ at 80 °C, Bubnik and Kadlec 1995.
    EXPECT_EQ(figureAt(0), "78.7 ± 0.5 %");
    EXPECT_TRUE(lines().startsWith("Warning: ")) << lines().toStdString();
    put();
    ASSERT_EQ(rows().size(), 1U);
    EXPECT_EQ(rows()[0].ingredient, "water");
    write("solute", "500");
    EXPECT_EQ(answer(), "Dissolves at 80 °C, stays clear at 5 °C");
    EXPECT_FALSE(canPut());
    find<QComboBox>("soluteMeaning").setCurrentText("glucose");
    EXPECT_EQ(written("solute"), "500 g");
    EXPECT_EQ(fault("cool"), "How well glucose dissolves is known from 20 °C to 90 °C, not at 5 °C.");
    write("cool", "20");
    EXPECT_EQ(fault("cool"), "");
    write("warm", "95");
    EXPECT_EQ(fault("warm"), "How well glucose dissolves is known from 20 °C to 90 °C, not at 95 °C.");
}

TEST_F(Syrups, ConvertShowsEveryScaleWithItsRange)
{
    choose("Convert");
    find<QComboBox>("strengthMeaning").setCurrentText("Parts of sugar to one of water, by mass");
    EXPECT_EQ(written("strength"), "1");
    EXPECT_EQ(answer(), "50.0 % sugar by mass");
    EXPECT_EQ(figureAt(0), "50.0 °Bx");
    // 1.2295 g/mL (CRC Handbook, 102nd ed.), weighed in air of 1.2 mg/mL as in tests/reference.
    EXPECT_NEAR(figureAt(1).toDouble(), 1.2320, 0.0003);
    EXPECT_EQ(figureAt(2), "27.3 °Bé");
    EXPECT_EQ(figureAt(3), "615 g/L");
    EXPECT_EQ(figureAt(4), "998 g/L");
    EXPECT_EQ(figureAt(5), "1.000");
    write("strength", "4");
    EXPECT_EQ(figureAt(0), "80.0 °Bx");
    EXPECT_EQ(figureAt(2), "–");
}

TEST_F(Syrups, ConvertRefusesOffTheScale)
{
    choose("Convert");
    find<QComboBox>("strengthMeaning").setCurrentText("Specific gravity 20/20 °C");
    const QString half = written("strength");
    EXPECT_TRUE(half.startsWith("1.232")) << half.toStdString();
    write("strength", "0.98");
    EXPECT_EQ(fault("strength"),
        "No syrup has 0.9800 on the scale “Specific gravity 20/20 °C”: it goes from 1.0000, which is water, to 1.3823.");
    EXPECT_EQ(figureAt(0), "");
    write("strength", QString(half).replace(u'.', u','));
    EXPECT_EQ(figureAt(0), "50.0 °Bx");
}

TEST_F(Syrups, AnotherScaleMeansTheSameSyrup)
{
    choose("Dilute");
    const QString before = answer();
    find<QComboBox>("nowMeaning").setCurrentText("°Bé (modulus 145)");
    EXPECT_EQ(answer(), before);
    find<QComboBox>("nowMeaning").setCurrentText("°Bx (% by mass)");
    EXPECT_EQ(written("now"), "65");
    write("now", "65 %");
    EXPECT_EQ(answer(), before);
}

TEST_F(Syrups, EachJobKeepsWhatWasTyped)
{
    choose("Dilute");
    write("wanted", "20");
    choose("Make");
    choose("Dilute");
    EXPECT_EQ(written("wanted"), "20");
    QTest::keyClick(&window, Qt::Key_Escape);
    EXPECT_FALSE(window.isVisible());
    window.show();
    EXPECT_EQ(written("wanted"), "20");
}

}  // namespace
}  // namespace firn::app
