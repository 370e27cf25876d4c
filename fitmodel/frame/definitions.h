// SPDX-License-Identifier: MIT
//
// Which definition a column follows.
//
// A definition belongs to a column: another one is taken only where most sizes contradict the
// heading's and (nearly) all agree by the other. An alternative that adds an unknown of its own to
// each size (a seat angle that is only the tube's) agrees with anything; so it must also lie beside
// the effective figure evenly through the run, and only what no other alternative explains is left
// to it. One wrong entry is never a definition.
#pragma once

#include "frame/closure.h"
#include "frame/size_rows.h"

namespace tripoise::frame {

struct Definitions {
    GeometryTable geometry; ///< with the columns as they are meant
    Rounding rounding = Rounding::AsPrinted;
    std::vector<SizeRows> rows; ///< of that
    std::vector<Redefinition> redefinitions;
};

[[nodiscard]] Definitions defined(const GeometryTable& geometry, const ClosureTable& table,
                                  const CloseOptions& options);

/// Sizes of which one entry at least does not agree with the rest.
[[nodiscard]] std::size_t contradictingSizes(const GeometryTable& geometry,
                                             const ClosureTable& table, Rounding rounding);

} // namespace tripoise::frame
