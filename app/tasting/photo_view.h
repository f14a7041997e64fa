// A photo from a file, scaled to a place in the window; a sentence where it cannot be shown.
#pragma once

#include "units/sentence.h"

#include <QImage>
#include <QLabel>

namespace firn::app {

class InkLabel;

/// The picture, turned as the camera was held and scaled down to fit into `place`. Fails on a file that is missing, is no picture, or would take
/// too much memory; the sentence says the way out.
Result<QImage> photoFrom(const QString& file, QSize place);

class PhotoView : public QWidget {
    Q_OBJECT

public:
    explicit PhotoView(QWidget* parent = nullptr);

    /// An empty path shows nothing.
    void show(const QString& file);

private:
    void take(const Result<QImage>& picture);

    QString m_file;
    QLabel* m_picture;
    InkLabel* m_problem;
};

}  // namespace firn::app
