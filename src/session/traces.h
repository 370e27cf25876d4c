// SPDX-License-Identifier: MIT
//
// All that the program keeps of a rider, to be deleted: the open file, its copies, drafts, and what
// is kept of other files that hold the same rider and are gone.
//
// A fitting has no mark of its rider. What belongs to the open file is found by its path, the rest
// by its content: the same name and no other body, or just the same body where one of both has no
// name.
#pragma once

#include "rider/measurements.h"
#include "session/drafts.h"

#include <QCoreApplication>

namespace tripoise {

struct Traces {
    QStringList files; ///< the open one, and the link that leads to it
    QStringList versions;
    QStringList damaged;
    QStringList drafts;    ///< names
    QStringList leftParts; ///< what a killed program left beside the file
    QStringList recents;   ///< paths
    QStringList elsewhere; ///< other files that hold the rider; they stay
    bool severalNames = false;
    bool openElsewhere = false; ///< another running program works on the rider

    Q_DECLARE_TR_FUNCTIONS(Traces)
};

[[nodiscard]] bool isSameRider(const Rider& one, const Rider& other);

[[nodiscard]] Traces tracesOf(const Rider& rider, const QString& path, const Drafts& drafts);
[[nodiscard]] QStringList whatGoes(const Traces& traces);  ///< how many of what
[[nodiscard]] QStringList whatStays(const Traces& traces); ///< sentences
/// What could not be removed.
[[nodiscard]] QStringList removeTraces(const Traces& traces);
/// What was done, but for what is left.
[[nodiscard]] QString deletedText(const QString& name, const Traces& traces,
                                  const QStringList& left);

} // namespace tripoise
