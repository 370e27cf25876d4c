// SPDX-License-Identifier: MIT
#include "wording/sheet_words.h"

#include "wording/advice_text.h"
#include "wording/choice_words.h"
#include "wording/findings.h"
#include "wording/fit_words.h"
#include "wording/sections.h"
#include "wording/setup_rows.h"
#include "wording/visible.h"
#include "wording/words.h"

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

class Sheet {
    Q_DECLARE_TR_FUNCTIONS(Sheet)
};

QStringList sentencesOf(const Findings& findings, std::initializer_list<FindingCode> codes)
{
    QStringList told;
    for (const Finding& finding : findings)
        if (std::find(codes.begin(), codes.end(), finding.code) != codes.end())
            told << sentence(finding);
    told.removeDuplicates();
    return told;
}

/// The first of sizes none of which fits, and which nobody chose.
bool isNoneThatFits(const Handing& handing)
{
    return !handing.over.chosen && !handing.advice.verdict.named;
}

bool toeMayTouch(const Handing& handing)
{
    const auto touches = [](const Finding& finding) {
        return finding.code == FindingCode::ToeUnderStandard
               || finding.code == FindingCode::ToeOverlaps || finding.code == FindingCode::ToeNear;
    };
    const auto among = [&](const Findings& findings) {
        return std::any_of(findings.begin(), findings.end(), touches);
    };
    return among(handing.candidate().findings) || among(handing.candidate().limits);
}

/// Over the top tube, in the rider's words.
QString standing(double roomMm)
{
    return roomMm < 0.0
               ? Sheet::tr("Standing over the frame in my shoes, it is %1 too high for me.")
                     .arg(partMm(-roomMm))
               : Sheet::tr("Standing over the frame in my shoes I have %1 of room.")
                     .arg(partMm(roomMm));
}

/// "10 + 5 mm"; nothing where it is one piece.
QString piecesOf(const Handing& handing)
{
    const auto pieces =
        spacerPieces(handing.prepared.stock.spacersMm, handing.over.setup().cockpit.spacersMm);
    QStringList sizes;
    for (const double piece : pieces)
        sizes << plain(piece, piece == std::round(piece) ? 0 : 1);
    return sizes.size() > 1 ? sizes.join(QStringLiteral(" + ")) : QString();
}

SheetLine stemLine(const Handing& handing)
{
    const Setup& setup = handing.over.setup();
    const QString value = stemName(setup.stem, setup.cockpit.flipped);
    if (handing.over.own)
        return {Sheet::tr("Stem"), value,
                Sheet::tr("worked out for the places above; take the nearest that is made")};
    if (!setup.stem.inStock)
        return {Sheet::tr("Stem"), value, Sheet::tr("to order")};
    return {Sheet::tr("Stem"), value,
            setup.cockpit.flipped ? Sheet::tr("turned over, its marks upside down")
                                  : Sheet::tr("the way up its marks are read")};
}

SheetLine spacersLine(const Handing& handing)
{
    const Setup& setup = handing.over.setup();
    const QString height = halfMm(std::max(0.0, setup.cockpit.spacersMm));
    if (setup.stem.quillMm)
        return {Sheet::tr("Quill"), Sheet::tr("raised %1", "a quill").arg(height),
                Sheet::tr("its mark stays inside the steerer")};
    const QString pieces = piecesOf(handing);
    return {Sheet::tr("Spacers under the stem"), height,
            pieces.isEmpty() ? QString() : Sheet::tr("%1 mm", "pieces: 10 + 5").arg(pieces)};
}

std::optional<SheetLine> steererLine(const Handing& handing)
{
    const Setup& setup = handing.over.setup();
    const PartDefaults& parts = handing.tables.parts;
    if (setup.stem.quillMm)
        return std::nullopt;
    return SheetLine{
        Sheet::tr("Steerer, crown to end"), partMm(setup.steererCutMm),
        Sheet::tr("leave it %1 mm longer until the second visit, under spacers on top of the stem")
            .arg(range(parts.leaveSteererLowMm, parts.leaveSteererHighMm))};
}

