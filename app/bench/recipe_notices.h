// What the recipe's reader should know before trusting the gauges: that they show a mix half way, or that something taken in from elsewhere
// is not any more what it was. One sentence at a time.
#pragma once

#include "bench/message_bar.h"
#include "document/linked_files.h"

#include <QSet>

namespace firn::app {

class RecipeNotices : public MessageBar {
    Q_OBJECT

public:
    explicit RecipeNotices(Document& document, QWidget* parent = nullptr);

private:
    struct Notice {
        QString sentence;
        std::vector<Choice> choices;
    };

    void show();
    void dismissForGood(const QString& sentence);
    std::vector<Notice> notices();
    void addStepInView(std::vector<Notice>& notices) const;
    void addLinkedRecipes(std::vector<Notice>& notices);
    void addUnknownNames(std::vector<Notice>& notices) const;
    void addOwnIngredients(std::vector<Notice>& notices) const;

    Document& m_document;
    LinkedFiles m_linkedFiles;
    QSet<QString> m_dismissed;
};

}  // namespace firn::app
