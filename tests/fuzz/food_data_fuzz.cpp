#include "round_trips.h"

#include <cstdint>
#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size)
{
    if (!firn::foodDataCanBeKept({reinterpret_cast<const char*>(bytes), size}))
        std::abort();
    return 0;
}
