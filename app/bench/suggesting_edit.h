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

/// Suggestions never take the line over by themselves: Down goes into the list, Enter, Tab or a click takes what is marked there.
class SuggestingEdit : public QLineEdit {
    Q_OBJECT

public:
    using Source = std::function<std::vector<Suggestion>(const QString& typed)>;

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
