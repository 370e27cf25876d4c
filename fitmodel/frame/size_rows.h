// SPDX-License-Identifier: MIT
//
// The rows of least squares that a table's entries make.
//
// The sd of an entry is half its rounding step over sqrt 3. Two unknowns are no columns of a usual
// table and the same for all sizes of a model on the same wheels: the lower headset and the wheel's
// radius. As a free unknown of each size they would swallow a typing error; so their median over
// the sizes stands as a row that is beyond doubt, where three sizes determine it.
#pragma once

#include "frame/closure_table.h"
#include "frame/geometry_table.h"

namespace tripoise::frame {

struct SizeRows {
    std::vector<Observation> claims;      ///< one for each entry that has an equation
    std::vector<Observation> beyondDoubt; ///< what is known of the wheel and of all sizes together

    [[nodiscard]] std::vector<Observation> all() const;
};

/// How finely a maker rounds angles; as printed, or more coarsely.
enum class Rounding { AsPrinted, Coarse };

[[nodiscard]] double sdOf(const Entry& entry, const ClosureTable& table, Rounding rounding);

[[nodiscard]] std::vector<SizeRows> rowsOf(const GeometryTable& geometry, const ClosureTable& table,
                                           Rounding rounding);

} // namespace tripoise::frame
