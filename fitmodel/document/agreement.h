// SPDX-License-Identifier: MIT
//
// What must hold between fields that are each valid by themselves. Asked of values, so that a
// document that was read and a fitting in the window are held to the same.
#pragma once

#include "advice/tables.h"
#include "document/fields.h"

namespace tripoise::document {

/// The same size of a model stands once.
void checkDifferent(const std::vector<FrameSize>& frames, const std::string& path, Report& report);

/// There is a crank, a bar of the kind that is wanted, a stem that joins a steerer to a bar, and
/// not too many set-ups. What is wrong already with frames or parts is not told again.
void checkParts(const Fitting& fitting, const Tables& tables, Report& report);

/// A trial is of a size that is there, a set-up that was chosen of the size that was chosen.
void checkTrialsSize(const Fitting& fitting, Report& report);

} // namespace tripoise::document
