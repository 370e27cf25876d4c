// SPDX-License-Identifier: MIT
#include "wording/sections.h"

#include "wording/advice_text.h"
#include "wording/consideration_words.h"
#include "wording/findings.h"
#include "wording/fit_words.h"
#include "wording/visible.h"
#include "wording/words.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tripoise {
namespace {

constexpr double leastMoveToldMm = 1.0; // less is within the tape
constexpr double leastAtHandMm = 0.5;

const Candidate& named(const Advice& advice)
{
    return advice.leading();
}

QString joined(const QStringList& items)
{
    return items.join(Words::tr(", ", "between items of a list"));
}

/// Rules are called after who published them; where they have no name, after what they do.
QString ruleName(const std::string& name)
{
    static constexpr std::array toTranslate{QT_TRANSLATE_NOOP("Words", "1.09 × inseam"),
                                            QT_TRANSLATE_NOOP("Words", "0.883 × inseam")};
    const auto known = std::find(toTranslate.begin(), toTranslate.end(), name);
    return known != toTranslate.end() ? Words::tr(*known) : QString::fromStdString(name);
}

} // namespace

QString briefSentence(const Fitting& fitting)
{
    const QString label = asName(fitting.rider.label);
    const QString mix = nameOf(fitting.riding.mix);
    return label.isEmpty() ? Words::tr("For %1.", "a mix of uses").arg(mix)
                           : Words::tr("%1: %2.", "a rider, a mix of uses").arg(label, mix);
}

Section reasonsSection(const Advice& advice, const Prepared& prepared)
{
    const QStringList reasons = reasonSentences(advice, prepared);
    if (!advice.verdict.named) // of one alone the verdict says it
        return {Words::tr("Why none of them"),
                advice.candidates.size() > 1 ? reasons : QStringList()};
    if (!advice.verdict.other)
        return {Words::tr("How it sits"), reasons};
    const QString size = sizeName(named(advice), prepared);
    return {advice.verdict.kind == VerdictKind::Either
                ? Words::tr("What little speaks for %1", "a size").arg(size)
                : Words::tr("Why %1", "a size").arg(size),
            reasons};
}

Section givenUpSection(const Advice& advice, const Prepared& prepared)
{
    return {Words::tr("What you give up"), givenUpSentences(advice, prepared)};
}

Section contrastSection(const Advice& advice, const Prepared& prepared)
{
    Section section{Words::tr("To see it"), {}};
    for (const QString& sentence :
         {contrastSentence(advice, prepared), sameSeatSentence(advice, prepared)})
        if (!sentence.isEmpty())
            section.items << sentence;
    return section;
}

Section changeSection(const Advice& advice, const Prepared& prepared)
{
    Section section{Words::tr("What would change it"), {}};
    for (const Tilt& tilt : advice.verdict.tilts)
        section.items << (tilt.factor > 1.0
                              ? Words::tr("If %1 mattered twice as much, it would be %2.")
                              : Words::tr("If %1 mattered half as much, it would be %2."))
                             .arg(nameOf(tilt.consideration),
                                  sizeName(advice.candidates[tilt.towards], prepared));
    return section;
}

Section cranksSection(const Advice& advice)
{
    const AdvisedSetup& advised = *named(advice).best;
    Section section{
        Words::tr("Other cranks, against %1").arg(halfMm(advised.setup.crankMm)),
        {},
        Words::tr(
            "Leverage is what the foot gains at the same gear. The hip's angle is between back "
            "and thigh at the top of the stroke; more is more open. The toe's room is towards "
            "the front wheel.")};
    for (const CrankChoice& other : advice.otherCranks) {
        const double hip = other.leg.hipTop.deg() - advised.leg.hipTop.deg();
        section.items << (other.toeRoomMm > 0.0
                              ? Words::tr("%1: %2 % leverage, hip %3° at the top, toe %4 further "
                                          "from the front wheel.")
                              : Words::tr("%1: %2 % leverage, hip %3° at the top, toe %4 nearer to "
                                          "the front wheel."))
                             .arg(halfMm(other.crankMm),
                                  signedPlain(100.0 * (other.leverage - 1.0)), signedPlain(hip, 1),
                                  mm(std::abs(other.toeRoomMm)));
    }
    return section;
}

