#include "bench.h"

#include "bench/amount_scrub.h"

#include <QApplication>
#include <QSignalSpy>
#include <QTest>

namespace firn::app {
namespace {

using Model = IngredientModel;

class Scrubbing : public Bench {
protected:
    Scrubbing() { lay("250 g water\n100 g sugar"); }

    QPoint start() { return table.visualRect(cell(0, Model::AmountColumn)).center(); }
    void move(int pixels, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QMouseEvent event(QEvent::MouseMove, start() + QPoint(pixels, 0),
            table.viewport()->mapToGlobal(start() + QPoint(pixels, 0)), Qt::NoButton, Qt::LeftButton, modifiers);
        QApplication::sendEvent(table.viewport(), &event);
    }
    void pressMouse() { QTest::mousePress(table.viewport(), Qt::LeftButton, {}, start()); }
    void releaseMouse(int pixels) { QTest::mouseRelease(table.viewport(), Qt::LeftButton, {}, start() + QPoint(pixels, 0)); }
    /// While Alt is held down: QTest would let it go after each key.
    void pressWithAlt(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QKeyEvent event(QEvent::KeyPress, key, modifiers | Qt::AltModifier);
        QApplication::sendEvent(&table, &event);
    }
    double amount() { return recipe().components.front().rows.front().amount.value; }
};

TEST_F(Scrubbing, DragSidewaysChangesTheAmountLiveInOneStep)
{
    QSignalSpy changed(&window.document(), &Document::changed);
    pressMouse();
    for (int pixels = 1; pixels <= 20; ++pixels)
        move(pixels);
    EXPECT_EQ(amount(), 300.0);
    EXPECT_EQ(window.document().analysis().components.front().front().mass.value, 300.0);
    // One analysis for each step of the amount, none for the first pixels.
    EXPECT_LE(changed.count(), 20);
    releaseMouse(20);
    EXPECT_EQ(history().count(), 1);
    history().undo();
    EXPECT_EQ(amount(), 250.0);
}

TEST_F(Scrubbing, ThreePixelsAreNoDrag)
{
    pressMouse();
    move(3);
    releaseMouse(3);
    EXPECT_EQ(amount(), 250.0);
    EXPECT_EQ(history().count(), 0);
}

TEST_F(Scrubbing, ShiftIsFine)
{
    pressMouse();
    move(4, Qt::ShiftModifier);
    EXPECT_EQ(amount(), 251.0);
    releaseMouse(4);
}

TEST_F(Scrubbing, EscapePutsItBackAndLeavesNoStep)
{
    pressMouse();
    move(30);
    EXPECT_NE(amount(), 250.0);
    press(Qt::Key_Escape);
    EXPECT_EQ(amount(), 250.0);
    move(40);
    releaseMouse(40);
    EXPECT_EQ(amount(), 250.0);
    EXPECT_EQ(history().count(), 0);
    EXPECT_FALSE(window.isWindowModified());
}

TEST_F(Scrubbing, FarToTheLeftStopsAtNothing)
{
    pressMouse();
    move(-500);
    EXPECT_EQ(amount(), 0.0);
    releaseMouse(-500);
}

TEST_F(Scrubbing, AltAndArrowsAreOneStepWhileAltIsHeld)
{
    goTo(0, Model::AmountColumn);
    pressWithAlt(Qt::Key_Up);
    pressWithAlt(Qt::Key_Up);
    pressWithAlt(Qt::Key_Down);
    EXPECT_EQ(amount(), 252.0);
    EXPECT_EQ(history().count(), 1);
    QTest::keyRelease(&table, Qt::Key_Alt);
    pressWithAlt(Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_EQ(amount(), 252.2);
    EXPECT_EQ(history().count(), 2);
}

TEST(ScrubStep, IsAboutOnePerCentInRoundNumbers)
{
    EXPECT_EQ(scrubStep({250, Unit::Gram}, ScrubPace::Usual), 2.0);
    EXPECT_EQ(scrubStep({1000, Unit::Gram}, ScrubPace::Usual), 10.0);
    EXPECT_DOUBLE_EQ(scrubStep({0.5, Unit::Litre}, ScrubPace::Usual), 0.005);
    EXPECT_DOUBLE_EQ(scrubStep({250, Unit::Gram}, ScrubPace::Fine), 0.2);
    EXPECT_EQ(scrubStep({1.5, Unit::Cup}, ScrubPace::Usual), 0.25);
    EXPECT_EQ(scrubStep({2, Unit::Piece}, ScrubPace::Fine), 0.125);
}

TEST(ScrubStep, ValuesComeOutOnWholeSteps)
{
    EXPECT_EQ(afterSteps({253.7, Unit::Gram}, 0, ScrubPace::Usual), 253.7);
    EXPECT_EQ(afterSteps({250, Unit::Gram}, 3, ScrubPace::Usual), 256.0);
    EXPECT_EQ(afterSteps({0.3, Unit::Gram}, 1, ScrubPace::Usual), 0.302);
    EXPECT_EQ(afterSteps({0, Unit::Gram}, 4, ScrubPace::Usual), 4.0);
    EXPECT_EQ(afterSteps({1e9, Unit::Gram}, 5, ScrubPace::Usual), 1e9);
}

}  // namespace
}  // namespace firn::app
