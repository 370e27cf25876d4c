// SPDX-License-Identifier: MIT
//
// The box of parts.
#include "document/plausible.h"
#include "document/sections.h"

namespace tripoise::document {
namespace {

constexpr Count stemCount{1, mostStems};
constexpr Count barCount{1, mostBars};
constexpr Count spacerCount{0, mostSpacerPieces};
constexpr Count crankCount{0, mostCranks};

Stem readStem(Fields fields)
{
    Stem stem;
    stem.lengthMm = fields.needNumber("length_mm", plausible::stemLength);
    stem.angle = Angle::degrees(fields.needNumber("angle_deg", plausible::stemAngle));
    stem.reversible = fields.flag("reversible", true);
    stem.barClampMm = fields.number("bar_clamp_mm", plausible::diameter);
    stem.steererMm = fields.number("steerer_mm", plausible::diameter);
    stem.clampHeightMm = fields.number("clamp_height_mm", plausible::clampHeight);
    stem.inStock = fields.flag("in_stock", true);
    stem.quillMm = fields.number("quill_mm", plausible::quill);
    stem.raiseMm = fields.number("raise_mm", plausible::quillRaise);
    fields.refuseUnknown();
    return stem;
}

Bar readBar(Fields fields)
{
    Bar bar;
    bar.name = fields.text("name", longestName);
    bar.kind = fields.needWord("kind", barKindWords).value_or(BarKind::Flat);
    bar.widthMm = fields.needNumber("width_mm", plausible::barWidth);
    bar.backsweepDeg = fields.number("backsweep_deg", plausible::backsweep);
    bar.riseMm = fields.number("rise_mm", plausible::barRise);
    bar.gripBackMm = fields.number("grip_back_mm", plausible::gripBack);
    bar.reachMm = fields.number("reach_mm", plausible::barReach);
    bar.dropMm = fields.number("drop_mm", plausible::barDrop);
    bar.hoodForwardMm = fields.number("hood_forward_mm", plausible::hoodForward);
    bar.hoodUpMm = fields.number("hood_up_mm", plausible::hoodUp);
    bar.barClampMm = fields.number("bar_clamp_mm", plausible::diameter);
    fields.refuseUnknown();
    return bar;
}

template <typename Part, typename Read>
std::vector<Part> readParts(Fields& fields, std::string_view key, const Count& count, Read&& read)
{
    std::vector<Part> parts;
    const auto& entries = fields.needList(key, count);
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const std::string path = joined(fields.pathOf(key), i);
        if (entries[i].is_object())
            parts.push_back(read(Fields(entries[i], path, fields.report())));
        else
            fields.report().add(wrongType(entries[i], path, "object"));
    }
    return parts;
}

} // namespace

Stock readStock(Fields fields)
{
    Stock stock;
    stock.stems = readParts<Stem>(fields, "stems", stemCount, readStem);
    stock.spacersMm = fields.numbers("spacers_mm", spacerCount, plausible::spacer);
    stock.cranksMm = fields.numbers("cranks_mm", crankCount, plausible::crank);
    stock.fittedCrankMm = fields.number("fitted_crank_mm", plausible::crank);
    stock.bars = readParts<Bar>(fields, "bars", barCount, readBar);
    if (auto saddle = fields.object("saddle")) {
        stock.saddle.lengthMm = saddle->number("length_mm", plausible::saddleLength);
        stock.saddle.stackMm = saddle->number("stack_mm", plausible::saddleStack);
        stock.saddle.railTravelMm = saddle->number("rail_travel_mm", plausible::railTravel);
        saddle->refuseUnknown();
    }
    if (auto pedal = fields.object("pedal")) {
        stock.pedal.stackMm = pedal->number("stack_mm", plausible::pedalStack);
        stock.pedal.lateralMm = pedal->number("lateral_mm", plausible::pedalLateral);
        pedal->refuseUnknown();
    }
    if (!fields.find("fitted_crank_mm")) {
        const Json* cranks = fields.find("cranks_mm");
        if (!cranks)
            fields.missing("cranks_mm", plausible::crank);
        if (cranks && cranks->is_array() && cranks->empty()) {
            Problem problem = problemAt(ProblemCode::TooFew, fields.pathOf("cranks_mm"), "0");
            problem.low = 1.0;
            problem.high = static_cast<double>(crankCount.most);
            fields.report().add(std::move(problem));
        }
    }
    fields.refuseUnknown();
    return stock;
}

} // namespace tripoise::document
