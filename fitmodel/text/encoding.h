// SPDX-License-Identifier: MIT
//
// Characters out of bytes, and back. All text of the model is UTF-8.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace tripoise {

inline constexpr char32_t noCharacter = 0xFFFFFFFF;

/// The character that starts at `at`, which moves on; `noCharacter` where the bytes are none.
[[nodiscard]] char32_t nextCharacter(std::string_view text, std::size_t& at);
void appendUtf8(std::string& text, char32_t c);

/// UTF-8 of bytes in UTF-8, UTF-16 with its mark, or Windows-1252; nothing where they are no text.
[[nodiscard]] std::optional<std::string> decoded(std::string_view bytes);

/// Of UTF-8: a byte that no character starts with.
[[nodiscard]] constexpr bool isContinuation(char byte)
{
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

/// Cut between characters to so many bytes.
[[nodiscard]] std::string_view cutToBytes(std::string_view text, std::size_t most);

} // namespace tripoise
