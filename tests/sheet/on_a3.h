#pragma once

#include "app/sheet/sheet.h"

namespace siphonwright::test {

inline sheet::Options onA3()
{
    sheet::Options options;
    options.paper = sheet::Paper::a3;
    return options;
}

} // namespace siphonwright::test