SheetLine barLine(const Handing& handing)
{
    const Bar& bar = handing.bar();
    for (const Finding& finding : handing.candidate().findings)
        if (finding.code == FindingCode::BarCutDown)
            return {Sheet::tr("Bar"), barName(bar),
                    Sheet::tr("%1 wide; cut to %2 where its maker allows it")
                        .arg(halfMm(bar.widthMm), halfMm(finding.numbers.at(1)))};
    return {Sheet::tr("Bar"), barName(bar), Sheet::tr("%1 wide, not cut").arg(halfMm(bar.widthMm))};
}

std::optional<SheetLine> postLine(const Handing& handing)
{
    const PreparedSize& size = handing.size();
    const auto post =
        postInside(size.frame, size.skeleton, handing.over.setup().saddle,
                   handing.prepared.bicycle.saddle, handing.tables.frame, handing.tables.parts);
    if (!post)
        return std::nullopt;
    const double left = post->insideMm - std::max(post->postLeastMm, post->frameLeastMm);
    return SheetLine{Sheet::tr("Post inside the frame"), partMm(post->insideMm),
                     Sheet::tr("post's mark wants %1, the frame %2: %3")
                         .arg(partMm(post->postLeastMm), partMm(post->frameLeastMm),
                              left < 0.0
                                  ? Sheet::tr("%1 too little", "of a post").arg(partMm(-left))
                                  : Sheet::tr("%1 to spare", "of a post").arg(partMm(left)))};
}

} // namespace

QString sheetBicycle(const Handing& handing)
{
    const FrameSize& frame = handing.size().frame;
    const QString size = asName(frame.size);
    const QString model = asName(frame.model);
    return model.isEmpty() ? size : Sheet::tr("%1 %2", "model, size").arg(model, size);
}

QString sheetRider(const Fitting& fitting)
{
    const QString label = asName(fitting.rider.label);
    return label.isEmpty() ? QString() : Sheet::tr("for %1", "a rider").arg(label);
}

QString workshopTitle()
{
    return Sheet::tr("Set-up sheet for the workshop");
}

QString workshopLine(const Handing& handing)
{
    const QString riding = nameOf(handing.fitting.riding.mix);
    if (isNoneThatFits(handing))
        return Sheet::tr(
                   "For %1. None of the sizes fits: this one comes nearest, to try and not to "
                   "order.",
                   "kinds of riding")
            .arg(riding);
    if (!handing.over.chosen)
        return Sheet::tr("For %1, as advised.", "kinds of riding").arg(riding);
    const QString reason =
        visibleLine(QString::fromStdString(handing.fitting.choices.reason)).simplified();
    return reason.isEmpty()
               ? Sheet::tr("For %1, as the builder chose.", "kinds of riding").arg(riding)
               : Sheet::tr("For %1, as the builder chose: “%2”.", "kinds of riding, why")
                     .arg(riding, reason);
}

QStringList workshopWarnings(const Handing& handing)
{
    QStringList warnings;
    if (!fitsAtAll(handing.candidate().fit.state))
        warnings << fitSentence(handing.candidate(), handing.prepared);
    for (const Finding& finding : handing.candidate().limits)
        warnings << sentence(finding);
    if (handing.over.own)
        for (const Finding& finding : handing.over.own->findings)
            if (finding.severity == Severity::Limit)
                warnings << sentence(finding);
    if (const QString doubt = provisionalSentence(handing.advice); !doubt.isEmpty())
        warnings << doubt;
    warnings.removeAll(QString());
    warnings.removeDuplicates();
    return warnings;
}

QString placesHeading(const Handing& handing)
{
    return handing.over.firstStep ? Sheet::tr("Set today, in this order")
                                  : Sheet::tr("Set, in this order");
}

QString stagedLine(const Handing& handing)
{
    if (!handing.over.firstStep)
        return {};
    const TapeMeasures there = measuresOf(handing.over.setup(), handing.advice.saddleNoseAheadMm);
    return Sheet::tr(
               "This is the first step of the way to a saddle height of %1 and a nose %2; the "
               "bar comes with it. The rest at later visits, when that has been ridden.",
               "how high; 58 mm behind")
        .arg(mm(there.saddleHeightMm), behindBracket(there.noseSetbackMm));
}

