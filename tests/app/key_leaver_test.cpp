#include "bench/key_leaver.h"

#include <QLineEdit>
#include <QShortcut>
#include <QTest>
#include <QVBoxLayout>
#include <gtest/gtest.h>

namespace firn::app {
namespace {

/// Ctrl+A is a key of text fields on every platform.
TEST(KeyLeaver, AWindowsShortcutComesBeforeTheField)
{
    QWidget window;
    auto* field = new QLineEdit(QStringLiteral("sugar"));
    (new QVBoxLayout(&window))->addWidget(field);
    int fired = 0;
    auto* shortcut = new QShortcut(QKeySequence(Qt::CTRL | Qt::Key_A), &window);
    QObject::connect(shortcut, &QShortcut::activated, &window, [&] { ++fired; });
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    field->setFocus();
    field->deselect();
    const auto press = [&] { QTest::keyClick(field, Qt::Key_A, Qt::ControlModifier); };

    press();
    EXPECT_EQ(fired, 0);
    EXPECT_EQ(field->selectedText(), "sugar");

    field->installEventFilter(new KeyLeaver({QKeySequence(Qt::CTRL | Qt::Key_A)}, field));
    field->deselect();
    press();
    EXPECT_EQ(fired, 1);
    EXPECT_EQ(field->selectedText(), "");

    shortcut->setEnabled(false);
    press();
    EXPECT_EQ(fired, 1);
    EXPECT_EQ(field->selectedText(), "sugar") << "without a shortcut the key means what it means in text";
}

}  // namespace
}  // namespace firn::app
