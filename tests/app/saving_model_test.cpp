// Random sequences of typing, saving, undoing, closing, killing and starting on a disk that fails on purpose, against a plain model: no typed row is
// ever lost without a question that named its recipe. FIRN_SAVING_SEQUENCES and FIRN_SAVING_SEED make longer and other runs.
#include "saving_model/saving_sequence.h"

#include <QApplication>

namespace firn::app {
namespace {

constexpr int usualSequences = 300;
constexpr int usualSequencesOnThreads = 100;  // which have to be waited for

/// Cancels the dialog that comes up when a disk hangs.
class Impatient : public QObject {
public:
    Impatient() { qApp->installEventFilter(this); }

    bool eventFilter(QObject* object, QEvent* event) override
    {
        if (event->type() == QEvent::Show && object->objectName() == QLatin1String("fileWait"))
            QMetaObject::invokeMethod(object, "reject", Qt::QueuedConnection);
        return false;
    }
};

int numberFrom(const char* variable, int usual)
{
    bool isNumber = false;
    const int number = qEnvironmentVariableIntValue(variable, &isNumber);
    return isNumber ? number : usual;
}

void runSequences(int usual, Workers workers)
{
    Impatient impatient;
    const int sequences = numberFrom("FIRN_SAVING_SEQUENCES", usual);
    const int first = numberFrom("FIRN_SAVING_SEED", 1);
    for (int seed = first; seed < first + sequences; ++seed)
        ASSERT_EQ(SavingSequence(unsigned(seed), workers).run(), "") << "seed " << seed;
}

TEST(SavingModel, NoTypedRowIsLostWithoutAQuestionThatNamedIt) { runSequences(usualSequences, Workers::Stepped); }

TEST(SavingModel, NorWhereThreadsDoTheWork) { runSequences(usualSequencesOnThreads, Workers::Threads); }

}  // namespace
}  // namespace firn::app