std::vector<SheetLine> placesToSet(const Handing& handing)
{
    const Setup setup = handing.over.today();
    const TapeMeasures tape = measuresOf(setup, handing.advice.saddleNoseAheadMm);
    return {
        {Sheet::tr("Saddle tilt"), Sheet::tr("level", "a saddle's tilt"),
         Sheet::tr("spirit level over the whole saddle")},
        {Sheet::tr("Saddle height"), mm(tape.saddleHeightMm),
         Sheet::tr("tape from the middle of the bottom bracket, straight to the top of the saddle "
                   "where it is 80 mm wide")},
        {Sheet::tr("Saddle nose"), behindBracket(tape.noseSetbackMm),
         Sheet::tr("plumb line from the nose, level to the middle of the bottom bracket")},
        {Sheet::tr("Saddle setback"), mm(tape.saddleSetbackMm),
         Sheet::tr("the same, at the point where it is 80 mm wide")},
        {Sheet::tr("Bar clamp, against saddle"), againstSaddle(tape.barBelowSaddleMm),
         Sheet::tr("straightedge level from the top of the saddle, plumb to the middle of the bar "
                   "at the stem")},
        {Sheet::tr("Nose to bar clamp"), mm(tape.noseToBarMm),
         Sheet::tr("tape from the nose, straight to the middle of the bar at the stem")},
        {Sheet::tr("Bar clamp, from bracket"),
         Sheet::tr("%1 ahead, %2 up", "of a bar").arg(mm(tape.barReachMm), mm(tape.barHeightMm)),
         Sheet::tr("the same middle of the bar, level and plumb, where there is a jig")},
        {Sheet::tr("Hands, against saddle"),
         againstSaddle(setup.saddle.point().y() - setup.grip.y()),
         Sheet::tr("the palm at its main place, to check by")},
    };
}

QString partsHeading()
{
    return Sheet::tr("Fit");
}

std::vector<SheetLine> partsToFit(const Handing& handing)
{
    const Setup& setup = handing.over.setup();
    const Skeleton& skeleton = handing.size().skeleton;
    std::vector<SheetLine> lines{stemLine(handing), spacersLine(handing)};
    if (const auto steerer = steererLine(handing))
        lines.push_back(*steerer);
    lines.push_back(barLine(handing));
    lines.push_back({Sheet::tr("Cranks"), halfMm(setup.crankMm), {}});
    if (const auto post = postLine(handing))
        lines.push_back(*post);
    lines.push_back({Sheet::tr("Tyres"),
                     Sheet::tr("%1 on %2", "a tyre's width, its rim's bead seat")
                         .arg(partMm(skeleton.tyreMm), plain(skeleton.beadSeatMm)),
                     Sheet::tr("pressure, between the marks on tyre and rim: ……  ……")});
    return lines;
}

QString asBuiltColumn()
{
    return Sheet::tr("as built");
}

QString torqueColumn()
{
    return Sheet::tr("N·m, as marked");
}

QString ticksHeading()
{
    return Sheet::tr("Before it leaves");
}

QStringList workshopTicks(const Handing& handing)
{
    QStringList ticks{
        Sheet::tr("hoses and cables free at full lock, both ways"),
        Sheet::tr("bar and levers clear of the top tube"),
        Sheet::tr("levers within this hand's reach"),
        Sheet::tr("headset without play, turning freely"),
        Sheet::tr("every bolt at the torque marked on its part"),
        Sheet::tr("marks of post and stem inside"),
        Sheet::tr("both brakes hold, from the saddle and standing"),
        Sheet::tr("shoe and front wheel, pedals level, bar turned, in the rider's own shoes"),
    };
    if (handing.size().skeleton.mudguard)
        ticks << Sheet::tr("mudguards clear of tyre and shoe; stays that break away");
    ticks << Sheet::tr("ridden, with the load it will carry");
    return ticks;
}

QString remarksHeading()
{
    return Sheet::tr("Remarks");
}

QStringList workshopRemarks(const Handing& handing)
{
    QStringList remarks =
        sentencesOf(handing.candidate().findings,
                    {FindingCode::HosesShort, FindingCode::CrankSwap, FindingCode::ToeUnderStandard,
                     FindingCode::ToeOverlaps, FindingCode::ToeNear, FindingCode::KneeNearBar,
                     FindingCode::HeelNearBag});
    if (const auto& part = handing.advice.part;
        part && !handing.over.own && handing.advice.verdict.named == handing.over.candidate)
        remarks.prepend(toOrderSentence(*part));
    remarks.removeAll(QString());
    return remarks;
}

