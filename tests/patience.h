#pragma once

namespace siphonwright::test {

/// How long tests wait for what is computed beside the window: on a busy machine that takes many times what
/// it takes on a quiet one. Not a promise of the program's.
inline constexpr int patience_ms = 60'000;

} // namespace siphonwright::test
