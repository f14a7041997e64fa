#include "bench.h"

#include "syrups/syrups_window.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QTest>

namespace firn::app {
namespace {

TEST_F(Bench, SyrupsOpenByKeyAndCloseByEscapeEvenWhileTyping)
{
    QTest::keyClick(&window, Qt::Key_B, Qt::ControlModifier);
    auto* syrups = window.findChild<SyrupsWindow*>();
    ASSERT_NE(syrups, nullptr);
    EXPECT_FALSE(syrups->isModal());
    auto* field = syrups->findChild<QLineEdit*>(QStringLiteral("first"));
    ASSERT_TRUE(QTest::qWaitFor([field] { return QApplication::focusWidget() == field; }));
    type("6");
    press(Qt::Key_Escape);
    EXPECT_FALSE(syrups->isVisible());
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    QTest::keyClick(&window, Qt::Key_B, Qt::ControlModifier);
    EXPECT_EQ(window.findChildren<SyrupsWindow*>().size(), 1);
    EXPECT_TRUE(syrups->isVisible());
    EXPECT_EQ(field->text(), "6");
}

TEST_F(Bench, WhatWasPutInTheRecipeIsTakenBackFromTheSyrupsToo)
{
    lay("100 g milk");
    QTest::keyClick(&window, Qt::Key_B, Qt::ControlModifier);
    auto* syrups = window.findChild<SyrupsWindow*>();
    ASSERT_NE(syrups, nullptr);
    const QWidget* form = syrups->findChild<QStackedWidget*>()->currentWidget();
    auto* put = form->findChild<QPushButton*>(QStringLiteral("putInRecipe"));
    auto* toPut = form->findChild<QLabel*>(QStringLiteral("toPut"));
    ASSERT_TRUE(QTest::qWaitFor([syrups] { return syrups->isAncestorOf(QApplication::focusWidget()); }));
    put->setFocus();
    press(Qt::Key_Space);
    ASSERT_EQ(rowCount(), 3U);
    EXPECT_EQ(recipe().components.front().rows.at(1).note, "462 g syrup of 65.0 °Bx, 538 g water") << "what is weighed";
    EXPECT_TRUE(toPut->text().endsWith("in the recipe now.")) << toPut->text().toStdString();
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(rowCount(), 1U);
    EXPECT_FALSE(toPut->text().endsWith("in the recipe now."));
}

TEST_F(Bench, EverythingInTheSyrupsThatTakesKeysHasAName)
{
    showSyrups(window.document(), window);
    int count = 0;
    for (const QWidget* widget : window.findChild<SyrupsWindow*>()->findChildren<QWidget*>()) {
        const bool namesItself = qobject_cast<const QLabel*>(widget) || qobject_cast<const QPushButton*>(widget);
        const bool isPartOfAnother = widget->objectName().startsWith(QLatin1String("qt_"));
        if (widget->focusPolicy() == Qt::NoFocus || namesItself || isPartOfAnother)
            continue;
        EXPECT_FALSE(widget->accessibleName().isEmpty()) << widget->objectName().toStdString() << widget->metaObject()->className();
        ++count;
    }
    EXPECT_GT(count, 20);
}

}  // namespace
}  // namespace firn::app
