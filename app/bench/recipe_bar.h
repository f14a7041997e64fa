// The head of the recipe: its title, how it is frozen, and the temperatures it is meant for.
#pragma once

#include "document/document.h"
#include "document/edits.h"

#include <QWidget>

class QComboBox;
class QHBoxLayout;
class QLineEdit;

namespace firn::app {

class NumberField;

/// What the person calls a process: "churning".
QString nameOf(Process process);

class RecipeBar : public QWidget {
    Q_OBJECT

public:
    explicit RecipeBar(Document& document, QWidget* parent = nullptr);

    /// Puts the caret into a field whose text cannot be read, and says why; else the answer is empty.
    QString takeTyping();

    /// Why a field's text cannot be read; empty if all can.
    QString problem() const;

    NumberField* overrun() { return m_overrun; }
    NumberField* serving() { return m_serving; }
    NumberField* freezer() { return m_freezer; }

signals:
    void problemChanged();
    /// Enter was pressed in the title.
    void titleEntered();

protected:
    bool eventFilter(QObject* object, QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void fillLine(QHBoxLayout& line);
    void show(const Analysis& analysis);
    void fitToFont();

    Document& m_document;
    QLineEdit* m_title;
    QComboBox* m_process;
    NumberField* m_overrun;
    NumberField* m_serving;
    NumberField* m_freezer;
    Gesture m_titleGesture;
};

}  // namespace firn::app
