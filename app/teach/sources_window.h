// Every model and table that figures rest on: publication, range, error, and, if wanted, where in the code it lives.
#pragma once

#include "derivation/source.h"

#include <QWidget>

class QCheckBox;
class QLabel;
class QLineEdit;
class QTableWidget;

namespace firn::app {

class SourcesWindow : public QWidget {
    Q_OBJECT

public:
    explicit SourcesWindow(QWidget* parent);

    /// Chooses the row of this source, which a search may have hidden.
    void choose(Source source);

public slots:
    /// The chosen rows as text, their cells parted by tabs.
    void copy();

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fill();
    void search(const QString& words);
    void fitRows();
    int shownColumns() const;

    QLineEdit* m_search;
    QTableWidget* m_table;
    QLabel* m_count;
    QCheckBox* m_code;  // whether the column on the code is shown
};

/// The bench's own one, made at the first call.
SourcesWindow& showSources(QWidget& bench);
void showSources(QWidget& bench, Source source);

}  // namespace firn::app
