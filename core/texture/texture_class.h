// The name of the kind of dessert: from the process first, then from what is in it.
#pragma once

#include "texture/texture.h"

namespace firn {

/// The class of a mix that freezes.
TextureClass classOf(const Mix& mix, Process process);

}  // namespace firn
