// After every edit the next key has somewhere to go: whatever has left the window, some field of it has the focus.
#include "bench.h"

#include "bench/amount_question.h"
#include "bench/message_bar.h"
#include "bench/number_field.h"
#include "document/edits.h"
#include "document/step_edits.h"

#include <QAction>
#include <QApplication>
#include <QDockWidget>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QToolButton>

namespace firn::app {
namespace {

using Model = IngredientModel;

class Focus : public Bench {
protected:
    void expectFocus(const std::string& after)
    {
        QApplication::processEvents();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        ASSERT_TRUE(window.isActiveWindow()) << after;
        const QWidget* focus = QApplication::focusWidget();
        EXPECT_TRUE(focus && focus->isVisible() && focus->isEnabled() && focus->window() == &window)
            << after << ": " << (focus ? focus->metaObject()->className() : "nobody");
        if (!focus)
            table.setFocus();  // so that the next edit is judged by itself
    }
    template <class Widget>
    Widget& part(const char* name)
    {
        return *window.findChild<Widget*>(QString::fromLatin1(name));
    }
    void pressFocused(QWidget& button)
    {
        button.setFocus();
        QTest::keyClick(&button, Qt::Key_Space);
    }
};

TEST_F(Focus, IsSomewhereAfterEditsOfTheTable)
{
    lay("250 g water\n100 g sugar\n50 g lemon juice");
    enter(0, Model::AmountColumn, "1.015 g");
    expectFocus("a question");
    press(Qt::Key_1, Qt::AltModifier);
    expectFocus("the answer by a key");
    EXPECT_EQ(recipe().components.front().rows.front().amount.value, 1015.0);
    enter(0, Model::AmountColumn, "2,030 g");
    window.findChild<AmountQuestion*>()->findChildren<QPushButton*>().front()->click();
    expectFocus("the answer by the mouse");
    goTo(1, Model::AmountColumn);
    type("1.015");
    press(Qt::Key_Escape);
    expectFocus("a question that goes with its text");
    goTo(1, Model::AmountColumn);
    type("12");
    history().undo();
    expectFocus("an undo while typing");
    press(Qt::Key_Escape);
    expectFocus("Escape");
    goTo(3, Model::IngredientColumn);
    type("5 g salt");
    press(Qt::Key_Return);
    expectFocus("a new row");
    goTo(3, Model::AmountColumn);
    type("7");
    history().undo();
    history().undo();
    expectFocus("an undo that takes away the row that is typed into");
    goTo(0, Model::IngredientColumn);
    while (rowCount() > 0) {
        goTo(0, Model::IngredientColumn);
        press(Qt::Key_Delete);
        expectFocus("a row deleted");
    }
    history().undo();
    expectFocus("a row restored");
}

TEST_F(Focus, IsSomewhereAfterMessagesAndQuestionsOfTheBars)
{
    lay("250 g water\n100 g sugarr beett\n50 g lemon juice");
    for (MessageBar* bar : window.findChildren<MessageBar*>()) {
        const auto buttons = bar->findChildren<QPushButton*>();
        for (QPushButton* button : buttons) {
            if (!button->isVisible())
                continue;
            pressFocused(*button);
            expectFocus("a button of " + bar->objectName().toStdString());
            break;
        }
    }
    window.messages().say(QStringLiteral("Something."), {{QStringLiteral("Do it"), [] {}}});
    pressFocused(*window.messages().findChildren<QPushButton*>().back());
    expectFocus("a choice of the message bar");
    window.messages().note(QStringLiteral("Something else."));
    pressFocused(part<QPushButton>("dismissMessage"));
    expectFocus("a message dismissed");
}

TEST_F(Focus, IsSomewhereAfterComponentsAndStepsComeAndGo)
{
    lay("250 g water\n100 g sugar");
    addComponent(window.document(), "sauce");
    part<QLineEdit>("componentName").setFocus();
    expectFocus("a component");
    history().undo();
    expectFocus("its name gone with it");
    part<QDockWidget>("steps").raise();
    QApplication::processEvents();
    pressFocused(part<QPushButton>("addStep"));
    expectFocus("a step");
    changeStep(window.document(), 0, 0, {StepKind::Strain, {}, {}, HeldBack{Grams{10.0}}, {}, {}});
    QApplication::processEvents();
    part<QLineEdit>("lossGrams").setFocus();
    expectFocus("in its loss");
    history().undo();
    expectFocus("the field of the loss gone");
    pressFocused(part<QToolButton>("deleteStep"));
    expectFocus("a step deleted");
}

TEST_F(Focus, IsSomewhereAfterAPanelHides)
{
    lay("250 g water\n100 g sugar");
    for (QDockWidget* dock : window.findChildren<QDockWidget*>()) {
        dock->show();
        dock->raise();
        QApplication::processEvents();
        for (QWidget* inside : dock->findChildren<QWidget*>())
            if (inside->isVisible() && inside->isEnabled() && inside->focusPolicy() & Qt::TabFocus) {
                inside->setFocus();
                break;
            }
        dock->toggleViewAction()->trigger();
        expectFocus("the panel " + dock->objectName().toStdString());
    }
}

TEST_F(Focus, IsSomewhereAfterFieldsAndOtherRecipes)
{
    lay("250 g water\n100 g sugar");
    for (const char* name : {"serving", "overrun", "freezer"}) {
        auto& field = part<NumberField>(name);
        for (const Qt::Key end : {Qt::Key_Return, Qt::Key_Escape}) {
            field.setFocus();
            type("5");
            press(end);
            expectFocus(name);
        }
        field.setFocus();
        type("6");
        history().undo();
        expectFocus(name);
    }
    for (const Process process : {Process::Unfrozen, Process::Still, Process::Churned}) {
        part<QLineEdit>("overrun").setFocus();
        changeProcess(window.document(), 0, process);
        expectFocus("another process");
    }
    goTo(0, Model::AmountColumn);
    type("3");
    window.document().startWith({});
    expectFocus("another recipe while typing");
}

}  // namespace
}  // namespace firn::app
