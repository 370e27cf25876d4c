// SPDX-License-Identifier: MIT
//
// A fitting as it is saved, and what is to be said about it.
#pragma once

#include "session/store.h"

#include <QCoreApplication>

namespace tripoise {

struct Saving {
    store::Saved::State state = store::Saved::State::Failed;
    QString told; ///< empty where nothing is to be said
    bool wrong = false;

    Q_DECLARE_TR_FUNCTIONS(Saving)
};

[[nodiscard]] Saving saveFitting(const QString& path, const QByteArray& text,
                                 const store::Over& over);
[[nodiscard]] QString fileNameFor(const QString& rider);

} // namespace tripoise
