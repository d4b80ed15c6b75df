#pragma once

#include "core/proposing/propose.h"

#include <QString>
#include <QStringList>

/// Proposed layouts in words.
namespace siphonwright::proposing {

/// What the hoses and what is fitted to them cost; "not priced" where nothing is, and what is missing where
/// something is.
QString priceText(const LayoutPrice& price, const Sketch& sketch);
/// A row of the list: bore and lengths of supply and return hose, flow and price, the least that is left and
/// of what.
QString rowText(std::size_t number, const Proposal& proposal, UnitSystem units);
/// What it changes, all that is left, and what no layout mends.
QString detailsText(const Proposal& proposal, const std::vector<Finding>& beside, UnitSystem units);
/// What no layout mends; empty where there is nothing.
QString besideText(const std::vector<Finding>& beside, UnitSystem units);

} // namespace siphonwright::proposing
