// Ctrl+S wherever the recipe can be changed.
#include "bench.h"

#include "bench/message_bar.h"
#include "compare/comparing_window.h"
#include "document/edits.h"
#include "measure/measure_window.h"
#include "syrups/syrups_window.h"
#include "tasting/tasting_window.h"

#include <QApplication>
#include <QTest>

namespace firn::app {
namespace {

class Saving : public Bench {
protected:
    Saving() { lay("500 g water\n150 g sugar"); }

    template <class Window>
    void expectSavedFrom()
    {
        auto* beside = window.findChild<Window*>();
        ASSERT_TRUE(beside);
        ASSERT_TRUE(QTest::qWaitFor([&] { return QApplication::activeWindow() == beside; }));
        changeAmount(window.document(), {0, 1}, {window.document().recipe().components[0].rows[1].amount.value + 1.0, Unit::Gram});
        ASSERT_TRUE(window.document().isModified());
        press(Qt::Key_S, Qt::ControlModifier);
        EXPECT_FALSE(window.document().isModified()) << beside->metaObject()->className();
        EXPECT_EQ(beside->template findChild<MessageBar*>()->sentence(), "Saved.");
    }
};

TEST_F(Saving, EveryWindowThatChangesTheRecipeSavesIt)
{
    ASSERT_TRUE(window.document().saveAs(inFolder("water.firn")));
    showMeasuring(window.document(), window);
    expectSavedFrom<MeasureWindow>();
    showSyrups(window.document(), window);
    expectSavedFrom<SyrupsWindow>();
    showComparing(window.document(), answers, window);
    expectSavedFrom<ComparingWindow>();
    showTasting(window.document(), answers, window);
    expectSavedFrom<TastingWindow>();
}

}  // namespace
}  // namespace firn::app
