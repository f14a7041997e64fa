// Changing an amount by dragging it sideways, or step by step from the keyboard.
#pragma once

#include "document/edits.h"

#include <QObject>
#include <optional>

namespace firn::app {

enum class ScrubPace { Usual, Fine };

/// The step in which an amount is scrubbed: about 1 % of it (fine: 0.1 %), rounded down to 1, 2 or 5 times a power of ten; for
/// spoons, cups and pieces a quarter (fine: an eighth), as they are marked.
double scrubStep(const Amount& amount, ScrubPace pace);

/// The value after so many steps, on a whole number of steps, never below zero.
double afterSteps(const Amount& start, double steps, ScrubPace pace);

/// One scrub from press to release. All its changes are one step of the undo history.
class AmountScrub : public QObject {
    Q_OBJECT

public:
    AmountScrub(Document& document, QObject* parent);

    bool isActive() const { return m_place.has_value(); }
    std::optional<RowPlace> place() const { return m_place; }

    void begin(RowPlace place);

    /// The pointer is so far to the right of where it was pressed. Every pixel is worth 1 % (fine: 0.1 %) of the amount.
    void dragTo(double pixels, ScrubPace pace);

    /// From where it is now.
    void stepBy(int steps, ScrubPace pace);

    void finish();
    void putBack();

private:
    void change(double value);

    Document& m_document;
    std::optional<RowPlace> m_place;
    Amount m_start;
    Gesture m_gesture;
    bool m_isOwnChange = false;
};

}  // namespace firn::app
