// Names for files, from what people call things.
#pragma once

#include <QString>

namespace firn::app {

/// A name without ending that every file system takes: without signs that some refuse (FAT and NTFS: \ / : * ? " < > |), and not too long. "Untitled"
/// where nothing is left.
QString fileNameFrom(const QString& title);

}  // namespace firn::app
