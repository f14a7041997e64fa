#include "teach/projector_panels.h"

#include "gauges/type_and_space.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <algorithm>

namespace firn::app {

namespace {

void standInTheMiddle(QWidget& panel, QSize size)
{
    const QRect whole = panel.parentWidget()->rect();
    const QSize fitting = size.boundedTo(whole.size());
    panel.setGeometry(QRect(whole.center() - QPoint(fitting.width() / 2, fitting.height() / 2), fitting));
}

void frame(QFrame& panel)
{
    panel.setAutoFillBackground(true);
    panel.setFrameShape(QFrame::Box);
    panel.setAttribute(Qt::WA_TransparentForMouseEvents);
}

QLabel* label(const QString& text, const QFont& font)
{
    auto* line = new QLabel;
    line->setTextFormat(Qt::PlainText);
    line->setText(text);
    line->setFont(font);
    return line;
}

}  // namespace

ProjectorKeys::ProjectorKeys(const QFont& type, QWidget* parent)
    : QFrame(parent)
{
    const std::vector<std::pair<QString, QString>> keys{
        {tr("Space, Enter, Right, Down, Page Down"), tr("next step, then next topic")},
        {tr("Backspace, Left, Up, Page Up"), tr("one step back")},
        {tr("Home, End"), tr("first topic, last topic")},
        {tr("1 to 9, 0"), tr("that topic; 0 is the tenth")},
        {tr("L"), tr("list of the topics")},
        {tr("R"), tr("shows all steps of the page")},
        {tr("H"), tr("hides the answers, and shows them again")},
        {tr("P"), tr("a dot that follows the mouse")},
        {tr("D"), tr("dark or light")},
        {tr("S"), tr("the next screen")},
        {tr("F1, ?"), tr("these keys")},
        {tr("Escape"), tr("leaves")},
    };
    setAccessibleName(tr("Keys"));
    frame(*this);
    QFont bold = type;
    bold.setBold(true);
    auto* layout = new QGridLayout(this);
    layout->setContentsMargins(2 * groupSpace, groupSpace, 2 * groupSpace, groupSpace);
    layout->setHorizontalSpacing(2 * groupSpace);
    layout->setVerticalSpacing(closeSpace);
    for (int row = 0; row < int(keys.size()); ++row) {
        layout->addWidget(label(keys[std::size_t(row)].first, bold), row, 0);
        layout->addWidget(label(keys[std::size_t(row)].second, type), row, 1);
    }
    standInTheMiddle(*this, sizeHint());
}

ProjectorSaying::ProjectorSaying(const QString& sentence, const QFont& type, QWidget* parent)
    : QFrame(parent)
{
    setAccessibleName(sentence);
    frame(*this);
    auto* layout = new QGridLayout(this);
    layout->setContentsMargins(2 * groupSpace, groupSpace, 2 * groupSpace, groupSpace);
    layout->addWidget(label(sentence, type));
    standInTheMiddle(*this, sizeHint());
}

ProjectorList::ProjectorList(const QStringList& pages, int current, const QFont& type, QWidget* parent)
    : QListWidget(parent)
{
    setAccessibleName(tr("Topics"));
    setFont(type);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    for (int i = 0; i < int(pages.size()); ++i)
        addItem(tr("%1  %2", "the number and title of a topic").arg(i + 1).arg(pages[i]));
    setCurrentRow(current);
    standInTheMiddle(*this, QSize(sizeHintForColumn(0) + 4 * groupSpace, sizeHintForRow(0) * count() + groupSpace));
    connect(this, &QListWidget::itemClicked, this, [this] { emit chosen(currentRow()); });
    connect(this, &QListWidget::itemActivated, this, [this] { emit chosen(currentRow()); });
}

void ProjectorList::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape || event->key() == Qt::Key_L)
        emit left();
    else if (event->key() == Qt::Key_Space)
        emit chosen(currentRow());
    else
        QListWidget::keyPressEvent(event);
}

void ProjectorList::focusOutEvent(QFocusEvent* event)
{
    QListWidget::focusOutEvent(event);
    if (event->reason() != Qt::ActiveWindowFocusReason && event->reason() != Qt::PopupFocusReason)
        emit left();
}

}  // namespace firn::app
