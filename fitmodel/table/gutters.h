// SPDX-License-Identifier: MIT
//
// Text in columns: cells between the columns that are blank in all lines, two of them or more, or
// one before a column at which most lines begin a cell. Lines of few pieces, titles and notes, have
// no say. A line stays whole where a word stands in a gutter, or where numbers of a line that lacks
// one stand otherwise than those of full lines.
#pragma once

#include "table/cuts.h"
#include "table/tokens.h"

#include <array>
#include <set>

namespace tripoise::table {

class Gutters {
public:
    Gutters(const std::vector<PlainLine>& lines, CellReader& reader);

    /// The cells of one line.
    Cells operator()(const std::string& text);

private:
    void findEnds(const std::vector<PlainLine>& lines);
    Cells cellsOf(const std::string& text) const;
    bool isFull(const Cells& cells) const;
    bool standsAsOthers(const Cells& cells);

    /// Where the number in a cell begins and ends.
    struct Edges {
        std::size_t cell = 0;
        std::array<std::size_t, 2> both;
    };
    std::vector<Edges> edgesOf(const Cells& cells);

    CellReader& m_reader;
    std::vector<std::size_t> m_ends;            ///< the columns at which a cell ends
    std::vector<std::set<std::size_t>> m_edges; ///< of the numbers of full lines, by cell
};

} // namespace tripoise::table
