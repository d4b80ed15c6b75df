#pragma once

#include "app/rules/pencil.h"

#include <QString>

#include <span>
#include <string_view>
#include <vector>

/// Two small drawings for every rule: the wrong case and the right one.
namespace siphonwright::rules {

/// What a rule is about, in the order in which groups are listed.
enum class Group { elevation, heater, ports, hose, coolant, connections, running, air, other };
QString titleOf(Group group);

struct RuleDrawing {
    std::string_view rule; ///< its id
    Group group;
    const char* wrong; ///< caption, to be translated in the context RuleDrawings
    const char* right;
    void (*draw)(Pencil& pencil, bool right);

    QString caption(bool of_right) const;
};

/// The drawings of a rule; nothing for one that has none yet.
const RuleDrawing* drawingOf(std::string_view rule);
Group groupOf(std::string_view rule);
std::vector<const RuleDrawing*> allDrawings();

/// Paint one case. The painter's unit is a millimetre of the device, its origin the drawing's upper left.
void paintCase(QPainter& painter, const drawing::Palette& palette, const RuleDrawing& drawing, bool right);

// The table, group by group.
std::span<const RuleDrawing> elevationDrawings();
std::span<const RuleDrawing> heaterDrawings();
std::span<const RuleDrawing> portDrawings();
std::span<const RuleDrawing> hoseDrawings();
std::span<const RuleDrawing> coolantDrawings();
std::span<const RuleDrawing> connectionDrawings();
std::span<const RuleDrawing> runningDrawings();
std::span<const RuleDrawing> airDrawings();

// What most of the drawings begin with.
void supplyHose(Pencil& pencil);      ///< from the low port to the heater, falling all the way
void returnHose(Pencil& pencil);      ///< from the heater to the high port, rising all the way
void engineAndHeater(Pencil& pencil); ///< to be drawn before the hoses
void bothPorts(Pencil& pencil);       ///< and these after them

} // namespace siphonwright::rules
