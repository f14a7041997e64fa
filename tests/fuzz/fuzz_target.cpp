// One libFuzzer program a subject; FIRN_FUZZ_SUBJECT is its name.
#include "subjects.h"
#include "usual_catalogue.h"

#include <algorithm>
#include <cstdint>
#include <cstdlib>

/// Reads the catalogue beforehand, so that this does not count as the time of the first input.
extern "C" int LLVMFuzzerInitialize(int* /*argc*/, char*** /*argv*/)
{
    firn::usualCatalogue();
    return 0;
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size)
{
    static const auto subject = std::ranges::find(firn::fuzzSubjects(), FIRN_FUZZ_SUBJECT, &firn::FuzzSubject::name);
    if (!subject->holds({reinterpret_cast<const char*>(bytes), size}))
        std::abort();
    return 0;
}
