// SPDX-License-Identifier: MIT
#include "brief/rider_model.h"

#include "command/tables.h"
#include "document/limits.h"
#include "document/plausible.h"
#include "document/words.h"
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

template <typename Value, std::size_t size>
QString textOf(const Vocabulary<Value, size>& words, std::optional<Value> value)
{
    if (!value)
        return {};
    const std::string_view word = wordOf(words, *value);
    return QString::fromUtf8(word.data(), qsizetype(word.size()));
}

} // namespace

RiderModel::RiderModel(QObject* parent)
    : QObject(parent), m_sole(shoeSpec(soleLabel(), plausible::sole)),
      m_shoeLength(shoeSpec(shoeLengthLabel(), plausible::shoeLength))
{
    const auto bind = [this](NumberField& field, std::optional<double> Shoe::*length) {
        const auto write = [this, &field, length](std::optional<double> value) {
            edit(field.label(), field.label(), [&](Rider& rider) { rider.shoe.*length = value; });
        };
        connect(&field, &NumberField::accepted, this, [write](double value) { write(value); });
        connect(&field, &NumberField::cleared, this, [write] { write(std::nullopt); });
        connect(&field, &NumberField::finished, this, [this] {
            if (m_session)
                m_session->sealStep();
        });
    };
    bind(m_sole, &Shoe::soleMm);
    bind(m_shoeLength, &Shoe::lengthMm);
}

void RiderModel::setSession(Session* session)
{
    if (m_session == session)
        return;
    m_session = session;
    connect(session, &Session::fittingChanged, this, &RiderModel::follow);
    connect(session, &Session::started, &m_sole, &NumberField::forget);
    connect(session, &Session::started, &m_shoeLength, &NumberField::forget);
    connect(session, &Session::speechChanged, this, [this] {
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
    const Rider& rider = m_session->fitting().rider;
    m_sole.setValue(rider.shoe.soleMm);
    m_sole.setStandIn(shippedTables().parts.soleMm);
    m_shoeLength.setValue(rider.shoe.lengthMm);
    emit changed();
}

template <typename Change>
void RiderModel::edit(const QString& what, const QString& key, const Change& change)
{
    if (!m_session)
        return;
    Fitting next = m_session->fitting();
    change(next.rider);
    m_session->edit(std::move(next), what, key);
}

QString RiderModel::label() const
{
    return m_session ? QString::fromStdString(m_session->fitting().rider.label) : QString();
}

void RiderModel::setLabel(const QString& label)
{
    edit(tr("name"), QStringLiteral("rider/label"),
         [&](Rider& rider) { rider.label = label.left(qsizetype(longestName) / 4).toStdString(); });
}

QString RiderModel::notes() const
{
    return m_session ? QString::fromStdString(m_session->fitting().rider.notes) : QString();
}

void RiderModel::setNotes(const QString& notes)
{
    edit(tr("notes"), QStringLiteral("rider/notes"), [&](Rider& rider) {
        rider.notes = notes.left(qsizetype(longestNotes) / 4).toStdString();
    });
}

QString RiderModel::sex() const
{
    return m_session ? textOf(sexWords, m_session->fitting().rider.sex) : QString();
}

void RiderModel::setSex(const QString& sex)
{
    edit(tr("body statistics"), {},
         [&](Rider& rider) { rider.sex = valueOf(sexWords, sex.toStdString()); });
}

QString RiderModel::flexibility() const
{
    return m_session ? textOf(flexibilityWords, m_session->fitting().rider.flexibility) : QString();
}

void RiderModel::setFlexibility(const QString& flexibility)
{
    edit(tr("suppleness"), {}, [&](Rider& rider) {
        rider.flexibility = valueOf(flexibilityWords, flexibility.toStdString());
    });
}

QString RiderModel::heelHabit() const
{
    return m_session ? textOf(heelHabitWords, std::optional(m_session->fitting().rider.heelHabit))
                     : QString();
}

void RiderModel::setHeelHabit(const QString& habit)
{
    if (const auto value = valueOf(heelHabitWords, habit.toStdString()))
        edit(tr("heel"), {}, [&](Rider& rider) { rider.heelHabit = *value; });
}

QString RiderModel::summary() const
{
    return m_session ? riderSummary(m_session->fitting().rider) : QString();
}

} // namespace tripoise
