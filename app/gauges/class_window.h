// Why a mix has the class that it has: every figure that was compared on the way, and the picture behind the bands of sugar.
#pragma once

#include "texture/texture.h"

#include <QWidget>

namespace firn::app {

class MarkedLines;
class SugarIcePicture;

class ClassWindow : public QWidget {
    Q_OBJECT

public:
    explicit ClassWindow(QWidget* parent);

    void showTexture(const Texture& texture, Celsius serveAt);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    MarkedLines* m_reasons;
    SugarIcePicture* m_picture;
    MarkedLines* m_bands;
};

}  // namespace firn::app
