// The three sizes of type and the grid of spaces that every gauge keeps to.
#pragma once

#include <QFont>
#include <QFontMetrics>

namespace firn::app {

inline constexpr int gridStep = 4;
inline constexpr int closeSpace = 8;   // between things that belong together
inline constexpr int groupSpace = 16;  // between groups

/// For the one number that a gauge is about.
QFont figureFont(const QFont& text);

/// For the name of what is shown.
QFont titleFont(const QFont& text);

/// Height of a line of this font.
int lineHeight(const QFont& font);

/// A length that is `usual` pixels beside text of the usual size and grows with larger text, as on a projector.
double besideText(const QFont& font, double usual);

}  // namespace firn::app
