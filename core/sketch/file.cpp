#include "core/sketch/file.h"

namespace siphonwright {

std::string Problem::text() const
{
    return (path.empty() ? std::string("In the file: ") : "At " + path + ": ") + "found " + found +
           ", but allowed is " + allowed + ".";
}

} // namespace siphonwright
