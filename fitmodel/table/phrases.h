// SPDX-License-Identifier: MIT
//
// A phrase, then as many values in every line, with single blanks, as text is copied from printed
// pages.
#pragma once

#include "table/cuts.h"
#include "table/tokens.h"

namespace tripoise::table {

class Phrases {
public:
    Phrases(const std::vector<PlainLine>& lines, CellReader& reader);

    [[nodiscard]] bool found() const { return m_count > 0; }
    /// The cells of one line.
    Cells operator()(const std::string& text);

private:
    bool is(CellKind kind, const std::string& token) { return m_reader.kindOf(token) == kind; }
    std::size_t valuesFrom(const Cells& tokens);
    /// The cells at the end of a line, a unit taken together with its number.
    Cells valueCells(const Cells& tokens, std::size_t from);

    CellReader& m_reader;
    std::size_t m_count = 0;
};

} // namespace tripoise::table
