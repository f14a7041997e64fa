// A tasting log for tests: three versions of a granita, and the window open beside a bench.
#pragma once

#include "tasting/tasting_window.h"

#include "bench.h"

#include "document/edits.h"
#include "document/places.h"
#include "document/tasting_edits.h"
#include "document/version_edits.h"
#include "exchange/recipe_json.h"
#include "exchange/recipe_text.h"

#include <QAccessible>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTabWidget>
#include <QTest>

namespace firn::app {

/// Between the texts of two widgets.
inline constexpr QChar betweenTexts{0x1F};

class TastingLog : public testing::Test {
protected:
    TastingLog()
        : document(shippedCatalogue())
    {
        state().remove(QStringLiteral("tasting"));
        bench.resize(200, 100);
        bench.show();
        document.startWith(recipeFromText("300 g rhubarb\n190 g sugar\n500 g water").value());
        keepVersion(document, "first try", {});
        changeAmount(document, {0, 1}, {160.0, Unit::Gram});
        keepVersion(document, "less sugar", {});
        changeAmount(document, {0, 1}, {130.0, Unit::Gram});
        keepVersion(document, "little sugar", {});
        addScale(document, {"iciness", 0.0, 10.0, "smooth", "crushed ice"});
        showTasting(document, answers, bench);
        window = bench.findChild<TastingWindow*>();
        EXPECT_TRUE(QTest::qWaitForWindowActive(window));
    }

    template <class Widget>
    Widget& find(const char* name)
    {
        auto* found = window->findChild<Widget*>(QString::fromUtf8(name));
        EXPECT_TRUE(found) << name;
        return *found;
    }
    QTabWidget& tabs() { return *window->findChild<QTabWidget*>(); }
    void click(const char* button) { find<QPushButton>(button).click(); }
    void write(const char* field, const QString& text)
    {
        auto& line = find<QLineEdit>(field);
        line.clearFocus();  // each time it is entered anew
        line.setFocus();
        line.selectAll();
        if (text.isEmpty())
            QTest::keyClick(&line, Qt::Key_Delete);
        QTest::keyClicks(&line, text);
    }
    void taste(const QString& what)
    {
        auto& choice = find<QComboBox>("tasted");
        const int index = choice.findText(what);
        ASSERT_GE(index, 0) << what.toStdString();
        choice.setCurrentIndex(index);
        emit choice.activated(index);
    }
    QString text(const char* label) { return plain(find<QLabel>(label).text()); }
    static QString plain(QString text) { return text.replace(QChar(0x202F), u' ').replace(QChar(0x2212), u'-'); }

    const Recipe& recipe() { return document.recipe(); }
    const Tasting& tasting(std::size_t place = 0) { return recipe().tastings.at(place); }

    template <class Edit>
    void expectOneStep(Edit edit)
    {
        const Recipe before = recipe();
        const int steps = document.undoStack().index();
        edit();
        const Recipe after = recipe();
        EXPECT_FALSE(after == before);
        EXPECT_EQ(document.undoStack().index(), steps + 1);
        document.undoStack().undo();
        EXPECT_TRUE(recipe() == before) << recipeToJson(recipe()) << recipeToJson(before);
        document.undoStack().redo();
        EXPECT_TRUE(recipe() == after);
    }

    /// Everything that the window says, by eye or by ear.
    QString allWords()
    {
        QStringList words{window->windowTitle()};
        for (QWidget* widget : window->findChildren<QWidget*>()) {
            words << widget->accessibleName() << widget->accessibleDescription() << widget->toolTip();
            if (QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(widget))
                words << spoken->text(QAccessible::Name) << spoken->text(QAccessible::Value)
                      << spoken->text(QAccessible::Description);
            if (auto* label = qobject_cast<QLabel*>(widget))
                words << label->text();
            if (auto* line = qobject_cast<QLineEdit*>(widget))
                words << line->text();
            if (auto* choice = qobject_cast<QComboBox*>(widget))
                words << choice->currentText();
            if (auto* list = qobject_cast<QListWidget*>(widget))
                for (int i = 0; i < list->count(); ++i)
                    words << list->item(i)->text() << list->item(i)->toolTip();
        }
        return words.join(betweenTexts);
    }

    Document document;
    Answers answers;
    QWidget bench;
    QTemporaryDir folder;
    TastingWindow* window = nullptr;
};

}  // namespace firn::app
