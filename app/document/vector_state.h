#pragma once

namespace siphonwright {

/// Leaves the state in which the upper halves of a thread's wide registers hold something. Drawing and text
/// libraries can leave them so, and until they are cleared every SSE instruction on many x86 processors has
/// to wait for them: a warm-up then takes three to six times as long (measured: `check --bands` 5.3 s against
/// 1.6 s). New threads begin in the state of the one that made them. Nothing on other processors.
inline void leaveVectorState()
{
#if defined(__x86_64__) && defined(__GNUC__) && !defined(__AVX__)
    if (__builtin_cpu_supports("avx"))
        asm volatile("vzeroupper");
#endif
}

} // namespace siphonwright
