#pragma once

#ifdef __linux__
#include <algorithm>
#include <sys/resource.h>
#endif

namespace siphonwright {

/// Lets all other threads have the processor before this one. What is computed beside the window may lag;
/// what is drawn may not, also where a proof, a picture and the window share two cores. On Linux, where each
/// thread has a niceness of its own; nothing elsewhere.
inline void giveWay()
{
#ifdef __linux__
    constexpr int later = 10;
    constexpr int last = 19;
    setpriority(PRIO_PROCESS, 0, std::min(last, getpriority(PRIO_PROCESS, 0) + later)); // 0: this thread
#endif
}

} // namespace siphonwright
