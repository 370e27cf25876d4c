// SPDX-License-Identifier: MIT
//
// A page's source (HTML) taken apart into text and tags.
//
// A tokeniser for tables alone: scripts, styles, comments and pictures are passed over, and so are
// footnote marks. Nothing is executed, fetched or opened. One pass, linear in the bytes.
#pragma once

#include <string>
#include <string_view>

namespace tripoise::table {

struct Tag {
    std::string name; ///< small letters
    bool closes = false;
    bool hidden = false; ///< is not shown: a duplicate for small screens, the other unit
    std::size_t across = 1;
    std::size_t down = 1;
};

/// What takes the pieces of a page in their order.
class PageSink {
public:
    virtual ~PageSink() = default;
    virtual void put(std::string_view text) = 0; ///< as it stands, for `addText`
    virtual void take(const Tag& tag) = 0;
    [[nodiscard]] virtual bool isFull() const = 0; ///< the rest is of no use
};

void readPage(std::string_view page, PageSink& sink);

/// Adds text with its named characters resolved and one blank for any blanks, tabs and line breaks.
void addText(std::string& to, std::string_view text);

/// Elements that stand in a line of text.
[[nodiscard]] bool isInline(std::string_view name);

/// "h1" to "h3"
[[nodiscard]] bool isTitle(const Tag& tag);

/// From one place on, upper and lower case alike; `npos` where there is none.
[[nodiscard]] std::size_t findSmall(std::string_view text, std::string_view what, std::size_t from);

} // namespace tripoise::table
