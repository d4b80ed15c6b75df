#include "app/canvas/sockets.h"

#include "app/canvas/plane.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

namespace siphonwright {
namespace {

void addSocket(const Sketch& sketch, const HoseEnd& end, std::optional<double> bore_mm, const QString& name,
               std::vector<Socket>& out)
{
    const std::optional<Attachment> place = attachment(sketch, end);
    if (place)
        out.push_back({end, place->opening, place->stub.back().at, place->stub, bore_mm, name});
}

HoseEnd nozzleEnd(const Id& heater, NozzleKind nozzle)
{
    HoseEnd end;
    end.heater = heater;
    end.nozzle = nozzle;
    return end;
}

} // namespace

bool Socket::sameAs(const HoseEnd& other) const
{
    return end.port == other.port && end.heater == other.heater &&
           (end.heater.empty() || end.nozzle == other.nozzle);
}

std::vector<Socket> socketsOf(const Sketch& sketch)
{
    std::vector<Socket> out;
    for (const Port& port : sketch.ports) {
        HoseEnd end;
        end.port = port.id;
        addSocket(sketch, end, port.bore_mm.value, inWords(port.name), out);
    }
    for (const Heater& heater : sketch.heaters) {
        const QString name = inWords(heater.name);
        addSocket(sketch, nozzleEnd(heater.id, NozzleKind::inlet), heater.inlet.bore_mm.value,
                  tr("the inlet of %1").arg(name), out);
        addSocket(sketch, nozzleEnd(heater.id, NozzleKind::outlet), heater.outlet.bore_mm.value,
                  tr("the outlet of %1").arg(name), out);
    }
    return out;
}

std::optional<Socket> socketAt(const Sketch& sketch, const Viewport& viewport, QPointF screen)
{
    constexpr double reach_px = 10;
    std::optional<Socket> best;
    double best_px = reach_px;
    for (const Socket& socket : socketsOf(sketch)) {
        for (std::size_t i = 1; i < socket.stub.size(); ++i) {
            const double px = distanceToSegment(screen, viewport.toScreen(socket.stub[i - 1].at),
                                                viewport.toScreen(socket.stub[i].at));
            if (px < best_px) {
                best = socket;
                best_px = px;
            }
        }
    }
    return best;
}

} // namespace siphonwright
