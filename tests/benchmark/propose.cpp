#include "core/proposing/propose.h"

#include "core/sketch/file.h"

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <functional>
#include <iterator>
#include <string>
#include <variant>
#include <vector>

/// How long propose() takes on each sample, beside analyse() of the same, and what it proposes: with the
/// heater where it is, and anywhere under the engine.
namespace {

using namespace siphonwright;

/// Time of the processor for one call, microseconds: what other programs take does not count.
double processor_us(int calls, const std::function<void()>& call)
{
    const std::clock_t start = std::clock();
    for (int i = 0; i < calls; ++i)
        call();
    return 1e6 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC / calls;
}

std::string contents(const std::filesystem::path& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

void print(const Proposals& found)
{
    for (const Proposal& one : found.best_first)
        std::printf("    key %.3f  %s  %s  heater %.0f %.0f %.0f turned %.0f, %s to %s\n", one.key,
                    format(one.text, UnitSystem::metric).c_str(),
                    format(one.margins, UnitSystem::metric).c_str(), one.heater_at.x, one.heater_at.y,
                    one.heater_at.z, one.turned_deg, one.supply_port.c_str(), one.return_port.c_str());
    for (const RuleInWay& rule : found.in_conflict)
        std::printf("    %s\n", format(rule.text, UnitSystem::metric).c_str());
}

void time(const std::string& name, const Sketch& sketch)
{
    const double analyse_us = processor_us(20, [&] { (void)analyse(sketch); });
    ProposeOptions options;
    Proposals found;
    const double fixed_us = processor_us(1, [&] { found = propose(sketch, options); });
    std::printf("%-24s analyse %8.1f us; propose %10.0f us, %7.0f times that, %zu places\n", name.c_str(),
                analyse_us, fixed_us, fixed_us / analyse_us, found.places);
    print(found);
    options.space = spaceUnder(sketch, sketch.heaters.front().id);
    const double moved_us = processor_us(1, [&] { found = propose(sketch, options); });
    std::printf("%-24s anywhere under it: propose %10.0f us, %7.0f times analyse, %zu places\n", "", moved_us,
                moved_us / analyse_us, found.places);
    print(found);
}

} // namespace

int main(int count, char** arguments)
{
    const std::filesystem::path folder = std::filesystem::path(SIPHONWRIGHT_SOURCE_DIR) / "samples";
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        if (entry.path().extension() == ".siphon" &&
            (count < 2 || entry.path().stem().string() == arguments[1]))
            files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    for (const auto& file : files) {
        const auto read = readSketch(contents(file));
        if (const Sketch* sketch = std::get_if<Sketch>(&read))
            time(file.stem().string(), *sketch);
    }
    return 0;
}
