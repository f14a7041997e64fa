#include "bench/suggesting_edit.h"

#include <QKeyEvent>
#include <algorithm>

namespace firn::app {

namespace {

constexpr int mostRowsShown = 8;
constexpr int smallestTarget_px = 24;

}  // namespace

SuggestingEdit::SuggestingEdit(Source source, QWidget* parent)
    : QLineEdit(parent)
    , m_source(std::move(source))
{
    connect(this, &QLineEdit::textEdited, this, &SuggestingEdit::showSuggestions);
}

SuggestingEdit::~SuggestingEdit() { delete m_list; }

void SuggestingEdit::begin(const QString& text)
{
    if (m_hasBegun)
        return;
    m_hasBegun = true;
    m_beginning = text;
    setText(text);
}

void SuggestingEdit::takeSuggestion()
{
    const int row = m_list && m_list->isVisible() ? m_list->currentRow() : -1;
    if (row >= 0)
        setText(m_suggestions.at(std::size_t(row)).text);
    hideSuggestions();
}

bool SuggestingEdit::hideSuggestions()
{
    if (!m_list || !m_list->isVisible())
        return false;
    m_list->hide();
    return true;
}

void SuggestingEdit::keyPressEvent(QKeyEvent* event)
{
    if (event->modifiers() == Qt::NoModifier && (event->key() == Qt::Key_Down || event->key() == Qt::Key_Up))
        moveMark(event->key() == Qt::Key_Down ? 1 : -1);
    else
        QLineEdit::keyPressEvent(event);
}

void SuggestingEdit::showSuggestions()
{
    Suggestions suggestions = m_source(text());
    m_suggestions = std::move(suggestions.list);
    if (m_suggestions.empty()) {
        hideSuggestions();
        return;
    }
    if (!m_list) {
        m_list = new QListWidget(window());
        m_list->setFocusPolicy(Qt::NoFocus);
        m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        m_list->setAccessibleName(tr("Suggestions"));
        connect(m_list, &QListWidget::itemClicked, this, [this] {
            takeSuggestion();
            emit textEdited(text());
            hideSuggestions();
        });
    }
    m_list->clear();
    for (const Suggestion& suggestion : m_suggestions)
        (new QListWidgetItem(suggestion.shown, m_list))->setSizeHint({0, std::max(smallestTarget_px, fontMetrics().height())});

    const int rows = std::min(m_list->count(), mostRowsShown);
    const int listHeight = rows * m_list->sizeHintForRow(0) + 2 * m_list->frameWidth();
    int listWidth = width();
    for (const Suggestion& suggestion : m_suggestions)
        listWidth = std::max(listWidth, fontMetrics().horizontalAdvance(suggestion.shown) + 4 * fontMetrics().averageCharWidth());
    QPoint corner = mapTo(window(), QPoint(0, height()));
    if (corner.y() + listHeight > window()->height())
        corner.setY(corner.y() - height() - listHeight);
    m_list->setGeometry(QRect(corner, QSize(listWidth, listHeight)));
    if (suggestions.isFirstMeant)
        m_list->setCurrentRow(0);
    m_list->raise();
    m_list->show();
}

void SuggestingEdit::moveMark(int by)
{
    if (!m_list || !m_list->isVisible())
        showSuggestions();
    if (m_list && m_list->isVisible())
        m_list->setCurrentRow(std::clamp(m_list->currentRow() + by, 0, m_list->count() - 1));
}

}  // namespace firn::app
