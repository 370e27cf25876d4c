// SPDX-License-Identifier: MIT
#include "brief/form.h"

#include "wording/entry_words.h"

namespace tripoise {
namespace {

NumberKind kindOf(std::string_view unit)
{
    if (unit == "mm")
        return NumberKind::Length;
    if (unit == "kg")
        return NumberKind::Mass;
    return unit == "deg" ? NumberKind::Angle : NumberKind::Plain;
}

} // namespace

NumberField* makeField(const char* key, const FieldFacts& facts, Marked marked, QObject* parent)
{
    auto* field = new NumberField({entryName(key),
                                   kindOf(facts.limits.unit),
                                   {facts.limits.low, facts.limits.high},
                                   facts.step,
                                   facts.decimals,
                                   facts.needed,
                                   marked,
                                   false},
                                  parent);
    field->setObjectName(QString::fromLatin1(key));
    return field;
}

void showIn(NumberField& field, std::optional<double> value, std::optional<Estimate> standIn,
            int decimals)
{
    field.setValue(value);
    if (standIn)
        field.setStandIn(standIn->value, standInText(*standIn, decimals));
    else
        field.setStandIn(std::nullopt);
}

void nameAgain(NumberField& field)
{
    field.setLabel(entryName(field.objectName().toStdString()));
    field.speakAnew();
}

QString datumOf(const NumberField* field)
{
    if (!field)
        return {};
    return datumText(entryDatum(field->objectName().toStdString()), field->rangeText());
}

} // namespace tripoise
