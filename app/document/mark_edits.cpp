#include "document/mark_edits.h"

#include "document/change_value.h"

#include <QCoreApplication>

namespace firn::app {

namespace {

template <class T>
struct Mark {
    using Value = T;
    T Recipe::*member;
    auto& in(auto& recipe) const { return recipe.*member; }
    friend bool operator==(const Mark&, const Mark&) = default;
};
template <class T>
Mark(T Recipe::*) -> Mark<T>;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::MarkEdits)
};

}  // namespace

void changeTags(Document& document, const std::vector<std::string>& tags)
{
    change(document, Words::tr("Change tags"), Mark{&Recipe::tags}, tags);
}

void changeFavourite(Document& document, bool isFavourite)
{
    change(document, isFavourite ? Words::tr("Make it a favourite") : Words::tr("Take it from the favourites"),
        Mark{&Recipe::isFavourite}, isFavourite);
}

void changeArchived(Document& document, bool isArchived)
{
    change(document, isArchived ? Words::tr("Put it in the archive") : Words::tr("Take it out of the archive"),
        Mark{&Recipe::isArchived}, isArchived);
}

}  // namespace firn::app
