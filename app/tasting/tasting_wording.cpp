#include "tasting/tasting_wording.h"

#include "bench/typed_text.h"
#include "document/version_edits.h"
#include "gauges/wording.h"
#include "recipe/blind_sheet.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::TastingWording)
};

QString endText(double value, const std::string& words)
{
    return words.empty() ? scoreText(value) : scoreText(value) + u' ' + QString::fromStdString(words);
}

}  // namespace

QString cupText(const std::string& code) { return Words::tr("Cup %1").arg(QString::fromStdString(code)); }

QString tastedText(const Tasting& tasting, const Recipe& recipe)
{
    const auto version = versionOf(tasting, recipe);
    if (tasting.code.empty())
        return nameOfVersion(recipe, *version);
    return version ? Words::tr("%1: %2", "a cup and what was in it").arg(cupText(tasting.code), nameOfVersion(recipe, *version))
                   : cupText(tasting.code);
}

QString tastingText(const Tasting& tasting, const Recipe& recipe)
{
    QStringList parts{tastedText(tasting, recipe)};
    if (!tasting.date.empty())
        parts.append(dateText(tasting.date));
    if (!tasting.tasters.empty())
        parts.append(QString::fromStdString(tasting.tasters).simplified());
    return parts.join(u'\n');
}

QString endsText(const TastingScale& scale)
{
    return Words::tr("%1 … %2", "ends of a scale").arg(endText(scale.from, scale.low), endText(scale.to, scale.high));
}

QString meanText(const VersionScores& scores)
{
    if (scores.marks.size() == 1)
        return Words::tr("%1, one tasting").arg(scoreText(scores.mean));
    const QString mean = Words::tr("mean %1 of %n tastings", nullptr, int(scores.marks.size())).arg(figure(scores.mean, 1));
    const auto blind = std::ranges::count(scores.marks, true, &ScoreMark::isBlind);
    if (blind == 0 || blind == std::ssize(scores.marks))
        return mean;
    return Words::tr("%1, %2 of them blind", "a mean of open and blind tastings").arg(mean).arg(blind);
}

QString scoreText(double value) { return typedText(value, {}, 2); }

}  // namespace firn::app
