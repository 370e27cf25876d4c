// SPDX-License-Identifier: MIT
#include "wording/fitting_words.h"

#include "wording/words.h"

namespace tripoise {

QString lineOf(const FittingVerdict& verdict)
{
    using Kind = FittingVerdict::Kind;
    switch (verdict.kind) {
    case Kind::NotRead: return {};
    case Kind::NotAFitting: return Words::tr("not a fitting that can be read");
    case Kind::Undecided: return Words::tr("Not decided yet");
    case Kind::NothingFits: return Words::tr("Nothing fits");
    case Kind::NoneFits: return Words::tr("None of these fits");
    case Kind::Named:
        return Words::tr("The %1", "a size of frame, opening a sentence").arg(verdict.size);
    case Kind::Slight:
        return Words::tr("Slightly %1", "a size")
            .arg(Words::tr("the %1", "a size of frame, within a sentence").arg(verdict.size));
    case Kind::Either:
        return Words::tr("Either the %1 or the %2", "sizes").arg(verdict.size, verdict.other);
    case Kind::Chosen: return Words::tr("Chosen: the %1", "a size").arg(verdict.size);
    }
    return {};
}

} // namespace tripoise
