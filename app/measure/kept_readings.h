// The readings that were kept of the component in view, measured beside computed, the latest first.
#pragma once

#include "document/document.h"

#include <QWidget>
#include <vector>

class QLabel;
class QListWidget;
class QPushButton;

namespace firn::app {

class InkLabel;

class KeptReadings : public QWidget {
    Q_OBJECT

public:
    explicit KeptReadings(Document& document, QWidget* parent = nullptr);

    /// `computed` is the component's mix.
    void show(const Mix& computed);

private:
    void remove();
    void enableDeletion();

    Document& m_document;
    InkLabel* m_hint;
    QListWidget* m_list;
    QPushButton* m_delete;
    std::vector<std::size_t> m_numbers;  // in the recipe, of each line
};

}  // namespace firn::app
