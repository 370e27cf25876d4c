// SPDX-License-Identifier: MIT
#include "decision/ride_model.h"

#include "wording/remedy_words.h"
#include "wording/ride_rows.h"
#include "wording/words.h"

namespace tripoise {
namespace {

QVariantMap mapOf(const Section& section)
{
    QStringList items;
    for (const QString& item : section.items)
        items << unbroken(item);
    return {{QStringLiteral("heading"), section.heading},
            {QStringLiteral("items"), items},
            {QStringLiteral("meaning"), section.meaning}};
}

const Ride* rideOf(const Candidate& candidate)
{
    return candidate.ride ? &*candidate.ride : nullptr;
}

} // namespace

void RideModel::setFigures(bool figures)
{
    if (m_figures == figures)
        return;
    m_figures = figures;
    emit figuresChanged();
    renew();
}

bool RideModel::acknowledged() const
{
    return fitting().choices.toeTold;
}

void RideModel::setAcknowledged(bool acknowledged)
{
    if (acknowledged == this->acknowledged())
        return;
    Fitting next = fitting();
    next.choices.toeTold = acknowledged;
    edit(std::move(next), toeToldStep(), QStringLiteral("toe told"));
}

void RideModel::sessionSet()
{
    on(&Session::fittingChanged, this, &RideModel::acknowledgedChanged);
    SetupTable::sessionSet();
}

void RideModel::renew()
{
    std::vector<SetupRow> rows;
    QString first, second;
    Told told;
    if (const Candidate* one = shown()) {
        const Prepared& prepared = *solution()->prepared;
        const auto title = [&](const Candidate& candidate) {
            return sizeLabel(prepared.sizes[candidate.size].frame, prepared);
        };
        RideColumns columns{rideOf(*one)};
        first = title(*one);
        told.remedies = mapOf(remediesSection(*one, prepared));
        const Candidate* other = beside();
        if (other) {
            columns.push_back(rideOf(*other));
            second = title(*other);
        }
        told.otherRemedies = mapOf(other ? remediesSection(*other, prepared) : Section{});
        told.overlaps = one->ride && one->ride->toe && one->ride->toe->overlapMm > 0.0;
        told.acknowledge = toeToldWords();
        told.caution = rideCaution();
        rows = m_figures ? rideFigureRows(columns) : rideRows(columns);
    }
    tell(rows, first, second);
    if (told != m_told) {
        m_told = std::move(told);
        emit this->told();
    }
    emit acknowledgedChanged();
}

} // namespace tripoise
