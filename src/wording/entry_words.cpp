// SPDX-License-Identifier: MIT
#include "wording/entry_words.h"

#include "wording/visible.h"
#include "wording/words.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tripoise {
namespace {

struct EntryWords {
    std::string_view key;
    const char* name;
    const char* datum;
};

constexpr std::array entryWords{
    // a frame's table
    EntryWords{"stack", QT_TRANSLATE_NOOP("Words", "Stack"),
               QT_TRANSLATE_NOOP("Words", "Bottom bracket up to the top of the head tube, level.")},
    EntryWords{
        "reach", QT_TRANSLATE_NOOP("Words", "Frame reach"),
        QT_TRANSLATE_NOOP("Words", "Bottom bracket forward to the top of the head tube, level.")},
    EntryWords{"head_angle", QT_TRANSLATE_NOOP("Words", "Head angle"),
               QT_TRANSLATE_NOOP("Words", "Of the steering axis, from the horizontal.")},
    EntryWords{"seat_angle", QT_TRANSLATE_NOOP("Words", "Seat angle"),
               QT_TRANSLATE_NOOP("Words", "From the horizontal, at the rider's saddle height.")},
    EntryWords{"head_tube", QT_TRANSLATE_NOOP("Words", "Head tube"),
               QT_TRANSLATE_NOOP("Words", "Length of the tube, without the headset.")},
    EntryWords{
        "top_tube", QT_TRANSLATE_NOOP("Words", "Top tube, effective"),
        QT_TRANSLATE_NOOP("Words", "Level, from the top of the head tube to the seat axis.")},
    EntryWords{"seat_tube", QT_TRANSLATE_NOOP("Words", "Seat tube"),
               QT_TRANSLATE_NOOP("Words", "Middle of the bottom bracket to the top of the tube.")},
    EntryWords{
        "chainstay", QT_TRANSLATE_NOOP("Words", "Chainstay"),
        QT_TRANSLATE_NOOP("Words",
                          "Bottom bracket to rear axle; on an adjustable dropout, the shortest.")},
    EntryWords{"chainstay_end", QT_TRANSLATE_NOOP("Words", "Chainstay, longest"),
               QT_TRANSLATE_NOOP("Words", "Only where the dropout can be moved.")},
    EntryWords{"bb_drop", QT_TRANSLATE_NOOP("Words", "Bottom-bracket drop"),
               QT_TRANSLATE_NOOP("Words", "Bottom bracket below the axles; negative where above.")},
    EntryWords{"wheelbase", QT_TRANSLATE_NOOP("Words", "Wheelbase"),
               QT_TRANSLATE_NOOP("Words", "Axle to axle.")},
    EntryWords{"front_centre", QT_TRANSLATE_NOOP("Words", "Front-centre"),
               QT_TRANSLATE_NOOP("Words", "Bottom bracket to front axle, straight.")},
    EntryWords{"fork_length", QT_TRANSLATE_NOOP("Words", "Fork length"),
               QT_TRANSLATE_NOOP("Words", "Crown seat to axle, straight.")},
    EntryWords{"fork_offset", QT_TRANSLATE_NOOP("Words", "Fork offset (rake)"),
               QT_TRANSLATE_NOOP("Words", "Axle ahead of the steering axis, square to it.")},
    EntryWords{"standover", QT_TRANSLATE_NOOP("Words", "Standover"),
               QT_TRANSLATE_NOOP("Words", "Ground to the top tube, half way along.")},
    // wheels
    EntryWords{"bead_seat", QT_TRANSLATE_NOOP("Words", "Rim size"),
               QT_TRANSLATE_NOOP("Words", "Bead seat, the second figure on the tyre: 622, 584 …")},
    EntryWords{"tyre", QT_TRANSLATE_NOOP("Words", "Tyre"),
               QT_TRANSLATE_NOOP("Words", "Width, the first figure on the tyre.")},
    EntryWords{"other_rim", QT_TRANSLATE_NOOP("Words", "Other rim size"),
               QT_TRANSLATE_NOOP("Words", "Only where it is not the size's own: 584 on a frame for "
                                          "622.")},
    EntryWords{"max_tyre", QT_TRANSLATE_NOOP("Words", "Widest tyre"),
               QT_TRANSLATE_NOOP("Words", "That the frame's maker allows.")},
    EntryWords{"mudguard_gap", QT_TRANSLATE_NOOP("Words", "Gap to the tyre"),
               QT_TRANSLATE_NOOP("Words", "Tyre to the outside of the mudguard.")},
    EntryWords{"mudguard_width", QT_TRANSLATE_NOOP("Words", "Mudguard width"), ""},
    // what a size is sold with
    EntryWords{"sold_stem", QT_TRANSLATE_NOOP("Words", "Stem, sold with"),
               QT_TRANSLATE_NOOP("Words", "Its length, where the maker sells the size complete.")},
    EntryWords{"sold_bar", QT_TRANSLATE_NOOP("Words", "Bar width, sold with"), ""},
    EntryWords{"sold_crank", QT_TRANSLATE_NOOP("Words", "Crank, sold with"), ""},
    EntryWords{"sold_tyre", QT_TRANSLATE_NOOP("Words", "Tyre, sold with"),
               QT_TRANSLATE_NOOP("Words", "It counts until the bicycle's own tyre is given.")},
    // headset and steerer
    EntryWords{
        "upper_headset", QT_TRANSLATE_NOOP("Words", "Headset, above"),
        QT_TRANSLATE_NOOP("Words", "From the head tube's top to where spacers or stem begin.")},
    EntryWords{"lower_headset", QT_TRANSLATE_NOOP("Words", "Headset, below"),
               QT_TRANSLATE_NOOP("Words", "From the head tube's lower end to the crown seat.")},
    EntryWords{"steerer", QT_TRANSLATE_NOOP("Words", "Steerer diameter"),
               QT_TRANSLATE_NOOP("Words", "Outside, where the stem clamps: 28.6, 25.4 …")},
    EntryWords{"headset_quill", QT_TRANSLATE_NOOP("Words", "For a quill of"),
               QT_TRANSLATE_NOOP("Words", "Inside of a threaded steerer; empty where the stem "
                                          "clamps round it.")},
    EntryWords{"steerer_length", QT_TRANSLATE_NOOP("Words", "Steerer length"),
               QT_TRANSLATE_NOOP("Words", "Crown seat to the end, as it is now.")},
    EntryWords{"max_spacers", QT_TRANSLATE_NOOP("Words", "Most spacers"),
               QT_TRANSLATE_NOOP("Words", "Below the stem, that the fork's maker allows.")},
    // post
    EntryWords{"post_diameter", QT_TRANSLATE_NOOP("Words", "Post diameter"), ""},
    EntryWords{"post_length", QT_TRANSLATE_NOOP("Words", "Post length"),
               QT_TRANSLATE_NOOP("Words", "All of it, to the middle of the rail clamp.")},
    EntryWords{"post_offset", QT_TRANSLATE_NOOP("Words", "Post offset"),
               QT_TRANSLATE_NOOP("Words", "Rail clamp behind the post's axis.")},
    EntryWords{"post_insertion", QT_TRANSLATE_NOOP("Words", "Insertion, post"),
               QT_TRANSLATE_NOOP("Words", "Least, by the post's own mark.")},
    EntryWords{"frame_insertion", QT_TRANSLATE_NOOP("Words", "Insertion, frame"),
               QT_TRANSLATE_NOOP("Words", "Least, that the frame's maker wants.")},
    // weights
    EntryWords{"max_system", QT_TRANSLATE_NOOP("Words", "Most weight in all"),
               QT_TRANSLATE_NOOP("Words", "Bicycle, rider and luggage, that the maker allows.")},
    EntryWords{"bicycle_mass", QT_TRANSLATE_NOOP("Words", "Bicycle's weight"), ""},
    EntryWords{"price", QT_TRANSLATE_NOOP("Words", "Price"),
               QT_TRANSLATE_NOOP("Words", "In any currency, the same for all sizes.")},
    // stems
    EntryWords{
        "stem_length", QT_TRANSLATE_NOOP("Words", "Stem length"),
        QT_TRANSLATE_NOOP("Words", "Middle of the steerer to the middle of the bar, straight.")},
    EntryWords{"stem_angle", QT_TRANSLATE_NOOP("Words", "Stem angle"),
               QT_TRANSLATE_NOOP("Words", "Square to the steerer is 0, rise positive.")},
    EntryWords{"stem_bar_clamp", QT_TRANSLATE_NOOP("Words", "Bar clamp"),
               QT_TRANSLATE_NOOP("Words", "Diameter: 31.8, 25.4 …")},
    EntryWords{"stem_quill", QT_TRANSLATE_NOOP("Words", "Quill"),
               QT_TRANSLATE_NOOP("Words", "Diameter of what goes into a threaded steerer; empty "
                                          "where the stem clamps round it.")},
    EntryWords{"quill_raise", QT_TRANSLATE_NOOP("Words", "Quill out by"),
               QT_TRANSLATE_NOOP("Words", "From all the way in to its mark.")},
    EntryWords{"stem_steerer", QT_TRANSLATE_NOOP("Words", "Steerer clamp"),
               QT_TRANSLATE_NOOP("Words", "Diameter: 28.6, 25.4 …")},
    EntryWords{"clamp_height", QT_TRANSLATE_NOOP("Words", "Clamp height"),
               QT_TRANSLATE_NOOP("Words", "Of steerer that the stem takes up.")},
    // bars
    EntryWords{"bar_width", QT_TRANSLATE_NOOP("Words", "Bar width"),
               QT_TRANSLATE_NOOP("Words", "Flat and swept: end to end. Drop: middle to middle.")},
    EntryWords{"bar_clamp", QT_TRANSLATE_NOOP("Words", "Clamp diameter"),
               QT_TRANSLATE_NOOP("Words", "In the middle: 31.8, 25.4 …")},
    EntryWords{"backsweep", QT_TRANSLATE_NOOP("Words", "Backsweep"), ""},
    EntryWords{"bar_rise", QT_TRANSLATE_NOOP("Words", "Bar rise"),
               QT_TRANSLATE_NOOP("Words", "Grip above the clamp.")},
    EntryWords{"grip_back", QT_TRANSLATE_NOOP("Words", "Grip behind clamp"),
               QT_TRANSLATE_NOOP("Words", "Middle of the palm; instead of the backsweep.")},
    EntryWords{"bar_reach", QT_TRANSLATE_NOOP("Words", "Bar reach"),
               QT_TRANSLATE_NOOP("Words", "Clamp forward to the middle of the bend.")},
    EntryWords{"bar_drop", QT_TRANSLATE_NOOP("Words", "Bar drop"),
               QT_TRANSLATE_NOOP("Words", "Tops down to the drops, middle to middle.")},
    EntryWords{"hood_forward", QT_TRANSLATE_NOOP("Words", "Hood, forward"),
               QT_TRANSLATE_NOOP("Words", "Middle of the palm, beyond the bar's reach.")},
    EntryWords{"hood_up", QT_TRANSLATE_NOOP("Words", "Hood, up"),
               QT_TRANSLATE_NOOP("Words", "Middle of the palm, above the clamp.")},
    EntryWords{"spacer", QT_TRANSLATE_NOOP("Words", "Spacer"), ""},
    EntryWords{"crank", QT_TRANSLATE_NOOP("Words", "Crank"),
               QT_TRANSLATE_NOOP("Words", "Middle of the bottom bracket to middle of the pedal.")},
    // what else is in the box
    EntryWords{
        "fitted_crank", QT_TRANSLATE_NOOP("Words", "Crank fitted"),
        QT_TRANSLATE_NOOP("Words", "On the bicycle already; others in the box would be a swap.")},
    EntryWords{"saddle_length", QT_TRANSLATE_NOOP("Words", "Saddle length"),
               QT_TRANSLATE_NOOP("Words", "Nose to tail.")},
    EntryWords{"saddle_stack", QT_TRANSLATE_NOOP("Words", "Saddle stack"),
               QT_TRANSLATE_NOOP("Words", "Rails up to the top where it is 80 mm wide.")},
    EntryWords{"rail_travel", QT_TRANSLATE_NOOP("Words", "Rail travel"),
               QT_TRANSLATE_NOOP("Words", "That the clamp can use, in all.")},
    EntryWords{"pedal_stack", QT_TRANSLATE_NOOP("Words", "Pedal stack"),
               QT_TRANSLATE_NOOP("Words", "Spindle up to the tread.")},
    EntryWords{"pedal_lateral", QT_TRANSLATE_NOOP("Words", "Pedal to the side"),
               QT_TRANSLATE_NOOP("Words", "Middle of the pedal from the bicycle's middle.")},
    // the bicycle of today
    EntryWords{
        "today_height", QT_TRANSLATE_NOOP("Words", "Saddle height"),
        QT_TRANSLATE_NOOP("Words", "Bottom bracket to the saddle's top where it is 80 mm wide.")},
    EntryWords{"today_setback", QT_TRANSLATE_NOOP("Words", "Saddle setback"),
               QT_TRANSLATE_NOOP("Words", "That same point behind the bottom bracket, level.")},
    EntryWords{"today_reach", QT_TRANSLATE_NOOP("Words", "Grip reach"),
               QT_TRANSLATE_NOOP("Words", "Bottom bracket forward to the middle of the palm.")},
    EntryWords{"today_grip_height", QT_TRANSLATE_NOOP("Words", "Grip height"),
               QT_TRANSLATE_NOOP("Words", "Bottom bracket up to the middle of the palm.")},
    EntryWords{
        "today_nose", QT_TRANSLATE_NOOP("Words", "Nose behind bottom bracket"),
        QT_TRANSLATE_NOOP("Words", "Plumb line from the saddle's nose; negative when ahead.")},
    EntryWords{"today_below", QT_TRANSLATE_NOOP("Words", "Bar below saddle"),
               QT_TRANSLATE_NOOP("Words", "Straightedge level on the saddle, down to the middle of "
                                          "the bar at the stem; negative when higher.")},
    EntryWords{"today_tape", QT_TRANSLATE_NOOP("Words", "Nose to bar"),
               QT_TRANSLATE_NOOP("Words", "Tape from the saddle's nose to the middle of the bar.")},
    EntryWords{
        "today_saddle_length", QT_TRANSLATE_NOOP("Words", "Saddle length"),
        QT_TRANSLATE_NOOP("Words", "Of the saddle ridden today; without it, that of the box.")},
    EntryWords{"today_crank", QT_TRANSLATE_NOOP("Words", "Crank"),
               QT_TRANSLATE_NOOP("Words", "Stamped on its inside.")},
    EntryWords{"built_stem", QT_TRANSLATE_NOOP("Words", "Stem"),
               QT_TRANSLATE_NOOP("Words", "Length, as marked on it.")},
    EntryWords{"built_stem_angle", QT_TRANSLATE_NOOP("Words", "Stem's angle"),
               QT_TRANSLATE_NOOP("Words", "As mounted: negative when it slopes down.")},
    EntryWords{"built_spacers", QT_TRANSLATE_NOOP("Words", "Spacers under the stem"),
               QT_TRANSLATE_NOOP("Words", "All together.")}};

const EntryWords* find(std::string_view key)
{
    const auto* at = std::find_if(entryWords.begin(), entryWords.end(),
                                  [&](const EntryWords& words) { return words.key == key; });
    return at == entryWords.end() ? nullptr : at;
}

/// Parts are marked in millimetres, to the tenth where they are made so.
QString figure(double value)
{
    const double tenths = std::round(10.0 * value);
    return plain(value, std::fmod(tenths, 10.0) == 0.0 ? 0 : 1);
}

QString partLength(double value)
{
    return Words::tr("%1 mm").arg(figure(value));
}

QString orDash(double value)
{
    return value > 0.0 ? figure(value) : QStringLiteral("–");
}

} // namespace

