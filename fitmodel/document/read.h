// SPDX-License-Identifier: MIT
//
// JSON in and out. Nothing here throws; every problem of a document is reported at once, each with
// its path, its value and what would be accepted.
#pragma once

#include "advice/tables.h"
#include "base/problem.h"
#include "document/fitting.h"
#include "frame/closure_table.h"
#include "table/headings.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace tripoise {

/// A fitting, or what is wrong with the text. The tables give the plausible range of each
/// measurement and the part sizes that are meant where none is stated.
[[nodiscard]] std::variant<Fitting, Problems> readFitting(std::string_view text,
                                                          const Tables& tables);

/// The same of a fitting that is still being filled in: anything a decision needs may be absent,
/// and what stands there need not agree yet, but each number must be valid by itself. What else a
/// decision needs is told by `lacks`.
[[nodiscard]] std::variant<Fitting, Problems> readDraft(std::string_view text,
                                                        const Tables& tables);

/// What can be made out of a fitting of a version newer than this program's, to be looked at only:
/// it cannot be written again without loss. Nothing where the text is not such a fitting.
[[nodiscard]] std::optional<Fitting> readNewer(std::string_view text, const Tables& tables);

/// The sizes of a frame model's file; each carries the model's name.
[[nodiscard]] std::variant<std::vector<FrameSize>, Problems> readFrameModel(std::string_view text);

/// The file of a frame model; readFrameModel(writeFrameModel(m, sizes)) == sizes, each of model m.
[[nodiscard]] std::string writeFrameModel(const std::string& model,
                                          const std::vector<FrameSize>& sizes);

/// UTF-8 JSON with all that was kept put back; readFitting(writeFitting(f)) == f, and the same for
/// a draft.
[[nodiscard]] std::string writeFitting(const Fitting& fitting);

/// All that is wrong with a fitting that is to be decided; what reading it as a whole would say.
[[nodiscard]] Problems validate(const Fitting& fitting, const Tables& tables);

// JSON Schema (draft 7) of the documents.
[[nodiscard]] std::string fittingSchema(const Tables& tables);
[[nodiscard]] std::string frameModelSchema(const Tables& tables);

/// The texts of the files under assets/ that hold the constant tables.
struct TableTexts {
    std::string_view anthropometry;
    std::string_view tape;
    std::string_view body;
    std::string_view comfort;
    std::string_view parts;
    std::string_view weights;
    std::string_view segments;
    std::string_view handling;
};

/// The tables, or what is wrong with them (paths start with the file's name).
[[nodiscard]] std::variant<Tables, Problems> readTables(const TableTexts& texts);

/// assets/closure.json; what is ordinary comes from the stand-ins where these have it.
[[nodiscard]] std::variant<ClosureTable, Problems> readClosureTable(std::string_view text,
                                                                    const FrameDefaults& defaults);

/// assets/number_words.json
[[nodiscard]] std::variant<NumberWords, Problems> readNumberWords(std::string_view text);

/// assets/headings.json; a term that would stand for two columns is a problem.
[[nodiscard]] std::variant<HeadingTable, Problems> readHeadingTable(std::string_view text,
                                                                    NumberWords numbers);

} // namespace tripoise