Section todaySection(const std::optional<CurrentBike>& today, const Setup& setup)
{
    Section section{Words::tr("Against the bike ridden today"), {}};
    if (!today)
        return section;
    const auto tell = [&section](double now, const std::optional<double>& then, const QString& more,
                                 const QString& less, QString (*say)(double)) {
        if (then && std::abs(now - *then) >= leastMoveToldMm)
            section.items << (now > *then ? more : less).arg(say(std::abs(now - *then)));
    };
    tell(setup.saddle.heightMm, today->saddleHeightMm, Words::tr("saddle %1 higher"),
         Words::tr("saddle %1 lower"), mm);
    tell(setup.saddle.setbackMm(), today->saddleSetbackMm, Words::tr("saddle %1 further back"),
         Words::tr("saddle %1 further forward"), mm);
    tell(setup.grip.y(), today->gripHeightMm, Words::tr("grips %1 higher"),
         Words::tr("grips %1 lower"), mm);
    tell(setup.grip.x(), today->gripReachMm, Words::tr("grips %1 further away"),
         Words::tr("grips %1 nearer"), mm);
    tell(setup.crankMm, today->crankMm, Words::tr("cranks %1 longer"),
         Words::tr("cranks %1 shorter"), halfMm);
    return section;
}

Section rulesSection(const Advice& advice)
{
    QStringList rules;
    for (const PublishedHeight& published : advice.publishedHeights)
        rules << Words::tr("%1 %2", "a published rule, its saddle height")
                     .arg(ruleName(published.name), mm(published.heightMm));
    return {
        Words::tr("Saddle height by the published rules"),
        {Words::tr("%1; here %2. The rules know the inseam alone, or clipless shoes; here thigh, "
                   "shank, foot, shoe, pedal and crank count as well, so a centimetre apart is "
                   "ordinary.")
             .arg(joined(rules), mm(advice.target.saddle.heightMm))},
        Words::tr(
            "All from the middle of the bottom bracket to the top of the saddle. The rules are "
            "told to compare with; none of them decides.")};
}

Section askedSection(const Advice& advice)
{
    const FrameAsked& asked = advice.asked;
    return {
        Words::tr("The frame this rider asks for"),
        {Words::tr("Stack %1 mm and reach %2 mm, on up to %3 of spacers and the stems "
                   "usual for this riding.")
             .arg(range(asked.stackMm.low, asked.stackMm.high),
                  range(asked.reachMm.low, asked.reachMm.high), partMm(asked.mostSpacersMm))},
        Words::tr("From the first to the last figure is what stems of usual length and the spacers "
                  "can make up for. A frame within both can bring the hands to their best place.")};
}

Section firstAnswerSection(const Advice& first)
{
    Section section = askedSection(first);
    section.items << Words::tr("The saddle about %1 from the bracket to its top.")
                         .arg(mm(first.target.saddle.heightMm));
    if (const QString doubt = provisionalSentence(first); !doubt.isEmpty())
        section.items << doubt;
    return section;
}

Section limitsSection(const Candidate& candidate, const Prepared& prepared)
{
    Section section{Words::tr("Why not %1", "a size").arg(sizeName(candidate, prepared)), {}};
    if (candidate.fit.state == FitState::TooSmall || candidate.fit.state == FitState::TooLarge)
        section.items << fitSentence(candidate, prepared);
    for (const Finding& finding : candidate.limits)
        section.items << sentence(finding);
    return section;
}

Findings checksOf(const Advice& advice, const Candidate& candidate)
{
    Findings checks = advice.riderFindings;
    for (const Finding& finding : candidate.findings)
        if (std::find(checks.begin(), checks.end(), finding) == checks.end())
            checks.push_back(finding);
    std::stable_sort(checks.begin(), checks.end(),
                     [](const Finding& a, const Finding& b) { return a.severity > b.severity; });
    return checks;
}

Section checksSection(const Advice& advice, const Candidate& candidate)
{
    Section section{Words::tr("Look at these"), {}};
    for (const Finding& finding : checksOf(advice, candidate))
        section.items << sentence(finding);
    section.items.removeDuplicates();
    return section;
}

QString healthCaution()
{
    return Words::tr("Pain, numbness or an injury belongs with a health professional. Children, "
                     "pregnancy, recent surgery, a replaced joint or a marked difference in leg "
                     "length need a person, not a formula.");
}