QString entryName(std::string_view key)
{
    const EntryWords* words = find(key);
    return words ? Words::tr(words->name) : QString::fromLatin1(key.data(), qsizetype(key.size()));
}

QString entryDatum(std::string_view key)
{
    const EntryWords* words = find(key);
    return words && *words->datum ? Words::tr(words->datum) : QString();
}

QString datumText(const QString& datum, const QString& range)
{
    if (range.isEmpty())
        return datum;
    return datum.isEmpty() ? range
                           : Words::tr("%1 (%2)", "datum, plausible range").arg(datum, range);
}

QString standInText(const Estimate& standIn, int decimals)
{
    const double fine = std::pow(10.0, std::min(decimals, 1));
    const QString number = figure(std::round(standIn.value * fine) / fine);
    return standIn.origin == Origin::Assumed ? Words::tr("%1 ?", "assumed").arg(number)
                                             : Words::tr("≈ %1", "follows").arg(number);
}

QString frameName(const FrameSize& frame)
{
    const QString model = asName(frame.model);
    const QString size = asName(frame.size);
    if (size.isEmpty())
        return model.isEmpty() ? Words::tr("New size") : Words::tr("%1, new size").arg(model);
    return model.isEmpty() ? size : Words::tr("%1 %2", "model and size").arg(model, size);
}

