// SPDX-License-Identifier: MIT
//
// Numbers and names as they are said. All sentences of the program are made in this folder.
#pragma once

#include "advice/advise.h"

#include <QCoreApplication>
#include <QString>

namespace tripoise {

/// Translation context of every sentence.
class Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

[[nodiscard]] QString plain(double value, int decimals = 0);   ///< with a true minus sign
[[nodiscard]] QString signedPlain(double value, int decimals); ///< with its sign, "+3"
[[nodiscard]] QString mm(double value);                        ///< "742 mm"
[[nodiscard]] QString partMm(double value);                    ///< of parts and frames: "100 mm"
[[nodiscard]] QString halfMm(double value);                    ///< "172.5 mm", "170 mm"
[[nodiscard]] QString degrees(double value);                   ///< "53°"
[[nodiscard]] QString range(double low, double high);          ///< "49–57"
[[nodiscard]] QString oneIn(double odds);               ///< "1 in 400", rounded as one says it
[[nodiscard]] QString listed(const QStringList& items); ///< "a, b and c"

[[nodiscard]] QString nameOf(Use use);
[[nodiscard]] QString nameOf(const Mix& mix); ///< "70 % fast commuting, 30 % touring"
[[nodiscard]] QString nameOf(Quantity quantity);
[[nodiscard]] QString nameOf(Consideration consideration);
[[nodiscard]] QString geometryName(const std::string& key);

/// "the M", or "the Millrace M" where the candidates are of more than one model.
[[nodiscard]] QString sizeName(const FrameSize& frame, const Prepared& prepared);

[[nodiscard]] QString stemName(const Stem& mounted, bool flipped); ///< "100 mm, −6° (turned over)"
[[nodiscard]] QString barName(const Bar& bar);

} // namespace tripoise
