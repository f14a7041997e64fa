// The record of the component in view: saved readings, measured beside calculated, and corrections of batches, the latest first.
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
    QString textOf(const ReadingRecord& record, const Mix& computed) const;
    QString textOf(const BatchCorrection& correction) const;
    void remove();
    void enableDeletion();

    Document& m_document;
    InkLabel* m_hint;
    QListWidget* m_list;
    QPushButton* m_delete;
    struct Line {
        bool isCorrection;   // of a batch, rather than a reading
        std::size_t number;  // in the recipe
        std::string date;
    };
    std::vector<Line> m_lines;
};

}  // namespace firn::app
