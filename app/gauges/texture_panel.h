// What the frozen mix will be like: its kind in large words, why, what is wrong with it, where it is best served, and why its kind has the band
// of sugar that it has, as a picture.
#pragma once

#include "analysis/analysis.h"
#include "gauges/gauge.h"

#include <QPointer>

namespace firn::app {

class ClassWindow;
class FigureButton;
class MarkedLines;
class SugarIcePicture;

class TexturePanel : public Gauge {
    Q_OBJECT

public:
    explicit TexturePanel(QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

    /// Opens the reasons for the class, and the picture of the bands.
    void showWhy();

public slots:
    void show(const firn::Analysis& analysis);

protected:
    void paintGauge(QPainter& painter, const GaugeColours& colours) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    bool isWindowBesideKind() const;
    int headHeight() const;
    void layOut();
    void showPicture();
    void placeFigures();
    QRect windowPlace() const;

    MarkedLines* m_lines;
    FigureButton* m_why;
    SugarIcePicture* m_picture;           // beside the lines
    FigureButton* m_ice;                  // all over the picture
    QPointer<ClassWindow> m_classWindow;  // from the first time it is opened
    Texture m_texture;
    Celsius m_serveAt;
    QString m_kind;  // empty for an empty mix
    bool m_isFrozen = false;
    QString m_window;  // "serve at …"
    QString m_warmest;
};

}  // namespace firn::app
