// SPDX-License-Identifier: MIT
//
// Which entry of one size is wrong.
//
// For each entry in turn: what the others say it should be, and how much better everything agrees
// without it. Some entries cannot be told apart by one size's equations (seat angle and effective
// top tube; chainstay and wheelbase; head angle and fork offset; nearly so stack and reach): they
// are one tie group. The run of sizes breaks the tie: the entry is named whose correction brings
// the size back into the run, by Student's t, so that a model that steps unevenly does not decide
// alone. A run never makes a contradiction by itself.
#pragma once

#include "frame/closure_table.h"
#include "frame/runs.h"

#include <vector>

namespace tripoise::frame {

/// A row that may be at fault, and what the run expects of it.
struct Claim {
    Observation row;
    std::optional<Expected> expected;
};

struct Fault {
    Column column = Column::Stack;
    double given = 0.0;
    double agrees = 0.0;      ///< what agrees with the rest of the size
    double sd = 0.0;          ///< of that
    double gain = 0.0;        ///< how much better all agrees, log-likelihood doubled
    std::vector<Column> ties; ///< entries that would explain it as well by this size's equations
};

struct FaultSearch {
    std::vector<Fault> faults; ///< the surest first
    Adjustment clean;          ///< of the rows that are left
};

/// `beyondDoubt` are rows that take part and are not suspected.
[[nodiscard]] FaultSearch findFaults(std::vector<Claim> claims,
                                     const std::vector<Observation>& beyondDoubt,
                                     const ClosureTable& table);

} // namespace tripoise::frame
