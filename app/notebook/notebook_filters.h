// Which recipes to list, and in which order.
#pragma once

#include "notebook/search.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QTimer;
class QToolButton;

namespace firn::app {

class InkLabel;

class NotebookFilters : public QWidget {
    Q_OBJECT

public:
    explicit NotebookFilters(QWidget* parent = nullptr);

    /// As it is now; while a range is typed that cannot be read, what was searched before it.
    const NotebookFilter& filter() const { return m_filter; }
    CardOrder order() const;
    bool isUnderstood() const { return m_isUnderstood; }
    QLineEdit* search() { return m_search; }

    void offerTags(const std::vector<std::string>& tags);
    void showCount(int found, int all);
    void clear();

signals:
    void changed();

private:
    void read();

    QLineEdit* m_search;
    InkLabel* m_fault;
    QTimer* m_complaint;  // waits for a pause in typing
    QComboBox* m_shelf;
    QComboBox* m_order;
    QLabel* m_count;
    QToolButton* m_clear;
    NotebookFilter m_filter;
    bool m_isUnderstood = true;
};

}  // namespace firn::app
