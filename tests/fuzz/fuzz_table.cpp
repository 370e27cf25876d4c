// SPDX-License-Identifier: MIT
//
// Any bytes, a page's source among them, are read as a geometry table or refused with a word, none
// of the cells is lost, and what is read closes with finite figures.
#include "document/read.h"
#include "frame/candidates.h"
#include "table/read_table.h"

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <sstream>

using namespace tripoise;

namespace {

std::string textOf(const char* path)
{
    std::ostringstream text;
    text << std::ifstream(path, std::ios::binary).rdbuf();
    return text.str();
}

template <typename Value> Value sound(std::variant<Value, Problems> read)
{
    if (!std::holds_alternative<Value>(read)) {
        std::fputs("constant tables cannot be read\n", stderr);
        std::abort();
    }
    return std::get<Value>(std::move(read));
}

const HeadingTable& headings()
{
    static const HeadingTable table = sound(
        readHeadingTable(textOf(TRIPOISE_ASSETS "/headings.json"),
                         sound(readNumberWords(textOf(TRIPOISE_ASSETS "/number_words.json")))));
    return table;
}

const ClosureTable& closure()
{
    static const ClosureTable table = [] {
        FrameDefaults defaults; // as assets/parts.json has them, near enough
        defaults.seatAngleDeg = 73;
        defaults.bbDropMm = 70;
        defaults.chainstayMm = 435;
        defaults.forkOffsetMm = 47;
        defaults.forkLengthMm = 395;
        defaults.lowerHeadsetMm = 8;
        defaults.beadSeatMm = 622;
        defaults.tyreMm = 35;
        return sound(readClosureTable(textOf(TRIPOISE_ASSETS "/closure.json"), defaults));
    }();
    return table;
}

void require(bool sound)
{
    if (!sound)
        std::abort();
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    ReadTable read = readGeometryTable(text, headings());
    require(read.readable() || !read.problems.empty());      // refused without a word
    if (const auto page = tableTextOfPage(text, headings())) // what a page becomes is text
        (void)readGeometryTable(*page, headings());
    // Whatever a person assigns to the first column.
    if (!read.columns.empty() && size > 0) {
        const auto meaning = static_cast<Column>(data[size - 1] % columnCount);
        read = readGeometryTable(text, headings(), {{std::size_t{0}, meaning}});
    }
    for (const ReadColumn& column : read.columns)
        require(column.entries.size() == read.sizes.size());
    for (const auto& row : read.rows)
        for (const TableCell& cell : row) {
            require(cell.text.empty() == (cell.state == CellState::Blank));
            require(!cell.column || *cell.column < read.columns.size());
            require(!cell.size || *cell.size < read.sizes.size());
        }
    const GeometryTable geometry = geometryOf(read);
    // Most of the time would go into trying other definitions: one input in sixteen has it.
    const ClosedTable closed = closeTable(geometry, closure(), {.redefine = size % 16 == 0});
    require(closed.sizes.size() == geometry.sizes.size());
    for (const ClosedSize& one : closed.sizes)
        for (const ClosedValue& value : one.values)
            require(std::isfinite(value.value.value) && std::isfinite(value.value.sd));
    for (const Contradiction& one : closed.contradictions)
        require(std::isfinite(one.agreesWithRest));
    (void)framesOf(geometry, closed);
    return 0;
}
