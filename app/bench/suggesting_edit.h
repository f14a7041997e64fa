// A line of text that shows, under itself, what the person may mean.
#pragma once

#include <QLineEdit>
#include <QListWidget>
#include <QPointer>
#include <functional>
#include <vector>

namespace firn::app {

struct Suggestion {
    QString shown;
    QString text;  // what the line holds once it is taken
};

struct Suggestions {
    std::vector<Suggestion> list = {};
    bool isFirstMeant = false;  // the text alone means nothing, so the first one is marked
};

/// Enter, Tab or a click takes the suggestion that is marked; Up and Down move the mark, and Escape takes the list away and leaves the text as
/// it was typed. None is marked where the text itself can be meant.
class SuggestingEdit : public QLineEdit {
    Q_OBJECT

public:
    using Source = std::function<Suggestions(const QString& typed)>;

    SuggestingEdit(Source source, QWidget* parent);
    ~SuggestingEdit() override;

    /// The text that editing begins with. Later calls are ignored: what is being typed is the person's.
    void begin(const QString& text);
    bool differsFromBeginning() const { return text() != m_beginning; }

    /// Takes the marked suggestion, if there is one.
    void takeSuggestion();

    /// False if none were shown.
    bool hideSuggestions();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void showSuggestions();
    void moveMark(int by);

    Source m_source;
    std::vector<Suggestion> m_suggestions;
    QPointer<QListWidget> m_list;  // belongs to the window, above everything else in it
    QString m_beginning;
    bool m_hasBegun = false;
};

}  // namespace firn::app
