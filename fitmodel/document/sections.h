// SPDX-License-Identifier: MIT
//
// The sections of a fitting, each read from its object. Problems go to the fields' report; what the
// program does not know, and may keep, goes to `kept`.
#pragma once

#include "advice/tables.h"
#include "document/fields.h"

namespace tripoise::document {

using Kept = std::vector<KeptJson>;

[[nodiscard]] Rider readRider(Fields fields, const TapeTable& tape, Kept& kept);
[[nodiscard]] Riding readRiding(Fields fields, Kept& kept);
[[nodiscard]] CurrentBike readCurrent(Fields fields, Kept& kept);
[[nodiscard]] FrameSize readFrame(Fields fields, Kept& kept);
/// Frames from a list of them; the same size of a model may stand once.
[[nodiscard]] std::vector<FrameSize> readFrames(Fields& fields, std::string_view key, Kept& kept);
/// The name of a frame's size: a word or a number.
[[nodiscard]] std::string readSize(Fields& fields);
[[nodiscard]] Stock readStock(Fields fields);
[[nodiscard]] Choices readChoices(Fields fields, Kept& kept);

/// Uses by the words for them.
inline constexpr auto useWords = [] {
    Vocabulary<Use, allUses.size()> words{};
    for (const Use use : allUses)
        words[indexOf(use)] = {keyOf(use), use};
    return words;
}();

} // namespace tripoise::document
