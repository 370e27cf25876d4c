// SPDX-License-Identifier: MIT
//
// A form: number fields for a list of entries, showing one thing and reporting what is typed.
#pragma once

#include "brief/entry_of.h"
#include "entry/number_field.h"

#include <QList>
#include <QObject>

#include <functional>
#include <span>
#include <vector>

namespace tripoise {

/// A field without a value, named for its entry, which is also its object name.
[[nodiscard]] NumberField* makeField(const char* key, const FieldFacts& facts, Marked marked,
                                     QObject* parent);
void showIn(NumberField& field, std::optional<double> value, std::optional<Estimate> standIn,
            int decimals);
void nameAgain(NumberField& field); ///< the language changed
/// From where to where a field's number is taken, and what it takes.
[[nodiscard]] QString datumOf(const NumberField* field);

template <typename Whole> class FormOf {
public:
    using Entry = EntryOf<Whole>;
    using Typed = std::function<void(const Entry& entry, std::optional<double> value)>;

    /// `typed` gets a number, or nothing when the field was emptied; `left` is called when the keys
    /// leave it.
    FormOf(std::span<const Entry> entries, QObject* parent, const Typed& typed,
           const std::function<void()>& left, Marked marked = Marked::AsParts)
    {
        for (const Entry& entry : entries) {
            NumberField* field = makeField(entry.key, entry.facts, marked, parent);
            QObject::connect(field, &NumberField::accepted, parent,
                             [typed, &entry](double value) { typed(entry, value); });
            QObject::connect(field, &NumberField::cleared, parent,
                             [typed, &entry] { typed(entry, std::nullopt); });
            QObject::connect(field, &NumberField::finished, parent, left);
            m_rows.push_back({&entry, field});
        }
    }

    void show(const Whole& whole, const Tables& tables) const
    {
        for (const Row& row : m_rows) {
            const auto value = row.entry->read(whole);
            const auto standIn =
                row.entry->standIn && !value ? row.entry->standIn(whole, tables) : std::nullopt;
            showIn(*row.field, value, standIn, row.entry->facts.decimals);
        }
    }
    void nameAgain() const
    {
        for (const Row& row : m_rows)
            tripoise::nameAgain(*row.field);
    }
    [[nodiscard]] QList<QObject*> fields() const
    {
        QList<QObject*> list;
        for (const Row& row : m_rows)
            list << row.field;
        return list;
    }
    [[nodiscard]] NumberField* field(std::string_view key) const
    {
        for (const Row& row : m_rows)
            if (row.entry->key == key)
                return row.field;
        return nullptr;
    }

private:
    struct Row {
        const Entry* entry; // of a list that lasts
        NumberField* field;
    };
    std::vector<Row> m_rows;
};

} // namespace tripoise
