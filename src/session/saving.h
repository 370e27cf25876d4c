// SPDX-License-Identifier: MIT
//
// A fitting as it is saved, and what is to be said about it.
#pragma once

#include "base/problem.h"
#include "session/store.h"

#include <QCoreApplication>

namespace tripoise {

struct Saving {
    store::Saved::State state = store::Saved::State::Failed;
    QString told; ///< empty where nothing is to be said
    bool wrong = false;

    Q_DECLARE_TR_FUNCTIONS(Saving)
};

/// What came of it, without words.
struct SavedFitting {
    store::Saved file;
    Problems refused; ///< what would keep it from being opened again
};
[[nodiscard]] SavedFitting writeAndRead(const QString& path, const QByteArray& text,
                                        const store::Over& over); ///< on any thread
[[nodiscard]] Saving told(const QString& path, const SavedFitting& saved, const store::Over& over);

[[nodiscard]] inline Saving saveFitting(const QString& path, const QByteArray& text,
                                        const store::Over& over)
{
    return told(path, writeAndRead(path, text, over), over);
}
/// To save what stands in a file as another: a copy is no more open than its file.
[[nodiscard]] store::Over copyOver(const QString& from, bool replace);
[[nodiscard]] QString fileNameFor(const QString& rider);

} // namespace tripoise
