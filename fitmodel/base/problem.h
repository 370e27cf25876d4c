// SPDX-License-Identifier: MIT
//
// What is wrong with an input, as a value: which field, what it holds, what would be accepted.
// Sentences are made elsewhere.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace tripoise {

enum class ProblemCode {
    NotReadable,   ///< the file cannot be opened or read
    TooLarge,      ///< the document is larger than `high` bytes
    NotJson,       ///< not JSON, or cut short; `value` says where
    TooDeep,       ///< nested deeper than `high` levels
    DuplicateKey,  ///< the same key twice in one object
    WrongFormat,   ///< another kind of document
    NewerVersion,  ///< a version this program does not know; `high` is the newest it does
    WrongType,     ///< `names[0]` says which type is wanted
    Moved,         ///< an earlier version had it here; `names[0]` is where it is now
    UnknownKey,    ///< `names` are the nearest known keys
    Missing,       ///< a required field; `names` are fields that would do as well
    OutOfRange,    ///< outside `low`..`high`
    UnitSlip,      ///< outside the range, and inside it in another unit, `names[0]`
    NotOneOf,      ///< `names` are the accepted words; `value` is empty where the field is missing
    TooFew,        ///< a list with fewer than `low` entries
    TooMany,       ///< a list with more than `high` entries; of a page `names[0]` says of what
    SharesSum,     ///< shares that do not sum to 1
    Contradiction, ///< contradicts the field `names[0]`, whose value leaves `low`..`high`
    NotADay,       ///< no day as year-month-day
    DayTooEarly,   ///< a day before that at path `names[0]`, `names[1]`
    Duplicate,     ///< the same as the entry at path `names[0]`
    TooManySetups, ///< sizes and box make `value` set-ups, more than `high`; the path and
                   ///< `names[0]` are the longest lists
    NothingFits,   ///< no stem fits any steerer and bar; `names` are the sizes wanted
    // of a geometry table; the path is "line 7" or empty
    NotText,      ///< a picture or another file of bytes
    Markup,       ///< the source of a page rather than its text
    NoTable,      ///< prose, or nothing
    NoGeometry,   ///< a table, but none of a frame's geometry
    SecondTable,  ///< a table that is not read begins at the path
    NoSizes,      ///< no names of sizes; they are counted
    SizeTwice,    ///< two sizes of one name; `names[0]` is what the second is called
    ColumnTwice,  ///< a second column means the same as that on line `names[0]`, `names[1]`
    MixedUnits,   ///< `names` are cells in other units than the rest of their column
    UnitDoubtful, ///< stated in `names[0]`, plausible in `names[1]`
    OtherMeaning, ///< headed as `names[0]`, by its numbers `names[1]`
    NotANumber,   ///< a cell that holds no number
    ShortRow, ///< `value` rows, `names` the first, of another number of cells than there are places
    OtherTables,   ///< the page holds more tables than are read
    SizesGuessed,  ///< there are other numbers of names than of places
    ColumnGuessed, ///< the meaning of a column, `names[0]`, is for a person to confirm
};

struct Problem {
    ProblemCode code = {};
    std::string path;  ///< JSON pointer, "/frames/1/geometry/stack_mm"
    std::string value; ///< as found, shortened when long
    std::optional<double> low;
    std::optional<double> high;
    std::string unit;
    std::vector<std::string> names;

    bool operator==(const Problem&) const = default;
};

using Problems = std::vector<Problem>;

} // namespace tripoise
