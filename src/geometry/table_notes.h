// SPDX-License-Identifier: MIT
//
// What is to be said about a geometry table, the gravest first, and what one click does about it.
#pragma once

#include "geometry/table_work.h"

#include <QMetaType>
#include <QString>

#include <optional>
#include <variant>
#include <vector>

namespace tripoise {

struct TakeFigure { ///< what would agree
    Correction correction;
    bool operator==(const TakeFigure&) const = default;
};
struct LeaveFigure { ///< as it is printed, after all
    Correction correction;
    bool operator==(const LeaveFigure&) const = default;
};
struct ReadAsHeaded { ///< or by the definitions that agree
    bool asHeaded = true;
    bool operator==(const ReadAsHeaded&) const = default;
};
struct SayMeaning { ///< of a column that is not understood
    std::size_t readColumn = 0;
    bool operator==(const SayMeaning&) const = default;
};
struct ConfirmGuess { ///< of what a column means; without one, of which size has which numbers
    std::optional<std::size_t> readColumn;
    bool operator==(const ConfirmGuess&) const = default;
};
using TableStep =
    std::variant<std::monostate, TakeFigure, LeaveFigure, ReadAsHeaded, SayMeaning, ConfirmGuess>;

enum class NoteLevel { Wrong, Odd, Note };

struct TableNote {
    Q_GADGET
    Q_PROPERTY(QString told MEMBER told)
    Q_PROPERTY(QString level READ levelKey)
    Q_PROPERTY(QString stepText MEMBER stepText)

public:
    QString told;
    NoteLevel level = NoteLevel::Note;
    QString stepText; ///< on the button; empty where there is none
    TableStep step;

    [[nodiscard]] QString levelKey() const; ///< "wrong", "odd" or "note"
    bool operator==(const TableNote&) const = default;
};

[[nodiscard]] std::vector<TableNote> tableNotes(const TableAnswer& answer, bool asHeaded);

} // namespace tripoise
