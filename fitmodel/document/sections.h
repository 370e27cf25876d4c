// SPDX-License-Identifier: MIT
//
// The sections of a fitting, each read from its object. Problems go to the fields' report; what the
// program does not know, and may keep, goes to `kept`.
#pragma once

#include "advice/tables.h"
#include "document/fields.h"

namespace tripoise {

using Kept = std::vector<KeptJson>;

// A document's text fields are bounded, so that what is written can always be read again.
inline constexpr std::size_t longestName = 1'000;
inline constexpr std::size_t longestNotes = 100'000;

[[nodiscard]] Rider readRider(Fields fields, const TapeTable& tape, Kept& kept);
[[nodiscard]] Riding readRiding(Fields fields, Kept& kept);
[[nodiscard]] CurrentBike readCurrent(Fields fields, Kept& kept);
[[nodiscard]] FrameSize readFrame(Fields fields, Kept& kept);
[[nodiscard]] Stock readStock(Fields fields);

/// Uses by the words for them.
inline constexpr auto useWords = [] {
    Words<Use, allUses.size()> words{};
    for (const Use use : allUses)
        words[indexOf(use)] = {keyOf(use), use};
    return words;
}();

} // namespace tripoise
