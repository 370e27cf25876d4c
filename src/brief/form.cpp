// SPDX-License-Identifier: MIT
#include "brief/form.h"

#include "wording/entry_words.h"

namespace tripoise {
namespace {

Dimension dimensionOf(std::string_view unit)
{
    return unit == "mm"    ? Dimension::Length
           : unit == "kg"  ? Dimension::Mass
           : unit == "deg" ? Dimension::Angle
                           : Dimension::Plain;
}

} // namespace

NumberField* makeField(const char* key, const Limits& limits, double step, int decimals,
                       bool needed, Marked marked, QObject* parent)
{
    FieldSpec spec;
    spec.label = entryName(key);
    spec.dimension = dimensionOf(limits.unit);
    spec.plausible = {limits.low, limits.high};
    spec.step = step;
    spec.decimals = decimals;
    spec.needed = needed;
    spec.marked = marked;
    return new NumberField(spec, parent);
}

void showIn(NumberField& field, std::optional<double> value, std::optional<Estimate> standIn)
{
    field.setValue(value);
    field.setStandIn(standIn ? std::optional(standIn->value) : std::nullopt);
    field.setRemark(standIn && standIn->origin == Origin::Assumed ? originText(Origin::Assumed)
                                                                  : QString(),
                    false);
}

void nameAgain(NumberField& field, const char* key)
{
    field.setLabel(entryName(key));
    field.speakAnew();
}

} // namespace tripoise
