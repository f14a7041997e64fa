// What is shown, typed again, means the same: in every locale, in every cell and field that takes text, and wherever an amount can be copied.
#include "bench.h"

#include "bench/number_field.h"
#include "bench/typed_text.h"
#include "catalogue/catalogue_window.h"
#include "compare/comparing_window.h"
#include "document/built_in.h"
#include "document/places.h"
#include "document/tasting_edits.h"
#include "document/typed_numbers.h"
#include "document/typed_sizes.h"
#include "exchange/recipe_text.h"
#include "gauges/wording.h"
#include "locales.h"
#include "measure/measure_window.h"
#include "syrups/syrups_window.h"
#include "tasting/tasting_window.h"

#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QRegularExpression>
#include <QTest>
#include <cmath>
#include <rapidcheck/gtest.h>

namespace firn::app {
namespace {

using Model = IngredientModel;

double anyThousandths(int largest) { return *rc::gen::inRange(0, largest) / 1000.0; }

NumbersOf inAnyLocale() { return NumbersOf(*rc::gen::elementOf(readersLocales())); }

RC_GTEST_PROP(ShownAmounts, AreReadBackByTheirCells, ())
{
    const NumbersOf numbers = inAnyLocale();
    Document document(shippedCatalogue());
    const Unit unit = allUnits()[*rc::gen::inRange<std::size_t>(0, allUnits().size())].unit;
    // Water has no pieces, and alone it cannot be a share of the mix: that is said of it, however its amount is read.
    const bool isWeighed = unit != Unit::Piece && unit != Unit::PercentOfMix;
    const Amount amount{anyThousandths(*rc::gen::element(1000, 100000, 10000000)), unit};
    Recipe recipe;
    recipe.components.front().rows = {Row{"water", amount, {}, {}}};
    document.startWith(recipe);
    Model model(document);
    const QModelIndex cell = model.index(0, Model::AmountColumn);
    const QString shown = cell.data(Qt::EditRole).toString();
    const QString shownUnit = model.index(0, Model::UnitColumn).data(Qt::EditRole).toString();
    for (const QString& typed : {shown, shown + u' ' + shownUnit}) {
        RC_ASSERT(model.setData(cell, typed, Qt::EditRole));
        RC_ASSERT(cell.data(Model::ProblemRole).toString().isEmpty() || amount.value == 0.0 || !isWeighed);
        RC_ASSERT(model.firstDraft() == QModelIndex());
        RC_ASSERT(document.recipe().components.front().rows.front().amount == amount);
    }
    // As a line of its own, too.
    if (amount.value > 0.0) {
        const auto row = rowFromText((shown + u' ' + shownUnit + QStringLiteral(" water")).toStdString());
        RC_ASSERT(row.has_value() && row->amount == amount);
    }
}

RC_GTEST_PROP(ShownAmounts, AreNoOtherAmountWhereverTheyAreCopiedFrom, ())
{
    const NumbersOf numbers = inAnyLocale();
    const double value = anyThousandths(*rc::gen::element(20000, 10000000, 1000000000));
    const auto mass = massFromText(gramsText({value}).toStdString());
    RC_ASSERT(mass.has_value());
    RC_ASSERT(std::abs(mass->value - value) <= 0.5 + 1e-9);
    const auto volume = volumeFromText(millilitresText({value}).toStdString());
    RC_ASSERT(volume.has_value());
    RC_ASSERT(std::abs(volume->value - value) <= 0.5 + 1e-9);
    for (const char* unit : {"g", "mL"}) {
        const std::string typed = typedText(value, QString::fromLatin1(unit)).toStdString();
        const auto amount = parseAmount(typed);
        RC_ASSERT(amount.has_value());
        RC_ASSERT(std::abs(amount->value - value) < 1e-9);
    }
    for (int decimals = 0; decimals < 5; ++decimals) {
        const auto number = numberFromText(figure(value, decimals).toStdString());
        RC_ASSERT(number.has_value());
        RC_ASSERT(std::abs(*number - value) <= 0.5 * std::pow(10.0, -decimals) + 1e-9);
    }
}

RC_GTEST_PROP(ShownTemperatures, AreReadBackInEitherUnit, ())
{
    const NumbersOf numbers = inAnyLocale();
    const TemperaturesIn shown(*rc::gen::element(TemperatureUnit::Celsius, TemperatureUnit::Fahrenheit));
    // Tenths of a degree of either unit, as people choose them.
    const TemperatureUnit chosenIn = *rc::gen::element(TemperatureUnit::Celsius, TemperatureUnit::Fahrenheit);
    const double number = *rc::gen::inRange(-600, 600) / 10.0;
    const Celsius temperature = temperatureFrom(chosenIn, number);
    RC_PRE(temperature > coldestTemperature && temperature < warmestTemperature);
    const auto read = temperatureFromText(chosenDegrees(temperature).toStdString(), TemperatureUnit::Celsius);
    RC_ASSERT(read.has_value());
    const double tolerance_k = chosenIn == TemperatureUnit::Celsius || shownTemperatureUnit() == chosenIn ? 1e-9 : 0.005;
    RC_ASSERT(std::abs(read->value - temperature.value) <= tolerance_k + 1e-9);
}

class ReadBack : public Bench {
protected:
    /// Types the shown text over another one.
    static void expectReadsBack(NumberField& field, const std::string& where)
    {
        const QString shown = field.text().isEmpty() ? field.placeholderText() : field.text();
        const auto number = field.number();
        if (!field.isVisible() || !field.isEnabled() || !shown.contains(QRegularExpression(QStringLiteral("\\d"))))
            return;
        const auto write = [&](const QString& text) {
            field.setFocus();
            field.selectAll();
            for (const QChar letter : text)
                QTest::sendKeyEvent(QTest::Click, &field, Qt::Key_unknown, QString(letter), Qt::NoModifier);
            QTest::keyClick(&field, Qt::Key_Return);
        };
        write(QStringLiteral("1"));
        write(shown);
        EXPECT_EQ(field.problem(), "") << where << ", " << field.objectName().toStdString() << ": " << shown.toStdString();
        ASSERT_TRUE(field.number()) << where << ", " << field.objectName().toStdString() << ": " << shown.toStdString();
        // A temperature that was typed in the other unit is shown to a hundredth.
        constexpr double halfOfLastDigit = 0.005;
        EXPECT_NEAR(*field.number(), number.value_or(*field.number()), halfOfLastDigit)
            << where << ", " << field.objectName().toStdString() << ": " << shown.toStdString();
        EXPECT_EQ(field.text(), shown) << where << ", " << field.objectName().toStdString();
    }
    /// The same for all fields of a window; how many showed a number.
    static int expectAllReadBack(QWidget& each, const std::string& where)
    {
        each.show();
        QApplication::processEvents();
        int numbers = 0;
        for (NumberField* field : each.findChildren<NumberField*>()) {
            numbers += field->isVisible() && field->number() ? 1 : 0;
            expectReadsBack(*field, where);
        }
        for (QAbstractSpinBox* spin : each.findChildren<QAbstractSpinBox*>()) {
            if (!spin->isVisible() || !spin->isEnabled())
                continue;
            const QString shown = spin->text();
            spin->setFocus();
            spin->selectAll();
            QTest::keyClick(spin, Qt::Key_Delete);
            for (const QChar letter : shown)
                QTest::sendKeyEvent(QTest::Click, spin, Qt::Key_unknown, QString(letter), Qt::NoModifier);
            QTest::keyClick(spin, Qt::Key_Return);
            EXPECT_EQ(spin->text(), shown) << where << ", " << spin->objectName().toStdString();
        }
        return numbers;
    }
    /// Every field that shows its number in this unit asks what "1.015" means in it; no other does.
    static void expectAsksInGramsAndMillilitres(QWidget& each)
    {
        each.show();
        QApplication::processEvents();
        for (NumberField* field : each.findChildren<NumberField*>()) {
            const QString shown = field->text().isEmpty() ? field->placeholderText() : field->text();
            if (!field->isVisible() || !field->isEnabled())
                continue;
            const bool isAmount =
                shown.endsWith(QStringLiteral("\u202fg")) || shown.endsWith(QStringLiteral("\u202fmL")) || shown == "g";
            field->setFocus();
            field->selectAll();
            QTest::keyClicks(field, QStringLiteral("1.015"));
            EXPECT_EQ(field->problem().contains(QStringLiteral("1015")), isAmount)
                << each.objectName().toStdString() << ' ' << field->objectName().toStdString() << ' ' << shown.toStdString() << ": "
                << field->problem().toStdString();
            QTest::keyClick(field, Qt::Key_Escape);
        }
    }
    /// A form with numbers that are read in another way than they are often written.
    void openForm(CatalogueWindow& catalogue)
    {
        Ingredient own = *pantry.catalogue().find("sucrose");
        own.id.clear();
        own.name = "test sugar";
        own.synonyms.clear();
        own.defaultFor.clear();
        own.density = GramsPerMillilitre{1.125};
        own.measures = {{Unit::Teaspoon, Grams{1.275}, {}, {}}};
        ASSERT_TRUE(pantry.keep(own));
        catalogue.openFor(window);
        auto& search = *catalogue.findChild<QLineEdit*>("search");
        search.clear();
        QTest::keyClicks(&search, "test sugar");
        auto& found = *catalogue.findChild<QAbstractItemView*>("found");
        found.setCurrentIndex(found.model()->index(0, 0));
        catalogue.findChild<QPushButton*>("edit")->click();
        QApplication::processEvents();
    }
};

TEST_F(ReadBack, EveryFieldOfTheOtherWindowsInEveryLocale)
{
    for (const QLocale& locale : readersLocales()) {
        const NumbersOf numbers(locale);
        const std::string where = locale.name().toStdString();
        window.document().startWith(builtInSamples().front());
        addScale(window.document(), {"iciness", 0.0, 10.0, "smooth", "crushed ice"});
        addTasting(window.document());
        changeScore(window.document(), 0, "iciness", 7.125);
        changeTastingNumber(window.document(), 0, &Tasting::servedAt_c, -12.5);
        changeTastingNumber(window.document(), 0, &Tasting::frozen_h, 36.125);
        TastingWindow tasting(window.document(), answers, &window);
        EXPECT_EQ(expectAllReadBack(tasting, where), 3) << "score, temperature and hours";
        ComparingWindow comparing(window.document(), answers, nullptr);
        expectAllReadBack(comparing, where);
        CatalogueWindow catalogue(pantry, answers);
        openForm(catalogue);
        EXPECT_GE(expectAllReadBack(catalogue, where), 3) << "sugar, density and a measure";
    }
}

/// Three digits after one mark are decimals of a temperature, a strength, a share or a time.
TEST_F(ReadBack, OnlyGramsAndMillilitresAreAskedAbout)
{
    window.document().startWith(builtInSamples().front());
    SyrupsWindow syrups(window.document());
    syrups.show();
    auto& jobs = *syrups.findChild<QListWidget*>("jobs");
    for (int job = 0; job < jobs.count(); ++job) {
        jobs.setCurrentRow(job);
        expectAsksInGramsAndMillilitres(syrups);
    }
    MeasureWindow measuring(window.document(), &window);
    measuring.show();
    auto& instruments = *measuring.findChild<QComboBox*>("instrument");
    for (int instrument = 0; instrument < instruments.count(); ++instrument) {
        instruments.setCurrentIndex(instrument);
        expectAsksInGramsAndMillilitres(measuring);
    }
    expectAsksInGramsAndMillilitres(window);
    settings().remove(QStringLiteral("instruments"));
}

TEST_F(ReadBack, EveryCellOfEverySampleInEveryLocale)
{
    for (const QLocale& locale : readersLocales()) {
        const NumbersOf numbers(locale);
        for (const Recipe& sample : builtInSamples()) {
            window.document().startWith(sample);
            for (std::size_t component = 0; component < sample.components.size(); ++component) {
                table.rows().showComponent(component);
                const auto& before = sample.components[component].rows;
                for (int row = 0; row < int(before.size()); ++row)
                    for (const int column : {Model::AmountColumn, Model::UnitColumn, Model::ReadingColumn}) {
                        const QString shown = textAt(row, column);
                        table.rows().setData(cell(row, column), shown, Qt::EditRole);
                        EXPECT_FALSE(table.rows().firstDraft().isValid())
                            << locale.name().toStdString() << ' ' << sample.title << ' ' << shown.toStdString();
                    }
                const auto& after = recipe().components[component].rows;
                for (std::size_t row = 0; row < before.size(); ++row) {
                    EXPECT_NEAR(after[row].amount.value, before[row].amount.value, 0.5e-6) << sample.title;
                    EXPECT_EQ(after[row].amount.unit, before[row].amount.unit) << sample.title;
                    EXPECT_EQ(after[row].measuredBrix, before[row].measuredBrix) << sample.title;
                }
            }
        }
    }
}

TEST_F(ReadBack, EveryFieldOfEveryWindowInEveryLocaleAndUnit)
{
    for (const QLocale& locale : readersLocales()) {
        const NumbersOf numbers(locale);
        for (const TemperatureUnit unit : {TemperatureUnit::Celsius, TemperatureUnit::Fahrenheit}) {
            const TemperaturesIn temperatures(unit);
            const std::string where = locale.name().toStdString() + (unit == TemperatureUnit::Celsius ? " C" : " F");
            Recipe sample = builtInSamples().front();
            sample.serveAt_c = -12.5;
            sample.freezerAt_c = temperatureFrom(TemperatureUnit::Fahrenheit, 3.0).value;
            sample.overrun_percent = 12.345;
            window.document().startWith(sample);
            SyrupsWindow syrups(window.document());
            MeasureWindow measuring(window.document(), &window);
            for (QWidget* each : std::initializer_list<QWidget*>{&window, &syrups, &measuring}) {
                each->show();
                QApplication::processEvents();
                const auto fields = each->findChildren<NumberField*>();
                EXPECT_FALSE(fields.empty());
                for (NumberField* field : fields)
                    expectReadsBack(*field, where);
            }
        }
    }
}

}  // namespace
}  // namespace firn::app
