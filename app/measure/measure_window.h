// Measure and correct: what the instrument shows, what is in the mix, and how to bring it to its target.
#pragma once

#include "correction/correction.h"
#include "document/document.h"
#include "teach/figure_set.h"

#include <QWidget>

namespace firn::app {

class CorrectionView;
class FoundView;
class InstrumentForm;
class KeptReadings;
class MessageBar;

/// Stays open beside the bench and follows the component in view.
class MeasureWindow : public QWidget {
    Q_OBJECT

public:
    /// The document must outlive the window.
    MeasureWindow(Document& document, QWidget* parent);
    ~MeasureWindow() override;

signals:
    /// Somebody wants to know how an answer comes about: its key, and the workings that have it.
    void derivationWanted(const QString& figure, const firn::Workings& workings);
    /// The same of a figure of what is measured: its key, and the set that has it.
    void figureWanted(const QString& figure, const firn::app::SharedFigures& set);

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void layOut();
    void refresh();
    void explain(const QString& figure, const QString& shown);
    QString measuredName() const;
    std::vector<ReadingRecord> recordsOfToday(const QString& note) const;
    void keep(const QString& note);
    void correctBatch(const CorrectionChoice& choice, MassFraction sugarsBefore);
    void startWithOtherRecipe();
    void say(const QString& sentence);
    void nameWindow();

    Document& m_document;
    MessageBar* m_messages;
    QWidget* m_body = nullptr;
    InstrumentForm* m_instruments;
    FoundView* m_found;
    KeptReadings* m_kept;
    CorrectionView* m_correction;
};

/// The bench's own one, made at the first call.
void showMeasuring(Document& document, QWidget& bench);

}  // namespace firn::app
