// SPDX-License-Identifier: MIT
//
// The decision section by section, as the text and the window both tell it.
#pragma once

#include "advice/advise.h"
#include "document/fitting.h"

#include <QString>
#include <QStringList>

#include <utility>
#include <vector>

namespace tripoise {

/// What is changed at a time, at most; common practice, no source.
inline constexpr double cautiousStepMm = 5.0;

/// Empty where there is nothing to tell.
struct Section {
    QString heading;
    QStringList items;
    QString meaning = {}; ///< what the figures in it are, where that needs saying
};

/// "Between two sizes: 80 % fast commuting and 20 % touring."
[[nodiscard]] QString briefSentence(const Fitting& fitting);

[[nodiscard]] Section reasonsSection(const Advice& advice, const Prepared& prepared);
[[nodiscard]] Section givenUpSection(const Advice& advice, const Prepared& prepared);
[[nodiscard]] Section contrastSection(const Advice& advice, const Prepared& prepared);
/// Weights whose change would name another size.
[[nodiscard]] Section changeSection(const Advice& advice, const Prepared& prepared);
/// Other cranks in the box, on the named size.
[[nodiscard]] Section cranksSection(const Advice& advice);
/// What a set-up changes against the bike ridden today.
[[nodiscard]] Section todaySection(const std::optional<CurrentBike>& today, const Setup& setup);
[[nodiscard]] Section rulesSection(const Advice& advice);
[[nodiscard]] Section askedSection(const Advice& advice);
/// The same before there is a frame to choose, with where the saddle would stand.
[[nodiscard]] Section firstAnswerSection(const Advice& first);
/// What breaks on one candidate.
[[nodiscard]] Section limitsSection(const Candidate& candidate, const Prepared& prepared);
/// What to look at, the gravest first: about the rider, then about one candidate; each once.
[[nodiscard]] Section checksSection(const Advice& advice, const Candidate& candidate);
[[nodiscard]] Findings checksOf(const Advice& advice, const Candidate& candidate);
[[nodiscard]] QString healthCaution();
/// What every advice is given under: what applies to this rider and this bicycle, and the others.
struct Cautions {
    QStringList first;
    QStringList others;
};
[[nodiscard]] Cautions cautionsOf(const Fitting& fitting, const Candidate* candidate);
/// The clauses and models behind the figures that are told.
[[nodiscard]] Section sourcesSection();

// One size, one kind of riding at a time.

/// A candidate's set-ups by use, largest share first.
[[nodiscard]] std::vector<const UseSetup*> usesByShare(const Candidate& candidate, const Mix& mix);
[[nodiscard]] QString usesHeading(const Candidate& candidate, const Prepared& prepared);
[[nodiscard]] QString onlyUse(Use use); ///< "only touring"
/// Where there is only one use, what would have to be asked for.
[[nodiscard]] QString oneUseSentence();
/// "At the hand, touring is 26 mm nearer and 50 mm higher than fast commuting."
[[nodiscard]] QString handSentence(const UseSetup& one, const UseSetup& other);

} // namespace tripoise
