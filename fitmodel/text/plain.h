// SPDX-License-Identifier: MIT
//
// Text as it is typed or printed, in plain signs: figures of any script and width become 0 to 9,
// and there is one kind of blank, minus sign, prime and fraction. And the key by which words are
// compared.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tripoise {

/// One line's text in plain signs. What does not show goes; superscripts are footnote marks and go;
/// a narrow blank between figures groups them and goes; other blanks are blanks, tabs stay tabs.
/// Fractions are " n/d"; long dashes stay, for they also part a range. Linear in time.
[[nodiscard]] std::string plainSigns(std::string_view utf8);

/// Lines without their ends, at most `most` and one more.
[[nodiscard]] std::vector<std::string_view> linesOf(std::string_view text, std::size_t most);

[[nodiscard]] constexpr char smallLetter(char c)
{
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}
/// ASCII ones.
[[nodiscard]] std::string smallLetters(std::string_view text);
[[nodiscard]] constexpr bool isFigure(char c)
{
    return c >= '0' && c <= '9';
}
/// Begins with three figures and no fourth, as thousands are grouped.
[[nodiscard]] bool isGroup(std::string_view text);
[[nodiscard]] constexpr bool isLetter(char c)
{
    return smallLetter(c) >= 'a' && smallLetter(c) <= 'z';
}

[[nodiscard]] std::string_view trimmed(std::string_view text);

/// Words in small ASCII letters and figures, accents and umlauts dropped ("Länge" and "Laenge" are
/// both "lange"); kana and ideographs as they are. Two letters joined by a dash are one word, "c-t"
/// is "ct". Anything else parts words.
[[nodiscard]] std::vector<std::string> wordsOf(std::string_view text);

} // namespace tripoise
