// SPDX-License-Identifier: MIT
//
// What a table says beside its cells: what the drawing's letters are, in which unit all is, its
// title.
#pragma once

#include "table/headings.h"

#include <map>
#include <string>
#include <string_view>

namespace tripoise::table {

/// The unit that a note or the title of a group states; "in" is a word there as well.
[[nodiscard]] Unit statedIn(std::string_view text, const HeadingTable& table);

/// What a title says beside "geometry" and such words.
[[nodiscard]] std::string titleOf(std::string_view text, const HeadingTable& table);

/// What is drawn as A, B, C and named elsewhere: "A = stack, B = reach".
class Legend {
public:
    /// Whether the text is one.
    bool take(std::string_view text, const HeadingTable& table);
    [[nodiscard]] const HeadingRead* named(const std::string& letter) const;

private:
    bool takeOne(std::string_view text, std::string_view signs, const HeadingTable& table);

    std::map<std::string, HeadingRead> m_named;
};

} // namespace tripoise::table
