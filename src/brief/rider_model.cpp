// SPDX-License-Identifier: MIT
#include "brief/rider_model.h"

#include "brief/keys.h"
#include "document/field_facts.h"
#include "document/limits.h"
#include "document/words.h"
#include "shipped/tables.h"
#include "text/encoding.h"
#include "wording/brief_words.h"

namespace tripoise {
namespace {

FieldSpec shoeSpec(const QString& label, const Limits& limits)
{
    FieldSpec spec;
    spec.label = label;
    spec.plausible = {limits.low, limits.high};
    return spec;
}

} // namespace

RiderModel::RiderModel(QObject* parent)
    : QObject(parent), m_sole(shoeSpec(soleLabel(), factsOf(&Shoe::soleMm).limits)),
      m_shoeLength(shoeSpec(shoeLengthLabel(), factsOf(&Shoe::lengthMm).limits))
{
    const auto bind = [this](NumberField& field, std::optional<double> Shoe::*length) {
        const auto write = [this, &field, length](std::optional<double> value) {
            change(field.label(), field.label(), [&](Rider& rider) { rider.shoe.*length = value; });
        };
        connect(&field, &NumberField::accepted, this, [write](double value) { write(value); });
        connect(&field, &NumberField::cleared, this, [write] { write(std::nullopt); });
        connect(&field, &NumberField::finished, this, [this] { sealStep(); });
    };
    bind(m_sole, &Shoe::soleMm);
    bind(m_shoeLength, &Shoe::lengthMm);
}

void RiderModel::sessionSet()
{
    on(&Session::fittingChanged, this, &RiderModel::follow);
    on(&Session::started, &m_sole, &NumberField::forget);
    on(&Session::started, &m_shoeLength, &NumberField::forget);
    on(&Session::speechChanged, [this] {
        m_sole.setLabel(soleLabel());
        m_shoeLength.setLabel(shoeLengthLabel());
        m_sole.speakAnew();
        m_shoeLength.speakAnew();
        emit changed();
    });
    follow();
    emit sessionChanged();
}

void RiderModel::follow()
{
    const Rider& rider = fitting().rider;
    m_sole.setValue(rider.shoe.soleMm);
    m_sole.setStandIn(shippedTables().parts.soleMm);
    m_shoeLength.setValue(rider.shoe.lengthMm);
    emit changed();
}

template <typename Change>
void RiderModel::change(const QString& what, const QString& key, const Change& change)
{
    Fitting next = fitting();
    change(next.rider);
    edit(std::move(next), what, key);
}

QString RiderModel::label() const
{
    return QString::fromStdString(fitting().rider.label);
}

void RiderModel::setLabel(const QString& label)
{
    change(tr("name"), QStringLiteral("rider/label"),
           [&](Rider& rider) { rider.label = cutToBytes(label.toStdString(), longestName); });
}

QString RiderModel::notes() const
{
    return QString::fromStdString(fitting().rider.notes);
}

void RiderModel::setNotes(const QString& notes)
{
    change(tr("notes"), QStringLiteral("rider/notes"),
           [&](Rider& rider) { rider.notes = cutToBytes(notes.toStdString(), longestNotes); });
}

QString RiderModel::sex() const
{
    return wordFor(sexWords, fitting().rider.sex);
}

void RiderModel::setSex(const QString& sex)
{
    change(tr("body statistics"), {},
           [&](Rider& rider) { rider.sex = valueOf(sexWords, sex.toStdString()); });
}

QString RiderModel::flexibility() const
{
    return wordFor(flexibilityWords, fitting().rider.flexibility);
}

void RiderModel::setFlexibility(const QString& flexibility)
{
    change(tr("suppleness"), {}, [&](Rider& rider) {
        rider.flexibility = valueOf(flexibilityWords, flexibility.toStdString());
    });
}

QString RiderModel::heelHabit() const
{
    return wordFor(heelHabitWords, std::optional(fitting().rider.heelHabit));
}

void RiderModel::setHeelHabit(const QString& habit)
{
    if (const auto value = valueOf(heelHabitWords, habit.toStdString()))
        change(tr("heel"), {}, [&](Rider& rider) { rider.heelHabit = *value; });
}

QString RiderModel::summary() const
{
    return riderSummary(fitting().rider);
}

} // namespace tripoise
