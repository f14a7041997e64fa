#include "texture/serving.h"

namespace firn {

Celsius usualServing(Process process)
{
    switch (process) {
    case Process::Still:
    case Process::Churned:
        return {-12.0};
    case Process::Scraped:
        return {-10.0};
    case Process::Folded:
        return {-14.0};
    case Process::Unfrozen:
        return {4.0};
    }
    return {};
}

}  // namespace firn