QString workshopFoot()
{
    return Sheet::tr("Marks and limits on parts and the makers' instructions rule over this sheet, "
                     "local regulations over both. After any change at the bar: hoses, levers, "
                     "torque, brakes and a ride again.");
}

QString riderTitle()
{
    return Sheet::tr("Your bicycle, and how it is set up");
}

QString rideFirst(const Handing& handing)
{
    const Verdict& verdict = handing.advice.verdict;
    if (isNoneThatFits(handing))
        return Sheet::tr("This one comes nearest: to try, and not to order.");
    if (handing.over.chosen || !verdict.named || !verdict.other
        || (verdict.kind != VerdictKind::Slight && verdict.kind != VerdictKind::Either))
        return {};
    const Candidate& next = handing.advice.candidates[*verdict.other];
    if (!fitsAtAll(next.fit.state))
        return {};
    const QString other = sizeName(next, handing.prepared);
    if (verdict.kind == VerdictKind::Slight)
        return Sheet::tr("It is close with %1: ride both, set up alike, before one is ordered.",
                         "the other size")
            .arg(other);
    return Sheet::tr("Little sets %1 and %2 apart for you: ride both, set up alike, before one is "
                     "ordered.",
                     "two sizes")
        .arg(sizeName(handing.advice.leading(), handing.prepared), other);
}

QString feelHeading()
{
    return Sheet::tr("What you should feel");
}

QString changeHeading()
{
    return Sheet::tr("What to change first");
}

QStringList changesFirst(const Handing& handing)
{
    const Setup& setup = handing.over.setup();
    const auto& steps = handing.tables.comfort.complaintSteps;
    const auto step = [&steps](Complaint complaint) -> const ComplaintStep& {
        return steps[indexOf(complaint)];
    };
    const double up = step(Complaint::Hands).handUpMm;
    const double room = mostSpacers(handing.size().skeleton, setup.stem, handing.tables.parts)
                        - setup.cockpit.spacersMm;
    const QString higher =
        Sheet::tr("Numb hands, a stiff neck or an aching lower back: the bar %1 higher, %2.",
                  "how far, by what")
            .arg(mm(up), room < up ? Sheet::tr("by a stem with more rise")
                         : setup.stem.quillMm
                             ? Sheet::tr("by raising the quill")
                             : Sheet::tr("by spacers from above the stem to below it"));
    return {higher,
            Sheet::tr("Too stretched or too cramped: the next shorter or the next longer stem."),
            Sheet::tr("Pain at the front of the knee: the saddle %1 higher. Behind the knee: as "
                      "much lower.")
                .arg(mm(step(Complaint::KneeFront).saddleUpMm)),
            Sheet::tr("A sore seat: the saddle's tilt, a little at a time; then another saddle.")};
}

QString comeBack()
{
    return Sheet::tr("One thing at a time, then a week of riding. Come back after four weeks, "
                     "sooner if anything hurts, and bring this sheet. Numbness that lasts after "
                     "the ride, or comes back after one change, belongs to a health professional.");
}

QString cautionsHeading()
{
    return Sheet::tr("Mind");
}

QStringList riderCautions(const Handing& handing)
{
    QStringList cautions{
        Sheet::tr("This is where to start, not a prescription: one change at a time, of %1 or less "
                  "or one part.")
            .arg(partMm(cautiousStepMm)),
        healthCaution(),
        Sheet::tr("What the makers of the parts allow rules over this sheet, local rules of the "
                  "road over both.")};
    if (toeMayTouch(handing))
        cautions.prepend(Sheet::tr("At walking pace, with the bar turned, your shoe may touch the "
                                   "front wheel or its mudguard: keep that foot back or down."));
    return cautions;
}

QString hazardsHeading()
{
    return Sheet::tr("Shown to me, and accepted");
}

QStringList hazardsShown(const Handing& handing)
{
    QStringList shown;
    if (toeMayTouch(handing))
        shown << Sheet::tr("My shoe may touch the front wheel or its mudguard when I turn at "
                           "walking pace.");
    for (const Findings* findings : {&handing.candidate().limits, &handing.candidate().findings})
        for (const Finding& finding : *findings)
            if (finding.code == FindingCode::NoStandover
                || finding.code == FindingCode::StandoverTight)
                shown << standing(finding.numbers.at(0));
    shown.removeDuplicates();
    return shown;
}

QString signLine()
{
    return Sheet::tr("Date, signature:");
}

} // namespace tripoise
