// Where a reader has been, back and forth as in a browser.
#pragma once

#include "teach/figure_set.h"

#include <QList>

namespace firn::app {

class Browsing {
public:
    PlacedFigure here() const { return m_visited.value(m_place); }
    bool canGoBack() const { return m_place > 0; }
    bool canGoForward() const { return m_place + 1 < m_visited.size(); }
    void back() { goTo(m_place - (canGoBack() ? 1 : 0)); }
    void forward() { goTo(m_place + (canGoForward() ? 1 : 0)); }

    /// What lay ahead is forgotten.
    void visit(const PlacedFigure& place)
    {
        stay();
        if (place == here())
            return;
        m_visited = m_visited.mid(0, m_place + 1) << place;
        m_place = m_visited.size() - 1;
    }

    /// The same while a reader leafs through a list: takes the place of what was leafed to before, so that only the last is remembered.
    void leafTo(const PlacedFigure& place)
    {
        if (m_isLeafing)
            m_visited.resize(m_place--);
        const bool isElsewhere = place != here();
        visit(place);
        m_isLeafing = isElsewhere;
    }

    /// Here the leafing ends: this is to be remembered.
    void stay() { m_isLeafing = false; }

private:
    void goTo(qsizetype place)
    {
        stay();
        m_place = place;
    }

    QList<PlacedFigure> m_visited;
    qsizetype m_place = -1;
    bool m_isLeafing = false;
};

}  // namespace firn::app
