// Whole numbers drawn from a seed.
#pragma once

#include <cstdint>

namespace firn {

/// Steele and others, OOPSLA 2014 (splitmix64): the same numbers on every machine, which the standard library does not promise.
class Dice {
public:
    explicit Dice(std::uint64_t seed)
        : m_state(seed)
    {
    }

    /// A whole number from `least` to `most`.
    int between(int least, int most) { return least + static_cast<int>(next() % static_cast<std::uint64_t>(most - least + 1)); }

private:
    std::uint64_t next()
    {
        std::uint64_t z = (m_state += 0x9E3779B97F4A7C15u);
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9u;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBu;
        return z ^ (z >> 31);
    }

    std::uint64_t m_state;
};

}  // namespace firn
