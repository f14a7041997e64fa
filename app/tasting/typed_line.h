// Fields for plain text whose every letter goes into the recipe: all that is typed until the field is left is one step of the history.
#pragma once

#include "document/gesture.h"

#include <QLineEdit>
#include <QPlainTextEdit>

namespace firn::app {

class TypedLine : public QLineEdit {
    Q_OBJECT

public:
    TypedLine(const QString& name, const QString& spoken, QWidget* parent = nullptr);

    void showText(const std::string& text);

signals:
    void typed(const std::string& text, firn::app::Gesture gesture);

protected:
    void focusInEvent(QFocusEvent* event) override;

private:
    Gesture m_gesture;
};

class TypedParagraph : public QPlainTextEdit {
    Q_OBJECT

public:
    TypedParagraph(const QString& name, const QString& spoken, QWidget* parent = nullptr);

    void showText(const std::string& text);

signals:
    void typed(const std::string& text, firn::app::Gesture gesture);

protected:
    bool event(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

private:
    Gesture m_gesture;
};

}  // namespace firn::app
