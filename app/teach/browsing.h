// Where a reader has been, back and forth as in a browser.
#pragma once

#include <QStringList>

namespace firn::app {

class Browsing {
public:
    QString here() const { return m_visited.value(m_place); }
    bool canGoBack() const { return m_place > 0; }
    bool canGoForward() const { return m_place + 1 < m_visited.size(); }
    void back() { m_place -= canGoBack() ? 1 : 0; }
    void forward() { m_place += canGoForward() ? 1 : 0; }

    /// What lay ahead is forgotten.
    void visit(const QString& figure)
    {
        if (figure == here())
            return;
        m_visited = m_visited.mid(0, m_place + 1) << figure;
        m_place = m_visited.size() - 1;
    }

private:
    QStringList m_visited;
    qsizetype m_place = -1;
};

}  // namespace firn::app
