// SPDX-License-Identifier: MIT
//
// A visit after the bicycle was built: where the contacts are by now, and what to change next
// because of what the rider says. One thing at a time; what was tried for the same complaint and
// did not help is not proposed again, nor what brings a joint further out of its comfortable range.
#pragma once

#include "advice/trial.h"
#include "advice/visit.h"

#include <optional>
#include <span>
#include <vector>

namespace tripoise {

/// The contacts after all that was changed since.
[[nodiscard]] Contacts movedBy(Contacts contacts, const Moved& moved);
[[nodiscard]] Contacts contactsAfter(Contacts built, std::span<const Visit> visits);

/// What a change moves, in a visit's terms.
[[nodiscard]] Moved movedOf(const ChangeStep& step);

struct NextChange {
    std::optional<Complaint> complaint; ///< empty for a step of the way to the set-up itself
    ChangeStep step;
    Moved moved;
    /// The rider after it; empty where no contact moves.
    std::optional<Tried> then;
};

struct NextVisit {
    Contacts now;               ///< before anything is changed at it
    std::optional<Tried> rider; ///< on them
    /// The next step of a staged set-up, then one for each complaint, in the order they were said;
    /// where all were tried there is none.
    std::vector<NextChange> changes;
    /// Complaints that lasted through a change made for them, or whose changes are all tried: for a
    /// health professional, or for another bicycle.
    std::vector<Complaint> lasting;
};

/// Of the last of `visits`, which must not be empty; `built` are the contacts of the finished
/// bicycle, `advised` the advised set-up of its size, `toGo` what a first step left of the way to
/// it.
[[nodiscard]] NextVisit nextVisit(const Contacts& built, std::span<const Visit> visits,
                                  const Point& toGo, const AdvisedSetup& advised,
                                  const PreparedSize& size, const Basis& basis);

} // namespace tripoise
