// SPDX-License-Identifier: MIT
//
// The decision as a builder would say it to a customer.
#pragma once

#include "advice/advise.h"
#include "document/fitting.h"

#include <QString>
#include <QStringList>

namespace tripoise {

/// "The M, with the flipped 100 mm stem and 15 mm of spacers."
[[nodiscard]] QString verdictSentence(const Advice& advice, const Prepared& prepared,
                                      const Riding& riding);
/// The same, as a title that is read from afar and what stands under it.
struct VerdictWords {
    QString title;  ///< "The M", "Either will do"
    QString detail; ///< "with the 100 mm stem and 15 mm of spacers"
    QString kind;   ///< how sure it is; empty with one candidate, or where none is sound
};
[[nodiscard]] VerdictWords verdictWords(const Advice& advice, const Prepared& prepared,
                                        const Riding& riding);
/// Smaller differences between two sizes are not worth pointing at.
inline constexpr double leastSeenMm = 4.0;

struct ToldReason {
    std::optional<Consideration> by; ///< empty where it is whether a size fits
    QString sentence;
};
/// Why the named size, strongest first; at most three.
[[nodiscard]] std::vector<ToldReason> reasonsFor(const Advice& advice, const Prepared& prepared);
/// What speaks for the named size against another of the candidates; at most three.
[[nodiscard]] std::vector<ToldReason> costsOf(const Advice& advice, std::size_t other,
                                              const Prepared& prepared);
/// What the other size would do better; at most two.
[[nodiscard]] std::vector<ToldReason> reasonsAgainst(const Advice& advice,
                                                     const Prepared& prepared);
/// Their sentences.
[[nodiscard]] QStringList reasonSentences(const Advice& advice, const Prepared& prepared);
[[nodiscard]] QStringList givenUpSentences(const Advice& advice, const Prepared& prepared);
/// What is doubted of the rider's measurements; empty where nothing is.
[[nodiscard]] QString provisionalSentence(const Advice& advice);
/// One physical difference that a rider can see; empty with one candidate.
[[nodiscard]] QString contrastSentence(const Advice& advice, const Prepared& prepared);

/// What it takes to have the hands in the same place on the other size; empty with one candidate.
[[nodiscard]] QString sameSeatSentence(const Advice& advice, const Prepared& prepared);

enum class Told {
    OneScreen, ///< which size, why, how set up, what to order and to look at
    All,
};
/// The decision as plain text, 100 columns wide; `tables` with the fitting's weights.
[[nodiscard]] QString decisionText(const Fitting& fitting, const Advice& advice,
                                   const Prepared& prepared, const Tables& tables,
                                   Told told = Told::All);

} // namespace tripoise
