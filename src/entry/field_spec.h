// SPDX-License-Identifier: MIT
//
// What a number field asks for, and how it shows it.
#pragma once

#include "base/range.h"
#include "base/units.h"

#include <QString>

namespace tripoise {

/// Whether a field speaks the user's units, or millimetres as parts and frames are marked.
enum class Marked { AsParts, AsTheBody };

struct FieldSpec {
    QString label;
    NumberKind kind = NumberKind::Length;
    Range plausible;
    double step = 1.0; ///< of the arrow keys, in the unit shown
    int decimals = 0;  ///< shown at most, in millimetres, kilograms, degrees
    bool needed = false;
    Marked marked = Marked::AsParts;
    bool stature = false; ///< said in feet and inches
    bool twice = false;   ///< a second reading may stand behind a semicolon
};

} // namespace tripoise
