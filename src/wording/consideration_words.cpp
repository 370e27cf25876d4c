// SPDX-License-Identifier: MIT
#include "wording/consideration_words.h"

#include "wording/ledger_words.h"
#include "wording/words.h"

#include <cmath>

namespace tripoise {
namespace {

constexpr double leastKneeToldMm = 0.5;
constexpr double leastUntidyTold = 0.05;

QString kneeValue(double aheadMm)
{
    if (std::abs(aheadMm) < leastKneeToldMm)
        return Words::tr("in its place", "the knee");
    return (aheadMm > 0.0 ? Words::tr("%1 too far forward", "the knee")
                          : Words::tr("%1 too far back", "the knee"))
        .arg(mm(std::abs(aheadMm)));
}

QString waysValue(double ways)
{
    const double told = std::round(ways * 10.0) / 10.0;
    return Words::tr("%1 of %2 ways", "a bar can still be moved")
        .arg(shortestFigure(told), plain(barDirections));
}

struct Phrase {
    const char* text;
    const char* where;
};

/// Translated where they are used.
struct Row {
    const char* name;
    Phrase line;
    const char* meaning;
    const char* heavier;
    QString (*value)(double value, const PreparedSize& size);
    Phrase takenFor;
    const char* reason;
    QString (*reasoned)(const char* reason, const Compared& c);
};

template <QString (*say)(double)> QString plainly(double value, const PreparedSize&)
{
    return say(value);
}
template <QString (*say)(double)> QString both(const char* reason, const Compared& c)
{
    return Words::tr(reason).arg(c.subject, say(c.mine), c.worse, say(c.theirs));
}
QString theirsOnly(const char* reason, const Compared& c)
{
    return Words::tr(reason).arg(c.subject, c.worse, mm(std::abs(c.theirs)));
}

constexpr PerConsideration<Row> rows{{
    {
        QT_TRANSLATE_NOOP("Words", "hands off their best place"),
        QT_TRANSLATE_NOOP3("Words", "hands", "for and against"),
        QT_TRANSLATE_NOOP(
            "Words", "How far the hands are from where back, arms and elbows would be easiest, "
                     "over all of the riding. The box of parts seldom meets that place exactly."),
        QT_TRANSLATE_NOOP(
            "Words", "Weighing more, it lets the best place for the hands decide over all else."),
        [](double value, const PreparedSize&) {
            return Words::tr("%1 off", "the hands").arg(mm(value));
        },
        QT_TRANSLATE_NOOP3("Words", "the hands at their best place", "what a size is taken for"),
        QT_TRANSLATE_NOOP(
            "Words",
            "%1 brings the hands within %2 of their best place; on %3 they end up %4 away."),
        both<mm>,
    },
    {
        QT_TRANSLATE_NOOP("Words", "knee off its place"),
        QT_TRANSLATE_NOOP3("Words", "knee over pedal", "for and against"),
        QT_TRANSLATE_NOOP(
            "Words", "Where the knee comes to stand over the level pedal, against what suits the "
                     "riding. Rails and seat post may not let the saddle go there."),
        QT_TRANSLATE_NOOP("Words",
                          "Weighing more, it favours the size whose saddle can go where the knee "
                          "wants it."),
        plainly<kneeValue>,
        QT_TRANSLATE_NOOP3("Words", "the knee in its place", "what a size is taken for"),
        QT_TRANSLATE_NOOP("Words",
                          "%1 lets the saddle go where the knee wants it; on %2 it stays %3 off."),
        theirsOnly,
    },
    {
        QT_TRANSLATE_NOOP("Words", "an ordinary stem length"),
        QT_TRANSLATE_NOOP3("Words", "stem length", "for and against"),
        QT_TRANSLATE_NOOP(
            "Words", "The stem this size needs. A stem of the length usual for the riding steers "
                     "as one expects; far longer or shorter ones do not."),
        QT_TRANSLATE_NOOP("Words",
                          "Weighing more, it favours the size that takes a stem of usual length."),
        plainly<halfMm>,
        QT_TRANSLATE_NOOP3("Words", "a stem of ordinary length", "what a size is taken for"),
        QT_TRANSLATE_NOOP("Words", "%1 takes a %2 stem, usual for this riding; %3 would want %4."),
        [](const char* usual, const Compared& c) {
            return articled(both<halfMm>(
                c.faultless
                    ? usual
                    : QT_TRANSLATE_NOOP("Words", "%1 takes a %2 stem; %3 would want %4, which is "
                                                 "further from what is usual for this riding."),
                c));
        },
    },
    {
        QT_TRANSLATE_NOOP("Words", "an ordinary height of spacers"),
        QT_TRANSLATE_NOOP3("Words", "spacers", "for and against"),
        QT_TRANSLATE_NOOP("Words",
                          "Spacers under the stem. A tall stack says that the frame is low for the "
                          "rider; with none the bar cannot go lower later."),
        QT_TRANSLATE_NOOP("Words", "Weighing more, it favours the size that takes an ordinary "
                                   "height of spacers."),
        plainly<halfMm>,
        QT_TRANSLATE_NOOP3("Words", "an ordinary height of spacers", "what a size is taken for"),
        QT_TRANSLATE_NOOP("Words", "%1 takes %2 of spacers under the stem, %3 takes %4."),
        both<halfMm>,
    },
    {
        QT_TRANSLATE_NOOP("Words", "an ordinary stem angle"),
        QT_TRANSLATE_NOOP3("Words", "stem angle", "for and against"),
        QT_TRANSLATE_NOOP(
            "Words", "The stem's angle as mounted. A steep one says that the frame is too low or "
                     "too high for the rider."),
        QT_TRANSLATE_NOOP("Words",
                          "Weighing more, it favours the size that does without a steep stem."),
        plainly<signedDegrees>,
        QT_TRANSLATE_NOOP3("Words", "an ordinary stem angle", "what a size is taken for"),
        QT_TRANSLATE_NOOP("Words", "%1 does with a stem of %2; %3 needs one of %4."),
        both<signedDegrees>,
    },
    {
        QT_TRANSLATE_NOOP("Words", "parts that suit each other"),
        QT_TRANSLATE_NOOP3("Words", "parts together", "for and against"),
        QT_TRANSLATE_NOOP("Words",
                          "Whether the parts suit each other: a stem that points down does not "
                          "suit a bar that rises, or tall spacers; nor does such a bar where a "
                          "plain one is wanted."),
        QT_TRANSLATE_NOOP("Words",
                          "Weighing more, it favours the size whose parts suit each other."),
        [](double value, const PreparedSize&) {
            return value < leastUntidyTold ? Words::tr("suit each other", "parts together")
                                           : Words::tr("suit each other less", "parts together");
        },
        QT_TRANSLATE_NOOP3("Words", "parts that suit each other", "what a size is taken for"),
        QT_TRANSLATE_NOOP("Words",
                          "%1 does with parts that suit each other; on %2 they do so less: a bar "
                          "that rises where a plain one is wanted, or a stem that points down "
                          "under it or over tall spacers."),
        [](const char* text, const Compared& c) { return Words::tr(text).arg(c.subject, c.worse); },
    },
    {
        QT_TRANSLATE_NOOP("Words", "parts in stock"),
        QT_TRANSLATE_NOOP3("Words", "parts in stock", "for and against"),
        QT_TRANSLATE_NOOP("Words",
                          "Whether the stem is in stock, or it or an adaptor for it has to be "
                          "ordered."),
        QT_TRANSLATE_NOOP("Words", "Weighing more, it favours the size that does with a stem in "
                                   "stock."),
        [](double value, const PreparedSize&) {
            return value > 0.0 ? Words::tr("part to order", "parts in stock")
                               : Words::tr("all there", "parts in stock");
        },
        QT_TRANSLATE_NOOP3("Words", "a stem that is in stock", "what a size is taken for"),
        QT_TRANSLATE_NOOP("Words",
                          "%1 does with a stem in stock; for %2 a stem or an adaptor has to be "
                          "ordered."),
        [](const char* text, const Compared& c) { return Words::tr(text).arg(c.subject, c.worse); },
    },
    {
        QT_TRANSLATE_NOOP("Words", "seat post showing"),
        QT_TRANSLATE_NOOP3("Words", "seat post showing", "for and against"),
        QT_TRANSLATE_NOOP(
            "Words", "Seat post between seat tube and saddle. Little leaves no room for a bag, a "
                     "shorter rider or a suspension post; much flexes and looks tall."),
        QT_TRANSLATE_NOOP(
            "Words", "Weighing more, it favours the size that shows an ordinary length of post."),
        [](double value, const PreparedSize& size) {
            return size.skeleton.seatTubeMm ? partMm(value)
                                            : Words::tr("not known", "seat post showing");
        },
        QT_TRANSLATE_NOOP3("Words", "the seat post", "what a size is taken for"),
        QT_TRANSLATE_NOOP("Words", "%1 shows %2 of seat post, %3 shows %4."),
        both<partMm>,
    },
    {
        QT_TRANSLATE_NOOP("Words", "standover clearance"),
        QT_TRANSLATE_NOOP3("Words", "standover clearance", "for and against"),
        QT_TRANSLATE_NOOP(
            "Words", "Room between the rider and the top tube when standing over it, shoes on."),
        QT_TRANSLATE_NOOP("Words",
                          "Weighing more, it favours the size with more standover clearance."),
        [](double value, const PreparedSize& size) {
            return size.skeleton.standoverMm ? mm(value)
                                             : Words::tr("not known", "standover clearance");
        },
        QT_TRANSLATE_NOOP3("Words", "standover clearance", "what a size is taken for"),
        QT_TRANSLATE_NOOP("Words", "%1 leaves %2 of standover clearance, %3 only %4."),
        both<mm>,
    },
    {
        QT_TRANSLATE_NOOP("Words", "agile or steady handling"),
        QT_TRANSLATE_NOOP3("Words", "agile or steady: wheelbase", "for and against"),
        QT_TRANSLATE_NOOP(
            "Words", "A short wheelbase turns quickly, a long one holds its line. Quick riding "
                     "in traffic wants the one, touring with bags the other."),
        QT_TRANSLATE_NOOP("Words",
                          "Weighing more, it favours the size that handles as this riding wants."),
        plainly<partMm>,
        QT_TRANSLATE_NOOP3("Words", "how it handles", "what a size is taken for"),
        QT_TRANSLATE_NOOP("Words", "%1 is the quicker of the two: its wheelbase is %2 shorter, and "
                                   "this riding wants a bike that turns."),
        [](const char* quicker, const Compared& c) {
            return Words::tr(c.mine < c.theirs
                                 ? quicker
                                 : QT_TRANSLATE_NOOP(
                                     "Words",
                                     "%1 is the steadier of the two: its wheelbase is %2 longer, "
                                     "and this riding wants a bike that holds its line."))
                .arg(c.subject, partMm(std::abs(c.theirs - c.mine)));
        },
    },
    {
        QT_TRANSLATE_NOOP("Words", "a small bicycle to carry and lock"),
        QT_TRANSLATE_NOOP3("Words", "small to carry: stack + reach", "for and against"),
        QT_TRANSLATE_NOOP(
            "Words", "Stack and reach together stand for how much bicycle there is to lift, park "
                     "and lock."),
        QT_TRANSLATE_NOOP("Words", "Weighing more, it favours the smaller size."),
        plainly<partMm>,
        QT_TRANSLATE_NOOP3("Words", "a smaller bike to carry and lock", "what a size is taken for"),
        QT_TRANSLATE_NOOP("Words", "%1 is the smaller bike to carry, park and lock."),
        [](const char* text, const Compared& c) { return Words::tr(text).arg(c.subject); },
    },
    {
        QT_TRANSLATE_NOOP("Words", "room to move the bar later"),
        QT_TRANSLATE_NOOP3("Words", "room to adjust", "for and against"),
        QT_TRANSLATE_NOOP(
            "Words", "Whether the bar can still go up, down, nearer and further with what is in "
                     "the box, should the rider ask for it after a month."),
        QT_TRANSLATE_NOOP("Words",
                          "Weighing more, it favours the size whose bar can still be moved."),
        plainly<waysValue>,
        QT_TRANSLATE_NOOP3("Words", "more room to move the bar later", "what a size is taken for"),
        QT_TRANSLATE_NOOP("Words",
                          "%1 leaves more room to move the bar later; %2 is nearer the end of it."),
        [](const char* text, const Compared& c) { return Words::tr(text).arg(c.subject, c.worse); },
    },
    {
        QT_TRANSLATE_NOOP("Words", "crank length"),
        QT_TRANSLATE_NOOP3("Words", "crank length", "for and against"),
        QT_TRANSLATE_NOOP("Words",
                          "Cranks against what suits the length of the leg. Those in the box that "
                          "come nearest are taken."),
        QT_TRANSLATE_NOOP("Words",
                          "Weighing more, it favours cranks that suit the leg over those fitted."),
        plainly<halfMm>,
        QT_TRANSLATE_NOOP3("Words", "cranks that suit the leg", "what a size is taken for"),
        QT_TRANSLATE_NOOP("Words", "%1 goes with %2 cranks, %3 with %4."),
        both<halfMm>,
    },
    {
        QT_TRANSLATE_NOOP("Words", "bar width"),
        QT_TRANSLATE_NOOP3("Words", "bar width", "for and against"),
        QT_TRANSLATE_NOOP("Words",
                          "The bar's width against the rider's shoulders, or what the riding is "
                          "used to. A wide bar can often be cut down."),
        QT_TRANSLATE_NOOP("Words", "Weighing more, it favours a bar of the right width."),
        plainly<halfMm>,
        QT_TRANSLATE_NOOP3("Words", "the bar's width", "what a size is taken for"),
        QT_TRANSLATE_NOOP("Words", "%1 takes a bar %2 wide, %3 one of %4."),
        both<halfMm>,
    },
    {
        QT_TRANSLATE_NOOP("Words", "room for the toe"),
        QT_TRANSLATE_NOOP3("Words", "toe overlap", "for and against"),
        QT_TRANSLATE_NOOP("Words",
                          "How far the shoe reaches into where tyre or mudguard turns: a hazard at "
                          "walking pace. In traffic it counts twice."),
        QT_TRANSLATE_NOOP("Words",
                          "Weighing more, it favours the size and the cranks that keep the shoe "
                          "clear of the front wheel."),
        [](double value, const PreparedSize&) {
            return value > 0.0 ? mm(value) : Words::tr("none", "toe overlap");
        },
        QT_TRANSLATE_NOOP3("Words", "a shoe that stays clear of the front wheel",
                           "what a size is taken for"),
        QT_TRANSLATE_NOOP("Words", "%1 keeps the shoe clear of the front wheel; on %2 it reaches "
                                   "%3 into where that turns."),
        [](const char* clear, const Compared& c) {
            if (c.theirs <= 0.0)
                return Words::tr(
                           "%1 leaves more room between shoe and front wheel; on %2 they come "
                           "near to touching.")
                    .arg(c.subject, c.worse);
            if (c.mine > 0.0)
                return both<mm>(QT_TRANSLATE_NOOP("Words",
                                                  "%1 lets the shoe reach %2 into where the front "
                                                  "wheel turns, %3 lets it reach %4."),
                                c);
            if (-c.mine < leastToldMm)
                return theirsOnly(QT_TRANSLATE_NOOP("Words",
                                                    "%1 only just keeps the shoe clear of the "
                                                    "front wheel; on %2 it reaches %3 into where "
                                                    "that turns."),
                                  c);
            if (std::isfinite(c.mine))
                return Words::tr("%1 leaves %2 between shoe and front wheel; on %3 it reaches %4 "
                                 "into where that turns.")
                    .arg(c.subject, mm(-c.mine), c.worse, mm(c.theirs));
            return theirsOnly(clear, c);
        },
    },
    {
        QT_TRANSLATE_NOOP("Words", "the maker's word on riders' heights"),
        QT_TRANSLATE_NOOP3("Words", "maker's rider heights", "for and against"),
        QT_TRANSLATE_NOOP(
            "Words", "Whether the rider's height is one the maker names this size for. It counts "
                     "for less where the legs are long or short for the height."),
        QT_TRANSLATE_NOOP("Words", "Weighing more, it favours the size whose maker names it for "
                                   "riders of this height."),
        [](double value, const PreparedSize& size) {
            if (!size.frame.riderHeightMm)
                return Words::tr("not known", "maker's rider heights");
            if (value == 0.0)
                return Words::tr("inside", "maker's rider heights");
            return (value > 0.0 ? Words::tr("rider %1 taller", "than the maker's heights")
                                : Words::tr("rider %1 shorter", "than the maker's heights"))
                .arg(mm(std::abs(value)));
        },
        QT_TRANSLATE_NOOP3("Words", "the maker's word on heights", "what a size is taken for"),
        QT_TRANSLATE_NOOP("Words", "The rider is %1 taller than those the maker names %2 for."),
        [](const char* taller, const Compared& c) {
            return Words::tr(c.theirs > 0.0 ? taller
                                            : QT_TRANSLATE_NOOP(
                                                "Words", "The rider is %1 shorter than those the "
                                                         "maker names %2 for."))
                .arg(mm(std::abs(c.theirs)), c.worse);
        },
    },
}};

const Row& wordsOf(Consideration consideration)
{
    return rows[indexOf(consideration)];
}

} // namespace

QString nameOf(Consideration consideration)
{
    return Words::tr(wordsOf(consideration).name);
}

QString ledgerName(Consideration consideration)
{
    return Words::tr(wordsOf(consideration).line.text, wordsOf(consideration).line.where);
}

QString ledgerValue(const LedgerEntry& entry, const PreparedSize& size)
{
    return wordsOf(entry.consideration).value(entry.value, size);
}

QString ledgerMeaning(Consideration consideration)
{
    return Words::tr(wordsOf(consideration).meaning);
}

QString ledgerHeavier(Consideration consideration)
{
    return Words::tr(wordsOf(consideration).heavier);
}

QString takenFor(Consideration consideration)
{
    return Words::tr(wordsOf(consideration).takenFor.text, wordsOf(consideration).takenFor.where);
}

QString reasonSentence(Consideration consideration, const Compared& compared)
{
    return wordsOf(consideration).reasoned(wordsOf(consideration).reason, compared);
}

} // namespace tripoise
