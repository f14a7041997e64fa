// What the recipe's reader should know before trusting the gauges: that they show a mix half way, or that something taken in from elsewhere
// is not any more what it was. One sentence at a time.
#pragma once

#include "bench/message_bar.h"
#include "document/linked_files.h"

namespace firn::app {

class RecipeNotices : public MessageBar {
    Q_OBJECT

public:
    explicit RecipeNotices(Document& document, QWidget* parent = nullptr);

private:
    /// What there is to say, most pressing first.
    struct Notice {
        QString sentence;
        std::vector<Choice> choices;
        friend bool operator==(const Notice& a, const Notice& b) { return a.sentence == b.sentence; }
    };

    void show();
    std::optional<Notice> stepInView() const;
    std::optional<Notice> linkedRecipe() const;
    std::optional<Notice> ownIngredient() const;

    Document& m_document;
    LinkedFiles m_linkedFiles;
    QString m_shown;
};

}  // namespace firn::app