QString frameFigures(const Geometry& geometry)
{
    return Words::tr("%1 / %2 mm, %3°", "stack / reach, head angle")
        .arg(orDash(geometry.stackMm), orDash(geometry.reachMm), orDash(geometry.headAngleDeg));
}

QString framesSummary(std::span<const FrameSize> frames)
{
    if (frames.empty())
        return Words::tr("No size yet");
    QStringList names;
    const std::string* model = nullptr;
    for (const FrameSize& frame : frames) {
        const bool again = model && *model == frame.model;
        names << (again ? asName(frame.size) : frameName(frame));
        model = &frame.model;
    }
    return names.join(Words::tr(", ", "between items of a list"));
}

QString stillNeeded(const QStringList& names)
{
    return Words::tr("Still needed: %1.").arg(listed(names));
}

QString nameTakenText(const FrameSize& frame)
{
    return Words::tr("There is a %1 already.").arg(frameName(frame));
}

QString frontCentreTooLong()
{
    return Words::tr("The front-centre is as long as the wheelbase; one of the two is wrong.");
}

QString stemText(const Stem& stem)
{
    return Words::tr("%1, %2°", "stem: length, angle")
        .arg(partLength(stem.lengthMm), figure(stem.angle.deg()));
}

QString stemClamps(const Stem& stem, const PartDefaults& defaults)
{
    return Words::tr("%1 / %2", "bar clamp / steerer")
        .arg(figure(stem.barClampMm.value_or(defaults.barClampMm)),
             stem.quillMm ? Words::tr("quill %1").arg(figure(*stem.quillMm))
                          : figure(stem.steererMm.value_or(defaults.stemSteererMm)));
}

