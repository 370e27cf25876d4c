// SPDX-License-Identifier: MIT
//
// What the list of fittings tells of each without reading its file. It is kept in one file of the
// program's own folder and follows from the fittings alone: lost, or where a file's time or size
// differ, it is made anew.
#pragma once

#include "session/solution.h"
#include "wording/fitting_words.h"

#include <QByteArray>
#include <QStringList>

#include <functional>
#include <vector>

namespace tripoise::fittings {

struct Summary {
    FittingVerdict verdict;
    QString rider;
    QStringList frames;      ///< "Millrace M, L", one a model
    std::vector<int> points; ///< of a small drawing, see FramePicture; empty without a size

    bool operator==(const Summary&) const = default;
};

struct Entry {
    QString path;
    qint64 timeMs = 0; ///< of the last change, or when a version was kept; since 1970
    qint64 size = 0;   ///< bytes
    Summary summary;

    bool operator==(const Entry&) const = default;
};

/// The fittings of a folder, or the earlier versions of one of them; newest first, with what is
/// known of them.
struct Listing {
    QString folder;
    QString versionsOf; ///< path; empty for the folder's fittings
    QString failure;    ///< what the system says against reading it
    std::vector<Entry> entries;
};
[[nodiscard]] Listing list(const QString& folder);
[[nodiscard]] Listing listVersions(const QString& folder, const QString& path);

/// Reads what is not known and keeps what it says of fittings; `tell` gets the list meanwhile and
/// at the end. Stopped, it keeps what it has so far.
void complete(Listing& listing, const std::stop_token& stop,
              const std::function<void(const Listing&)>& tell);

/// Of a file's bytes; decided like `before`, where frames and parts are the same.
[[nodiscard]] Summary summaryOf(const QByteArray& bytes, Solution& before,
                                std::stop_token stop = {});

/// What is kept of all fittings.
[[nodiscard]] std::vector<Entry> kept();
/// What is kept of files that are gone goes at once.
void forgetGone();

} // namespace tripoise::fittings
