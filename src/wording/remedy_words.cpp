// SPDX-License-Identifier: MIT
#include "wording/remedy_words.h"

#include "wording/ride_rows.h"
#include "wording/words.h"

#include <cmath>

namespace tripoise {
namespace {

constexpr double leastToldShare = 0.005;

/// What else it changes.
QStringList sideEffects(const ToeRemedy& remedy)
{
    QStringList effects;
    const auto moved = [&effects](double changeMm, const QString& more, const QString& less) {
        if (std::abs(changeMm) >= leastToldMm)
            effects << (changeMm > 0.0 ? more : less).arg(partMm(std::abs(changeMm)));
    };
    const auto changed = [&effects](double ratio, const QString& phrase) {
        if (std::abs(ratio - 1.0) >= leastToldShare)
            effects << phrase.arg(signedPlain(100.0 * (ratio - 1.0)));
    };
    moved(remedy.bbHigherMm, Words::tr("bottom bracket %1 higher"),
          Words::tr("bottom bracket %1 lower"));
    moved(remedy.trailMoreMm, Words::tr("%1 more trail"), Words::tr("%1 less trail"));
    moved(remedy.wheelbaseMoreMm, Words::tr("wheelbase %1 longer"),
          Words::tr("wheelbase %1 shorter"));
    changed(remedy.development, Words::tr("all gears %1 %"));
    changed(remedy.leverage, Words::tr("leverage %1 %"));
    if (std::abs(remedy.bbHigherMm) >= leastToldMm || remedy.kind == RemedyKind::ShorterCrank)
        effects << Words::tr("the pedal meets the ground at %1 of lean")
                       .arg(degrees(remedy.pedalLean.deg()));
    if (remedy.kind == RemedyKind::FootBack)
        effects << Words::tr("the saddle follows the foot");
    return effects;
}

QString left(const ToeRemedy& remedy)
{
    std::optional<ToeOverlap> toe;
    if (remedy.overlapMm) {
        toe.emplace();
        toe->overlapMm = *remedy.overlapMm;
    }
    return toeRoom(toe);
}

} // namespace

QString keyOf(RemedyKind kind)
{
    switch (kind) {
    case RemedyKind::NextSize: return QStringLiteral("next_size");
    case RemedyKind::NarrowerTyre: return QStringLiteral("narrower_tyre");
    case RemedyKind::SmallerRim: return QStringLiteral("smaller_rim");
    case RemedyKind::ShorterCrank: return QStringLiteral("shorter_crank");
    case RemedyKind::FootBack: return QStringLiteral("foot_back");
    case RemedyKind::NoMudguard: return QStringLiteral("no_mudguard");
    }
    return {};
}

QString remedyName(const ToeRemedy& remedy, const Prepared& prepared)
{
    switch (remedy.kind) {
    case RemedyKind::NextSize:
        return Words::tr("%1 on the same cranks", "a size")
            .arg(sizeName(prepared.sizes[static_cast<std::size_t>(remedy.to)].frame, prepared,
                          Place::Opening));
    case RemedyKind::NarrowerTyre: return articled(Words::tr("A %1 tyre").arg(halfMm(remedy.to)));
    case RemedyKind::SmallerRim: return Words::tr("Rims of %1").arg(partMm(remedy.to));
    case RemedyKind::ShorterCrank: return Words::tr("Cranks of %1").arg(halfMm(remedy.to));
    case RemedyKind::FootBack: return Words::tr("Ball of the foot over the spindle");
    case RemedyKind::NoMudguard: return Words::tr("No front mudguard");
    }
    return {};
}

QString remedySentence(const ToeRemedy& remedy, const Prepared& prepared)
{
    const QString name = remedyName(remedy, prepared);
    QStringList effects = sideEffects(remedy);
    if (remedy.counted)
        effects << Words::tr("the size is judged with it", "a remedy");
    return effects.isEmpty()
               ? Words::tr("%1: %2.", "what is changed, room of the shoe").arg(name, left(remedy))
               : Words::tr("%1: %2; %3.", "what is changed, room of the shoe, what else changes")
                     .arg(name, left(remedy), listed(effects));
}

Section remediesSection(const Candidate& candidate, const Prepared& prepared)
{
    Section section{
        Words::tr("More room for the toe on %1", "a size").arg(sizeName(candidate, prepared)),
        {},
        Words::tr("One change at a time, each with the room it leaves between shoe and "
                  "front wheel, and what else it does.")};
    for (const ToeRemedy& remedy : candidate.toeRemedies)
        section.items << remedySentence(remedy, prepared);
    return section;
}

} // namespace tripoise