QString barText(const Bar& bar)
{
    return barName(bar);
}

QString barClamps(const Bar& bar, const PartDefaults& defaults)
{
    return figure(bar.barClampMm.value_or(defaults.barClampMm));
}

QString pieceText(double millimetres)
{
    return partLength(millimetres);
}

QString noSteererText(const std::vector<Steerer>& steerers)
{
    QStringList sizes;
    for (const Steerer& steerer : steerers)
        if (const QString size = steerer.quillMm
                                     ? Words::tr("quill %1").arg(figure(*steerer.quillMm))
                                     : figure(steerer.outsideMm);
            !sizes.contains(size))
            sizes << size;
    return Words::tr("Fits none of the candidates: their steerers are %1 mm.").arg(listed(sizes));
}

QString noBarText(const Stem& stem, const PartDefaults& defaults)
{
    return Words::tr("No bar of %1 in the box.")
        .arg(partLength(stem.barClampMm.value_or(defaults.barClampMm)));
}

QString noStemText(const Bar& bar, const PartDefaults& defaults)
{
    return Words::tr("No stem of %1 in the box.")
        .arg(partLength(bar.barClampMm.value_or(defaults.barClampMm)));
}

QString otherKindText()
{
    return Words::tr("Not the kind of bar wanted.");
}

QString boxSummary(const Stock& fitting)
{
    const auto stems = std::count_if(fitting.stems.begin(), fitting.stems.end(),
                                     [](const Stem& stem) { return stem.inStock; });
    return Words::tr("stems %1, bars %2, spacers %3, cranks %4")
        .arg(stems)
        .arg(fitting.bars.size())
        .arg(fitting.spacersMm.size())
        .arg(fitting.cranksMm.size());
}

} // namespace tripoise
