// SPDX-License-Identifier: MIT
//
// What is printed for the workshop and for the rider.
#pragma once

#include "document/fitting.h"
#include "document/handed_over.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace tripoise {

/// A decision that is handed over.
struct Handing {
    const Fitting& fitting;
    const Advice& advice;
    const Prepared& prepared;
    const Tables& tables;
    const HandedOver& over;

    [[nodiscard]] const Candidate& candidate() const { return advice.candidates[over.candidate]; }
    [[nodiscard]] const PreparedSize& size() const { return prepared.sizes[candidate().size]; }
    [[nodiscard]] const Bar& bar() const { return prepared.stock.bars[over.setup().cockpit.bar]; }
};

/// A line of the workshop's page: what, how much, and from where to where with which tool.
struct SheetLine {
    QString name;
    QString value;
    QString how;
};

// ---- both pages
[[nodiscard]] QString sheetBicycle(const Handing& handing); ///< "Millrace M"
[[nodiscard]] QString sheetRider(const Fitting& fitting);   ///< "for …", empty without a name

// ---- the workshop's
[[nodiscard]] QString workshopTitle();
/// What was decided and why, in a line; the builder's own reason where there is one.
[[nodiscard]] QString workshopLine(const Handing& handing);
/// What breaks or does not fit; told first.
[[nodiscard]] QStringList workshopWarnings(const Handing& handing);
[[nodiscard]] QString placesHeading(const Handing& handing);
/// That more is to come, where the set-up is too far for one visit; else empty.
[[nodiscard]] QString stagedLine(const Handing& handing);
/// Places to set, in the order they are set.
[[nodiscard]] std::vector<SheetLine> placesToSet(const Handing& handing);
[[nodiscard]] QString partsHeading();
[[nodiscard]] std::vector<SheetLine> partsToFit(const Handing& handing);
[[nodiscard]] QString asBuiltColumn();
[[nodiscard]] QString torqueColumn();
[[nodiscard]] QString ticksHeading();
[[nodiscard]] QStringList workshopTicks(const Handing& handing);
[[nodiscard]] QString remarksHeading();
[[nodiscard]] QStringList workshopRemarks(const Handing& handing);
[[nodiscard]] QString workshopFoot();

// ---- the rider's
[[nodiscard]] QString riderTitle();
/// A ride on both before anything is ordered, or that nothing is; empty where the decision is clear
/// or the builder's.
[[nodiscard]] QString rideFirst(const Handing& handing);
[[nodiscard]] QString feelHeading();
[[nodiscard]] QString changeHeading();
/// What to change first, and by how much.
[[nodiscard]] QStringList changesFirst(const Handing& handing);
[[nodiscard]] QString comeBack();
[[nodiscard]] QString cautionsHeading();
[[nodiscard]] QStringList riderCautions(const Handing& handing);
[[nodiscard]] QString hazardsHeading();
/// Hazards that the rider was shown and takes, in their words.
[[nodiscard]] QStringList hazardsShown(const Handing& handing);
[[nodiscard]] QString signLine();

} // namespace tripoise
