// The projector view: what its pages hold, that all of it can be read and nothing is cut off, and how one goes through it.
#include "bench.h"
#include "document/built_in.h"
#include "document/edits.h"
#include "exchange/recipe_text.h"
#include "gauges/sugar_scale.h"
#include "gauges/wording.h"
#include "teach/figure_wording.h"
#include "teach/projected_view.h"
#include "teach/projector_panels.h"
#include "teach/projector_picture.h"
#include "teach/projector_pointer.h"
#include "teach/projector_window.h"
#include "units/temperature.h"

#include <QAction>
#include <QApplication>
#include <QFontInfo>
#include <QGuiApplication>
#include <QMouseEvent>
#include <QTest>

namespace firn::app {

namespace {

const std::string ginIce = "500 g cucumber\n150 g water\n130 g sucrose\n30 g glucose\n50 g gin\n1 g salt";
const std::string hostileName = "<b>x</b><img src=http://example.org/a.png onerror=alert(1)> & \x1b[31mred";

/// Twenty rows with names of sixty characters or more, one of them without a blank, one hostile.
Recipe crowdedRecipe()
{
    Recipe recipe;
    std::string lines;
    for (int i = 0; i < 20; ++i)
        lines += std::to_string(20 + 7 * i) + " g sucrose\n";
    recipe = recipeFromText(lines).value();
    const std::array foods{"sucrose", "whole-milk", "strawberry", "gin", "water"};
    for (std::size_t i = 0; i < 20; ++i) {
        const Ingredient* food = nullptr;
        for (std::size_t j = 0; j < foods.size() && !food; ++j)
            food = shippedCatalogue().find(foods[(i + j) % foods.size()]);
        Ingredient own = *food;
        own.id = "own-" + std::to_string(i);
        own.name = i == 15   ? hostileName
                   : i == 10 ? std::string(70, 'm')
                             : "Number " + std::to_string(i) + " of the finest that grows by the canal behind the bistro";
        recipe.ingredients.push_back(own);
        recipe.components.front().rows[i].ingredient = own.name;
    }
    recipe.process = Process::Churned;
    return recipe;
}

class ProjectorTest : public Bench {
protected:
    ProjectorWindow& projector = *window.findChild<ProjectorWindow*>();

