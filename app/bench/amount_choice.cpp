#include "bench/amount_choice.h"

#include "gauges/wording.h"

#include <QLocale>

namespace firn::app {

namespace {

/// "1.015 g", with the person's decimal mark: as it would be written if it could mean nothing else.
QString meaningText(const Amount& amount)
{
    const std::string_view symbol = factsOf(amount.unit).symbol;
    return withUnit(QString::fromStdString(exactNumber(amount.value)).replace(u'.', QLocale().decimalPoint()),
        QString::fromUtf8(symbol.data(), qsizetype(symbol.size())));
}

}  // namespace

std::vector<AmountChoice> choicesFor(const QString& text, const AmountFault& fault)
{
    std::vector<AmountChoice> choices;
    if (!fault.readings)
        return choices;
    const QString number = QString::fromStdString(fault.number);
    for (const Amount& amount : {fault.readings->thousands, fault.readings->decimals}) {
        QString certain = text;
        certain.replace(text.indexOf(number), number.size(), QString::fromStdString(amountNumber(amount)));
        choices.push_back({meaningText(amount), certain});
    }
    return choices;
}

std::vector<AmountChoice> choicesFor(const QString& text, Unit usual)
{
    const auto amount = parseAmount(text.toStdString(), usual);
    return amount ? std::vector<AmountChoice>() : choicesFor(text, amount.error());
}

}  // namespace firn::app
