// Taking all recipes of another folder into the notebook.
#pragma once

#include "units/sentence.h"

#include <QString>
#include <atomic>
#include <vector>

namespace firn::app {

struct ImportOutcome {
    int taken = 0;
    std::vector<Sentence> refused;  // why a file was not taken, with its name
};

/// Copies the recipe files of a folder and of those below it (.firn, .txt, .csv, .jsonld) into the notebook's folder, as .firn, in folders of the
/// same names. Nothing is overwritten: where a name is taken, the copy gets a number. The folder itself stays as it is. Fails where one of the
/// two folders lies in the other, or where the notebook's cannot be made.
Result<ImportOutcome> importFolder(const QString& from, const QString& notebook, const std::atomic<bool>& isCalledOff);

}  // namespace firn::app
