#include "tasting/blind_pages.h"

#include "document/document.h"
#include "document/version_edits.h"
#include "gauges/wording.h"
#include "print/print_outlet.h"
#include "recipe/blind_sheet.h"
#include "tasting/tasting_wording.h"

#include <QCoreApplication>
#include <cmath>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::BlindPages)
};

constexpr double betweenParts_em = 1.0;
constexpr double betweenLines_em = 0.4;
constexpr double betweenMarks_em = 0.6;  // room for a hand
constexpr int usualSteps = 10;
constexpr double mostSteps = 20.0;

/// One for each whole number where the line has room for them.
int stepsOf(const TastingScale& scale)
{
    const double span = scale.to - scale.from;
    const bool isWhole = std::floor(scale.from) == scale.from && std::floor(scale.to) == scale.to;
    return isWhole && span >= 1.0 && span <= mostSteps ? int(span) : usualSteps;
}

QString endText(double number, const std::string& word)
{
    return (scoreText(number) + u' ' + QString::fromStdString(word)).trimmed();
}

void addScale(std::vector<Block>& blocks, const TastingScale& scale, const QStringList& codes)
{
    blocks.push_back({TextBlock{QString::fromStdString(scale.name), TextStyle::Strong}, betweenParts_em, true});
    for (const QString& code : codes)
        blocks.push_back({RowBlock{{{code, 1.0, false, TextStyle::Strong}, {endText(scale.from, scale.low), 2.0, true},
                              {ScaleLine{stepsOf(scale)}, 5.0}, {endText(scale.to, scale.high), 2.0}}},
            betweenMarks_em, code != codes.back()});
}

void addWords(std::vector<Block>& blocks, const QStringList& codes)
{
    blocks.push_back({TextBlock{Words::tr("In words"), TextStyle::Strong}, betweenParts_em, true});
    for (const QString& code : codes) {
        blocks.push_back({WritingBlock{{code}}, 0.0, true});
        blocks.push_back({WritingBlock{{QString()}}, 0.0});
    }
}

/// The codes in the order in which this taster gets the cups.
QStringList orderFor(const BlindSheet& sheet, std::size_t taster)
{
    QStringList order;
    for (const std::string& code : servingOrder(sheet, taster))
        order.append(QString::fromStdString(code));
    return order;
}

QString comma(const QStringList& codes) { return codes.join(QStringLiteral(", ")); }

QString nameOfTaster(std::size_t taster) { return Words::tr("Taster %1").arg(taster + 1); }

Section pagesFor(std::size_t taster, const Document& document, const BlindSheet& sheet, const std::vector<Sentence>& cautions)
{
    const QString title = nameOnPaper(document);
    const QString kind = sheet.date.empty() ? Words::tr("Tasted blind") : Words::tr("Tasted blind, %1").arg(dateText(sheet.date));
    const QStringList codes = orderFor(sheet, taster);
    std::vector<Block> blocks{{TextBlock{title, TextStyle::Title}}};
    blocks.push_back(
        {WritingBlock{sheet.date.empty() ? std::vector{Words::tr("Name"), Words::tr("Date")} : std::vector{Words::tr("Name")}},
            0.0});
    blocks.push_back(
        {TextBlock{Words::tr("Taste in this order, with water in between: %1. Mark each line where you find it; do not "
                             "talk before all have finished.")
                       .arg(comma(codes))},
            betweenParts_em});
    blocks.push_back(
        {TextBlock{Words::tr("Ask before you taste if there is anything that you must not eat or drink."), TextStyle::Strong},
            betweenLines_em});
    for (const Sentence& caution : cautions)
        blocks.push_back({TextBlock{translated(caution), TextStyle::Strong}, betweenLines_em});
    for (const TastingScale& scale : document.recipe().scales)
        addScale(blocks, scale, codes);
    addWords(blocks, codes);
    return {kind, nameOfTaster(taster), std::move(blocks)};
}

}  // namespace

Handout tasterPages(const Document& document, const BlindSheet& sheet, std::size_t tasters, const std::vector<Sentence>& cautions)
{
    Handout handout{Words::tr("%1, blind tasting", "a recipe").arg(nameOnPaper(document)), {}};
    for (std::size_t taster = 0; taster < tasters; ++taster)
        handout.sections.push_back(pagesFor(taster, document, sheet, cautions));
    return handout;
}

Handout keyPage(const Document& document, const BlindSheet& sheet, std::size_t tasters)
{
    const QString title = Words::tr("%1, key", "a recipe").arg(nameOnPaper(document));
    std::vector<Block> blocks{{TextBlock{title, TextStyle::Title}},
        {TextBlock{Words::tr("For whoever fills the cups and does not taste. Equal cups, equal portions, equally cold.")}}};
    for (const CodedSample& sample : sheet.samples)
        blocks.push_back(
            {TextBlock{Words::tr("%1: %2", "a cup and what was in it")
                           .arg(QString::fromStdString(sample.code), nameOfVersion(document.recipe(), sample.version).simplified()),
                 TextStyle::Strong},
                betweenLines_em});
    blocks.push_back({RuleBlock{}, betweenParts_em});
    for (std::size_t taster = 0; taster < tasters; ++taster)
        blocks.push_back({TextBlock{Words::tr("%1 gets %2", "a taster and the codes of cups")
                                        .arg(nameOfTaster(taster), comma(orderFor(sheet, taster)))},
            betweenLines_em});
    return {title, {{title, {}, std::move(blocks)}}};
}

}  // namespace firn::app
