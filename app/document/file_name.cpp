#include "document/file_name.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::FileName)
};

}  // namespace

QString fileNameFrom(const QString& title)
{
    constexpr qsizetype longest = 80;
    static const QRegularExpression refused(QStringLiteral("[\\\\/:*?\"<>|\\p{C}]+"));
    QString name = title.simplified().replace(refused, QStringLiteral(" ")).simplified().left(longest);
    if (name.endsWith(u' ') || (!name.isEmpty() && name.back().isHighSurrogate()))
        name.chop(1);  // half a letter, where the cut went through it
    return name.isEmpty() ? Words::tr("Untitled") : name;
}

}  // namespace firn::app
