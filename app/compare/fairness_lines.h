// What keeps a comparison from being a fair one; a few lines of it at once, the rest by scrolling.
#pragma once

#include "gauges/marked_lines.h"
#include "units/sentence.h"

namespace firn::app {

class FairnessLines : public MarkedLines {
    Q_OBJECT

public:
    explicit FairnessLines(QWidget* parent = nullptr);

    /// Takes no room where there is nothing to say.
    void show(const std::vector<Sentence>& sentences);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fit();
};

}  // namespace firn::app
