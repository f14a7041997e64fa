#include "print/print_outlet.h"

#include "bench/ink_label.h"
#include "document/document.h"
#include "print/printing.h"
#include "teach/figure_wording.h"

namespace firn::app {

PrintOutlet::PrintOutlet(QWidget& window, InkLabel& message, Pages pages, PaperSize paper)
    : QObject(&window)
    , m_window(window)
    , m_message(message)
    , m_pages(std::move(pages))
    , m_paper(std::move(paper))
{
}

void PrintOutlet::print()
{
    say(m_pages().and_then([this](const Handout& pages) { return askAndPrint(m_window, pages, m_paper()); }), {});
}

void PrintOutlet::askForPdf()
{
    const auto pages = m_pages();
    if (!pages)
        say(failure(pages.error()), {});
    else if (const QString path = firn::app::askForPdf(m_window, pages->title); !path.isEmpty())
        savePdf(path);
}

void PrintOutlet::savePdf(const QString& path)
{
    say(m_pages().and_then([&](const Handout& pages) { return writePdf(pages, m_paper(), path); }),
        tr("The pages are in %1.").arg(path));
}

void PrintOutlet::say(const Result<void>& outcome, const QString& success)
{
    m_message.setInk(outcome ? InkLabel::Plain : InkLabel::Caution);
    m_message.setText(outcome ? success : plain(outcome.error()));
}

QString nameOnPaper(const Document& document)
{
    const std::string& title = document.recipe().title;
    return title.empty() ? document.displayName() : plain(title);
}

}  // namespace firn::app
