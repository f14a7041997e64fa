// Work that a slow disk could hold up, done away from the window's thread.
#pragma once

#include <QFuture>
#include <QPromise>
#include <QThreadPool>
#include <memory>
#include <type_traits>
#include <utility>

namespace firn::app {

/// The threads that wait for disks. They are never destroyed: closing the program does not wait for a file that hangs.
inline QThreadPool& diskThreads()
{
    static auto* const threads = [] {
        auto* pool = new QThreadPool;
        constexpr int mostAtOnce = 8;  // so that one hanging network folder leaves room for other files
        pool->setMaxThreadCount(mostAtOnce);
        return pool;
    }();
    return *threads;
}

/// Runs `work` on a thread for disks and hands its result to `then` on the receiver's thread, unless the receiver is gone by then.
template <class Work, class Then>
void inBackground(QObject& receiver, Work work, Then then)
{
    auto promise = std::make_shared<QPromise<std::invoke_result_t<Work&>>>();
    promise->future().then(&receiver, std::move(then));
    diskThreads().start([promise, work = std::move(work)]() mutable {
        promise->start();
        promise->addResult(work());
        promise->finish();
    });
}

}  // namespace firn::app
