// What comes up over a projection: the keys, and the list of pages.
#pragma once

#include <QFrame>
#include <QListWidget>

namespace firn::app {

class ProjectorKeys : public QFrame {
    Q_OBJECT

public:
    /// Shown in this type, in the middle of the parent.
    ProjectorKeys(const QFont& type, QWidget* parent);
};

/// A sentence to the teacher, until the next key.
class ProjectorSaying : public QFrame {
    Q_OBJECT

public:
    ProjectorSaying(const QString& sentence, const QFont& type, QWidget* parent);
};

class ProjectorList : public QListWidget {
    Q_OBJECT

public:
    ProjectorList(const QStringList& pages, int current, const QFont& type, QWidget* parent);

signals:
    void chosen(int page);
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
};

}  // namespace firn::app
