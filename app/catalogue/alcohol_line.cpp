#include "catalogue/alcohol_line.h"

#include "catalogue/number_line.h"
#include "document/typed_composition.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "solution/alcohol_by_volume.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>

namespace firn::app {

namespace {

// In the order of the combo box.
enum AlcoholUnit { GramsUnit, ByVolumeUnit };

}  // namespace

AlcoholLine::AlcoholLine(const QString& spoken, QWidget* parent)
    : QWidget(parent)
    , m_unit(new QComboBox)
    , m_grams(new QLabel)
{
    m_number = new NumberLine(spoken,
        [this](std::string_view text) {
            // A unit that is typed is chosen too, so that a later number is meant in it.
            return alcoholFromText(text, isByVolume()).map([this](const TypedAlcohol& alcohol) {
                const QSignalBlocker blocker(m_unit);
                m_unit->setCurrentIndex(alcohol.isByVolume ? ByVolumeUnit : GramsUnit);
                return alcohol.number;
            });
        },
        {});
    m_unit->addItems({tr("g"), tr("% vol")});
    m_unit->setObjectName(QStringLiteral("alcoholUnit"));
    m_unit->setAccessibleName(tr("Unit of the alcohol"));
    m_grams->setObjectName(QStringLiteral("alcoholGrams"));
    m_grams->setTextFormat(Qt::PlainText);
    connect(m_number, &NumberLine::changed, this, &AlcoholLine::changed);
    connect(m_unit, &QComboBox::currentIndexChanged, this, &AlcoholLine::changed);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(m_number);
    layout->addWidget(m_unit);
    layout->addWidget(m_grams);
    layout->addStretch();
    setFocusProxy(m_number);
}

bool AlcoholLine::isByVolume() const { return m_unit->currentIndex() == ByVolumeUnit; }

void AlcoholLine::showGrams(Grams grams)
{
    const QSignalBlocker blocker(m_unit);
    m_unit->setCurrentIndex(GramsUnit);
    m_number->showNumber(grams.value > 0.0 ? std::optional(grams.value) : std::nullopt);
}

Grams AlcoholLine::gramsBeside(const Amounts& others)
{
    m_fault.clear();
    m_grams->clear();
    const double number = m_number->number().value_or(0.0);
    if (!isByVolume())
        return {number};
    const auto ethanol = ethanolIn100g(number, others);
    if (!ethanol) {
        m_fault = translated(ethanol.error());
        m_number->say(m_fault);
        return {};
    }
    m_number->say({});
    m_grams->setText(tr("= %1 in 100 g, by the density of the whole").arg(gramsText(*ethanol)));
    return *ethanol;
}

bool AlcoholLine::checkTyping()
{
    if (!m_number->checkTyping())
        return false;
    m_number->say(m_fault);
    return m_fault.isEmpty();
}

}  // namespace firn::app
