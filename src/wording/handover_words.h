// SPDX-License-Identifier: MIT
//
// The finished bicycle against what was handed to the workshop, in words.
#pragma once

#include "document/handed_over.h"
#include "wording/sections.h"

#include <QString>
#include <QStringList>

class QDate;

namespace tripoise {

[[nodiscard]] const char* keyOf(BuiltPlace place); ///< "saddle_height_mm"
[[nodiscard]] QString nameOf(BuiltPlace place);
/// "Saddle height: 748 mm instead of 742 mm."
[[nodiscard]] QString builtSentence(const BuiltReading& reading);
/// What another place of saddle or hands does to the rider, against a posture before: "The back
/// rises 52° instead of 49°."; of findings those of another kind than are known already.
[[nodiscard]] QStringList postureEffects(const Tried& rider, const std::vector<UsePosture>& before,
                                         const LegPosture& leg, const Findings& known);
/// What being off does to the rider: "The back rises 52° instead of 49°."
[[nodiscard]] QStringList builtEffects(const Finished& finished);
[[nodiscard]] Section builtSection(const AsBuilt& built, const Finished& finished);
[[nodiscard]] QString builtOf(const AsBuilt& built); ///< "Millrace M, 27/11/2026"
[[nodiscard]] QString builtSummary(int off);
[[nodiscard]] QString builtGone(); ///< it is no longer among the sizes
[[nodiscard]] QString dayName(const QDate& day);

/// What a step of undo is called.
[[nodiscard]] QString builtStep(const QString& what);
[[nodiscard]] QString builtNotesStep();
[[nodiscard]] QString builtClearStep();

} // namespace tripoise
