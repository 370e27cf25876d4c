// SPDX-License-Identifier: MIT
#include "brief/today_model.h"

#include "brief/keys.h"
#include "cockpit/grips.h"
#include "document/words.h"
#include "setup/setup.h"
#include "shipped/tables.h"
#include "wording/complaint_words.h"
#include "wording/entry_words.h"
#include "wording/today_words.h"
#include "wording/words.h"

#include <algorithm>

namespace tripoise {
namespace {

std::span<const EntryOf<CurrentBike>> contactEntries()
{
    using B = CurrentBike;
    static const std::array entries{entryFor("today_height", &B::saddleHeightMm),
                                    entryFor("today_setback", &B::saddleSetbackMm),
                                    entryFor("today_reach", &B::gripReachMm),
                                    entryFor("today_grip_height", &B::gripHeightMm)};
    return entries;
}

/// As it is taken from the saddle; believed as the document's figures of the same meaning are.
EntryOf<FromSaddle> taken(const char* key, std::optional<double> FromSaddle::*member,
                          std::optional<double> CurrentBike::*same)
{
    return {key, factsOf(same),
            [member](const FromSaddle& whole) { return asTyped(whole.*member); },
            [member](FromSaddle& whole, std::optional<double> typed) { whole.*member = typed; }};
}

std::span<const EntryOf<FromSaddle>> saddleEntries()
{
    using F = FromSaddle;
    using B = CurrentBike;
    static const std::array entries{taken("today_height", &F::heightMm, &B::saddleHeightMm),
                                    taken("today_nose", &F::noseBehindMm, &B::noseSetbackMm),
                                    taken("today_below", &F::barBelowMm, &B::barBelowSaddleMm),
                                    taken("today_tape", &F::noseToBarMm, &B::noseToBarMm)};
    return entries;
}

std::span<const EntryOf<CurrentBike>> partEntries()
{
    using B = CurrentBike;
    static const std::array entries{entryFor("today_crank", &B::crankMm),
                                    entryFor("today_saddle_length", &B::saddleLengthMm)};
    return entries;
}

bool within(const std::optional<double>& value, const Limits& limits)
{
    return !value || (*value >= limits.low && *value <= limits.high);
}

/// What follows must be believable too, or it could not be saved.
bool believable(const CurrentBike& bike)
{
    const auto entries = contactEntries();
    return std::all_of(entries.begin(), entries.end(), [&](const EntryOf<CurrentBike>& one) {
        return within(one.read(bike), one.facts.limits);
    });
}

/// A position that is complained of so is not liked.
bool asksForMove(Complaint complaint)
{
    return shippedTables().comfort.complaintSteps[indexOf(complaint)].moves();
}

/// What is kept for the bicycle of today wants it to be there.
bool keepsSomething(const Fitting& fitting)
{
    return std::any_of(fitting.kept.begin(), fitting.kept.end(),
                       [](const KeptJson& piece) { return piece.path.starts_with("/current/"); });
}

} // namespace

TodayModel::TodayModel(QObject* parent) : QObject(parent)
{
    const auto seal = [this] { sealStep(); };
    const auto typedContact = [this](const EntryOf<CurrentBike>& one, std::optional<double> value) {
        CurrentBike next = bike();
        one.write(next, value);
        for (auto* asTaken : {&next.noseSetbackMm, &next.barBelowSaddleMm, &next.noseToBarMm})
            asTaken->reset(); // a contact takes their place
        put(next, entryName(one.key), QString::fromLatin1(one.key));
    };
    m_contacts.emplace(contactEntries(), this, typedContact, seal, Marked::AsTheBody);
    const auto typedPart = [this](const EntryOf<CurrentBike>& one, std::optional<double> value) {
        CurrentBike next = bike();
        one.write(next, value);
        put(takenOn(next), entryName(one.key), QString::fromLatin1(one.key));
    };
    m_parts.emplace(partEntries(), this, typedPart, seal);
    m_fromSaddle.emplace(
        saddleEntries(), this,
        [this](const EntryOf<FromSaddle>& one, std::optional<double> value) {
            one.write(m_taken, value);
            m_typed = true;
            const CurrentBike next = withContacts(bike(), m_taken, parts());
            if (believable(next))
                put(next, entryName(one.key), QString::fromLatin1(one.key));
            show();
        },
        seal, Marked::AsTheBody);
    show();
}

void TodayModel::sessionSet()
{
    on(&Session::fittingChanged, [this] {
        if (fitting().current != m_followed || fitting().stock != m_stock
            || fitting().bicycle != m_bicycle || fitting().choices.position != m_position)
            follow();
    });
    on(&Session::started, this, &TodayModel::begin);
    on(&Session::speechChanged, [this] {
        m_contacts->nameAgain();
        m_parts->nameAgain();
        m_fromSaddle->nameAgain();
        show();
    });
    begin();
    emit sessionChanged();
}

/// Another fitting: nothing stays of what was taken for the one before.
void TodayModel::begin()
{
    m_taken = {};
    m_typed = false;
    follow();
}

CurrentBike TodayModel::bike() const
{
    return fitting().current.value_or(CurrentBike{});
}

/// While what was taken still makes the same contacts, it stands as it was taken; otherwise the
/// contacts came from elsewhere and say what would have been taken.
void TodayModel::follow()
{
    m_followed = fitting().current;
    m_position = fitting().choices.position;
    m_stock = fitting().stock;
    m_bicycle = fitting().bicycle;
    if (withContacts(bike(), m_taken, parts()) != bike()) {
        m_taken = fromSaddle(bike(), parts());
        m_typed = false;
    }
    show();
}

void TodayModel::show()
{
    m_contacts->show(bike(), shippedTables());
    m_parts->show(bike(), shippedTables());
    m_fromSaddle->show(m_taken, shippedTables());
    emit changed();
}

void TodayModel::put(const CurrentBike& bike, const QString& what, const QString& key)
{
    Fitting next = fitting();
    next.current = bike;
    if (bike == CurrentBike{} && !keepsSomething(next))
        next.current.reset();
    edit(std::move(next), todayStep(what),
         key.isEmpty() ? QString() : QStringLiteral("today ") + key);
}

void TodayModel::setBySaddle(bool bySaddle)
{
    if (bySaddle == m_bySaddle)
        return;
    m_bySaddle = bySaddle;
    emit changed();
}

QString TodayModel::barKind() const
{
    return keyOf(bar().kind);
}

void TodayModel::setBarKind(const QString& word)
{
    const auto kind = barKindFrom(word);
    if (!kind || *kind == bar().kind)
        return;
    CurrentBike next = bike();
    next.barKind = kind;
    put(takenOn(next), barKindStep(), {});
    follow();
}

/// What was taken from the saddle stays as it was taken, the contacts move.
CurrentBike TodayModel::takenOn(const CurrentBike& bike) const
{
    const CurrentBike moved = m_typed ? withContacts(bike, m_taken, partsOf(bike)) : bike;
    return believable(moved) ? moved : bike;
}

Bar TodayModel::bar() const
{
    return barLike(bike().barKind, fitting().stock, shippedTables());
}

TodayParts TodayModel::partsOf(const CurrentBike& bike) const
{
    const Tables& tables = shippedTables();
    const Bar ridden = barLike(bike.barKind, fitting().stock, tables);
    Saddle saddle = fitting().bicycle.saddle;
    if (bike.saddleLengthMm)
        saddle.lengthMm = bike.saddleLengthMm;
    return {noseAhead(saddle, tables.parts),
            gripOn(ridden, mainPlace(ridden.kind), tables.parts).fromClamp};
}

template <typename Value>
void TodayModel::choose(std::optional<Value> CurrentBike::*member, std::optional<Value> value,
                        const QString& what)
{
    CurrentBike next = bike();
    next.*member = value;
    put(next, what, {});
}

QString TodayModel::use() const
{
    const auto use = bike().use;
    return use ? QString::fromUtf8(keyOf(*use).data(), qsizetype(keyOf(*use).size())) : QString();
}

void TodayModel::setUse(const QString& word)
{
    choose(&CurrentBike::use, useFromKey(word.toStdString()), useStep());
}

QString TodayModel::ridden() const
{
    return wordFor(riddenWords, bike().ridden);
}

void TodayModel::setRidden(const QString& word)
{
    choose(&CurrentBike::ridden, valueOf(riddenWords, word.toStdString()), riddenStep());
}

QString TodayModel::position() const
{
    return wordFor(positionWords, fitting().choices.position);
}

void TodayModel::setPosition(const QString& word)
{
    Fitting next = fitting();
    next.choices.position = valueOf(positionWords, word.toStdString());
    edit(std::move(next), todayStep(positionStep()), {});
    emit changed();
}

QVariantList TodayModel::uses() const
{
    QVariantList list;
    for (const Use use : allUses)
        list << QVariantMap{{QStringLiteral("text"), nameOf(use)},
                            {QStringLiteral("value"),
                             QString::fromUtf8(keyOf(use).data(), qsizetype(keyOf(use).size()))}};
    return list;
}

void TodayModel::setComfortable(bool comfortable)
{
    CurrentBike next = bike();
    next.comfortable = comfortable;
    if (comfortable)
        std::erase_if(next.complaints, asksForMove);
    put(next, comfortableStep(), {});
}

QVariantList TodayModel::complaints() const
{
    const CurrentBike today = bike();
    QVariantList list;
    for (const Complaint complaint : allComplaints)
        list << QVariantMap{
            {QStringLiteral("text"), nameOf(complaint)},
            {QStringLiteral("value"),
             QString::fromLatin1(keyOf(complaint).data(), qsizetype(keyOf(complaint).size()))},
            {QStringLiteral("on"),
             std::count(today.complaints.begin(), today.complaints.end(), complaint) > 0}};
    return list;
}

void TodayModel::toggleComplaint(const QString& word)
{
    const auto complaint = valueOf(complaintWords, word.toStdString());
    if (!complaint)
        return;
    CurrentBike next = bike();
    if (std::erase(next.complaints, *complaint) == 0)
        next.complaints.push_back(*complaint);
    if (std::any_of(next.complaints.begin(), next.complaints.end(), asksForMove))
        next.comfortable = false;
    put(next, complaintStep(), {});
}

void TodayModel::clearComplaints()
{
    CurrentBike next = bike();
    next.complaints.clear();
    next.otherComplaints.clear();
    put(next, complaintStep(), {});
}

bool TodayModel::anyComplaint() const
{
    return !bike().complaints.empty() || !bike().otherComplaints.empty();
}

QString TodayModel::otherComplaints() const
{
    return inOwnWords(bike().otherComplaints);
}

bool TodayModel::known() const
{
    return fitting().current.has_value();
}

void TodayModel::clear()
{
    m_taken = {};
    m_typed = false;
    put(CurrentBike{}, clearStep(), {});
    show();
}

QString TodayModel::conversion() const
{
    const CurrentBike today = bike();
    const auto& lengthMm =
        today.saddleLengthMm ? today.saddleLengthMm : fitting().bicycle.saddle.lengthMm;
    return conversionText(lengthMm.value_or(shippedTables().parts.saddleLengthMm),
                          lengthMm.has_value(), parts().noseAheadMm, bar(), parts().gripFromBar);
}

QString TodayModel::note() const
{
    if (tapeTooShort(m_taken))
        return tapeTooShortText();
    if (!m_taken.barBelowMm && !m_taken.noseToBarMm)
        return {};
    std::vector<std::string_view> needs;
    for (const auto& one : saddleEntries())
        if (!one.read(m_taken))
            needs.emplace_back(one.key);
    if (!needs.empty())
        return neededForGripText(needs);
    return withContacts(bike(), m_taken, parts()) == bike() ? QString() : notBelievableText();
}

QString TodayModel::summary() const
{
    return todaySummary(known() ? std::optional(bike()) : std::nullopt);
}

} // namespace tripoise
