// The two methods for the freezing point side by side, and why they part for this recipe.
#pragma once

#include "document/document.h"
#include "explain/methods.h"

#include <QSet>
#include <QWidget>

class QScrollArea;

namespace firn::app {

class MethodsWindow : public QWidget {
    Q_OBJECT

public:
    /// The document must outlive the window.
    MethodsWindow(const Document& document, QWidget* parent);

signals:
    void figureChosen(const QString& figure);
    void sourceChosen(firn::Source source);

protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    /// One method, with the steps whose long sums are unfolded.
    struct Column {
        QScrollArea* page;
        QString title;
        QSet<int> unfolded = {};
    };

    void layOut();
    void evaluate();
    void showColumn(Column& column, const Derivation& derivation);
    void showReasons(const MethodComparison& found);
    void showNothing(const QString& why);

    const Document& m_document;
    Column m_textbook;
    Column m_curve;
    QScrollArea* m_reasons;
    std::optional<MethodComparison> m_found;
};

/// The bench's own one, made at the first call.
MethodsWindow& showMethods(const Document& document, QWidget& bench);

}  // namespace firn::app
