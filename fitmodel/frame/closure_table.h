// SPDX-License-Identifier: MIT
//
// What the closing of a table knows beforehand (assets/closure.json): ordinary frames, how evenly
// the sizes of a model step, and how sure a finding must be.
#pragma once

#include "base/range.h"
#include "frame/adjustment.h"

namespace tripoise {

struct ClosureTable {
    Ordinary ordinary;
    double ordinaryBeadSeatMm = 0.0; ///< the rim that the ordinary wheel radius is of
    double headTubeMm = 0.0;         ///< of an ordinary frame, and its spread
    double headTubeSdMm = 0.0;
    double tyreSdMm = 0.0;             ///< a nominal width against the inflated tyre on its rim
    std::size_t sizesInCommon = 0;     ///< that tell what all of a model have in common
    std::size_t alikeFigures = 0;      ///< that make two sizes one and the same
    double surelyBelowMm = 0.0;        ///< no drop is less, but with a small wheel
    double smallWheelMm = 0.0;         ///< a rim below it is one
    double dispersionOfRounding = 0.0; ///< chi squared a degree of freedom that rounding explains
    /// Outside of it a value takes no part in the equations.
    PerColumn<Range> plausible{};
    /// Spread of the second difference from size to size, in the column's unit; 0 where the column
    /// is not looked at in the run.
    PerColumn<double> unevenness{};
    double unevennessWeight = 0.0; ///< how many sizes that spread is worth against the table's own
    double runTail = 0.0;          ///< degrees of freedom of Student's t for a step out of the run
    double gainToTell = 0.0;       ///< a contradiction's log-likelihood gain, doubled
    double leastDeviation = 0.0;   ///< and the least that the equations alone say, in sd
    double tieGain = 0.0;          ///< entries that explain as much but for this are one tie group
    double unusualDeviation = 0.0; ///< out of the run, in sd
    double shareToRedefine = 0.0;  ///< of the sizes that must contradict a definition
    double shareToKeep = 0.0;      ///< of the sizes that may contradict the other one
    double coarseAngleDeg = 0.0;   ///< step in which makers round angles more coarsely than printed
    double coarseDispersion = 0.0; ///< chi squared a degree of freedom that makes one suspect it
};

} // namespace tripoise
