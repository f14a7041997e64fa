// Light, dark, or as the system has it.
#pragma once

#include <QPalette>

namespace firn::app {

enum class Appearance { System, Light, Dark };

/// Frames that are seen in light and dark. Once, before the first window.
void useClearFrames();

/// What the person chose at some time.
Appearance chosenAppearance();
void chooseAppearance(Appearance appearance);

/// Dresses the application in colours, without remembering it. The system's own colours stay where it has any; a bare desktop gets light ones.
void dress(Appearance appearance);

/// The whole frame in the colours of the gauges.
QPalette framePalette(bool isDark);

}  // namespace firn::app