    void open(QSize screen = {1280, 720})
    {
        projector.open();
        projector.showNormal();  // the screen of the tests has a size of its own
        projector.resize(screen);
        QApplication::processEvents();
        projector.goTo(0);
    }
    void open(const std::string& lines)
    {
        lay(lines);
        open();
    }
    QList<ProjectedView*> views() const
    {
        QList<ProjectedView*> shown;
        for (ProjectedView* each : projector.findChildren<ProjectedView*>()) {
            if (each->isVisible())
                shown << each;
        }
        return shown;
    }
    void press(Qt::Key key) { QTest::keyClick(&projector, key); }
    int pageOf(LessonTopic topic) const
    {
        const auto found = std::ranges::find(projector.topics(), topic);
        return found == projector.topics().end() ? -1 : int(found - projector.topics().begin());
    }
    /// Through all parts of all pages, everything shown.
    template <class Look>
    void lookAtAll(Look look)
    {
        for (int page = 0; page < int(projector.topics().size()); ++page) {
            projector.goTo(page);
            lookAtAllParts(look);
        }
    }
    template <class Look>
    void lookAtAllParts(Look look)
    {
        projector.revealAll();
        look();
        for (int part = 1; part < projector.partCount(); ++part) {
            projector.goOn();
            projector.revealAll();
            look();
        }
    }
    std::string place() const
    {
        return QStringLiteral("%1, part %2 at %3")
            .arg(translated(titleOf(projector.topic())))
            .arg(projector.part() + 1)
            .arg(projector.width())
            .toStdString();
    }
    /// All words and numbers of type that are shown.
    QStringList shownTexts() const
    {
        QStringList texts;
        for (const ProjectedView* view : views()) {
            for (const FormulaMark& mark : view->box().marks) {
                if (!mark.text.isEmpty())
                    texts << mark.text;
            }
        }
        return texts;
    }
    /// What is wrong with the part that is shown; empty where nothing is.
    std::string fault() const
    {
        constexpr double hair = 1.0;
        const int least_px = leastType_px(projector.size());
        std::vector<QRectF> taken;
        const auto* picture = projector.findChild<ProjectorPicture*>();
        if (picture->isVisible()) {
            if (picture->font().pixelSize() < least_px)
                return "small type in the picture";
            taken.push_back(picture->geometry());
        }
        for (const ProjectedView* view : views()) {
            if (!projector.rect().contains(view->geometry()))
                return "outside of the screen: " + view->valueText().toStdString();
            for (const QRectF& other : taken) {
                const QRectF shared = other.intersected(view->geometry());
                if (shared.width() > hair && shared.height() > hair)
                    return "overlapped: " + view->valueText().toStdString();
            }
            taken.push_back(view->geometry());
            const std::string inside = faultInside(*view, least_px);
            if (!inside.empty())
                return inside;
        }
        for (const QRectF& place : taken) {
            if (!QRectF(projector.rect()).contains(place))
                return "picture outside of the screen";
        }
        return {};
    }
    static std::string faultInside(const ProjectedView& view, int least_px)
    {
        constexpr double hair = 1.0;
        const QRectF room = QRectF(view.rect()).adjusted(-hair, -hair, hair, hair).translated(0.0, -view.box().ascent);
        const auto& marks = view.box().marks;
        for (std::size_t i = 0; i < marks.size(); ++i) {
            if (!room.contains(marks[i].bounds))
                return "cut off: '" + marks[i].text.toStdString() + "' in " + view.valueText().toStdString();
            if (!marks[i].text.isEmpty() && QFontInfo(marks[i].font).pixelSize() < least_px)
                return "too small: '" + marks[i].text.toStdString() + "' in " + view.valueText().toStdString();
            for (std::size_t j = i + 1; j < marks.size(); ++j) {
                const QRectF shared = marks[i].bounds.intersected(marks[j].bounds);
                if (shared.width() > hair && shared.height() > hair)
                    return "overlap: '" + marks[i].text.toStdString() + "' and '" + marks[j].text.toStdString() + "'";
            }
        }
        return {};
    }
};

}  // namespace

TEST_F(ProjectorTest, NothingIsCutOffOverlappedOrTooSmall)
{
    std::vector<Recipe> recipes = builtInSamples();
    recipes.push_back(crowdedRecipe());
    recipes.push_back(Recipe{});
    int looked = 0;
    for (const QSize screen : {QSize(1280, 720), QSize(1920, 1080), QSize(1024, 768)}) {
        for (const Recipe& recipe : recipes) {
            window.document().startWith(recipe);
            open(screen);
            ASSERT_EQ(projector.size(), screen);
            for (const bool areHidden : {false, true}) {
                projector.hideAnswers(areHidden);
                lookAtAll([&] {
                    EXPECT_EQ(fault(), "") << place() << ' ' << recipe.title;
                    ++looked;
                });
            }
            projector.hideAnswers(false);
        }
    }
    EXPECT_GT(looked, 400);
}

TEST_F(ProjectorTest, PagesAreThoseThatTheRecipeHasTheStuffFor)
{
    open(ginIce);
    EXPECT_GE(pageOf(LessonTopic::Spirit), 0);
    EXPECT_GE(pageOf(LessonTopic::Alcohol), 0);
    EXPECT_EQ(pageOf(LessonTopic::Milk), -1);
    lay("300 g strawberry\n100 g sucrose\n200 g whole milk");
    EXPECT_EQ(pageOf(LessonTopic::Spirit), -1);
    EXPECT_GE(pageOf(LessonTopic::Milk), 0);
    window.document().startWith(Recipe{});
    ASSERT_EQ(projector.topics().size(), 1u);
    EXPECT_EQ(projector.topic(), LessonTopic::Nothing);
    EXPECT_TRUE(shownTexts().join(u' ').contains("The recipe is empty"));
}

TEST_F(ProjectorTest, StepsAreShownOneAfterTheOtherAndAPresenterTurnsThePages)
{
    open(ginIce);
    int steps = 0;
    for (int part = 0; part < projector.partCount(); ++part) {
        EXPECT_EQ(projector.part(), part);
        for (int step = 0; step < projector.lastStep(); ++step, ++steps) {
            EXPECT_EQ(projector.step(), step);
            press(Qt::Key_PageDown);
            EXPECT_EQ(projector.step(), step + 1);
            for (const ProjectedView* view : projector.findChildren<ProjectedView*>())
                EXPECT_EQ(view->isVisible(), view->shownFrom() <= step + 1);
        }
        if (part + 1 < projector.partCount())
            press(Qt::Key_PageDown);
    }
    EXPECT_GT(steps + projector.partCount(), 3) << "the first step of each part is there on arrival";
    EXPECT_EQ(projector.topic(), LessonTopic::Sugars);
    while (projector.topic() == LessonTopic::Sugars)
        press(Qt::Key_PageDown);
    EXPECT_EQ(projector.topic(), LessonTopic::TotalSolids);
    EXPECT_EQ(projector.step(), 0);
    press(Qt::Key_PageUp);
    EXPECT_EQ(projector.topic(), LessonTopic::Sugars);
    EXPECT_EQ(projector.part(), projector.partCount() - 1);
    EXPECT_EQ(projector.step(), projector.lastStep());
    press(Qt::Key_PageUp);
    EXPECT_EQ(projector.step(), projector.lastStep() - 1);
}

TEST_F(ProjectorTest, AllKeysGoOnAndBack)
{
    open(ginIce);
    const int ofTwoSteps = pageOf(LessonTopic::TotalSolids);
    for (const Qt::Key key : {Qt::Key_Right, Qt::Key_Space, Qt::Key_Down, Qt::Key_Return}) {
        projector.goTo(ofTwoSteps);
        press(key);
        EXPECT_EQ(projector.step(), 1) << int(key);
    }
    for (const Qt::Key key : {Qt::Key_Left, Qt::Key_Up}) {
        projector.goTo(ofTwoSteps);
        projector.goOn();
        press(key);
        EXPECT_EQ(projector.step(), 0) << int(key);
    }
    press(Qt::Key_End);
    EXPECT_EQ(projector.topic(), projector.topics().back());
    press(Qt::Key_Home);
    EXPECT_EQ(projector.topic(), projector.topics().front());
    press(Qt::Key_3);
    EXPECT_EQ(projector.topic(), projector.topics()[2]);
    press(Qt::Key_R);
    EXPECT_EQ(projector.step(), projector.lastStep());
    press(Qt::Key_Escape);
    EXPECT_FALSE(projector.isVisible());
}

TEST_F(ProjectorTest, TheListOfPagesIsReachedAndLeftByKeys)
{
    open(ginIce);
    press(Qt::Key_L);
    auto* list = projector.findChild<ProjectorList*>();
    ASSERT_TRUE(list);
    EXPECT_EQ(list->count(), int(projector.topics().size()));
    EXPECT_TRUE(projector.rect().contains(list->geometry()));
    changeAmount(window.document(), RowPlace{0, 2}, Amount{140.0});
    EXPECT_EQ(projector.children().last(), list) << "an edit on the laptop has covered the list";
    QTest::keyClick(list, Qt::Key_Down);
    QTest::keyClick(list, Qt::Key_Down);
    QTest::keyClick(list, Qt::Key_Return);
    QApplication::processEvents();
    EXPECT_EQ(projector.topic(), projector.topics()[2]);
    EXPECT_FALSE(projector.findChild<ProjectorList*>());
    press(Qt::Key_L);
    QTest::keyClick(projector.findChild<ProjectorList*>(), Qt::Key_Escape);
    QApplication::processEvents();
    EXPECT_FALSE(projector.findChild<ProjectorList*>());
    EXPECT_TRUE(projector.isVisible());
}

TEST_F(ProjectorTest, TheKeysAreShownOnEveryScreenAndGoAway)
{
    lay(ginIce);
    for (const QSize screen : {QSize(1280, 720), QSize(1920, 1080), QSize(1024, 768)}) {
        open(screen);
        press(Qt::Key_F1);
        const auto* keys = projector.findChild<ProjectorKeys*>();
        ASSERT_TRUE(keys);
        EXPECT_GE(keys->width(), keys->minimumSizeHint().width());
        EXPECT_GE(keys->height(), keys->minimumSizeHint().height());
        EXPECT_TRUE(projector.rect().contains(keys->geometry()));
        press(Qt::Key_Question);
        EXPECT_FALSE(projector.findChild<ProjectorKeys*>());
    }
}

TEST_F(ProjectorTest, FollowsEditsAndStaysWhereItIs)
{
    open(ginIce);
    const auto share = [this] {
        const auto explained =
            analyseWithWorkings(recipe(), shippedCatalogue(), window.document().analysis().conditions, std::size_t{0});
        return valueInLocale(explained.workings.find("percent.sugars")->steps().back().result);
    };
    const QString before = share();
    for (int presses = 0; presses < 20 && !shownTexts().contains(before); ++presses)
        press(Qt::Key_PageDown);
    ASSERT_TRUE(shownTexts().contains(before));
    const int part = projector.part(), step = projector.step();
    changeAmount(window.document(), RowPlace{0, 2}, Amount{200.0});
    EXPECT_EQ(projector.topic(), LessonTopic::Sugars);
    EXPECT_EQ(projector.part(), part);
    EXPECT_EQ(projector.step(), step);
    EXPECT_NE(share(), before);
    EXPECT_FALSE(shownTexts().contains(before));
    EXPECT_TRUE(shownTexts().contains(share()));
}

TEST_F(ProjectorTest, ATopicThatGoesSaysSoAndComesBack)
{
    open(ginIce);
    projector.goTo(pageOf(LessonTopic::Spirit));
    changeAmount(window.document(), RowPlace{0, 4}, Amount{0.0});
    EXPECT_EQ(pageOf(LessonTopic::Spirit), -1);
    EXPECT_TRUE(projector.isTopicMissing());
    const QString shown = shownTexts().join(u' ');
    EXPECT_TRUE(shown.contains("Why does spirit keep it soft?")) << shown.toStdString();
    EXPECT_TRUE(shown.contains("No alcohol in the mix now: type some.")) << shown.toStdString();
    EXPECT_EQ(fault(), "");
    changeAmount(window.document(), RowPlace{0, 4}, Amount{60.0});
    EXPECT_FALSE(projector.isTopicMissing());
    EXPECT_EQ(projector.topic(), LessonTopic::Spirit);
    EXPECT_FALSE(shownTexts().join(u' ').contains("No alcohol"));
}

TEST_F(ProjectorTest, OneGoesOnAndBackFromATopicThatIsGone)
{
    open(ginIce);
    projector.goTo(pageOf(LessonTopic::Spirit));
    removeRows(window.document(), 0, {4});
    press(Qt::Key_Left);
    EXPECT_EQ(projector.topic(), LessonTopic::FreezingCurve);
    EXPECT_EQ(projector.step(), projector.lastStep());
    window.document().undoStack().undo();
    projector.goTo(pageOf(LessonTopic::Spirit));
    removeRows(window.document(), 0, {4});
    press(Qt::Key_Right);
    EXPECT_EQ(projector.topic(), LessonTopic::Sweetness);
    EXPECT_EQ(projector.step(), 0);
}

TEST_F(ProjectorTest, AnEmptyRecipeForgetsNoTopic)
{
    open(ginIce);
    projector.goTo(pageOf(LessonTopic::Sweetness));
    removeRows(window.document(), 0, {0, 1, 2, 3, 4, 5});
    EXPECT_EQ(projector.topic(), LessonTopic::Nothing);
    window.document().undoStack().undo();
    EXPECT_EQ(projector.topic(), LessonTopic::Sweetness);
}

TEST_F(ProjectorTest, EveryPartOpensWithMoreThanItsTitle)
{
    for (const Recipe& sample : builtInSamples()) {
        window.document().startWith(sample);
        open();
        for (int page = 0; page < int(projector.topics().size()); ++page) {
            projector.goTo(page);
            for (bool isNext = true; isNext;) {
                const auto* picture = projector.findChild<ProjectorPicture*>();
                const auto stands = [](const ProjectedView* view) {
                    return view->kind() == ProjectedKind::Text || view->kind() == ProjectedKind::Formula;
                };
                EXPECT_TRUE(picture->isVisible() || std::ranges::any_of(views(), stands)) << place();
                isNext = projector.part() + 1 < projector.partCount();
                projector.revealAll();
                projector.goOn();
            }
        }
    }
}

TEST_F(ProjectorTest, TheLastLineCountsTopics)
{
    open(ginIce);
    projector.goTo(1);
    EXPECT_TRUE(shownTexts().join(u' ').contains(QStringLiteral("topic 2 of %1").arg(projector.topics().size())))
        << shownTexts().join(u' ').toStdString();
}

TEST_F(ProjectorTest, WithOneScreenTheKeyForTheNextSaysSo)
{
    ASSERT_EQ(QGuiApplication::screens().size(), 1);
    open(ginIce);
    press(Qt::Key_S);
    const auto* saying = projector.findChild<ProjectorSaying*>();
    ASSERT_TRUE(saying && saying->isVisible());
    EXPECT_EQ(saying->accessibleName(), "There is only one screen.");
    EXPECT_TRUE(projector.rect().contains(saying->geometry()));
    press(Qt::Key_Right);
    EXPECT_FALSE(projector.findChild<ProjectorSaying*>());
}

TEST_F(ProjectorTest, ACorrectionIsMarkedBesideTheMix)
{
    open("500 g cucumber\n150 g sucrose\n120 g gin");
    const auto* scale = projector.findChild<SugarScale*>();
    projector.goTo(pageOf(LessonTopic::Sugars));
    EXPECT_FALSE(scale->valueText().contains("after the correction"));
    projector.goTo(pageOf(LessonTopic::Correction));
    const ExplainedAnalysis explained =
        analyseWithWorkings(recipe(), shippedCatalogue(), window.document().analysis().conditions, std::size_t{0});
    const LessonPage page = lessonPage(LessonTopic::Correction, explained);
    ASSERT_GT(page.steps.size(), 1u);
    EXPECT_TRUE(scale->valueText().contains(valueInLocale(page.steps.back().result) + " after the correction"))
        << scale->valueText().toStdString();
}

TEST_F(ProjectorTest, WhatIsGivenStaysWhileResultsAndVerdictsAreHidden)
{
    open("500 g cucumber\n150 g sucrose\n120 g gin");
    const auto& analysis = window.document().analysis();
    const QString serving = translated(phrase("{0}", chosenTemperatureFigure(analysis.conditions.serveAt)));
    const QString ice = figure(percent(analysis.texture.iceAtServing), 0);
    const QString verdict = translatedName(nameOf(analysis.texture.firmness));
    const auto conclusion = [&] {
        projector.goTo(pageOf(LessonTopic::Texture));
        QStringList texts;
        lookAtAllParts([&] { texts = shownTexts(); });  // the verdict stands on the last one
        return texts;
    };
    QStringList shown = conclusion();
    EXPECT_TRUE(shown.contains(serving) && shown.contains(ice) && shown.contains(verdict)) << shown.join(u'|').toStdString();
    projector.hideAnswers(true);
    shown = conclusion();
    EXPECT_TRUE(shown.contains(serving)) << shown.join(u'|').toStdString();
    EXPECT_FALSE(shown.contains(ice) || shown.contains(verdict)) << shown.join(u'|').toStdString();
    EXPECT_TRUE(shown.contains("(")) << "a bracket went with the answer in it: " << shown.join(u'|').toStdString();
}

TEST_F(ProjectorTest, AVerdictIsHiddenWordByWord)
{
    open("500 g water\n200 g sucrose");
    const auto words = [&] {
        projector.goTo(pageOf(LessonTopic::Egg));
        QStringList texts;
        lookAtAllParts([&] { texts << shownTexts(); });
        return texts;
    };
    EXPECT_TRUE(words().contains("floats,"));
    projector.hideAnswers(true);
    const QStringList hidden = words();
    EXPECT_FALSE(hidden.contains("floats,") || hidden.contains("sinks:")) << hidden.join(u'|').toStdString();
    EXPECT_TRUE(hidden.contains("denser")) << "the idea of the page stays: " << hidden.join(u'|').toStdString();
}

TEST_F(ProjectorTest, HiddenAnswersLeaveNoneOfTheirDigits)
{
    for (const Recipe& sample : builtInSamples()) {
        window.document().startWith(sample);
        open();
        const ExplainedAnalysis explained = analyseWithWorkings(
            recipe(), shippedCatalogue(), window.document().analysis().conditions, window.document().component());
        for (const bool areHidden : {false, true}) {
            projector.hideAnswers(areHidden);
            int found = 0;
            lookAtAll([&] {
                const LessonPage page = lessonPage(projector.topic(), explained);
                QStringList shown;
                for (const ProjectedView* view : views()) {
                    if (view->kind() == ProjectedKind::Title || view->kind() == ProjectedKind::Idea
                        || view->kind() == ProjectedKind::Number)
                        continue;
                    for (const FormulaMark& mark : view->box().marks)
                        shown << digitsOf(mark.text);
                }
                for (const WorkingStep& step : page.steps)
                    found += shown.contains(digitsOf(valueInLocale(step.result))) ? 1 : 0;
            });
            EXPECT_EQ(found > 0, !areHidden) << sample.title << ": " << found;
        }
        projector.hideAnswers(false);
    }
}

TEST_F(ProjectorTest, AnEmptyBoxIsAsLargeAsTheAnswer)
{
    open(ginIce);
    projector.revealAll();
    std::vector<QRectF> before, after;
    const auto places = [this] {
        std::vector<QRectF> found;
        for (const ProjectedView* view : views()) {
            for (const FormulaMark& mark : view->box().marks)
                found.push_back(mark.bounds.translated(view->pos()));
        }
        return found;
    };
    before = places();
    const QStringList shown = shownTexts();
    press(Qt::Key_H);
    EXPECT_TRUE(projector.areAnswersHidden());
    EXPECT_EQ(places(), before);
    EXPECT_LT(shownTexts().size(), shown.size());
    press(Qt::Key_H);
    EXPECT_EQ(shownTexts(), shown);
}

TEST_F(ProjectorTest, AHostileNameIsShownLetterByLetter)
{
    window.document().startWith(crowdedRecipe());
    open(QSize(1920, 1080));
    bool isShown = false, isSpoken = false;
    lookAtAll([&] {
        for (const QString& text : shownTexts()) {
            isShown = isShown || text.contains("<b>x</b><img");
            EXPECT_FALSE(text.contains(QChar(0x1b)));
        }
        for (const ProjectedView* view : views())
            isSpoken = isSpoken || view->valueText().contains("<b>x</b><img src=http://example.org/a.png");
    });
    EXPECT_TRUE(isShown);
    EXPECT_TRUE(isSpoken);
}

TEST_F(ProjectorTest, TheDotFollowsTheMouseAndTheCursorRests)
{
    open(ginIce);
    auto* dot = projector.findChild<ProjectorPointer*>();
    EXPECT_FALSE(dot->isVisible());
    press(Qt::Key_P);
    EXPECT_TRUE(dot->isVisible());
    const QPointF place(400.0, 300.0);
    QMouseEvent move(QEvent::MouseMove, place, projector.mapToGlobal(place), Qt::NoButton, Qt::NoButton, Qt::NoModifier);
    QApplication::sendEvent(&projector, &move);
    EXPECT_LE((dot->geometry().center() - QPoint(400, 300)).manhattanLength(), 2);
    EXPECT_EQ(projector.cursor().shape(), Qt::BlankCursor);
    press(Qt::Key_P);
    EXPECT_FALSE(dot->isVisible());
    EXPECT_EQ(projector.cursor().shape(), Qt::ArrowCursor);
    EXPECT_TRUE(QTest::qWaitFor([this] { return projector.cursor().shape() == Qt::BlankCursor; }, 4000));
}

TEST_F(ProjectorTest, DarkAndLightAreOfTheProjectionAlone)
{
    open(ginIce);
    const QColor bench = window.palette().color(QPalette::Window), before = projector.palette().color(QPalette::Window);
    press(Qt::Key_D);
    EXPECT_NE(projector.palette().color(QPalette::Window).lightness() > 128, before.lightness() > 128);
    EXPECT_EQ(window.palette().color(QPalette::Window), bench);
    press(Qt::Key_D);
    EXPECT_EQ(projector.palette().color(QPalette::Window).lightness() > 128, before.lightness() > 128);
}

TEST_F(ProjectorTest, ReckonsNothingWhileClosed)
{
    lay(ginIce);
    EXPECT_EQ(projector.topics().size(), 1u);
    projector.openAction()->trigger();
    EXPECT_TRUE(projector.isVisible());
    EXPECT_GT(projector.topics().size(), 8u);
}

}  // namespace firn::app
