// The tasting log: all tastings of the recipe, one of them in full, and what they say together.
#pragma once

#include "document/document.h"
#include "teach/figure_set.h"

#include <QWidget>

class QListWidget;
class QPushButton;
class QScrollArea;
class QTabWidget;

namespace firn::app {

class BlindView;
class InkLabel;
class MessageBar;
class Questions;
class ScalesView;
class ScoresView;
class TriangleView;
class TastingForm;

/// Stays open beside the bench.
class TastingWindow : public QWidget {
    Q_OBJECT

public:
    /// All three must outlive the window; `parent` is the bench.
    TastingWindow(Document& document, Questions& questions, QWidget* parent);
    ~TastingWindow() override;

signals:
    /// Somebody wants to know how a figure comes about: its key, and the set that has it.
    void figureWanted(const QString& figure, const firn::app::SharedFigures& set);

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    QWidget* log();
    void refresh();
    void fillList();
    void showChosen();
    void showCautions();
    void add();
    void remove();
    /// With the bench's own action, which the keys do not reach from here.
    void nameWindow();
    std::optional<std::size_t> chosen() const;

    Document& m_document;
    MessageBar* m_messages;
    QListWidget* m_list;  // the latest first
    QPushButton* m_delete;
    InkLabel* m_hint;
    InkLabel* m_cautions;
    QScrollArea* m_formArea;
    TastingForm* m_form;
    QTabWidget* m_tabs;
    ScoresView* m_scores;
    ScalesView* m_scales;
    BlindView* m_blind;
    TriangleView* m_triangle;
};

/// The bench's own one, made at the first call.
void showTasting(Document& document, Questions& questions, QWidget& bench);

}  // namespace firn::app
