#pragma once

#include "tests/sound_loop.h"

namespace siphonwright::test {

/// The sound loop with the facts that running is computed from.
inline Sketch warmLoop()
{
    Sketch s = soundLoop();
    s.heaters[0].name = "Tank heater";
    s.heaters[0].power_W.value = 1500;
    s.engine->displacement_l.value = 9;
    s.site.ambient_degC.value = -18;
    s.site.wind_m_per_s.value = 3;
    return s;
}

} // namespace siphonwright::test
