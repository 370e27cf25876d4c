// SPDX-License-Identifier: MIT
//
// Foreign text made safe: names, file names and figures that come out of a file or off a clipboard
// may hold characters that a terminal obeys, that turn the direction of what follows, or that XML
// does not allow (XML 1.0, fifth edition, production 2; Unicode 15, 23.1 and 23.2, and UAX 9 for
// the directions). Each of them is written as JSON would escape it, "\u001b", so that one sees what
// stands there, and JSON that holds it means the same.
#pragma once

#include <QString>

#include <string>

namespace tripoise {

/// For a terminal or a file that may get onto one: ends of lines and tabs stay.
[[nodiscard]] QString visible(const QString& text);
/// The same on one line, as a message about one problem is.
[[nodiscard]] QString visibleLine(const QString& text);

/// A name as it stands in a sentence or on a drawing: on one line, blanks not doubled, and of one
/// that is longer than any in use its beginning.
[[nodiscard]] QString asName(const std::string& name);

} // namespace tripoise
