// SPDX-License-Identifier: MIT
//
// A file as it is opened: a fitting, one to look at only, or a word why not.
#pragma once

#include "document/fitting.h"

#include <QByteArray>
#include <QCoreApplication>
#include <QString>

#include <optional>

namespace tripoise {

struct Opening {
    std::optional<Fitting> fitting;
    bool readOnly = false;
    QByteArray bytes; ///< as they stood in the file
    QString told;     ///< what is to be said; empty where nothing is

    Q_DECLARE_TR_FUNCTIONS(Opening)
};

[[nodiscard]] Opening openFitting(const QString& path);

[[nodiscard]] const QStringList& tableSuffixes();
[[nodiscard]] bool isTable(const QString& path); ///< by its name

/// Whether a file says that it holds the sizes of a frame.
[[nodiscard]] bool isFrameModel(const QString& path);

/// The fitting with the sizes of a frame's file added that it does not have yet; no fitting where
/// the file cannot be used.
[[nodiscard]] Opening addFrames(Fitting fitting, const QString& path);

} // namespace tripoise
