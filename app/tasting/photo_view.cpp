#include "tasting/photo_view.h"

#include "bench/ink_label.h"
#include "document/file_work.h"
#include "document/recipe_file.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QDir>
#include <QFileInfo>
#include <QImageReader>
#include <QVBoxLayout>

namespace firn::app {

namespace {

constexpr QSize place{320, 240};
constexpr int mostMemory_mb = 256;  // a photo of 60 megapixels
constexpr std::uintmax_t largestPhoto_bytes = std::uintmax_t{mostMemory_mb} * 1024 * 1024;

}  // namespace

Result<QImage> photoFrom(const QString& file, QSize fitInto)
{
    const std::string name = QFileInfo(file).fileName().toStdString();
    if (!QFileInfo::exists(file))
        return failure(phrase(
            "The photo {0} is not there any more. Choose it again, or restore the file.", QDir::toNativeSeparators(file).toStdString()));
    if (auto fault = faultOfFile(fileSystemPath(file), largestPhoto_bytes))
        return failure(std::move(*fault));
    QImageReader::setAllocationLimit(mostMemory_mb);
    QImageReader reader(file);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (size.isValid() && (size.width() > fitInto.width() || size.height() > fitInto.height()))
        reader.setScaledSize(size.scaled(fitInto, Qt::KeepAspectRatio).expandedTo({1, 1}));
    const QImage picture = reader.read();
    if (!picture.isNull())
        return picture.width() > fitInto.width() || picture.height() > fitInto.height()
                   ? picture.scaled(fitInto, Qt::KeepAspectRatio, Qt::SmoothTransformation)
                   : picture;
    const bool isTooLarge = qint64(size.width()) * size.height() * 4 > qint64(mostMemory_mb) * 1024 * 1024;
    if (isTooLarge)
        return failure(phrase("The photo {0} is too large to show. Make a smaller copy and choose that.", name));
    return failure(phrase("The photo {0} cannot be read as a picture. Choose another file.", name));
}

PhotoView::PhotoView(QWidget* parent)
    : QWidget(parent)
    , m_picture(new QLabel(this))
    , m_problem(new InkLabel(InkLabel::Caution, this))
{
    m_picture->setObjectName(QStringLiteral("photo"));
    m_picture->setTextFormat(Qt::PlainText);
    m_picture->setAccessibleName(tr("Photo of the tasting"));
    m_problem->setObjectName(QStringLiteral("photoProblem"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(gridStep);
    layout->addWidget(m_picture);
    layout->addWidget(m_problem);
    m_picture->hide();
}

void PhotoView::show(const QString& file)
{
    if (file == m_file)
        return;
    m_file = file;
    m_problem->setText({});
    m_picture->clear();
    m_picture->hide();
    if (file.isEmpty())
        return;
    sharedFileWork().run(
        file, this, [file](const Disk&) { return photoFrom(file, place); },
        [this, file](const Result<QImage>& picture) {
            if (file == m_file)
                take(picture);
        });
}

void PhotoView::take(const Result<QImage>& picture)
{
    if (!picture) {
        m_problem->setText(translated(picture.error()));
        return;
    }
    m_picture->setPixmap(QPixmap::fromImage(*picture));
    m_picture->show();
}

}  // namespace firn::app
