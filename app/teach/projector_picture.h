// The picture of a page, drawn large: the gauges of the bench, without their handles.
#pragma once

#include "explain/lesson.h"
#include "teach/projector_layout.h"

#include <QWidget>

namespace firn::app {

class CurveView;
class RibbonBar;
class SugarIcePicture;
class SugarScale;

class ProjectorPicture : public QWidget {
    Q_OBJECT

public:
    explicit ProjectorPicture(QWidget* parent = nullptr);

    PictureNeed needOf(LessonPicture picture) const;
    /// An empty frame where it is hidden, since a picture shows the answer.
    void show(const LessonPage& page, const Analysis& analysis, bool isHidden);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void showScale(const LessonPage& page, const Analysis& analysis);
    void showCurve(const LessonPage& page, const Analysis& analysis);

    SugarScale* m_scale;
    RibbonBar* m_ribbon;
    CurveView* m_curve;
    SugarIcePicture* m_sugarIce;
    LessonPicture m_shown = LessonPicture::None;
    std::optional<Readings> m_readings;
    bool m_isHidden = false;
};

}  // namespace firn::app
