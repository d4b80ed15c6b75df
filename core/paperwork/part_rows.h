#pragma once

#include "core/paperwork/parts.h"
#include "core/sketch/sketch.h"

/// Making the rows of a parts list.
namespace siphonwright {

constexpr std::int64_t one_piece = 1000; ///< thousandths

/// What distinguishes a row: items of the same are counted together.
struct ItemOf {
    ItemKind kind = ItemKind::heater;
    std::string size_key; ///< "27.05"; empty with nothing missing: an item without a size
    Message size;
    std::string missing;
};

/// Collects rows; items of the same kind and size become one.
class PartRows {
public:
    /// The row of an item, new or already there.
    PartRow& row(const ItemOf& item);
    /// Count `pieces` of an item used at a place.
    PartRow& count(const ItemOf& item, const UsedAt& used, std::int64_t pieces = 1);
    /// Rows in the list's order, numbered.
    std::vector<PartRow> take();

private:
    std::vector<PartRow> rows_;
};

/// An item that is sized by one length; no length: not entered.
ItemOf sizedItem(ItemKind kind, std::optional<double> size_mm, std::string_view what_is_missing);
/// A size as keys have it.
std::string sizeKey(double size_mm);
/// What an in-line part is in the list.
ItemKind itemKindOf(InlineKind kind);
/// The diameter over a hose.
std::optional<double> overHose(std::optional<double> bore_mm, const Hose& hose);

/// "for hose of 19 mm, passage 15 mm"; the passage alone where the hose's bore is not entered.
Message ofPassage(std::optional<double> hose_bore_mm, double passage_mm);
/// What to say of an elbow that is not made at every angle.
std::vector<Message> noteOfAngle(double angle_deg);

UsedAt usedAt(const PartRef& part, std::string name);

/// A hose between its ends and its reducers, with one bore from end to end.
struct HosePiece {
    std::optional<double> bore_mm;
    double from_mm = 0; ///< along the hose itself
    double to_mm = 0;
    double cut_length_mm = 0;    ///< with engagement at both ends and the allowance
    std::vector<HosePart> parts; ///< that part it
};
std::vector<HosePiece> piecesOf(const Route& route, double allowance_mm);

void addHeaters(const Sketch& sketch, PartRows& rows);
void addConnections(const Sketch& sketch, PartRows& rows); ///< what is at the ends of hoses
void addHose(const Sketch& sketch, const ResolvedHose& hose, const Plumb& plumb, PartRows& rows);
void addCoolant(const Sketch& sketch, const Layout& layout, PartRows& rows);

} // namespace siphonwright
