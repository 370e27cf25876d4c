// SPDX-License-Identifier: MIT
#include "brief/form.h"

#include "wording/entry_words.h"
#include "wording/words.h"
namespace tripoise {
NumberField* makeField(const char* key, const Limits& limits, double, int, bool needed, Marked,
                       QObject* parent)
{
    auto* f = new NumberField(parent);
    f->m_label = entryName(key);
    f->low = limits.low;
    f->high = limits.high;
    f->optional = !needed;
    return f;
}
void showIn(NumberField& field, std::optional<double> value, std::optional<Estimate> standIn)
{
    if (field.m_value != value)
        field.setValue(value);
    field.m_placeholder = standIn ? QString::number(standIn->value) : QString();
    emit field.changed();
}
void nameAgain(NumberField& field, const char* key)
{
    field.m_label = entryName(key);
    emit field.changed();
}
} // namespace tripoise
