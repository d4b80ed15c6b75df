#pragma once

#include <QCoreApplication>
#include <QString>

/// Visible text where no class of Qt's is at hand. A call is listed for translators under its namespace, so
/// each namespace has its own. \param count the number in a text with "%n"
namespace siphonwright {
inline QString tr(const char* text, int count = -1)
{
    return QCoreApplication::translate("siphonwright", text, nullptr, count);
}
} // namespace siphonwright

namespace siphonwright::assumptions {
inline QString tr(const char* text, int count = -1)
{
    return QCoreApplication::translate("siphonwright::assumptions", text, nullptr, count);
}
} // namespace siphonwright::assumptions

namespace siphonwright::commissioning {
inline QString tr(const char* text, int count = -1)
{
    return QCoreApplication::translate("siphonwright::commissioning", text, nullptr, count);
}
} // namespace siphonwright::commissioning

namespace siphonwright::demonstration {
inline QString tr(const char* text, int count = -1)
{
    return QCoreApplication::translate("siphonwright::demonstration", text, nullptr, count);
}
} // namespace siphonwright::demonstration

namespace siphonwright::drawing {
inline QString tr(const char* text, int count = -1)
{
    return QCoreApplication::translate("siphonwright::drawing", text, nullptr, count);
}
} // namespace siphonwright::drawing

namespace siphonwright::headless {
inline QString tr(const char* text, int count = -1)
{
    return QCoreApplication::translate("siphonwright::headless", text, nullptr, count);
}
} // namespace siphonwright::headless

namespace siphonwright::panels {
inline QString tr(const char* text, int count = -1)
{
    return QCoreApplication::translate("siphonwright::panels", text, nullptr, count);
}
} // namespace siphonwright::panels

namespace siphonwright::paper {
inline QString tr(const char* text, int count = -1)
{
    return QCoreApplication::translate("siphonwright::paper", text, nullptr, count);
}
} // namespace siphonwright::paper

namespace siphonwright::photo {
inline QString tr(const char* text, int count = -1)
{
    return QCoreApplication::translate("siphonwright::photo", text, nullptr, count);
}
} // namespace siphonwright::photo

namespace siphonwright::proposing {
inline QString tr(const char* text, int count = -1)
{
    return QCoreApplication::translate("siphonwright::proposing", text, nullptr, count);
}
} // namespace siphonwright::proposing

namespace siphonwright::rules {
inline QString tr(const char* text, int count = -1)
{
    return QCoreApplication::translate("siphonwright::rules", text, nullptr, count);
}
} // namespace siphonwright::rules

namespace siphonwright::sheet {
inline QString tr(const char* text, int count = -1)
{
    return QCoreApplication::translate("siphonwright::sheet", text, nullptr, count);
}
} // namespace siphonwright::sheet

namespace siphonwright::survey {
inline QString tr(const char* text, int count = -1)
{
    return QCoreApplication::translate("siphonwright::survey", text, nullptr, count);
}
} // namespace siphonwright::survey

namespace siphonwright::warming {
inline QString tr(const char* text, int count = -1)
{
    return QCoreApplication::translate("siphonwright::warming", text, nullptr, count);
}
} // namespace siphonwright::warming
