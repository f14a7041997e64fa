// One gesture of the hand: a drag from press to release, or typing in one field until it is left.
#pragma once

namespace firn::app {

/// Edits of one value within one gesture are one step of the undo history. The default gesture joins nothing.
class Gesture {
public:
    Gesture() = default;

    static Gesture begin()
    {
        static int last = 0;
        return Gesture(++last);
    }

    bool isNone() const { return m_number == 0; }
    friend bool operator==(Gesture, Gesture) = default;

private:
    explicit Gesture(int number)
        : m_number(number)
    {
    }

    int m_number = 0;
};

}  // namespace firn::app
