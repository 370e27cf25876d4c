// SPDX-License-Identifier: MIT
//
// A line of headings above lines of a size and its values, all with single blanks, as text is
// copied from printed pages: cut where each heading is understood, one for each place of the lines
// below. The way to cut is the best of all by a table over tokens and counts of headings (dynamic
// programming); where two are alike there is none.
#pragma once

#include "table/cuts.h"
#include "table/tokens.h"

namespace tripoise::table {

class HeadedColumns {
public:
    HeadedColumns(const std::vector<PlainLine>& lines, CellReader& reader);

    [[nodiscard]] bool found() const { return !m_headings.empty(); }
    /// The cells of one line.
    Cells operator()(const std::string& text);

private:
    Cells valuesIn(const std::string& text);
    bool isUnit(const std::string& token);
    int worthOf(const Cells& tokens, std::size_t from, std::size_t to);
    Cells headingsIn(const Cells& tokens);

    CellReader& m_reader;
    const ReadingLimits& m_limits;
    std::size_t m_count = 0;
    Cells m_headings;
    std::string m_headingLine;
};

} // namespace tripoise::table
