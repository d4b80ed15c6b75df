#include "app/document/crash_report.h"

#include "app/document/document.h"

#include <QFile>
#include <QStringList>
#include <QSysInfo>

#include <algorithm>
#include <array>
#include <atomic>
#include <csignal>
#include <cstdlib>
#include <cstring>
#include <exception>

#ifdef Q_OS_UNIX
#include <dlfcn.h>
#include <execinfo.h>
#include <fcntl.h>
#include <unistd.h>
#endif

namespace siphonwright {
namespace {

constexpr std::size_t edits_kept = 40;
constexpr std::size_t line_length = 160;

/// All that a signal handler may read: plain memory, filled beforehand. It is the program's, not an object's,
/// since a signal comes to the program.
struct Prepared {
    std::array<char, 4096> file{};
    std::array<char, 512> head{};
    std::array<std::array<char, line_length>, edits_kept> edits{};
    std::atomic<unsigned> edit_count{0};
    std::array<char, 1 << 16> stack{};
    std::atomic_flag reporting = ATOMIC_FLAG_INIT;
};

Prepared& prepared()
{
    static Prepared memory;
    return memory;
}

template <std::size_t Size>
void fill(std::array<char, Size>& place, const QByteArray& text)
{
    const std::size_t count = std::min(Size - 1, static_cast<std::size_t>(text.size()));
    std::memcpy(place.data(), text.constData(), count);
    place[count] = '\0';
}

template <class Parts>
void compare(QStringList& out, const char* name, const Parts& before, const Parts& after)
{
    if (before.size() != after.size()) {
        out << QStringLiteral("%1 %2 > %3").arg(QLatin1String(name)).arg(before.size()).arg(after.size());
        return;
    }
    int changed = 0;
    for (std::size_t i = 0; i < before.size(); ++i)
        changed += before[i] == after[i] ? 0 : 1;
    if (changed > 0)
        out << QStringLiteral("%1: %2 of %3 changed").arg(QLatin1String(name)).arg(changed).arg(after.size());
}

#ifdef Q_OS_UNIX

void put(int file, const char* text)
{
    const char* rest = text;
    for (std::size_t count = std::strlen(text); count > 0;) {
        const ssize_t written = ::write(file, rest, count);
        if (written <= 0)
            return;
        rest += written;
        count -= static_cast<std::size_t>(written);
    }
}

void putNumber(int file, std::uintptr_t number, unsigned base)
{
    std::array<char, 24> digits{};
    std::size_t at = digits.size() - 1;
    do {
        digits[--at] = "0123456789abcdef"[number % base];
        number /= base;
    } while (number > 0);
    put(file, digits.data() + at);
}

const char* nameOf(int signal)
{
    switch (signal) {
    case SIGSEGV:
        return "SIGSEGV, memory that is not the program's";
    case SIGABRT:
        return "SIGABRT, the program gave up";
    case SIGBUS:
        return "SIGBUS, memory that is not there";
    case SIGFPE:
        return "SIGFPE, arithmetic";
    case SIGILL:
        return "SIGILL, an instruction that is none";
    default:
        return "signal";
    }
}

/// Module and offset of each call: a module's folder may hold a user's name and is left out.
void putStack(int file)
{
    std::array<void*, 64> calls{};
    const int count = ::backtrace(calls.data(), static_cast<int>(calls.size()));
    for (int i = 0; i < count; ++i) {
        Dl_info info{};
        void* call = calls[static_cast<std::size_t>(i)];
        if (::dladdr(call, &info) != 0 && info.dli_fname) {
            const char* slash = std::strrchr(info.dli_fname, '/');
            put(file, slash ? slash + 1 : info.dli_fname);
            put(file, " +0x");
            putNumber(file,
                      reinterpret_cast<std::uintptr_t>(call) -
                          reinterpret_cast<std::uintptr_t>(info.dli_fbase),
                      16);
            if (info.dli_sname) {
                put(file, " ");
                put(file, info.dli_sname);
            }
        } else {
            put(file, "0x");
            putNumber(file, reinterpret_cast<std::uintptr_t>(call), 16);
        }
        put(file, "\n");
    }
}

void putReport(int file, int signal)
{
    Prepared& memory = prepared();
    put(file, memory.head.data());
    put(file, "\nEnded by: ");
    put(file, nameOf(signal));
    put(file, "\n\nLast edits, the latest first:\n");
    const unsigned count = memory.edit_count.load();
    for (unsigned i = 0; i < edits_kept && i < count; ++i) {
        putNumber(file, count - i, 10);
        put(file, " ");
        put(file, memory.edits[(count - 1 - i) % edits_kept].data());
        put(file, "\n");
    }
    put(file, "\nStack:\n");
    putStack(file);
}

extern "C" void reportSignal(int signal)
{
    Prepared& memory = prepared();
    if (memory.file[0] != '\0' && !memory.reporting.test_and_set()) {
        const int file = ::open(memory.file.data(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600);
        if (file >= 0) {
            putReport(file, signal);
            ::fsync(file);
            ::close(file);
            put(STDERR_FILENO, "siphonwright ended unexpectedly; a report is in ");
            put(STDERR_FILENO, memory.file.data());
            put(STDERR_FILENO, "\n");
        }
    }
    // As it would have ended without us: the handler was for one time.
    ::raise(signal);
}

void catchSignals()
{
    Prepared& memory = prepared();
    std::array<void*, 1> first{};
    ::backtrace(first.data(), 1); // loads what it needs, which a dying program must not
    stack_t stack{};
    stack.ss_sp = memory.stack.data();
    stack.ss_size = memory.stack.size();
    ::sigaltstack(&stack, nullptr);
    struct sigaction action {};
    action.sa_handler = reportSignal;
    action.sa_flags = static_cast<int>(SA_ONSTACK | SA_RESETHAND | SA_NODEFER);
    for (const int signal : {SIGSEGV, SIGABRT, SIGBUS, SIGFPE, SIGILL})
        ::sigaction(signal, &action, nullptr);
}

#else

void catchSignals() {}

#endif

} // namespace

QString changeInFigures(const Sketch& before, const Sketch& after)
{
    QStringList out;
    compare(out, "ports", before.ports, after.ports);
    compare(out, "heaters", before.heaters, after.heaters);
    compare(out, "hoses", before.hoses, after.hoses);
    compare(out, "areas", before.areas, after.areas);
    compare(out, "readings", before.readings, after.readings);
    compare(out, "limits", before.limits, after.limits);
    compare(out, "assumptions", before.assumptions, after.assumptions);
    compare(out, "dimensions", before.dimensions, after.dimensions);
    const auto single = [&out](const char* name, bool same) {
        if (!same)
            out << QLatin1String(name) + QStringLiteral(" changed");
    };
    single("sheet", before.sheet == after.sheet);
    single("units", before.units == after.units);
    single("engine", before.engine == after.engine);
    single("tank", before.tank == after.tank);
    single("coolant", before.coolant == after.coolant && before.coolant_plan == after.coolant_plan);
    single("site", before.site == after.site);
    single("ground", before.ground_z_mm == after.ground_z_mm);
    single("photo", before.photo == after.photo);
    single("checklist", before.checklist == after.checklist);
    single("notes", before.notes == after.notes);
    single("plan", before.plan == after.plan && before.fill == after.fill);
    single("survey", before.survey == after.survey);
    single("supply", before.supply == after.supply);
    single("quote", before.quote == after.quote);
    return out.join(QStringLiteral("; "));
}

CrashReport::CrashReport(Document& document) : document_(document), before_(document.sketch())
{
    fill(prepared().head, QStringLiteral("Siphonwright %1\nQt %2\n%3, %4, %5")
                              .arg(QStringLiteral(SIPHONWRIGHT_VERSION), QLatin1String(qVersion()),
                                   QSysInfo::prettyProductName(), QSysInfo::kernelVersion(),
                                   QSysInfo::currentCpuArchitecture())
                              .toUtf8());
    catchSignals();
    connect(&document_, &Document::changed, this, &CrashReport::note);
}

CrashReport::~CrashReport()
{
    writeTo({});
}

void CrashReport::writeTo(const QString& file)
{
    fill(prepared().file, QFile::encodeName(file));
}

void CrashReport::note()
{
    Prepared& memory = prepared();
    const unsigned count = memory.edit_count.load();
    fill(memory.edits[count % edits_kept], changeInFigures(before_, document_.sketch()).toUtf8());
    memory.edit_count.store(count + 1);
    before_ = document_.sketch();
}

} // namespace siphonwright
