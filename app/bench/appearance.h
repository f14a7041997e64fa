// Light, dark, or as the system has it.
#pragma once

namespace firn::app {

enum class Appearance { System, Light, Dark };

/// What the person chose at some time.
Appearance chosenAppearance();
void chooseAppearance(Appearance appearance);

/// Dresses the application, without remembering it. The system's own colours stay where it has any; a bare desktop gets light ones.
void dress(Appearance appearance);

}  // namespace firn::app