Cautions cautionsOf(const Fitting& fitting, const Candidate* candidate)
{
    const auto tells = [&](std::initializer_list<FindingCode> codes) {
        return candidate
               && std::any_of(candidate->findings.begin(), candidate->findings.end(),
                              [&](const Finding& finding) {
                                  return std::find(codes.begin(), codes.end(), finding.code)
                                         != codes.end();
                              });
    };
    Cautions told;
    told.first << Words::tr("A starting position, not a prescription: change one thing at a time "
                            "by %1 or less, ride, adjust.")
                      .arg(partMm(cautiousStepMm));
    const auto tell = [&told](bool applies, const QString& caution) {
        (applies ? told.first : told.others) << caution;
    };
    const bool complains =
        fitting.current
        && !(fitting.current->complaints.empty() && fitting.current->otherComplaints.empty());
    tell(!fitting.rider.bendsFreely || complains, healthCaution());
    tell(
        tells({FindingCode::ToeOverlaps, FindingCode::ToeNear}),
        Words::tr("A shoe that touches tyre or mudguard is a hazard at walking pace: sit the rider "
                  "on in their shoes, pedals level, turn the bar, and show them. Mudguards need "
                  "stays that break away."));
    tell(false, Words::tr("After any change at the bar: hoses at full lock, bar against top tube, "
                          "reach of the levers, torque, brakes, a loaded test ride."));
    tell(false, Words::tr("Marks and limits on parts and the makers' instructions rule over this "
                          "advice, local regulations over both."));
    tell(false, Words::tr("Figures of steadiness, balance and braking compare sizes; they certify "
                          "nothing."));
    return told;
}

Section sourcesSection()
{
    const QString check =
        Words::tr("%1 (from memory: check a bought copy)", "clause of a standard");
    return {Words::tr("Sources"),
            {Words::tr("Pedal and ground, lean: %1.").arg(QStringLiteral("16 CFR 1512.17(c)")),
             Words::tr("Pedal to front wheel: %1.")
                 .arg(listed({QStringLiteral("16 CFR 1512.17(d)"),
                              check.arg(QStringLiteral("ISO 4210-2, 4.13.2.2"))})),
             Words::tr("Load on the front wheel, sitting fully back: %1.")
                 .arg(QStringLiteral("ISO 4210-2:2015, 4.7.5")),
             Words::tr("Head angle and steering axis: %1.")
                 .arg(check.arg(QStringLiteral("ISO 4210-2, Annex A"))),
             Words::tr("Size of a wheel: %1.").arg(QStringLiteral("ISO 5775")),
             Words::tr("Steady by itself: the linear model of Whipple and Carvallo, masses "
                       "estimated.")}};
}

std::vector<const UseSetup*> usesByShare(const Candidate& candidate, const Mix& mix)
{
    std::vector<const UseSetup*> uses;
    for (const UseSetup& use : candidate.byUse)
        uses.push_back(&use);
    std::stable_sort(uses.begin(), uses.end(), [&mix](const UseSetup* a, const UseSetup* b) {
        return mix.of(a->use) > mix.of(b->use);
    });
    return uses;
}

QString usesHeading(const Candidate& candidate, const Prepared& prepared)
{
    return Words::tr("One kind of riding at a time, on %1", "a size")
        .arg(sizeName(candidate, prepared));
}

QString onlyUse(Use use)
{
    return Words::tr("only %1", "one use alone").arg(nameOf(use));
}

QString oneUseSentence()
{
    return Words::tr("Only one kind of riding is asked for. Give a second one a share, and "
                     "the two set-ups stand here side by side.");
}

QString handSentence(const UseSetup& one, const UseSetup& other)
{
    const Point apart = other.advised.setup.grip - one.advised.setup.grip;
    QStringList ways;
    const auto tell = [&ways](double differenceMm, const QString& more, const QString& less) {
        if (std::abs(differenceMm) >= leastAtHandMm)
            ways << (differenceMm > 0.0 ? more : less).arg(mm(std::abs(differenceMm)));
    };
    tell(apart.x(), Words::tr("%1 further", "where a use holds the bar"),
         Words::tr("%1 nearer", "where a use holds the bar"));
    tell(apart.y(), Words::tr("%1 higher", "where a use holds the bar"),
         Words::tr("%1 lower", "where a use holds the bar"));
    if (ways.isEmpty())
        return Words::tr("At the hand, %1 and %2 are the same.", "two uses")
            .arg(nameOf(one.use), nameOf(other.use));
    return Words::tr("At the hand, %1 is %2 than %3.", "a use, how it differs, another use")
        .arg(nameOf(other.use), listed(ways), nameOf(one.use));
}

} // namespace tripoise
