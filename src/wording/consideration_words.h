// SPDX-License-Identifier: MIT
//
// What is said of a consideration, one row each: its name in a sentence and on a line of for and
// against, its value, what it means, what its weight does, and why a size is named for it.
#pragma once

#include "advice/advise.h"

#include <QString>

namespace tripoise {

[[nodiscard]] QString nameOf(Consideration consideration);     ///< "room over the top tube"
[[nodiscard]] QString ledgerName(Consideration consideration); ///< "standing room"
/// "18 mm off", "+6°", "2.5 of 4 ways"; says so where the frame's table does not tell.
[[nodiscard]] QString ledgerValue(const LedgerEntry& entry, const PreparedSize& size);
/// What it is and why it counts; one or two sentences.
[[nodiscard]] QString ledgerMeaning(Consideration consideration);
/// What happens where it is made to weigh more.
[[nodiscard]] QString ledgerHeavier(Consideration consideration);
/// A size that is better than another in one consideration; it opens the sentence.
struct Compared {
    double mine = 0.0;
    double theirs = 0.0;
    const QString& subject;
    const QString& worse;
    bool faultless = false; ///< it costs nothing in it
};

/// "more room over the top tube"
[[nodiscard]] QString takenFor(Consideration consideration);

/// Why it is.
[[nodiscard]] QString reasonSentence(Consideration consideration, const Compared& compared);

} // namespace tripoise
