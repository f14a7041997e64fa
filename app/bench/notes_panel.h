// The recipe's notes.
#pragma once

#include "document/document.h"
#include "document/gesture.h"

#include <QPlainTextEdit>

namespace firn::app {

class NotesPanel : public QPlainTextEdit {
    Q_OBJECT

public:
    explicit NotesPanel(Document& document, QWidget* parent = nullptr);

    QSize sizeHint() const override;

protected:
    void focusInEvent(QFocusEvent* event) override;

private:
    void showNotes();
    void take();

    Document& m_document;
    Gesture m_gesture;
};

}  // namespace firn::app
