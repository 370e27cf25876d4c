// SPDX-License-Identifier: MIT
//
// A fitting in one line of a list.
#pragma once

#include <QString>

namespace tripoise {

struct FittingVerdict {
    enum class Kind {
        NotRead, ///< not looked at yet
        NotAFitting,
        Undecided, ///< something is lacking
        NothingFits,
        NoneFits,
        Named,
        Slight,
        Either,
        Chosen ///< by the builder
    };
    Kind kind = Kind::NotRead;
    QString size;  ///< "M", or "Millrace M" where there are several models
    QString other; ///< the same, for `Either`

    bool operator==(const FittingVerdict&) const = default;
};

[[nodiscard]] QString lineOf(const FittingVerdict& verdict); ///< "Slightly the M"

} // namespace tripoise
