// How a figure comes about: its derivation, from the evaluation that makes the figure. Reckons only while it is open.
#pragma once

#include "document/document.h"
#include "explain/explain.h"
#include "print/block.h"
#include "teach/browsing.h"
#include "teach/figure_wording.h"

#include <QSet>
#include <QWidget>

class QAction;
class QScrollArea;
class QVBoxLayout;

namespace firn::app {

class FigureList;
class InkLabel;
class PrintOutlet;
class Questions;

class DerivationWindow : public QWidget {
    Q_OBJECT

public:
    /// Document and questions must outlive the window.
    DerivationWindow(const Document& document, Questions& questions, QWidget* parent = nullptr);

    /// For a menu: opens the figure that has the focus on the bench, or the list of all figures.
    QAction* openAction() { return m_open; }

    QString figure() const { return m_browsing.here().figure; }

public slots:
    /// Shows the derivation of the figure of this key.
    void open(const QString& figure);
    /// The same of a figure that these workings have beside those of the recipe: an answer to what was typed.
    void openAnswer(const QString& figure, const firn::Workings& workings);
    /// The same of a figure of a set, which says whose it is.
    void openOf(const QString& figure, const firn::app::SharedFigures& set);
    void openList();
    void openFocused();
    void goBack();
    void goForward();
    void copyText();
    void copyPicture();

signals:
    void sourceChosen(firn::Source source);

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void buildBar(QVBoxLayout& layout);
    void visit(const PlacedFigure& place);
    void follow(const QString& figure);
    void come();
    void evaluate();
    void listFigures();
    void leafTo(const QString& figure);
    void showPage(bool isSamePage);
    QWidget* pageOf(const Derivation& derivation);
    /// The set that is shown instead of the figures of the bench; null where it is those.
    SharedFigures named() const;
    Result<Derivation> derivation() const;
    FigureHead headOf(const QString& figure, const Symbol& result) const;
    Result<Handout> handout() const;

    const Document& m_document;
    QAction* m_open;
    QAction* m_back = nullptr;
    QAction* m_forward = nullptr;
    QAction* m_copyText = nullptr;
    QAction* m_copyPicture = nullptr;
    QAction* m_print = nullptr;
    QAction* m_savePdf = nullptr;
    InkLabel* m_message;
    PrintOutlet* m_outlet;
    FigureList* m_figures;
    QScrollArea* m_page;
    Workings m_workings;
    Browsing m_browsing;
    QSet<int> m_unfolded;  // numbers of steps of the page
};

}  // namespace firn::app
